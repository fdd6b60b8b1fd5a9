import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import type { Input } from "../../../inputs/Input";
import { CannotWrite } from "../CannotWrite";
import type { Part } from "../formulaTree";
import { RANDOM, TIED_TO_ITS_CELL } from "../functionKinds";
import { within, type Scope } from "../Scope";
import { areaReferred, isOne, namedFormula, ONE, sizeOf } from "../sizeOf";
import { usesAny, written, type WriteCall } from "../written";
import { settled, type Argument, type CellsHeld } from "./Argument";
import type { WritingTo } from "./WritingTo";

/** An argument as the call writes it; calls within it are written by `writeCall`. */
export function argumentOf(part: Part, input: Input<unknown>, scope: Scope, to: WritingTo, writeCall: WriteCall): Argument {
  const variable = part?.type === "ReferenceIdentifier" && part.kind === "name" ? scope.variables.get(part.value.toLowerCase()) : undefined;
  if (variable !== undefined && (!variable.isKept || scope.isQualified)) {
    const { isSingle, isOnEach, isQualified } = scope;
    return argumentOf(variable.value, input, within(variable.scope, { isSingle, isOnEach, isQualified }), to, writeCall);
  }
  const value = settledValue(part, scope);
  if (value !== undefined && (input.shape === "cell" || value === BLANK)) return settled(value);
  const size = scope.isSingle ? ONE : sizeOf(part, scope);
  const isRepeatable = isCheap(part, scope);
  if (!isRepeatable && input.shape === "cell" && isOne(size) && to.workings !== undefined) {
    const text = written(part, scope, writeCall);
    if (text.length <= LONGEST_REPEATED && !usesAny(part, RANDOM, scope)) return { kind: "asked", text: `(${text})`, size, held: () => undefined };
    if (!usesAny(part, TIED_TO_ITS_CELL, scope) && scope.variables.size === 0) {
      const elsewhere = written(part, within(scope, { isQualified: true, isOnEach: false }), writeCall);
      return { kind: "asked", text: to.workings(scope).block("An argument", 1, 1, () => [[elsewhere]]), size, held: () => undefined };
    }
  }
  if (!isRepeatable && usesAny(part, RANDOM, scope)) throw new CannotWrite("random");
  const text = written(part, scope, writeCall);
  return { kind: "asked", text: isRepeatable ? text : `(${text})`, size, held: () => heldBy(part, scope) };
}

function heldBy(part: Part, scope: Scope): CellsHeld | undefined {
  const { heldAt } = scope.place;
  if (part?.type !== "ReferenceIdentifier" || heldAt === undefined) return undefined;
  const named = part.kind === "name" ? namedFormula(scope.tree.textOf(part), scope) : scope;
  const referred = part.kind === "name" ? named.tree.root : part;
  if (referred.type !== "ReferenceIdentifier" || referred.kind === "name") return undefined;
  const { sheet, area } = areaReferred(referred, named);
  if (sheet === undefined) return undefined;
  const [rows, columns] = scope.isSingle ? [1, 1] : [Math.min(area.rows, LONGEST_HELD), area.columns];
  return { sheet, area: { ...area, rows, columns }, rows, columns, at: (row, column) => heldAt(sheet, area.row + row, area.column + column) };
}

// A whole column is looked at no further than that: what stands below refuses.
const LONGEST_HELD = 10_000;

// A longer argument is calculated once, in a cell of its own, where that can be.
const LONGEST_REPEATED = 40;

/** True for a reference or a name, which may be written several times. */
function isCheap(part: Part, scope: Scope): boolean {
  if (part?.type === "UnaryExpression" && part.operator === "#") return true;
  if (part?.type === "ArrayExpression") return true;
  if (part?.type !== "ReferenceIdentifier") return false;
  const variable = part.kind === "name" ? scope.variables.get(part.value.toLowerCase()) : undefined;
  return variable === undefined || (variable.isKept && !scope.isQualified);
}

/** What is typed into the call itself; undefined for anything that a cell decides. */
function settledValue(part: Part, scope: Scope): CellValue | undefined {
  if (part === null || part === undefined) return BLANK;
  if (part.type === "ErrorLiteral") return new CellError(scope.tree.textOf(part).toUpperCase());
  if (part.type === "UnaryExpression" && part.operator !== "#" && part.operator !== "@") {
    const inner = settledValue(part.arguments[0], scope);
    if (typeof inner !== "number") return undefined;
    return part.operator === "-" ? -inner : part.operator === "%" ? inner / 100 : inner;
  }
  if (part.type === "ReferenceIdentifier" && part.kind === "name") {
    const variable = scope.variables.get(part.value.toLowerCase());
    return variable === undefined ? undefined : settledValue(variable.value, variable.scope);
  }
  if (part.type !== "Literal") return undefined;
  const text = scope.tree.textOf(part);
  if (text.startsWith('"')) return text === '""' ? BLANK : text.slice(1, -1).replaceAll('""', '"');
  return part.value;
}
