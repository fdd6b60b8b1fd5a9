import type { CellArea } from "../../../workbook/cellArea";
import { catalogueName } from "../../catalogueName";
import { formulaTree, type FormulaTree } from "../formula/formulaTree";
import { nameCalled, partsOf, type Part } from "../formula/parts";
import { cellsReferred } from "../formula/reference";

/** Of a range they count numbers alone, so that an empty text is as good as a blank cell. */
const COUNTS_NUMBERS: ReadonlySet<string> = new Set(
  (
    "SUM AVERAGE MIN MAX COUNT MEDIAN PRODUCT SUMSQ DEVSQ AVEDEV GEOMEAN HARMEAN STDEV STDEV.S STDEV.P STDEVP VAR VAR.S VAR.P VARP LARGE SMALL " +
    "PERCENTILE PERCENTILE.INC QUARTILE QUARTILE.INC ROW ROWS COLUMN COLUMNS"
  ).split(" "),
);

/**
 * True where a formula takes an empty text in cells that it refers to for a blank: it adds them up, asks them whether they are "", or hands a range of
 * them to one of our functions. A comparison takes an empty text for more than any number, and arithmetic refuses it.
 * @param isAbout which of the cells it refers to are meant
 */
export function isSpillReader(formula: string, home: string, isAbout: (sheet: string, cells: CellArea) => boolean): boolean {
  const tree = formulaTree(formula);
  return tree !== undefined && takesBlanks(tree.root, tree, home, isAbout, false);
}

function takesBlanks(part: Part, tree: FormulaTree, home: string, isAbout: (sheet: string, cells: CellArea) => boolean, isCounted: boolean): boolean {
  const inside = (one: Part, counted: boolean): boolean => takesBlanks(one, tree, home, isAbout, counted);
  switch (part?.type) {
    case "ReferenceIdentifier": {
      if (isCounted && part.kind !== "name" && part.kind !== "table") return true;
      const found = cellsReferred(tree.textOf(part), home);
      // What a name or a table stands for is not looked into.
      return found?.sheet !== undefined && found.lastSheet === undefined && !isAbout(found.sheet, found.area);
    }
    case "UnaryExpression":
      return part.operator !== "#" && inside(part.arguments[0], false);
    case "BinaryExpression": {
      const isAskedForEmpty = (part.operator === "=" || part.operator === "<>") && part.arguments.some((one) => tree.textOf(one) === '""');
      return part.arguments.every((one) => inside(one, isAskedForEmpty || (isCounted && part.operator === ":")));
    }
    case "CallExpression": {
      const name = nameCalled(part).toUpperCase();
      if (name === "ANCHORARRAY") return false;
      const counts = COUNTS_NUMBERS.has(name) || catalogueName(name) !== undefined;
      return part.arguments.every((one) => inside(one, counts));
    }
    default:
      return partsOf(part).every((one) => inside(one, false));
  }
}
