import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import type { Input } from "../../../inputs/Input";
import type { Part } from "../formula/parts";
import { areaReferred } from "../writing/areaReferred";
import { CannotWrite } from "../writing/CannotWrite";
import type { CellReading } from "../../../workbook/Workbook";
import { RANDOM, TIED_TO_ITS_CELL } from "../formula/functionKinds";
import { within, type Scope } from "../writing/Scope";
import { callsOurs, namedFormula } from "../writing/named";
import { isOne, ONE, sizeOf } from "../writing/sizeOf";
import { usesAny } from "../writing/usesAny";
import { settled, type Argument, type Held } from "./Argument";
import { constantNamed } from "./constantNamed";
import { settledValue } from "./settledValue";
import { isTruth } from "./isTruth";
import { truthsAmong } from "./truthsAmong";
import type { WritingTo } from "./WritingTo";

/** An argument as the call writes it: in its place, or, where it is long and written several times, in a cell of its own on the sheet of workings. */
export function argumentOf(part: Part, input: Input<unknown>, scope: Scope, to: WritingTo): Argument {
  const variable = part?.type === "ReferenceIdentifier" && part.kind === "name" ? scope.variables.get(part.value.toLowerCase()) : undefined;
  if (variable !== undefined && (!variable.isKept || scope.isQualified)) {
    // What a LAMBDA is handed is known within it alone.
    if (variable.given !== undefined) throw new CannotWrite("argumentForm");
    const { isSingle, isOnEach, isQualified } = scope;
    return argumentOf(variable.value, input, within(variable.scope, { isSingle, isOnEach, isQualified }), to);
  }
  const value = settledValue(part, scope);
  if (value !== undefined && (input.shape === "cell" || value === BLANK)) return settled(value);
  const size = scope.isSingle ? ONE : sizeOf(part, scope);
  const asTruth = input.shape === "cell" && input.takes?.kind === "number" && isTruth(part, scope);
  const textIn = (here: Scope): string => (asTruth ? `IF(${to.write(part, here)},"TRUE","FALSE")` : to.write(part, here));
  const isRepeatable = isCheap(part, scope);
  const text = textIn(scope);
  if (!isRepeatable && input.shape === "cell" && isOne(size) && to.workings !== undefined) {
    if (text.length <= LONGEST_REPEATED && !usesAny(part, RANDOM, scope)) return { kind: "asked", text: `(${text})`, size, held: () => undefined };
    if (!usesAny(part, TIED_TO_ITS_CELL, scope) && areWrittenOut(scope)) {
      return {
        kind: "asked",
        text: ownCell(part, within(scope, { isQualified: true, isOnEach: false }), textIn, to, to.workings),
        size,
        held: () => undefined,
      };
    }
  }
  if (!isRepeatable && usesAny(part, RANDOM, scope)) throw new CannotWrite("random");
  const truths = !isOne(size) && input.shape === "cell" && input.takes?.kind !== "truth" ? truthsAmong(part, scope, to) : undefined;
  return {
    kind: "asked",
    text: !asTruth && isRepeatable && isOfCells(part, scope) ? text : `(${text})`,
    size,
    held: () => (asTruth ? undefined : heldBy(part, scope)),
    ...(truths !== undefined && { truths }),
  };
}

/** True where no variable is written by its name, which another cell does not know. */
const areWrittenOut = ({ variables }: Scope): boolean => [...variables.values()].every(({ isKept, given }) => !isKept && given === undefined);

/** The reference of the cell that an argument has for itself, one for all that are alike: but each RAND() is drawn by itself. */
function ownCell(
  part: Part,
  scope: Scope,
  textIn: (scope: Scope) => string,
  { elsewhere }: WritingTo,
  workings: NonNullable<WritingTo["workings"]>,
): string {
  const put = (): string => {
    const text = textIn(scope);
    return workings(scope).block("An argument", 1, 1, () => [[text]]);
  };
  return part && usesAny(part, RANDOM, scope) ? elsewhere.byPart.of(part, scope, put) : kept(elsewhere.byText, textIn(scope), put);
}

function kept(known: Map<string, string>, text: string, put: () => string): string {
  const place = known.get(text) ?? put();
  known.set(text, place);
  return place;
}

/**
 * False for a name that stands for no cells: of a number in it LibreOffice says within a comparison that it is a truth, so that it is written as what
 * is calculated.
 */
function isOfCells(part: Part, scope: Scope): boolean {
  if (part?.type !== "ReferenceIdentifier" || part.kind !== "name") return true;
  const variable = scope.variables.get(part.value.toLowerCase());
  if (variable !== undefined) return variable.given !== undefined || isOfCells(variable.value, variable.scope);
  const named = namedFormula(scope.tree.textOf(part), scope);
  const { root } = named.tree;
  return (root.type === "ReferenceIdentifier" || (root.type === "UnaryExpression" && root.operator === "#")) && isOfCells(root, named);
}

function heldBy(part: Part, scope: Scope): Held | undefined {
  const constant = constantNamed(part, scope);
  if (constant !== undefined) return constantHeld(constant);
  const { heldAt } = scope.place;
  if (part?.type !== "ReferenceIdentifier" || heldAt === undefined) return undefined;
  const named = part.kind === "name" ? namedFormula(scope.tree.textOf(part), scope) : scope;
  const referred = part.kind === "name" ? named.tree.root : part;
  if (referred.type !== "ReferenceIdentifier" || referred.kind === "name") return undefined;
  const { sheet, area } = areaReferred(referred, named);
  if (sheet === undefined) return undefined;
  const [rows, columns] = scope.isSingle ? [1, 1] : [Math.min(area.rows, LONGEST_HELD), area.columns];
  return {
    cells: { sheet, area: { ...area, rows, columns } },
    rows,
    columns,
    at: (row, column) => heldAt(sheet, area.row + row, area.column + column),
  };
}

// A whole column is looked at no further than that: what stands below refuses.
const LONGEST_HELD = 10_000;

// A longer argument is calculated once, in a cell of its own, where that can be.
const LONGEST_REPEATED = 40;

function constantHeld(value: CellValue): Held {
  const error = value instanceof CellError ? value.code : "";
  const content = value instanceof CellError ? error : value === BLANK ? null : value;
  const reading: CellReading = { cell: "", formula: "", value: content, shown: "", error, message: "", spill: "" };
  return { ...ONE, cells: undefined, at: () => reading };
}

/** True for a reference or a name, which may be written several times. */
function isCheap(part: Part, scope: Scope): boolean {
  if (part?.type === "UnaryExpression" && part.operator === "#") return true;
  if (part?.type === "ArrayExpression") return true;
  if (part?.type !== "ReferenceIdentifier") return false;
  if (part.kind !== "name") return true;
  const variable = scope.variables.get(part.value.toLowerCase());
  if (variable !== undefined) return variable.isKept && !scope.isQualified;
  return !callsOurs(namedFormula(scope.tree.textOf(part), scope)) && !usesAny(part, RANDOM, scope);
}
