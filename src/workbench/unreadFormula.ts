import { formulaTree, type FormulaTree } from "../sharing/plain/formula/formulaTree";
import { hasSemicolons } from "../explanation/formula/hasSemicolons";
import { formulaUnread, tableUnread } from "../problems/workbook/entryProblems";
import { anyPart, nameCalled, type Part } from "../sharing/plain/formula/parts";

// What may stand in a name: letters, digits and these marks (ECMA-376 Part 1, 18.2.5 and common practice; from memory).
const NAME = /^[\p{L}_\\][\p{L}\p{M}\p{N}_.\\?]*$/u;
// A reference to a sheet or a cell that is gone, as the grid writes it behind the sheet's name; the reader knows the error alone.
const GONE = "#REF!";
const ON_SHEET = `!${GONE}`;
const IN_SHEET_NAME = /[\p{L}\p{N}_.]/u;

/**
 * True for a cell formula that spreadsheets cannot read either: from a file they would take it out, and the cell's content with it.
 * @param formula with "="
 * @param tables that there are, by name; this page has none, and a file may hold no reference to one that is not there
 */
export function isUnread(formula: string, tables: readonly string[] = []): boolean {
  const tree = formulaTree(formula) ?? formulaTree(formula.split(ON_SHEET).map(withoutSheetAtEnd).join(GONE));
  return tree === undefined || anyPart(tree.root, (part) => isOddName(part, tree) || isOfNoTable(part, tree, tables) || isRagged(part));
}

/** What stands before "!#REF!", without the sheet's name; the last piece of a formula has none behind it. */
function withoutSheetAtEnd(piece: string, index: number, all: readonly string[]): string {
  if (index === all.length - 1) return piece;
  let start = piece.length;
  if (piece.endsWith("'")) {
    start = piece.lastIndexOf("'", start - 2);
    while (start > 0 && piece[start - 1] === "'") start = piece.lastIndexOf("'", start - 2);
    return start < 0 ? piece : piece.slice(0, start);
  }
  while (start > 0 && IN_SHEET_NAME.test(piece.charAt(start - 1))) start--;
  return piece.slice(0, start);
}

/** Curly quotation marks, signs of multiplication, £ and the like are read as letters of a name. */
function isOddName(part: Part, tree: FormulaTree): boolean {
  if (part?.type === "CallExpression") return nameCalled(part) !== "" && !NAME.test(nameCalled(part));
  if (part?.type !== "ReferenceIdentifier") return false;
  const text = tree.textOf(part);
  if (text.startsWith("[") && !text.includes("]!") && !/\][^\]]*!/.test(text)) return true;
  return part.kind === "name" && !NAME.test(text.slice(text.lastIndexOf("!") + 1));
}

function isOfNoTable(part: Part, tree: FormulaTree, tables: readonly string[]): boolean {
  if (part?.type !== "ReferenceIdentifier" || part.kind !== "table") return false;
  const text = tree.textOf(part);
  const name = text.slice(0, text.indexOf("[")).toLowerCase();
  return !tables.some((table) => table.toLowerCase() === name);
}

/** An array constant whose rows are not of one length. */
const isRagged = (part: Part): boolean => part?.type === "ArrayExpression" && new Set(part.elements.map((row) => row.length)).size > 1;

const CURLY = /[“”„‟]/g;
const TIMES = /[×·]/g;
const DIVIDED = /÷/g;
const MINUS = /[−–]/g;
const DECIMAL_COMMA = /(?<![\w.,])(\d+),(\d+)(?![\w.,])/g;

/**
 * What to type in place of an unreadable formula, where that can be told: with commas for semicolons, points in decimals, straight quotation marks
 * and the signs of the keyboard.
 */
export function readableInstead(formula: string): string | undefined {
  const signs = outsideTexts(formula.replace(CURLY, '"'), (part) => part.replace(TIMES, "*").replace(DIVIDED, "/").replace(MINUS, "-"));
  const withPoints = outsideTexts(signs, (part) => outsideArrays(part, (text) => text.replace(DECIMAL_COMMA, "$1.$2")));
  const withCommas = outsideTexts(withPoints, (part) => outsideArrays(part, (text) => text.replaceAll(";", ",")));
  // Commas between arguments are told from those of decimals by the semicolons beside them alone.
  const tries = hasSemicolons(formula) ? [withCommas] : [signs, withPoints];
  return tries.find((one) => one !== formula && !isUnread(one) && !isList(formulaTree(one)?.root));
}

/** True for parts beside one another with nothing but commas between, which is seldom meant. */
const isList = (part: Part): boolean => part?.type === "BinaryExpression" && part.operator === ",";

/** Array constants have semicolons and commas of their own. */
const outsideArrays = (part: string, change: (text: string) => string): string =>
  part
    .split("{")
    .map((piece, index) => {
      const end = index === 0 ? 0 : piece.indexOf("}") + 1;
      return index > 0 && end === 0 ? piece : `${piece.slice(0, end)}${change(piece.slice(end))}`;
    })
    .join("{");

/** Every second piece stands within quotation marks. */
const outsideTexts = (formula: string, change: (part: string) => string): string =>
  formula
    .split('"')
    .map((part, index) => (index % 2 === 0 ? change(part) : part))
    .join('"');

/** What is wrong with an unreadable formula, in words. */
export function whyUnread(formula: string): string {
  const tree = formulaTree(formula);
  const namesTable = tree !== undefined && anyPart(tree.root, (part) => part?.type === "ReferenceIdentifier" && part.kind === "table");
  return namesTable ? tableUnread(formula) : formulaUnread(formula, readableInstead(formula));
}
