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
  if (!HAS_OUR_WORD.test(cellFormula)) return [];
  const { text, sheets } = withoutSheetNames(cellFormula);
  const tokens = tokenize(text, { withLocation: true });
  const bounds = argumentBounds(tokens);
  return tokens.flatMap((token, index) => {
    const name = token.type === tokenTypes.FUNCTION ? catalogueName(token.value) : undefined;
    const [first, ...ends] = (name === undefined ? undefined : bounds.get(index + 1)) ?? [];
    const end = ends.at(-1);
    if (name === undefined || first === undefined || end === undefined) return [];
    const start = startOfLink(text, sheets, startOf(token));
    return [{ name, argumentTexts: argumentsBetween(cellFormula, [first, ...ends]), start, bracket: first - 1, end }];
  });
}

/** Cheaper than taking every formula apart: a call of ours has the word in its name, typed or stored. */
const HAS_OUR_WORD = /retort/i;

const TEXT_COLUMN_OR_SHEET = /"(?:[^"]|"")*"|\[(?:'.|[^[\]'])*\]|'(?:[^']|'')*'/g;

interface WithoutSheetNames {
  readonly text: string;
  /** Where each sheet name begins, under the offset after its end. */
  readonly sheets: ReadonlyMap<number, number>;
}

/** The cell formula with every quoted sheet name blanked out, at the same length: its backslashes and brackets confuse the tokenizer. */
function withoutSheetNames(cellFormula: string): WithoutSheetNames {
  const sheets = new Map<number, number>();
  const text = cellFormula.replace(TEXT_COLUMN_OR_SHEET, (found, start: number) => {
    if (!found.startsWith("'")) return found;
    sheets.set(start + found.length, start);
    return `'${"x".repeat(found.length - 2)}'`;
  });
  return { text, sheets };
}

/** Where a call begins whose name stands at an offset: at the broken link before the name, `'C:/x.xla'!` or `[2]!`, if there is one. */
function startOfLink(text: string, sheets: ReadonlyMap<number, number>, name: number): number {
  if (text[name - 1] !== "!") return name;
  const end = name - 1;
  if (text[end - 1] !== "]") return sheets.get(end) ?? name;
  let first = end - 1;
  while (isDigit(text[first - 1])) first--;
  return first < end - 1 && text[first - 1] === "[" ? first - 1 : name;
}

const isDigit = (character: string | undefined): boolean => character !== undefined && character >= "0" && character <= "9";

const OPENING: readonly string[] = ["(", "{"];
const CLOSING: readonly string[] = [")", "}"];

/**
 * For each closed bracket, under the index of its opening token: offsets just after it, after each comma that separates
 * arguments, and after the closing bracket. One pass over the tokens, however deep the brackets stand.
 */
function argumentBounds(tokens: readonly Token[]): ReadonlyMap<number, readonly number[]> {
  const closed = new Map<number, readonly number[]>();
  const open: { readonly index: number; readonly bounds: number[] }[] = [];
  tokens.forEach((token, index) => {
    const mark = token.type === tokenTypes.OPERATOR ? token.value : "";
    if (OPENING.includes(mark)) open.push({ index, bounds: [startOf(token) + 1] });
    else if (mark === ",") open.at(-1)?.bounds.push(startOf(token) + 1);
    else if (CLOSING.includes(mark)) {
      const innermost = open.pop();
      if (innermost !== undefined) closed.set(innermost.index, [...innermost.bounds, startOf(token) + 1]);
    }
  });
  return closed;
}

function argumentsBetween(cellFormula: string, bounds: readonly number[]): string[] {
  const texts = bounds.slice(1).map((end, index) => cellFormula.slice(bounds[index], end - 1).trim());
  return texts.length === 1 && texts[0] === "" ? [] : texts;
}

const startOf = (token: Token): number => token.loc?.[0] ?? 0;

export const holdsCall = (formula: string): boolean => findCalls(formula).length > 0;
