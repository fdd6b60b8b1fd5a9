import type { AstExpression } from "@borgar/fx";
import { everyFunction } from "../../../functions/catalogue";
import { takesRanges } from "../../../functions/cellFunction";
import { ROWS_OF_A_SHEET } from "../../../workbook/cellArea";
import { catalogueName } from "../../catalogueName";
import { settledValue } from "../call/settledValue";
import { GIVES_ONE, WORKS_ON_EACH } from "../formula/functionKinds";
import { nameCalled, type Call, type Part, type Reference } from "../formula/parts";
import { cellsReferred, referenceText } from "../formula/reference";
import { CannotWrite } from "../writing/CannotWrite";
import { namedFormula } from "../writing/named";
import { within, type Scope } from "../writing/Scope";
import { sizeOf } from "../writing/sizeOf";
import { lambdaOf, scopeOfCalled, scopeOfLet } from "../writing/variables";
import { always, common, extentOfSize, isFixedExtent, oneOf, type Extent, type Measure } from "./Measure";

/** How what decides a size is written, and how large tables are. */
export interface Asking {
  /** Of any part, for a cell of another sheet. */
  readonly write: (part: Part, scope: Scope) => string;
  /** Of a call of ours that gives a table. */
  readonly table: (call: Call, name: string, scope: Scope) => Extent;
}

const ONE = extentOfSize({ rows: 1, columns: 1 });
/** Several, and nobody knows how many. */
const UNKNOWN: Extent = { rows: { least: 1, most: Infinity, now: "2" }, columns: { least: 1, most: Infinity, now: "2" } };

/**
 * How many rows and columns a part of a formula gives, and what decides it: the size of a formula that spills is that of its answer, which a condition,
 * a place told to INDEX, a choice or a whole column may change. @throws CannotWrite where it cannot be told
 */
export function extentOf(part: Part, scope: Scope, asking: Asking): Extent {
  const of = (one: Part): Extent => extentOf(one, scope, asking);
  switch (part?.type) {
    case "UnaryExpression":
      return part.operator === "@" || part.operator === "#" ? extentOfSize(sizeOf(part, scope)) : of(part.arguments[0]);
    case "BinaryExpression":
      return [":", " ", ","].includes(part.operator) ? extentOfSize(sizeOf(part, scope)) : common(part.arguments.map(of));
    case "LetExpression":
      return extentOf(part.body, scopeOfLet(part, scope), asking);
    case "ReferenceIdentifier":
      return ofReference(part, scope, asking);
    case "CallExpression":
      return ofCall(part, scope, asking);
    default:
      return extentOfSize(sizeOf(part, scope));
  }
}

function ofReference(part: Reference, scope: Scope, asking: Asking): Extent {
  const variable = part.kind === "name" ? scope.variables.get(part.value.toLowerCase()) : undefined;
  if (variable !== undefined && variable.given === undefined) return extentOf(variable.value, variable.scope, asking);
  if (part.kind === "name" && variable === undefined) {
    const named = namedFormula(scope.tree.textOf(part), scope);
    return extentOf(named.tree.root, named, asking);
  }
  return (part.kind === "beam" && scope.isOnEach ? ofWholeColumn(part, scope) : undefined) ?? extentOfSize(sizeOf(part, scope));
}

/** A whole column as far down as it is filled, which a formula over each of its cells goes. */
function ofWholeColumn(part: AstExpression, scope: Scope): Extent | undefined {
  const { place } = scope;
  const found = cellsReferred(scope.tree.textOf(part), place.sheet);
  const spill = cellsReferred(place.area, place.sheet);
  if (found?.sheet === undefined || found.area.row !== 0 || found.area.rows < ROWS_OF_A_SHEET || spill === undefined) return undefined;
  const { rows } = spill.area;
  const area = (row: number, count: number): string => referenceText({ ...found.area, row, rows: count }, found.sheet, undefined);
  // COUNTA would count empty texts that formulas give.
  const filled = (cells: string): string => `COUNT(${cells})+COUNTIF(${cells},"?*")`;
  const [below, last] = [filled(area(rows, ROWS_OF_A_SHEET - rows)), filled(area(rows - 1, 1))];
  // Some hosts answer rows below the last one that is filled too.
  const { value = null, error = "" } = place.heldAt?.(found.sheet, rows - 1, found.area.column) ?? {};
  const wasFilled = error !== "" || (value !== null && value !== "");
  const otherwise = wasFilled ? `IF(${last}>0,${rows},${Math.max(1, rows - 1)})` : String(rows);
  return {
    rows: { least: 1, most: Infinity, now: `IF(${below}>0,${rows + 1},${otherwise})` },
    columns: always(found.area.columns),
  };
}

function ofCall(call: Call, scope: Scope, asking: Asking): Extent {
  const lambda = lambdaOf(call, scope);
  if (lambda !== undefined) {
    const inside = scopeOfCalled(call, lambda, scope);
    return inside === undefined ? ONE : extentOf(lambda.lambda.body, inside, asking);
  }
  const name = nameCalled(call).toUpperCase();
  const ours = catalogueName(name);
  const given = call.arguments;
  const of = (one: Part): Extent => extentOf(one, scope, asking);
  if (ours !== undefined) {
    const definition = everyFunction.find((one) => one.name === ours);
    if (definition?.gives === "table") return asking.table(call, ours, scope);
    return definition !== undefined && takesRanges(definition) ? common(given.map(of)) : ONE;
  }
  if (name in BRANCHES) return ofBranches(name, given, scope, asking);
  if (name === "INDEX") return ofIndex(given, scope, asking);
  if (WORKS_ON_EACH.has(name)) return common(given.map(of));
  if (GIVES_ONE.has(name)) return ONE;
  const whole = extentOfSize(sizeOf(call, scope));
  if (!given.filter((one) => one?.type !== "LambdaExpression").every((one) => isFixedExtent(of(one)))) throw new CannotWrite("unknownSize");
  return whole;
}

/** Which arguments of a function are what it may give, the others deciding. */
const BRANCHES: Readonly<Record<string, (given: readonly Part[]) => readonly number[]>> = {
  IF: (given) => (given.length > 2 ? [1, 2] : [1]),
  IFERROR: () => [0, 1],
  IFNA: () => [0, 1],
  CHOOSE: (given) => given.map((_, index) => index).slice(1),
  SWITCH: (given) => given.flatMap((_, index) => (index > 0 && (index % 2 === 0 || index === given.length - 1) ? [index] : [])),
  IFS: (given) => given.flatMap((_, index) => (index % 2 === 1 ? [index] : [])),
};

function ofBranches(name: string, given: readonly Part[], scope: Scope, asking: Asking): Extent {
  const of = (one: Part): Extent => extentOf(one, scope, asking);
  const places = BRANCHES[name]?.(given) ?? [];
  const ask = (part: Part): string => asking.write(part, scope);
  if (name === "IFERROR" || name === "IFNA") {
    const [first, otherwise] = [of(given[0]), of(given[1])];
    // A table in error is one error; of anything else each cell is asked.
    if (!holdsTable(given[0], scope)) return common([first, otherwise]);
    const is = name === "IFERROR" ? "ISERROR" : "ISNA";
    return oneOf([otherwise, first], ([one = "", other = ""]) => `IF(${is}(INDEX(${ask(given[0])},1,1)),${one},${other})`);
  }
  const deciding = given.filter((_, index) => !places.includes(index));
  const settled = settledBranch(name, given, scope);
  if (settled !== undefined) return settled < given.length ? of(given[settled]) : ONE;
  const branches = places.map((place) => of(given[place]));
  const whole = name === "IF" && given.length === 2 ? [...branches, ONE] : branches;
  const decides = deciding.map(of);
  // Asked of several cells, each takes its own from the branches.
  if (!decides.every((one) => one.rows.most === 1 && one.columns.most === 1)) return common([...decides, ...whole]);
  return oneOf(whole, (now) => {
    const texts = given.map((one, index) => (places.includes(index) ? (now[places.indexOf(index)] ?? "1") : ask(one)));
    return `${name}(${[...texts, ...(whole.length > branches.length ? ["1"] : [])].join(",")})`;
  });
}

/** The branch that is taken whatever cells hold. */
function settledBranch(name: string, [first]: readonly Part[], scope: Scope): number | undefined {
  const value = name === "IF" || name === "CHOOSE" ? settledValue(first, scope) : undefined;
  if (name === "IF") return typeof value === "boolean" || typeof value === "number" ? (value ? 1 : 2) : undefined;
  return typeof value === "number" ? Math.trunc(value) : undefined;
}

const NEVER_0: ReadonlySet<string> = new Set(["MATCH", "XMATCH", "ROW", "ROWS", "COLUMN", "COLUMNS"]);

/** A row or column of 0 is all of them. */
function ofIndex([array, row, column]: readonly Part[], scope: Scope, asking: Asking): Extent {
  const of = (part: Part): Extent => extentOf(part, scope, asking);
  const [down, across] = [row, column].map((part) => settledValue(part ?? null, scope));
  const isOne = (value: unknown): boolean => typeof value === "number" && value >= 1;
  const places = common([row, column].map((part) => (part === undefined || part === null ? ONE : of(part))));
  if (!isFixedExtent(places) || places.rows.most > 1 || places.columns.most > 1) return places;
  if (isOne(down) && isOne(across)) return ONE;
  const whole = known(() => extentOf(array, within(scope, { isOnEach: false }), asking)) ?? UNKNOWN;
  const isLine = whole.rows.most === 1 || whole.columns.most === 1;
  if (isLine && isOne(down) && column === undefined) return ONE;
  const measure = (part: Part, settled: unknown, all: Measure): Measure => {
    if (isOne(settled) || all.most === 1) return always(1);
    if (typeof settled === "number" || part === undefined || part === null) return all;
    if (part.type === "CallExpression" && NEVER_0.has(nameCalled(part).toUpperCase())) return always(1);
    const zero = `N(${asking.write(part, scope)})`;
    return { least: 1, most: all.most, now: `IF(ABS(${zero})<1,${all.now},1)`, isSeldom: true };
  };
  // A place in a single row or column may be told alone.
  if (isLine && column === undefined) return { rows: measure(row, down, whole.rows), columns: measure(row, down, whole.columns) };
  return { rows: measure(row, down, whole.rows), columns: measure(column, across, whole.columns) };
}

function known(find: () => Extent): Extent | undefined {
  try {
    return find();
  } catch (thrown) {
    if (thrown instanceof CannotWrite && thrown.why === "unknownSize") return undefined;
    throw thrown;
  }
}

/** True where a part may be a table of ours in error, which is one error instead. */
function holdsTable(part: Part, scope: Scope): boolean {
  if (part?.type === "ReferenceIdentifier" && part.kind === "name") {
    const variable = scope.variables.get(part.value.toLowerCase());
    if (variable !== undefined) return holdsTable(variable.value, variable.scope);
    const named = namedFormula(scope.tree.textOf(part), scope);
    return holdsTable(named.tree.root, named);
  }
  if (part?.type === "LetExpression") return holdsTable(part.body, scopeOfLet(part, scope));
  if (part?.type !== "CallExpression") return false;
  const ours = catalogueName(nameCalled(part));
  if (ours !== undefined) return everyFunction.some(({ name, gives }) => name === ours && gives === "table");
  return part.arguments.some((one) => holdsTable(one, scope));
}
