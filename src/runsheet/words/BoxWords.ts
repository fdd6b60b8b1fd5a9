/** What is said about a box: beside it, when it is selected, and when an entry is refused. */
export interface BoxWords {
  readonly label: string;
  /** At most 32 characters, a limit of the .xlsx file format, as the next two. */
  readonly title: string;
  /** At most 255 characters. */
  readonly prompt: string;
  /** At most 225 characters; "" where nothing is refused. */
  readonly refusal: string;
}

// A comma or point that is not the spreadsheet's own makes text of a number, or another number.
const DECIMAL_MARK = "The decimal mark is the one your spreadsheet is set to: 212.4 in some, 212,4 in others.";

/** Words of a box for a weighing. */
export const massWords = (label: string, title: string, about: string, readability: number): BoxWords => ({
  label,
  title,
  prompt: `${about} In grams.`,
  refusal: `Type the weight in grams as a plain number, ${readability} or more, without a unit. ${DECIMAL_MARK}`,
});

export const zeroWords = (label: string, when: "before" | "after"): BoxWords => ({
  label,
  title: `Pan zero ${when}`,
  prompt: `What the balance shows ${when} this weighing, pan empty: 0 is a reading, so type it. Blank is no reading. With both zeros the weighing is corrected by their middle. In grams.`,
  refusal: "Type what the empty pan shows, in grams, such as 0 or -0.01; far from 0, zero the balance and weigh again.",
});

export const clockWords = (label: string, title: string, prompt: string): BoxWords => ({
  label,
  title,
  prompt,
  refusal: "Type a clock time such as 14:30, or a date and a clock time.",
});

interface Bounds {
  readonly atLeast: number;
  readonly atMost: number;
}

export const celsiusWords = (label: string, title: string, prompt: string, { atLeast, atMost }: Bounds): BoxWords => ({
  label,
  title,
  prompt,
  refusal: `Type degrees Celsius as a number from ${atLeast} to ${atMost}.`,
});
