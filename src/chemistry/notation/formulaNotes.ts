/** What the reader says it decided where a formula could be read another way: one clause each. */
export const formulaNotes = {
  hydrateDot: (character: number): string => `the full stop at character ${character} was read as a hydrate dot`,
  decimalComma: (character: number): string => `the comma at character ${character} was read as a decimal mark`,
  fraction: (character: number, seen: string): string =>
    `the ${seen} at character ${character} was read as a fraction, the amount of what follows it`,
  isotope: (seen: string, symbol: string, massNumber: string): string =>
    `${seen} was read as the isotope ${symbol}-${massNumber}; for ${massNumber} atoms type ${symbol}${massNumber}`,
  countBeforeCharge: (digits: string, sign: string): string =>
    `the ${digits} before the charge was read as a count; for a charge of ${digits} type ^${digits}${sign}`,
  sizeOfCharge: (digits: string): string => `the ${digits} after the bracket was read as the size of the charge`,
} as const;
