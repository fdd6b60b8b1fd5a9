import type { ChoiceTold } from "../../problems/workbook/cellNotes";
import type { AstExpression } from "@borgar/fx";
import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import { quoted } from "../../problems/quoted";
import { nameCalled } from "../../sharing/plain/formula/parts";
import { definitionOf } from "../formula/calledFunction";
import { isSingle, type Cells } from "../formula/Cells";
import { everyPart } from "../formula/everyPart";
import { HELPED } from "./helped";
import type { Arguments, Traced } from "./Traced";

// Longer lines say less than the cells themselves.
const LONGEST_LINE = 300;
const MOST_VALUES = 6;

const shown = (value: CellValue): string => (value === BLANK ? "blank" : value instanceof CellError ? value.code : quoted(value));

function blockText(cells: Cells): string {
  const values = cells.flat().map(shown);
  if (values.length === 1) return values[0] ?? "";
  return values.length <= MOST_VALUES ? `{${values.join("; ")}}` : `{${values.slice(0, MOST_VALUES - 1).join("; ")} … ${values.at(-1) ?? ""}}`;
}

/**
 * "SUM(0.7, 0.5)*100 = 120": the branch of a formula that gives its value, with what its calls and single cells come to.
 * @param value of the formula in the cell asked about
 * @returns "" where a call of ours or one cell is all of it, or where not all of it is known
 */
export function putInFormula(whole: AstExpression, formula: string, { choices, values }: Traced, value: CellValue): string {
  const written = (part: AstExpression | null | undefined): string => (part?.loc === undefined ? "" : formula.slice(part.loc[0], part.loc[1]));
  let leaf: AstExpression = whole;
  for (let next: AstExpression | null | undefined = leaf; next;) {
    leaf = next;
    next = undefined;
    if (leaf.type === "LetExpression") next = leaf.body;
    else if (leaf.type === "CallExpression") {
      const given: Arguments = leaf.arguments;
      const name: string = nameCalled(leaf).toUpperCase();
      const choice: ChoiceTold | undefined = choices.find(
        (one) => one.by === name && one.row === undefined && given.some((part) => written(part) === one.asked),
      );
      next = given.find((part) => part !== null && written(part) === choice?.taken);
    }
  }
  const isAlone = leaf.type === "ReferenceIdentifier" || leaf.type === "Literal" || givesItsOwn(leaf);
  if (isAlone || leaf.loc === undefined) return "";
  let text = "";
  let at = leaf.loc[0] ?? 0;
  for (const part of everyPart(leaf, (one) => givesItsOwn(one) || one.type === "LambdaExpression")) {
    const [start = 0, end = 0] = part.loc ?? [];
    if (start < at) continue;
    const isCall = givesItsOwn(part);
    const put = values.get(end);
    if (isCall && put === undefined) return "";
    if (put === undefined || !(isCall || (part.type === "ReferenceIdentifier" && (part.kind === "name" || isSingle(put))))) continue;
    text += formula.slice(at, start) + blockText(put);
    at = end;
  }
  text += formula.slice(at, leaf.loc[1]);
  return text.length > LONGEST_LINE || text === shown(value) ? "" : `${text} = ${shown(value)}`;
}

/** True for a call that the explanation tells by itself: one of ours, or of a LAMBDA, also by a function that calls it for each cell. */
function givesItsOwn(part: AstExpression): boolean {
  if (part.type !== "CallExpression") return false;
  const name = nameCalled(part);
  // Spreadsheets write their own functions in capitals.
  return name === "" || /[a-z]/.test(name) || name in HELPED || definitionOf(name) !== undefined;
}
