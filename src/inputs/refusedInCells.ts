import { ArgumentProblem } from "../problems/ArgumentProblem";
import { BLANK, type CellValue } from "./CellValue";
import { handsOnCell } from "./handsOnCell";
import type { CellInput } from "./Input";
import { BELOW_ZERO, LARGEST, SAME_DECIMALS } from "./number";
import type { Bound, NumberRule } from "./NumberRule";
import { numberText } from "./numberText";

/**
 * The reader's own rule as a condition of a cell formula: TRUE, or a number that is not 0, where `read` refuses what the cell holds; an
 * error where the cell shows one. IF and comparisons alone, which work on each cell of a range in an array formula, as AND and OR do not.
 * A blank cell is told from a 0, which a cell formula can and most hosts cannot.
 * @param cell one operand: a reference, a range, or an expression in brackets; it is written several times
 * @param truths of a range, two cells that hold 1 and 0 where such numbers among its cells are truths
 * @returns "" where nothing is refused; undefined where no cell formula can say it
 */
export function refusedInCells(input: CellInput<unknown>, cell: string, truths?: string): string | undefined {
  const { takes } = input;
  const isBlankTaken = answerTo(input, BLANK) !== "refused";
  switch (takes?.kind) {
    case "number":
      return numberRefused(takes.rule, takes.word, { cell, truths }, isBlankTaken, answerTo(input, 0));
    case "choice":
      return wordRefused(takes.words, { cell, truths }, isBlankTaken);
    case "truth":
      return isBlankTaken ? `IF(ISLOGICAL(${cell}),0,IF(${isNumberInCells(cell)},${cell}<>0,TRIM(${cell})<>""))` : `1-ISLOGICAL(${cell})`;
    case "anything":
      return "";
    default:
      return undefined;
  }
}

type Answer = "refused" | "left out" | "value";

const answers = new WeakMap<CellInput<unknown>, Map<CellValue, Answer>>();

/** What the reader makes of a blank cell or a 0, asked of itself, once for each. */
export function answerTo(input: CellInput<unknown>, value: CellValue): Answer {
  const known = answers.get(input) ?? new Map<CellValue, Answer>();
  answers.set(input, known);
  const found = known.get(value) ?? answerOf(input, value);
  known.set(value, found);
  return found;
}

function answerOf(input: CellInput<unknown>, value: CellValue): Answer {
  try {
    return input.read(value, "") === undefined ? "left out" : "value";
  } catch (thrown) {
    if (thrown instanceof ArgumentProblem) return "refused";
    throw thrown;
  }
}

interface Operand {
  readonly cell: string;
  readonly truths: string | undefined;
}

function numberRefused(
  { bounds = [] }: NumberRule,
  word: string | undefined,
  { cell, truths }: Operand,
  isBlankTaken: boolean,
  zero: Answer,
): string {
  const wrongNumber = outOfBounds(bounds, cell, zero).join("+");
  const words = [...(isBlankTaken ? [""] : []), ...(word === undefined ? [] : [word])];
  const wrongText = words.length === 0 ? "1" : words.map((one) => `(${isNoWord(cell, one)})`).join("*");
  return `IF(${isNumberInCells(cell, truths)},${wrongNumber},${wrongText})`;
}

/** The same for one number of a series: a condition on a cell that holds a number. @param isZeroBlank true where a 0 is refused as blank */
export const refusedNumberInCells = (bounds: readonly Bound[], cell: string, isZeroBlank: boolean): string =>
  outOfBounds(bounds, cell, isZeroBlank ? "refused" : "value").join("+");

/** Of bounds on one side only the narrowest is written. */
function outOfBounds(bounds: readonly Bound[], cell: string, zero: Answer): string[] {
  const narrowest = bounds
    .filter((bound) => !bounds.some((other) => isWithin(bound, other)))
    .map((bound): Bound => (bound === BELOW_ZERO && zero === "refused" ? { upTo: 0, says: bound.says } : bound));
  const [isBoundBelow, isBoundAbove] = [narrowest.some((bound) => isBelow(bound)), narrowest.some((bound) => isAbove(bound))];
  const beyondSense = isBoundBelow ? `(${cell}>${numberText(LARGEST)})` : `(ABS(${cell})>${numberText(LARGEST)})`;
  return [
    ...narrowest.map((bound) => `${comparisons(bound, cell)}${zero === "left out" && breaks(0, bound) ? `*(${cell}<>0)` : ""}`),
    ...(zero === "refused" && !narrowest.some((bound) => breaks(0, bound)) ? [`(${cell}=0)`] : []),
    ...(isBoundBelow && isBoundAbove ? [] : [beyondSense]),
  ];
}

const isBelow = ({ above, from, decimals }: Bound): boolean => above === undefined && from === undefined && decimals === undefined;
const isAbove = ({ upTo, below, decimals }: Bound): boolean => upTo === undefined && below === undefined && decimals === undefined;

/** True where another bound of the same side refuses all that this one does, and more. */
const isWithin = (bound: Bound, other: Bound): boolean =>
  (isBelow(bound) && isBelow(other) && edgeOf(bound) < edgeOf(other)) || (isAbove(bound) && isAbove(other) && edgeOf(bound) > edgeOf(other));

const edgeOf = ({ above, from, upTo, below }: Bound): number => above ?? from ?? upTo ?? below ?? Number.NaN;

const breaks = (value: number, { above, from, upTo, below, decimals }: Bound): boolean =>
  decimals === undefined &&
  (above === undefined || value > above) &&
  (from === undefined || value >= from) &&
  (upTo === undefined || value <= upTo) &&
  (below === undefined || value < below);

const comparisons = ({ decimals, ...edges }: Bound, cell: string): string =>
  [...edgesInCells(edges, cell), ...(decimals === undefined ? [] : [`(ABS(${cell}-INT(${cell})-${decimals})<${numberText(SAME_DECIMALS)})`])].join(
    "*",
  );

const edgesInCells = ({ above, from, upTo, below }: Omit<Bound, "says">, cell: string): string[] =>
  (
    [
      [">", above],
      [">=", from],
      ["<=", upTo],
      ["<", below],
    ] as const
  ).flatMap(([sign, bound]) => (bound === undefined ? [] : [`(${cell}${sign}${bound < 0 ? `(${numberText(bound)})` : numberText(bound)})`]));

function wordRefused(words: readonly string[], { cell, truths }: Operand, isBlankTaken: boolean): string {
  const none = words.map((word) => `(${isNoWord(cell, word)})`).join("*");
  return isBlankTaken
    ? `IF(ISTEXT(${cell}),(TRIM(${cell})<>"")*${none},IF(${isNumberInCells(cell, truths)},${cell}<>0,${truths === undefined ? "" : `ISNUMBER(${cell})+`}ISLOGICAL(${cell})+ISERROR(${cell})))`
    : `IF(ISTEXT(${cell}),${none},1)`;
}

/**
 * A condition: the cell holds a number. A truth in a cell is a number to some spreadsheets, though not to Excel; of a number in the formula
 * itself some say that it is a truth. What hands on a cell as it is, such as IF, hands on its truth too.
 */
export const isNumberInCells = (cell: string, truths?: string): string =>
  truths !== undefined || (/^[("{\d.+-]/.test(cell) && !handsOnCell(cell)) ? isNumberOf(cell, truths) : `ISNUMBER(${cell})>ISLOGICAL(${cell})`;

/** The same where it is known which numbers are truths; ISNUMBER alone where none can be. */
export const isNumberOf = (cell: string, truths: string | undefined): string =>
  truths === undefined ? `ISNUMBER(${cell})` : `ISNUMBER(${cell})>ISNUMBER(MATCH(${cell},${truths},0))`;

/** TRIM closes gaps between words, which the reader does not; SEARCH finds the word as it stands. */
const isNoWord = (cell: string, word: string): string =>
  word.includes(" ") ? `1-(TRIM(${cell})="${word}")*ISNUMBER(SEARCH("${word}",${cell}))` : `TRIM(${cell})<>"${word}"`;
