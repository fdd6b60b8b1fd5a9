import type { AstExpression } from "@borgar/fx";
import { areaNamed } from "../../../workbook/areaNamed";
import type { Part } from "../formula/parts";
import { cellsReferred, tableCellsReferred, type Referred } from "../formula/reference";
import { CannotWrite } from "./CannotWrite";
import { namedFormula } from "./named";
import type { Scope } from "./Scope";

/** The cells of a reference, a spill or a table's column. @throws CannotWrite where they are not known */
export function areaReferred(part: AstExpression, scope: Scope): Referred {
  if (part.type === "UnaryExpression" && part.operator === "#") return spillReferred(part.arguments[0], scope);
  if (part.type === "BinaryExpression" && (part.operator === " " || part.operator === ":")) {
    const [one, other] = part.arguments.map((side) => areaReferred(side, scope));
    return one === undefined || other === undefined ? unknown() : joined(part.operator, one, other);
  }
  if (part.type !== "ReferenceIdentifier") throw new CannotWrite("unknownSize");
  if (part.kind === "name") {
    if (scope.variables.has(part.value.toLowerCase())) return unknown();
    const named = namedFormula(scope.tree.textOf(part), scope);
    return areaReferred(named.tree.root, named);
  }
  const text = scope.tree.textOf(part);
  const found = part.kind === "table" ? tableCellsReferred(text, scope.place) : cellsReferred(text, scope.place.sheet);
  if (found === undefined) throw new CannotWrite("unknownName");
  if (found.lastSheet !== undefined) throw new CannotWrite("severalSheets");
  return found;
}

/** What two references have in common, or all from one to the other. @throws CannotWrite */
function joined(operator: string, one: Referred, other: Referred): Referred {
  if (one.sheet === undefined || one.sheet.toLowerCase() !== other.sheet?.toLowerCase()) return unknown();
  const [first, last] = operator === " " ? [Math.max, Math.min] : [Math.min, Math.max];
  const [row, column] = [first(one.area.row, other.area.row), first(one.area.column, other.area.column)];
  const rows = last(one.area.row + one.area.rows, other.area.row + other.area.rows) - row;
  const columns = last(one.area.column + one.area.columns, other.area.column + other.area.columns) - column;
  return rows > 0 && columns > 0 ? { sheet: one.sheet, area: { row, column, rows, columns }, isWhole: false } : unknown();
}

function unknown(): never {
  throw new CannotWrite("unknownSize");
}

export function spillReferred(anchor: Part, scope: Scope): Referred {
  if (anchor?.type !== "ReferenceIdentifier") return unknown();
  if (anchor.kind === "name") {
    const named = namedFormula(scope.tree.textOf(anchor), scope);
    return spillReferred(named.tree.root, named);
  }
  const cell = cellsReferred(scope.tree.textOf(anchor), scope.place.sheet);
  const text = scope.tree.textOf(anchor).replaceAll("$", "").split("!").at(-1) ?? "";
  const area = cell?.sheet === undefined ? undefined : scope.place.spillOf(cell.sheet, text.toUpperCase());
  if (cell === undefined || area === undefined) throw new CannotWrite("unknownSize");
  return { sheet: cell.sheet, area: areaNamed(area), isWhole: false };
}
