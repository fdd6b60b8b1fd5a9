import type { AstExpression } from "@borgar/fx";
import { covers } from "../../../workbook/cellArea";
import type { Reference } from "../formula/parts";
import { cellsReferred, referenceText, sheetText } from "../formula/reference";
import { areaReferred, spillReferred } from "./areaReferred";
import { CannotWrite } from "./CannotWrite";
import { nameElsewhere } from "./nameElsewhere";
import { callsOurs, isAbsolute, namedFormula } from "./named";
import type { Scope } from "./Scope";
import type { Write } from "./written";

/** A reference to cells, a defined name or a variable. */
export const writtenReference = (part: Reference, scope: Scope, write: Write): string =>
  part.kind === "name" ? name(part, scope, write) : cells(part, scope);

function name(part: Reference, scope: Scope, write: Write): string {
  const variable = scope.variables.get(part.value.toLowerCase());
  if (variable === undefined) return definedName(scope.tree.textOf(part), scope, write);
  if (variable.isKept && !scope.isQualified) return part.value;
  if (variable.given !== undefined) throw new CannotWrite("argumentForm");
  return `(${write(variable.value, { ...variable.scope, isSingle: scope.isSingle, isQualified: scope.isQualified })})`;
}

/** One that calls one of ours, or any where names are written out, is what it stands for, in its place. */
function definedName(text: string, scope: Scope, write: Write): string {
  const named = namedFormula(text, scope);
  if (scope.options.areNamesWrittenOut === true || callsOurs(named)) {
    if (!isAbsolute(named.tree)) throw new CannotWrite("unknownName");
    const meant = write(named.tree.root, named);
    return named.tree.root.type === "ReferenceIdentifier" ? meant : `(${meant})`;
  }
  const here = scope.isQualified ? nameElsewhere(text, named, scope) : text;
  return scope.isSingle ? singleName(here, named) : here;
}

function singleName(text: string, named: Scope): string {
  const { root } = named.tree;
  if (root.type !== "ReferenceIdentifier" || root.kind !== "range") return text;
  const { sheet, area } = areaReferred(root, named);
  return area.rows * area.columns === 1 ? text : referenceText({ ...area, rows: 1, columns: 1 }, sheet, undefined);
}

function cells(part: Reference, scope: Scope): string {
  const { place, isSingle, isQualified } = scope;
  const text = scope.tree.textOf(part);
  const cutColumn = part.kind === "beam" && scope.isOnEach ? wholeColumnCut(text, scope) : undefined;
  if (cutColumn !== undefined) return cutColumn;
  if (!isSingle && !isQualified) return text;
  if (!isSingle && part.kind !== "table") return text.includes("!") ? text : `${sheetText(place.sheet)}!${text}`;
  const { sheet, area } = areaReferred(part, scope);
  if (!isSingle && /@|#This Row/i.test(text)) return referenceText(area, sheet, undefined);
  if (!isSingle) return text.startsWith("[") ? `${place.tableOf("")?.name ?? ""}${text}` : text;
  return area.rows * area.columns === 1 && !isQualified ? text : referenceText({ ...area, rows: 1, columns: 1 }, sheet, homeOf(scope));
}

/** The sheet that a reference need not name. */
const homeOf = ({ place, isQualified }: Scope): string | undefined => (isQualified ? undefined : place.sheet);

/** A whole column as far down as the spill of the formula goes. */
function wholeColumnCut(text: string, scope: Scope): string | undefined {
  const { place } = scope;
  const found = cellsReferred(text, place.sheet);
  const spill = cellsReferred(place.area, place.sheet);
  if (found?.sheet === undefined || found.area.row !== 0 || spill === undefined) return undefined;
  return referenceText({ ...found.area, rows: spill.area.rows }, found.sheet, homeOf(scope));
}

/** The first cell of what is a reference. */
export function firstCell(part: AstExpression, scope: Scope): string {
  const { sheet, area } = areaReferred(part, scope);
  return referenceText({ ...area, rows: 1, columns: 1 }, sheet, homeOf(scope));
}

export const isVariable = (part: Reference, scope: Scope): boolean => part.kind === "name" && scope.variables.has(part.value.toLowerCase());

/** The cell of a range that stands in the row or column of the formula: a file holds no @, and older programs know none. */
export function intersection(part: Reference, scope: Scope): string {
  const named = part.kind === "name" ? namedFormula(scope.tree.textOf(part), scope) : scope;
  const { sheet, area } = areaReferred(part.kind === "name" ? named.tree.root : part, named);
  if (area.rows * area.columns === 1 && part.kind !== "name" && !scope.isQualified) return scope.tree.textOf(part);
  const own = cellsReferred(scope.place.cell, scope.place.sheet)?.area ?? { row: 0, column: 0 };
  const row = area.rows === 1 ? area.row : own.row;
  const column = area.columns === 1 ? area.column : own.column;
  if ((area.rows > 1 && area.columns > 1) || !covers(area, row, column)) return "#VALUE!";
  return referenceText({ row, column, rows: 1, columns: 1 }, sheet, homeOf(scope));
}

/** The area that a spill fills: it is as large in the copy, where it is one array formula or single cells. */
export function spilled(part: AstExpression, scope: Scope): string {
  const { sheet, area } = part.type === "CallExpression" ? spillReferred(part.arguments[0], scope) : areaReferred(part, scope);
  return referenceText(scope.isSingle ? { ...area, rows: 1, columns: 1 } : area, sheet, homeOf(scope));
}
