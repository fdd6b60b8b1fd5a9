/** What the reader says it decided where a formula could be read another way: one clause each. */
export const formulaNotes = {
  hydrateDot: (character: number, seen = "full stop"): string => `the ${seen} at character ${character} was read as a hydrate dot`,
  decimalComma: (character: number): string => `the comma at character ${character} was read as a decimal mark`,
  fraction: (character: number, seen: string): string =>
    `the ${seen} at character ${character} was read as a fraction, the amount of what follows it`,
  isotope: (seen: string, symbol: string, massNumber: string): string =>
    `${seen} was read as the isotope ${symbol}-${massNumber}; for ${massNumber} atoms type ${symbol}${massNumber}`,
  countBeforeCharge: (digits: string, sign: string): string =>
    `the ${digits} before the charge was read as a count; for a charge of ${digits} type ^${digits}${sign}`,
  chargeBehindCount: (digits: string, sign: string): string =>
    digits.length === 1
      ? `${digits}${sign} was read as the charge; for ${digits} atoms and one charge type ${digits}^${sign}`
      : `${digits}${sign} was read as the count ${digits.slice(0, -1)} and the charge ${digits.slice(-1)}${sign}; for a count of ${digits} type ${digits}^${sign}`,
  sizeOfCharge: (digits: string): string => `the ${digits} after the bracket was read as the size of the charge`,
  arrow: (seen: string, means: string): string => `the ${seen} at the end (${means}) was left out`,
  endOfSentence: "the full stop at the end was left out",
  timesSign: (seen: string): string => `the ${seen} was read as a hydrate dot`,
  underscores: "each _ was read as a subscript and left out; places are counted without them",
  heavyHydrogen: (symbol: string, name: string): string => `${symbol} was read as ${name}`,
  alsoAWord: (text: string): string => `${text} was read as a formula; it is also a word or an abbreviation`,
} as const;
