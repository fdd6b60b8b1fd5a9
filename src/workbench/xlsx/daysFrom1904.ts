import { formulaTree, type FormulaTree } from "../../sharing/plain/formula/formulaTree";
import { anyPart, nameCalled, type Call, type Part } from "../../sharing/plain/formula/parts";
import { cellsReferred } from "../../sharing/plain/formula/reference";
import { covers } from "../../workbook/cellArea";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { sheetStates } from "./inPlace/SheetState";
import { showsDate } from "./reading/numberFormats";

/** Functions that give a day. */
const GIVE_DAYS: ReadonlySet<string> = new Set(["DATE", "DATEVALUE", "TODAY", "NOW", "EDATE", "EOMONTH", "WORKDAY", "WORKDAY.INTL"]);
/** Functions that take days, and how many of their first arguments are ones. */
const TAKE_DAYS: Readonly<Record<string, number>> = {
  ...{ YEAR: 1, MONTH: 1, DAY: 1, WEEKDAY: 1, WEEKNUM: 1, ISOWEEKNUM: 1, EDATE: 1, EOMONTH: 1, WORKDAY: 1, "WORKDAY.INTL": 1, TEXT: 1 },
  ...{ DAYS: 2, DAYS360: 2, DATEDIF: 2, YEARFRAC: 2, NETWORKDAYS: 2, "NETWORKDAYS.INTL": 2 },
};
const COMPARES: ReadonlySet<string> = new Set(["=", "<>", "<", ">", "<=", ">="]);
const OF_TODAY: ReadonlySet<string> = new Set(["TODAY", "NOW"]);
const UNSEEN: ReadonlySet<string> = new Set(["INDIRECT", "OFFSET"]);

export interface CountedOtherwise {
  readonly formula: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** True where the grid gives something else than the file holds. */
  readonly differs: boolean;
}

/**
 * Tells the formulas of a file that counts days from 1904 which may count some number from another day here, where days are counted from 1900: cells
 * that show days are moved, and a plain number that stands for one is not. Now or after an edit: a branch that is not taken counts like one that is.
 */
export function countedOtherwise(engine: GridEngine): (one: CountedOtherwise) => boolean {
  const days = new Map(
    sheetStates(engine).map(({ name, cells }) => [name.toLowerCase(), [...cells.values()].filter(({ look }) => showsDate(look?.n?.pattern ?? ""))]),
  );
  const showsDays = (text: string, sheet: string): boolean | undefined => {
    const found = cellsReferred(text, sheet);
    return found && (days.get((found.sheet ?? sheet).toLowerCase()) ?? []).some(({ row, column }) => covers(found.area, row, column));
  };
  return ({ formula, sheet, row, column, differs }) => {
    const tree = formulaTree(formula);
    if (tree === undefined) return differs;
    const { root } = tree;
    const isDay = (part: Part): boolean => {
      if (part?.type === "ReferenceIdentifier") return showsDays(part.value, sheet) === true;
      if (part?.type === "CallExpression") return GIVE_DAYS.has(called(part));
      return (
        part?.type === "BinaryExpression" && (part.operator === "+" || part.operator === "-") && isDay(part.arguments[0]) && !isDay(part.arguments[1])
      );
    };
    if (anyPart(root, (part) => mixes(part, tree, isDay))) return true;
    const showsDay = days.get(sheet.toLowerCase())?.some((one) => one.row === row && one.column === column) === true;
    // What is of today differs from what it was in any case.
    if (anyPart(root, (part) => part?.type === "CallExpression" && OF_TODAY.has(called(part)))) return isDay(root) && !showsDay;
    return differs && (showsDay || anyPart(root, (part) => touchesDays(part, (text) => showsDays(text, sheet))));
  };
}

const called = (call: Call): string => nameCalled(call).toUpperCase();

/** True where a number that shows no day stands where a day does. A text is read as a day wherever days are counted from. */
function mixes(part: Part, tree: FormulaTree, isDay: (part: Part) => boolean): boolean {
  const isText = (one: Part): boolean => one?.type === "Literal" && typeof one.value === "string";
  if (part?.type === "BinaryExpression" && COMPARES.has(part.operator)) {
    const [one, other] = part.arguments;
    return isDay(one) !== isDay(other) && !isText(one) && !isText(other);
  }
  if (part?.type !== "CallExpression") return false;
  const format = part.arguments[1];
  if (called(part) === "TEXT" && format?.type === "Literal" && !showsDate(tree.textOf(format).replace(/^"|"$/g, ""))) return false;
  return part.arguments.slice(0, TAKE_DAYS[called(part)] ?? 0).some((one) => one !== null && !isText(one) && !isDay(one));
}

function touchesDays(part: Part, showsDays: (text: string) => boolean | undefined): boolean {
  if (part?.type === "CallExpression") return GIVE_DAYS.has(called(part)) || called(part) in TAKE_DAYS || UNSEEN.has(called(part));
  return part?.type === "ReferenceIdentifier" && showsDays(part.value) !== false;
}
