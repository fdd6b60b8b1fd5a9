/** Labels stand in the first column, their boxes in the second; a results table has its samples from the second on. */
export const COLUMNS = { label: "A", value: "B" } as const;
