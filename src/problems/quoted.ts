// How a value stands in a sentence. Every number a message, a note or a line of working prints goes through plainNumber.

// Messages stay readable in a hover box of about 150 characters, so a long text is shortened in the middle.
const LONGEST_QUOTED = 40;

/** The value as a message quotes it: text in quotation marks, shortened when long; numbers and TRUE/FALSE bare. */
export function quoted(value: string | number | boolean): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") return plainNumber(value);
  return `"${shortened(value)}"`;
}

/** A text as a sentence holds it: its middle left out when it is long. */
export function shortened(text: string): string {
  const keep = LONGEST_QUOTED / 2;
  return text.length > LONGEST_QUOTED ? `${text.slice(0, keep)}…${text.slice(-keep)}` : text;
}

// A double carries at least 15 significant decimal digits; more would show rounding residue such as 0.30000000000000004.
const ALL_FIGURES = 15;

/** Three figures say how large a limit or a loss is; more would crowd the sentence. */
export const SIZE_FIGURES = 3;

/**
 * A number as text, without rounding residue (0.1 + 0.2 prints as 0.3) and without trailing zeros.
 * @param figures significant ones, for a number whose size alone is meant; left out where the value itself is quoted
 */
export const plainNumber = (value: number, figures = ALL_FIGURES): string => String(Number(value.toPrecision(figures)));

/** A value with its unit: "35 g"; the unit may be "". */
export const withUnit = (value: number, unit: string, figures?: number): string => `${plainNumber(value, figures)}${unit === "" ? "" : ` ${unit}`}`;

/** Words to choose from, each in quotation marks. */
export const listed = (choices: readonly string[]): string => choices.map((word) => `"${word}"`).join(", ");

/** A number of things: "1 row", "3 rows". */
export const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;

/** The number from 1 of the character at an index (UTF-16 units), as a person counts: a surrogate pair is one character. */
export const characterNumber = (text: string, index: number): number => Array.from(text.slice(0, index)).length + 1;
