import { everyFunction } from "../../functions/catalogue";
import { refusal } from "../../functions/inCells/problemInCells";
import type { TableInCells } from "../../functions/inCells/Workings";
import { moreRowsNow, type WhyFixed } from "../../problems/sharing/plainCellProblems";
import { areaNamed } from "../../workbook/areaNamed";
import { lettersOf, type CellArea } from "../../workbook/cellArea";
import { catalogueName } from "../catalogueName";
import type { Precedent } from "./change/FormulaSources";
import { CannotWrite, checked } from "./writing/CannotWrite";
import { FoundOnce } from "./writing/FoundOnce";
import { formulaTree, type FormulaTree } from "./formula/formulaTree";
import { nameCalled } from "./formula/parts";
import { NO_VARIABLES, type Scope } from "./writing/Scope";
import type { PlainOptions, Surroundings } from "./reading/Surroundings";
import { grownFormula, tableSize, type TableWritten } from "./size/grown";
import type { WorkingsSheet } from "./WorkingsSheet";
import { writing } from "./writing/written";
import { lastingRows, tableBehind, writtenCall, writtenInside } from "./call/writtenCall";
import type { WritingTo } from "./call/WritingTo";

/** A cell formula without our functions. */
export type PlainFormula =
  /** One formula for the cell; over arrays, for the cell and all that its spill fills, as one array formula. */
  | ({ readonly kind: "formula"; readonly formula: string; readonly isArray: boolean } & ForCellsHeld & Sized)
  /** A formula of its own for each cell of the spill. */
  | ({ readonly kind: "cells"; readonly formulas: TableInCells } & ForCellsHeld & Sized)
  | { readonly kind: "none"; readonly why: WhyFixed };

/** A form that holds only as long as some cells hold what they held when the workbook was read. */
interface ForCellsHeld {
  readonly held: readonly Precedent[];
}

/** How large it is where the formula takes as many cells as its answer needs. */
interface Sized {
  /** The cells that it goes into, where those are more than it filled: its answer may need them. */
  readonly area?: string;
  /** The cell of workings that is more than 0 while the formula would fill other cells than it does here; left out where that cannot be. */
  readonly resized?: string;
  /** The cells that it may come to fill. */
  readonly reach?: CellArea;
}

/**
 * A cell formula with every call of ours written in built-in functions, on its parsed tree. What stands in cells is decided each time the
 * sheet calculates, what is typed into the call once and for all. A formula lifted over ranges stays one, as an array formula over
 * the cells that its spill fills.
 * @param formula as typed or as a file stores it, beginning with "="
 * @param workings where long forms put their steps; left out, everything has to stand in the formula
 */
export function plainFormula(formula: string, place: Surroundings, options: PlainOptions = {}, workings?: WorkingsSheet): PlainFormula {
  const tree = formulaTree(formula);
  if (tree === undefined) return { kind: "none", why: "unreadable" };
  const found = plainOrNone(tree, place, options, workings);
  if (found.kind !== "none" || options.newerFunctions !== true) return found;
  // To be allowed more functions may cost nobody the form in older ones.
  const older = plainOrNone(tree, place, { ...options, newerFunctions: false }, workings);
  return older.kind === "none" ? found : older;
}

function plainOrNone(tree: FormulaTree, place: Surroundings, options: PlainOptions, workings: WorkingsSheet | undefined): PlainFormula {
  const mark = workings?.mark();
  try {
    return plainTree(tree, place, options, workings);
  } catch (thrown) {
    if (workings !== undefined && mark !== undefined) workings.backTo(mark);
    if (thrown instanceof CannotWrite) return { kind: "none", why: thrown.why };
    // A sum of thousands of terms is as deep as it is long.
    if (thrown instanceof RangeError) return { kind: "none", why: "unreadable" };
    throw thrown;
  }
}

function plainTree(tree: FormulaTree, place: Surroundings, options: PlainOptions, workings: WorkingsSheet | undefined): PlainFormula {
  const scope: Scope = { tree, place, options, variables: NO_VARIABLES, isSingle: false, isOnEach: true, isQualified: false };
  const to: WritingTo = {
    write: writing((call, called, inner) => writtenInside(call, called, inner, to)),
    inside: new FoundOnce(),
    lasting: new Map(),
    elsewhere: { byText: new Map<string, string>(), byPart: new FoundOnce() },
    workings: workings === undefined ? undefined : (inner) => workings.of(inner),
    held: [],
    needsArray: false,
    ...(workings !== undefined && { mark: () => takingBack(workings) }),
  };
  const { root } = tree;
  const name = root.type === "CallExpression" ? catalogueName(nameCalled(root)) : undefined;
  if (root.type === "CallExpression" && name !== undefined) {
    const call = writtenCall(root, name, scope, to);
    if ("table" in call) return asTable(call, scope, to);
    if (isTable(name)) return { kind: "cells", formulas: filling([[call.text]], place), held: to.held };
    return asFormula(call.text, scope, to);
  }
  return asFormula(to.write(root, scope), scope, to);
}

/** A table that grows into the cells it needs goes into all that its form has, and else into those that it filled. */
function asTable(call: TableWritten, scope: Scope, to: WritingTo): PlainFormula {
  const { place } = scope;
  const { area, resized } = tableSize(call.table, scope, to);
  const here = area === undefined ? place : { ...place, area };
  const guard = resized === undefined && area !== undefined ? call.guard : goingInto(call, place);
  const formulas = filling(tableBehind(call.table, guard, anchorOf(place)), here);
  return { kind: "cells", formulas, held: to.held, ...(area !== undefined && { area }), ...resized };
}

function takingBack(workings: WorkingsSheet): () => void {
  const mark = workings.mark();
  return () => workings.backTo(mark);
}

/**
 * The guard of a table that may get more rows than there are cells for: they would be missing without a word. Cells that are fewer than the answer
 * always has were chosen so, and show as much of it as there is room for, as the spreadsheet does.
 */
const goingInto = ({ table, guard }: TableWritten, { area }: Surroundings): ((first: string) => string) => {
  const { rows, columns } = areaNamed(area);
  const further = table[rows]?.[0];
  const isCut = columns < (table[0]?.length ?? 0) || (further !== undefined && lastingRows([[further]]) === 1);
  return further === undefined || isCut ? guard : (first) => guard(`IF(${further}<>"",${refusal(moreRowsNow)},${first})`);
};

const isTable = (name: string): boolean => everyFunction.some((one) => one.name === name && one.gives === "table");

const anchorOf = ({ cell }: Surroundings): string => {
  const { row, column } = areaNamed(cell);
  return `$${lettersOf(column)}$${row + 1}`;
};

/** The table cut or widened to the cells that its spill fills. @throws CannotWrite where it does not go in */
function filling(table: TableInCells, { area }: Surroundings): TableInCells {
  const { rows, columns } = areaNamed(area);
  return Array.from({ length: rows }, (_, down) => Array.from({ length: columns }, (_, across) => checked(`=${table[down]?.[across] ?? '""'}`)));
}

function asFormula(text: string, scope: Scope, to: WritingTo): PlainFormula {
  const { area } = scope.place;
  const { rows, columns } = areaNamed(area);
  const { held } = to;
  const grown = grownFormula(text, scope, to);
  if (grown === undefined) return { kind: "formula", formula: checked(`=${text}`), isArray: to.needsArray || rows * columns > 1, held };
  const { text: written = text, area: further = area, ...sized } = grown;
  const isSeveral = to.needsArray || further.includes(":");
  return { kind: "formula", formula: checked(`=${written}`), isArray: isSeveral, held, ...(further !== area && { area: further }), ...sized };
}
