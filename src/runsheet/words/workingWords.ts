const several = (what: readonly string[]): string => what.join(", ");

/** Words for the steps of a formula of the sheet that are no plain arithmetic. */
export const workingWords = {
  largest: (of: readonly string[], count: number): string => (count === 2 ? `the larger of ${of[0]} and ${of[1]}` : `the largest of ${several(of)}`),
  smallest: (of: readonly string[], count: number): string =>
    count === 2 ? `the smaller of ${of[0]} and ${of[1]}` : `the smallest of ${several(of)}`,
  mean: (of: readonly string[]): string => `mean of ${several(of)}`,
  deviation: (of: readonly string[]): string => `standard deviation of ${several(of)}`,
  median: (of: readonly string[]): string => `median of ${several(of)}`,
  sum: (of: readonly string[]): string => `sum of ${several(of)}`,
  count: (of: readonly string[]): string => `how many are filled of ${several(of)}`,
  countIf: (of: string, wanted: string): string => `how many say ${wanted} of ${of}`,
  student: (degrees: string): string => `factor t, 95 % two-sided, degrees of freedom ${degrees}`,
  rounded: (of: string, decimals: string): string => `${of} to ${decimals} decimals`,
  wholePart: (of: string): string => `whole part of ${of}`,
  remainder: (of: string, by: string): string => `remainder of ${of} by ${by}`,
  entry: (place: string, of: string): string => `number ${place} of ${of}`,
  tableEntry: (name: string): string => `from the table that ${name} gives`,
  call: (name: string, given: readonly string[]): string => `${name}(${given.join(", ")})`,
  cellByCell: (places: readonly string[]): string => `worked out cell by cell from ${several(places)}`,
  formulaIn: (places: readonly string[]): string => `a formula in ${several(places)}, 1 for yes`,
  withoutFormula: (places: readonly string[]): string => `how many cells without their formula in ${several(places)}`,
  clock: (time: string, days: string): string => `${time} counts as ${days} of a day`,
  written: (number: string): string => `written ${number}`,
} as const;
