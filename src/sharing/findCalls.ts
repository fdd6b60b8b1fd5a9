import { tokenize, tokenTypes, type Token } from "@borgar/fx";
import { catalogueName } from "./catalogueName";

/** One call of a Retort function inside a cell formula. */
export interface RetortCall {
  /** As in the catalogue: "MOISTURE.WET". */
  readonly name: string;
  /** The text of each argument, outer spaces off; "" where one is left out. */
  readonly argumentTexts: readonly string[];
  /** Offset of the call's first character in the cell formula; the remains of a broken workbook link before the name belong to it. */
  readonly start: number;
  /** Offset of its opening bracket. */
  readonly bracket: number;
  /** Offset after its closing bracket. */
  readonly end: number;
}

/**
 * Every call of a Retort function in a cell formula (English notation), in the order they begin; a call inside another
 * call is listed as well. Knows `RETORT.NAME(` in any letter case and the stored form `_xldudf_RETORT_NAME(`, also behind
 * a broken link such as `'C:/x.xla'!`. Text in quotation marks and names of sheets are never calls.
 */
export function findCalls(cellFormula: string): RetortCall[] {
  const tokens = tokenize(withoutSheetNames(cellFormula), { withLocation: true });
  return tokens.flatMap((token, index) => {
    const name = token.type === tokenTypes.FUNCTION ? catalogueName(token.value) : undefined;
    const [first, ...ends] = name === undefined ? [] : argumentBounds(tokens, index + 1);
    const end = ends.at(-1);
    if (name === undefined || first === undefined || end === undefined) return [];
    return [
      { name, argumentTexts: argumentsBetween(cellFormula, [first, ...ends]), start: startOfCall(cellFormula, token), bracket: first - 1, end },
    ];
  });
}

const TEXT_COLUMN_OR_SHEET = /"(?:[^"]|"")*"|\[(?:'.|[^[\]'])*\]|'(?:[^']|'')*'/g;

/** The cell formula with every quoted sheet name blanked out, at the same length: its backslashes and brackets confuse the tokenizer. */
const withoutSheetNames = (cellFormula: string): string =>
  cellFormula.replace(TEXT_COLUMN_OR_SHEET, (found) => (found.startsWith("'") ? `'${"x".repeat(found.length - 2)}'` : found));

const BROKEN_LINK = /(?:'(?:[^']|'')*'|\[\d+\])!$/;

function startOfCall(cellFormula: string, token: Token): number {
  const name = startOf(token);
  return name - (BROKEN_LINK.exec(cellFormula.slice(0, name))?.[0].length ?? 0);
}

const OPENING: readonly string[] = ["(", "{"];
const CLOSING: readonly string[] = [")", "}"];

/**
 * Offsets just after the opening bracket, after each comma that separates arguments, and after the closing bracket;
 * none when the bracket is never closed.
 * @param opening index of the token that should be the opening bracket
 */
function argumentBounds(tokens: readonly Token[], opening: number): number[] {
  const bounds: number[] = [];
  let depth = 0;
  for (const token of tokens.slice(opening)) {
    const mark = token.type === tokenTypes.OPERATOR ? token.value : "";
    if (OPENING.includes(mark)) depth++;
    if (depth === 1 && (mark === "(" || mark === ",")) bounds.push(startOf(token) + 1);
    if (CLOSING.includes(mark)) depth--;
    if (depth === 0) return [...bounds, startOf(token) + 1];
  }
  return [];
}

function argumentsBetween(cellFormula: string, bounds: readonly number[]): string[] {
  const texts = bounds.slice(1).map((end, index) => cellFormula.slice(bounds[index], end - 1).trim());
  return texts.length === 1 && texts[0] === "" ? [] : texts;
}

const startOf = (token: Token): number => token.loc?.[0] ?? 0;
