const TEXT = /"[^"]*"/g;

/** True for a cell formula in which nothing stands between two commas, or between a comma and a bracket. */
export const leavesArgumentOut = (formula: string): boolean => /[(,]\s*,|,\s*\)/.test(formula.replace(TEXT, "text"));
