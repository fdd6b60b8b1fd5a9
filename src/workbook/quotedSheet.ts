/** A sheet's name, or "Tin 1:Tin 3", as formulas and defined names quote it: an apostrophe within is written twice (ECMA-376 Part 1, 18.17.2.3). */
export const quotedSheet = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;

/** The name of a sheet, or of several with ":" between them, as it stands before "!", in apostrophes or not. */
export const unquotedSheet = (written: string): string => (written.startsWith("'") ? written.slice(1, -1).replaceAll("''", "'") : written);
