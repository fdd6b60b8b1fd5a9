/** Formats that a file names by number alone: ECMA-376 Part 1, 18.8.30, for languages without formats of their own. */
const BUILT_IN: Readonly<Record<number, string>> = {
  0: "General", 1: "0", 2: "0.00", 3: "#,##0", 4: "#,##0.00", 9: "0%", 10: "0.00%", 11: "0.00E+00", 12: "# ?/?", 13: "# ??/??",
  14: "mm-dd-yy", 15: "d-mmm-yy", 16: "d-mmm", 17: "mmm-yy", 18: "h:mm AM/PM", 19: "h:mm:ss AM/PM", 20: "h:mm", 21: "h:mm:ss",
  22: "m/d/yy h:mm", 37: "#,##0 ;(#,##0)", 38: "#,##0 ;[Red](#,##0)", 39: "#,##0.00;(#,##0.00)", 40: "#,##0.00;[Red](#,##0.00)",
  45: "mm:ss", 46: "[h]:mm:ss", 47: "mmss.0", 48: "##0.0E+0", 49: "@",
}; // prettier-ignore

export const numberFormatOf = (number: number, ownFormats: ReadonlyMap<number, string>): string =>
  ownFormats.get(number) ?? BUILT_IN[number] ?? "General";

/** True where a format shows a day, month or year, so that the number is a date and not a time of day or a length of time. */
export function showsDate(format: string): boolean {
  // Without texts, escaped characters and colours, and with "General" out of the way. A quote or bracket that is left open goes to the end,
  // so that no format is looked through again and again.
  const codes = format.replace(/"[^"]*"?|\\.|_.|\*.|\[[^\]]*\]?|general|am\/pm|a\/p/gi, (apart) => (LENGTH_OF_TIME.test(apart) ? "h" : ""));
  return /[dy]|m{3,}/i.test(codes) || (/m/i.test(codes) && !/[hs]/i.test(codes));
}

/** As in "[h]:mm", where the m are minutes. */
const LENGTH_OF_TIME = /^\[[hms]+\]$/i;
