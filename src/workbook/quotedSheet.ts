/** A sheet's name, or "Tin 1:Tin 3", as formulas and defined names quote it: an apostrophe within is written twice (ECMA-376 Part 1, 18.17.2.3). */
export const quotedSheet = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;
