import { catalogueName } from "../catalogueName";
import { anyPart, formulaTree, type FormulaTree } from "./formulaTree";
import { isAbsolute } from "./named";
import type { NameReading } from "./PlainReading";
import { plainFormula } from "./plainFormula";
import { namesOf, type ReadSheets } from "./ReadSheets";
import type { PlainOptions } from "./Surroundings";

export interface PlainNames {
  /** Names as cells are written by them: what still calls our functions is written out where it is used, or the cell is fixed. */
  readonly inCells: readonly NameReading[];
  /** Those whose formula changes. */
  readonly changed: readonly NameReading[];
}

/**
 * Defined names whose formulas call our functions, written in built-in functions, where every reference in them is absolute. One over arrays is
 * changed too, and written out in cells all the same: older programs take a name for one value where the cell is. A LAMBDA stays one, as programs
 * that know it take nothing else for a function.
 */
export function plainNames(names: readonly NameReading[], sheets: ReadSheets, options: PlainOptions): PlainNames {
  const [inCells, changed]: [NameReading[], NameReading[]] = [[], []];
  const nameOf = namesOf(names);
  for (const one of names) {
    const formula = one.formula.startsWith("=") ? one.formula : `=${one.formula}`;
    const tree = formulaTree(formula);
    if (tree === undefined || !callsOursItself(tree) || !isAbsolute(tree)) {
      inCells.push(one);
      continue;
    }
    const sheet = one.sheet ?? sheets.names[0] ?? "";
    const place = { sheet, cell: "A1", area: "A1", nameOf, tableOf: () => undefined, spillOf: sheets.spillOf };
    const isFunction = tree.root.type === "LambdaExpression";
    const plain = plainFormula(formula, place, isFunction ? { ...options, newerFunctions: true } : options);
    const written = plain.kind === "formula" ? { ...one, formula: plain.formula } : undefined;
    inCells.push(written === undefined || isFunction || (plain.kind === "formula" && plain.isArray) ? one : written);
    if (written !== undefined) changed.push(written);
  }
  return { inCells, changed };
}

const callsOursItself = ({ root }: FormulaTree): boolean =>
  anyPart(root, (part) => part?.type === "CallExpression" && catalogueName(part.callee.name ?? "") !== undefined);
