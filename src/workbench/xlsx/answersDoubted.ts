import { holdsCall } from "../../sharing/findCalls";
import { formulaTree } from "../../sharing/plain/formula/formulaTree";
import { anyPart, nameCalled, variablesIn, type Part } from "../../sharing/plain/formula/parts";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { knowsFunction } from "../../workbook/grid/knowsFunction";
import { spillsOver } from "../../workbook/grid/reading/readCell";
import { answersOtherwise, UNKNOWN_FUNCTION } from "./answersInFile";
import { countedOtherwise } from "./daysFrom1904";
import { placeOf } from "./inPlace/heldCells";
import type { ReadWorkbook } from "./readWorkbook";

/** Cells by sheet and by their place on it. */
type Places = ReadonlyMap<string, ReadonlySet<number>>;

/**
 * Cells of an opened file of which it holds another answer than the grid gives, by a formula that the grid cannot read as other spreadsheets do, or that
 * may count days from another day than the file. It is they that are right, and not to be calculated here. What differs by a formula that reads alike everywhere was from before in the file.
 */
export function answersDoubted(engine: GridEngine, { sheets, names, from1904 }: Pick<ReadWorkbook, "sheets" | "names" | "from1904">): Places {
  const knows = { function: knowsFunction(engine), names: new Map(names.map(({ name, refersTo }) => [name.toLowerCase(), refersTo])) };
  const isOtherDay = from1904 ? countedOtherwise(engine) : undefined;
  const found = new Map<string, Set<number>>();
  for (const { sheet, answers } of sheets) {
    const there = engine.book.getSheetByName(sheet.name);
    if (!there) continue;
    const spillAt = spillsOver(engine, there.getSheetId());
    const differing = answersOtherwise(engine, there, answers);
    const others = new Set(differing);
    for (const answer of isOtherDay === undefined ? differing : answers) {
      if (answer.content === UNKNOWN_FUNCTION) continue;
      const { row, column } = spillAt(answer.row, answer.column) ?? answer;
      const formula = engine.spills.getFormulaStringByCell(row, column, there.getSheetId(), engine.book.getId()) ?? "";
      if (formula === "") continue;
      const differs = others.has(answer);
      // A call of ours that keeps its value would stay a call in a file of plain cells.
      const isOther =
        (differs && isDoubted(formula, knows)) ||
        (!holdsCall(formula) && isOtherDay?.({ formula, sheet: sheet.name, row, column, differs }) === true);
      if (!isOther) continue;
      found.set(sheet.name, (found.get(sheet.name) ?? new Set()).add(placeOf(row, column)));
    }
  }
  return found;
}

interface Knows {
  readonly function: (name: string) => boolean;
  /** What the workbook's names stand for, each by its letters in small ones. */
  readonly names: ReadonlyMap<string, string>;
}

/** Rows out of view are left out by these, which the grid does not do. */
const LOOK_AT_ROWS = ["SUBTOTAL", "AGGREGATE"];

/** True for a formula with a function that the grid has not or that looks at what is in view, or with the cells of a spill, "D1#"; in its names too. */
function isDoubted(formula: string, knows: Knows, seen: ReadonlySet<string> = new Set()): boolean {
  const root = formulaTree(formula)?.root;
  // What cannot be taken apart stays the formula that it is, for a file written anew holds it then.
  if (root === undefined) return false;
  const variables = new Set<string>();
  const isNameDoubted = (name: string): boolean => {
    const key = name.toLowerCase();
    const refersTo = knows.names.get(key);
    return refersTo !== undefined && !variables.has(key) && !seen.has(key) && isDoubted(`=${refersTo}`, knows, new Set([...seen, key]));
  };
  return anyPart(root, (part: Part) => {
    for (const name of variablesIn(part)) variables.add(name.toLowerCase());
    if (part?.type === "UnaryExpression") return part.operator === "#";
    if (part?.type === "ReferenceIdentifier") return part.kind === "name" && isNameDoubted(part.value.split("!").at(-1) ?? "");
    if (part?.type !== "CallExpression") return false;
    const called = nameCalled(part);
    if (called === "" || variables.has(called.toLowerCase())) return false;
    if (knows.names.has(called.toLowerCase())) return isNameDoubted(called);
    return LOOK_AT_ROWS.includes(called.toUpperCase()) || !knows.function(called.toUpperCase());
  });
}
