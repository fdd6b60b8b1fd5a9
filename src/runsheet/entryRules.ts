import type { EntryRule } from "../workbook/SheetPlan";
import type { RunSheetOptions } from "./RunSheetOptions";
import { optionBounds } from "./optionBounds";

/** A rule for the entries of a box or column, before it is known where that stands. */
export type Rule = Omit<EntryRule, "range">;

// A drum scale; more is a slip of the hand. g
const HEAVIEST = 1_000_000;
// The last day a spreadsheet counts, 9999-12-31 (Excel specifications and limits).
const LAST_DAY = 2_958_465;

// A balance that wandered further should be zeroed, display steps; own bound, no source.
const LARGEST_DRIFT = 1000;
// From a balance in a cold shed to a vessel straight from the kiln, °C; own bound.
const AT_THE_BALANCE = { atLeast: -20, atMost: 1800 };

// A comma or point that is not the spreadsheet's own makes text of a number, or another number.
const DECIMAL_MARK = "The decimal mark is the one your spreadsheet is set to: 212.4 in some, 212,4 in others.";

/** A weighing in grams: at least one display step. */
export const massRule = ({ readability }: RunSheetOptions, promptTitle: string, about: string): Rule => ({
  allow: { kind: "number", atLeast: readability, atMost: HEAVIEST },
  promptTitle,
  prompt: `${about} In grams.`,
  refusal: `Type the weight in grams as a plain number, ${readability} or more, without a unit. ${DECIMAL_MARK}`,
});

/** The balance's zero in grams: 0 is a reading, and a drift may go below it. */
export const zeroRule = ({ readability }: RunSheetOptions, promptTitle: string, when: string): Rule => ({
  allow: { kind: "number", atLeast: -LARGEST_DRIFT * readability, atMost: LARGEST_DRIFT * readability },
  promptTitle,
  prompt: `What the balance shows ${when}, pan empty: 0 is a reading, so type it. Blank is no reading. With both zeros the weighing is corrected by their middle. In grams.`,
  refusal: "Type what the empty pan shows, in grams, such as 0 or -0.01; far from 0, zero the balance and weigh again.",
});

/** A clock time, or a date with a clock time. */
export const clockRule = (promptTitle: string, prompt: string): Rule => ({
  allow: { kind: "number", atLeast: 0, atMost: LAST_DAY },
  promptTitle,
  prompt,
  refusal: "Type a clock time such as 14:30, or a date and a clock time.",
});

const { kiln } = optionBounds;

export const temperatureRule = (promptTitle: string, about: string): Rule => ({
  allow: { kind: "number", atLeast: kiln.atLeast, atMost: kiln.atMost },
  promptTitle,
  prompt: `${about} In degrees Celsius.`,
  refusal: `Type degrees Celsius as a number from ${kiln.atLeast} to ${kiln.atMost}.`,
});

/** A temperature of the room, or of the sample, at a weighing. */
export const roomRule = (promptTitle: string, prompt: string): Rule => ({
  allow: { kind: "number", ...AT_THE_BALANCE },
  promptTitle,
  prompt,
  refusal: `Type degrees Celsius as a number from ${AT_THE_BALANCE.atLeast} to ${AT_THE_BALANCE.atMost}.`,
});

export const numberRule = (promptTitle: string, prompt: string, atLeast: number, atMost: number, refusal: string): Rule => ({
  allow: { kind: "number", atLeast, atMost },
  promptTitle,
  prompt,
  refusal,
});

/** Free text with a prompt beside it; nothing is refused. */
export const anythingRule = (promptTitle: string, prompt: string): Rule => ({ allow: { kind: "anything" }, promptTitle, prompt, refusal: "" });
