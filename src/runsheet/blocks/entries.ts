import type { EntryRule } from "../../workbook/SheetPlan";
import type { Cell } from "../expressions/Expression";
import type { BoxWords } from "../words/BoxWords";
import { label, type Block, type BlockCell, type BoxRule } from "./Block";

/** What may be typed into a box. */
type Allowed = EntryRule["allow"];

export const ANYTHING: Allowed = { kind: "anything" };
export const numbers = ({ atLeast, atMost }: { readonly atLeast: number; readonly atMost: number }): Allowed => ({ kind: "number", atLeast, atMost });
export const oneOf = (words: readonly string[]): Allowed => ({ kind: "words", words });

// A drum scale; more is a slip of the hand. g
const HEAVIEST = 1_000_000;
// The last day a spreadsheet counts, 9999-12-31 (Excel specifications and limits).
const LAST_DAY = 2_958_465;
// A balance that wandered further should be zeroed, display steps; own bound, no source.
const LARGEST_DRIFT = 1000;

/** A weighing, g: at least one display step. */
export const masses = (readability: number): Allowed => numbers({ atLeast: readability, atMost: HEAVIEST });

/** The balance's zero, g: 0 is a reading, and a drift may go below it. */
export const zeros = (readability: number): Allowed => numbers({ atLeast: -LARGEST_DRIFT * readability, atMost: LARGEST_DRIFT * readability });

/** A clock time, or a date with a clock time, in days. */
export const CLOCK: Allowed = numbers({ atLeast: 0, atMost: LAST_DAY });

/** The number format of a clock time. */
export const CLOCK_FORMAT = "hh:mm";

/** What is said beside a box and when an entry is refused. */
export const boxRule = ({ title, prompt, refusal }: Omit<BoxWords, "label">, allow: Allowed): Omit<BoxRule, "over"> => ({
  allow,
  promptTitle: title,
  prompt,
  refusal,
});

/** A label with its box, and what may be typed there. */
export const box = (at: Cell, words: BoxWords, allow: Allowed, look: Pick<BlockCell, "content" | "format"> = {}): Block => ({
  cells: [label(at, words.label), { at, style: "input", ...look }],
  entryRules: [{ over: at, ...boxRule(words, allow) }],
});
