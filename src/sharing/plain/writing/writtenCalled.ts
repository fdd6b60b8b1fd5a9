import { everyFunction } from "../../../functions/catalogue";
import { catalogueName } from "../../catalogueName";
import { COUNTS_ERRORS, GIVES_ONE, NEWER, TIED_TO_ITS_CELL, WORKS_ON_EACH } from "../formula/functionKinds";
import { nameCalled, type Call, type Part } from "../formula/parts";
import { CannotWrite } from "./CannotWrite";
import { within, type Scope } from "./Scope";
import { lambdaOf } from "./variables";
import type { Write, WriteCall } from "./written";
import { spilled } from "./writtenReference";
import { calledLambda, functionHanded, handedSizes, keptLambda } from "./writtenVariables";

/** A call: of a LAMBDA, of one of ours or of a function of the spreadsheet. */
export function writtenCalled(call: Call, scope: Scope, write: Write, writeCall: WriteCall): string {
  const lambda = lambdaOf(call, scope);
  if (lambda !== undefined) return calledLambda(call, lambda, scope, write);
  const name = nameCalled(call).toUpperCase();
  // What another call gives is called: a function that only its value knows.
  if (name === "") throw new CannotWrite("newerFunction");
  const variable = scope.variables.get(name.toLowerCase());
  if (variable !== undefined && (!variable.isKept || scope.isQualified)) throw new CannotWrite("newerFunction");
  const ours = catalogueName(name);
  if (ours !== undefined) return writeCall(call, ours, scope);
  if (name === "SINGLE") return write({ type: "UnaryExpression", operator: "@", arguments: call.arguments }, scope);
  if (name === "ANCHORARRAY") return spilled(call, scope);
  if (NEWER.has(name) && scope.options.newerFunctions !== true) throw new CannotWrite("newerFunction");
  if (scope.isQualified && isTiedToItsCell(name, call)) throw new CannotWrite("argumentForm");
  const inside = WORKS_ON_EACH.has(name) ? scope : within(scope, { isOnEach: false, isSingle: GIVES_ONE.has(name) ? false : scope.isSingle });
  if (scope.isSingle && !WORKS_ON_EACH.has(name) && !GIVES_ONE.has(name)) throw new CannotWrite("unknownSize");
  const link = scope.tree.linkOf(call.callee.loc?.[0]);
  const texts = call.arguments.map((one, index) => {
    const handed = index === call.arguments.length - 1 ? functionHanded(one, inside) : undefined;
    return handed === undefined ? argument(one, inside, write) : keptLambda(handed, handedSizes(name, call.arguments, inside), inside, write);
  });
  const text = `${link}${nameCalled(call)}(${texts.join(",")})`;
  // A table of ours in error is one error, and not a table of errors.
  const tables = COUNTS_ERRORS.has(name) ? texts.filter((_, index) => holdsTable(call.arguments[index])) : [];
  return tables.reduceRight((rest, table) => `IF(ISERROR(INDEX(${table},1,1)),INDEX(${table},1,1),${rest})`, text);
}

/** Several areas as one argument keep their brackets. */
const argument = (part: Part, scope: Scope, write: Write): string =>
  part?.type === "BinaryExpression" && part.operator === "," ? `(${write(part, scope)})` : write(part, scope);

/** ROW() means the cell that it stands in, ROW(B7) the same everywhere. */
const isTiedToItsCell = (name: string, call: Call): boolean =>
  TIED_TO_ITS_CELL.has(name) && !((name === "ROW" || name === "COLUMN") && call.arguments.length > 0);

function holdsTable(part: Part): boolean {
  if (part?.type !== "CallExpression") return false;
  const ours = catalogueName(nameCalled(part));
  return everyFunction.some(({ name, gives }) => name === ours && gives === "table") || part.arguments.some(holdsTable);
}
