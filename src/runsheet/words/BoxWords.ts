import { CLOCK_SHAPE } from "../../problems/runsheet/clockProblems";

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
export const DECIMAL_MARK = "The decimal mark is the one your spreadsheet is set to: 212.4 in some, 212,4 in others.";

/** Words of a box for a weighing. */
export const massWords = (label: string, title: string, about: string, readability: number): BoxWords => ({
  label,
  title,
  prompt: `${about} In grams.`,
  refusal: `Type the weight in grams as a plain number, ${readability} or more, without a unit. ${DECIMAL_MARK}`,
});

export const zeroWords = (when: "before" | "after"): BoxWords => ({
  label: `Pan zero ${when}, g`,
  title: `Pan zero ${when}`,
  prompt: `What the balance shows ${when} the weighings of this row, pan empty: 0 is a reading, so type it. With both zeros the weighings are corrected by their middle. In grams.`,
  refusal: "Type what the empty pan shows, in grams, such as 0 or -0.01; far from 0, zero the balance and weigh again.",
});

/** Said when anything else is typed where a clock time is wanted. */
export const CLOCK_REFUSAL = `Type the time as ${CLOCK_SHAPE}: 9:30. A bare number such as 9.30 or 900 is no time, nor is 9-10 or 9/30, a date. With a date: 21 Nov 9:30.`;

export const clockWords = (title: string, prompt: string): Omit<BoxWords, "label"> => ({ title, prompt, refusal: CLOCK_REFUSAL });

interface Bounds {
  readonly atLeast: number;
  readonly atMost: number;
}

const NAME_OF = { C: "Celsius", F: "Fahrenheit" } as const;

export const degreeWords = (title: string, prompt: string, unit: "C" | "F", { atLeast, atMost }: Bounds): Omit<BoxWords, "label"> => ({
  title,
  prompt: `${prompt} In °${unit}.`,
  refusal: `Type degrees ${NAME_OF[unit]} as a number from ${atLeast} to ${atMost}.`,
});

/** Said where nothing is to be typed; without a prompt, so that moving about the sheet stays quiet. */
export const boxWords = {
  calculated: {
    title: "Calculated",
    prompt: "",
    refusal: "Nothing to type here. Boxes stand left of the heavy line. Esc gives the formula back.",
  },
  words: {
    title: "Heading or label",
    prompt: "",
    refusal: "No number goes here: it would be taken for a weighing. Type it into a box. Esc gives the words back.",
  },
  goesOn: { title: "One box", prompt: "", refusal: "This box begins further left: type in its first cell." },
} as const;
