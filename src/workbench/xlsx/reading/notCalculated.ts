import type { AstExpression } from "@borgar/fx";
import { formulaTree, type FormulaTree } from "../../../sharing/plain/formula/formulaTree";
import { anyPart, nameCalled, variablesIn, type Part, type Reference } from "../../../sharing/plain/formula/parts";
import { cellsReferred } from "../../../sharing/plain/formula/reference";
import type { NameEntry } from "./workbookPart";

/** What the engine knows. */
export interface EngineKnows {
  /** Every defined name by its letters in small ones, in the order in which the engine is given them. */
  readonly names: ReadonlyMap<string, readonly NameEntry[]>;
  /** True for a function that the engine has, by its name in capitals; left out where that shows by itself. */
  readonly knowsFunction?: ((name: string) => boolean) | undefined;
}

export function engineKnows(names: readonly NameEntry[], knowsFunction?: EngineKnows["knowsFunction"]): EngineKnows {
  const found = new Map<string, NameEntry[]>();
  for (const one of names) found.set(one.name.toLowerCase(), [...(found.get(one.name.toLowerCase()) ?? []), one]);
  return { names: found, knowsFunction };
}

// A sign before a name, two sheets before a cell, a mark in a sheet's name, whole rows, a percent of a percent, brackets that may hold several areas, a space between
// references or a range of ranges: nothing else of a formula can be what the engine reads otherwise, names and functions left aside.
const SUSPECT =
  /(?:^=?|[(,=<>*/+^&-])\s*[-+]\s*[A-Z_]|:[^!(),]*!|'[^']*!|\$?\d:\$?\d|%[\s)]*%|(?:^|[^\w.])\(|[\w)#]\s+[\w'([$]|:[^:,]*:|\):|:[A-Z]+\(/i;
const NAME = /[\p{L}_\\][\p{L}\p{N}_.\\?]*/gu;

/**
 * True for a formula that the engine of the grid (0.25.1) reads otherwise than spreadsheets do, and which it may answer with a wrong number, or an
 * error that another function swallows: references to several sheets, to whole rows, to a sheet with an exclamation mark in its name, several areas,
 * intersections, ranges of ranges, two percents, a sign before a name, functions that it has not, and names that are not the same on every sheet, of which it takes the
 * last one, or that mean other cells in each cell, which it takes as they stand.
 * @param formula as typed, with "="
 */
export function isNotCalculated(formula: string, sheet: string, engine: EngineKnows): boolean {
  return isMisread(formula, { sheet, engine, inside: new Set(), isName: false });
}

interface Reading {
  readonly sheet: string;
  readonly engine: EngineKnows;
  /** Names being looked into. */
  readonly inside: ReadonlySet<NameEntry>;
  readonly isName: boolean;
}

function isMisread(formula: string, reading: Reading): boolean {
  if (!isSuspect(formula, reading)) return false;
  const tree = formulaTree(formula);
  if (tree === undefined) return false;
  const variables = new Set<string>();
  return anyPart(tree.root, (part) => {
    for (const name of variablesIn(part)) variables.add(name.toLowerCase());
    return isPartMisread(part, tree, reading, variables);
  });
}

function isSuspect(formula: string, { engine: { names, knowsFunction }, isName }: Reading): boolean {
  if (isName || SUSPECT.test(formula)) return true;
  return [...formula.matchAll(NAME)].some(
    ({ 0: word, index }) => names.has(word.toLowerCase()) || (formula[index + word.length] === "(" && knowsFunction?.(word.toUpperCase()) === false),
  );
}

function isPartMisread(part: Part, tree: FormulaTree, reading: Reading, variables: ReadonlySet<string>): boolean {
  switch (part?.type) {
    case "UnaryExpression":
      return isSignMisread(part);
    case "BinaryExpression":
      if (part.operator === " " || part.operator === ",") return true;
      return part.operator === ":" && !part.arguments.every((one, at) => endsARange(one, tree, at > 0));
    case "CallExpression":
      return isCallMisread(nameCalled(part), reading, variables);
    case "ReferenceIdentifier":
      return isReferenceMisread(part, tree, reading, variables);
    default:
      return false;
  }
}

/** A sign before a name or variable, and a percent of a percent. */
function isSignMisread({ operator, arguments: [of] }: Extract<AstExpression, { type: "UnaryExpression" }>): boolean {
  if (operator === "%") return of?.type === "UnaryExpression" && of.operator === "%";
  return operator !== "#" && of?.type === "ReferenceIdentifier" && of.kind === "name";
}

/** A cell, or INDEX, which the engine takes for the end of a range; a sheet behind the colon may be the last of several. */
function endsARange(part: AstExpression, tree: FormulaTree, isBehind: boolean): boolean {
  if (part.type === "CallExpression") return nameCalled(part).toUpperCase() === "INDEX";
  if (part.type !== "ReferenceIdentifier" || part.kind !== "range") return false;
  const text = tree.textOf(part);
  return !text.includes(":") && !(isBehind && text.includes("!"));
}

function isCallMisread(name: string, reading: Reading, variables: ReadonlySet<string>): boolean {
  if (name === "" || variables.has(name.toLowerCase())) return false;
  if (entryOf(name, reading) !== undefined || lastOf(name, reading) !== undefined) return isNameMisread(name, reading);
  return reading.engine.knowsFunction?.(name.toUpperCase()) === false;
}

function isReferenceMisread(part: Reference, tree: FormulaTree, reading: Reading, variables: ReadonlySet<string>): boolean {
  const text = tree.textOf(part);
  if (part.kind === "name") return !variables.has(text.toLowerCase()) && isNameMisread(text, reading);
  if (part.kind === "table") return false;
  const found = cellsReferred(text, reading.sheet);
  if (found === undefined) return false;
  const isRelative = reading.isName && !/^(?:.*!)?(?:\$[A-Z]+\$\d+(?::\$[A-Z]+\$\d+)?|\$[A-Z]+:\$[A-Z]+)$/i.test(text);
  const isWholeRows = /^(?:.*!)?\$?\d+:\$?\d+$/.test(text);
  return isRelative || isWholeRows || found.lastSheet !== undefined || (text.includes("!") && found.sheet?.includes("!") === true);
}

/** True for a name of which the engine takes another one than the file means, or whose formula it misreads. */
function isNameMisread(text: string, reading: Reading): boolean {
  const meant = entryOf(text, reading);
  const taken = lastOf(text, reading);
  if (meant !== taken) return true;
  if (meant === undefined || reading.inside.has(meant)) return false;
  return isMisread(`=${meant.refersTo}`, {
    ...reading,
    sheet: meant.sheet ?? reading.sheet,
    inside: new Set([...reading.inside, meant]),
    isName: true,
  });
}

const QUALIFIED = /^(?:'((?:[^']|'')*)'|([^'!]+))!(.+)$/;

/** The name that is meant: the sheet's own before the workbook's. */
function entryOf(text: string, { sheet, engine: { names } }: Reading): NameEntry | undefined {
  const [, quoted, bare, name = text] = QUALIFIED.exec(text) ?? [];
  const on = (quoted?.replaceAll("''", "'") ?? bare ?? sheet).toLowerCase();
  const called = names.get(name.toLowerCase()) ?? [];
  return called.filter((one) => one.sheet?.toLowerCase() === on).at(-1) ?? called.filter((one) => one.sheet === undefined).at(-1);
}

/** The name that the engine takes: the last one, whose ever it is, and none where the text tells it with another sheet. */
function lastOf(text: string, { engine: { names } }: Reading): NameEntry | undefined {
  const [, quoted, bare, name = text] = QUALIFIED.exec(text) ?? [];
  const last = names.get(name.toLowerCase())?.at(-1);
  const on = quoted?.replaceAll("''", "'") ?? bare;
  return on === undefined || last?.sheet === undefined || last.sheet === on ? last : undefined;
}
