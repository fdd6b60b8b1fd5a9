import { all, when } from "../expressions/choices";
import { cell, fn, is, type Cell, type Range } from "../expressions/Expression";
import { FIRST_DATE, isClock } from "../formulas/clock";
import { boxWords, type BoxWords } from "../words/BoxWords";
import { weighingWords } from "../words/weighingWords";
import type { Allowed, Block, BlockCell, BoxRule } from "./Block";

export const ANYTHING: Allowed = { kind: "anything" };
export const numbers = ({ atLeast, atMost }: { readonly atLeast: number; readonly atMost: number }): Allowed => ({ kind: "number", atLeast, atMost });
export const oneOf = (words: readonly string[]): Allowed => ({ kind: "words", words });

// A drum scale; more is a slip of the hand. g
const HEAVIEST = 1_000_000;
// A balance that wandered further should be zeroed, display steps; own bound, no source.
const LARGEST_DRIFT = 1000;

/** A weighing, g: at least one display step. */
export const masses = (readability: number): Allowed => numbers({ atLeast: readability, atMost: HEAVIEST });

/** The balance's zero, g, and a vessel weighed again on a tared balance: 0 is a reading, and it may go a little below. */
export const zeros = (readability: number): Allowed => numbers({ atLeast: -LARGEST_DRIFT * readability, atMost: LARGEST_DRIFT * readability });
export const massesAgain = (readability: number): Allowed => numbers({ atLeast: -LARGEST_DRIFT * readability, atMost: HEAVIEST });

/** A vessel: a weighing, or the word for a balance that was tared. */
export const vesselOr = (at: Cell, readability: Cell): Allowed => ({
  kind: "condition",
  condition: when(fn("ISNUMBER", at), all(is(at, ">=", readability), is(at, "<=", HEAVIEST)), is(at, "=", weighingWords.tared)),
});

/** A clock time, or a date with one; a bare number such as 9.30 or 900 is neither. */
export const clockAt = (at: Cell): Allowed => ({ kind: "condition", condition: isClock(at) });
export const dateAt = (at: Cell): Allowed => ({ kind: "condition", condition: when(fn("ISNUMBER", at), is(at, ">=", FIRST_DATE), false) });

export const CLOCK_FORMAT = "hh:mm";

/** What is said beside a box and when an entry is refused. */
export const boxRule = (over: Cell | Range, { title, prompt, refusal }: Omit<BoxWords, "label">, allow: Allowed): BoxRule => ({
  over,
  allow,
  promptTitle: title,
  prompt,
  refusal,
});

export const box = (at: Cell, look: Pick<BlockCell, "content" | "format"> = {}): BlockCell => ({ at, style: "runBox", ...look });

/** A box drawn over several cells of a row: what is typed goes into the first, and the others say so. */
export function wideBox(
  at: Cell,
  lastColumn: number,
  words: Omit<BoxWords, "label">,
  allow: Allowed,
  look: Pick<BlockCell, "content" | "format"> = {},
): Block {
  const rest = Array.from({ length: lastColumn - at.column }, (_, index) => cell(at.row, at.column + 1 + index));
  const [from, to] = [rest[0], rest.at(-1)];
  return {
    cells: [
      { ...box(at, look), style: rest.length === 0 ? "runBox" : "runBoxStart" },
      ...rest.map((more, index): BlockCell => ({ at: more, style: index === rest.length - 1 ? "runBoxEnd" : "runBoxMore" })),
    ],
    entryRules: [
      boxRule(at, words, allow),
      ...(from === undefined || to === undefined
        ? []
        : [boxRule({ kind: "range", from, to }, boxWords.goesOn, { kind: "condition", condition: false })]),
    ],
  };
}

/**
 * Refuses what is typed over what the sheet works out. A formula passes, so that one can be put back; FALSE would refuse that too, but
 * spreadsheets that mark what breaks a rule would mark every calculated cell.
 */
export const calculatedRule = (over: Range): BoxRule =>
  boxRule(over, boxWords.calculated, { kind: "condition", condition: fn("ISFORMULA", over.from) });

/** Refuses numbers typed over headings, labels and the blanks between them; other words pass, since a label may be worded anew. */
export const wordsRule = (over: Range): BoxRule => boxRule(over, boxWords.words, { kind: "condition", condition: fn("ISTEXT", over.from) });
