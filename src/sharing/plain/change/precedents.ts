import { catalogueName } from "../../catalogueName";
import { formulaTree, type FormulaTree } from "../formula/formulaTree";
import { ASKS_WHERE, REFERS_UNSEEN, TAKES_AS_MANY, VOLATILE } from "../formula/functionKinds";
import { nameCalled, partsOf, variablesIn, type Call, type Part, type Reference } from "../formula/parts";
import { cellsReferred, tableCellsReferred } from "../formula/reference";
import type { Surroundings } from "../reading/Surroundings";
import { formulaNamed } from "../writing/named";
import { SourcesFound, type FormulaSources } from "./FormulaSources";
import { addAsMany, addPlace, addSheets, addSpill, leadsToGone, pickedBy } from "./referredUnusually";

/**
 * @param sheets that are shared, in their order
 * @param order every sheet of the workbook, for references that go through several
 */
export function sourcesOf(formula: string, place: Surroundings, sheets: readonly string[], order = sheets): FormulaSources {
  const found = new SourcesFound(sheets, order);
  const tree = formulaTree(formula);
  if (tree === undefined) {
    found.untold();
    found.isOurs = mayBeOurs(formula);
  } else gather(tree.root, { tree, place, seen: new Set() }, found);
  return found.all;
}

/** A formula that cannot be taken apart is looked at as text: better taken for ours than left alone. */
export const mayBeOurs = (formula: string): boolean => /RETORT[._]/i.test(formula);

interface Looking {
  readonly tree: FormulaTree;
  readonly place: Surroundings;
  /** The formulas of names that are being looked into. */
  readonly seen: ReadonlySet<string>;
}

/** Loops over what stands ahead: a sum of thousands of terms is as deep as it is long. */
function gather(root: Part, looking: Looking, into: SourcesFound): void {
  const ahead: Part[] = [root];
  const variables = new Set<string>();
  while (ahead.length > 0) {
    const part = ahead.pop();
    for (const name of variablesIn(part)) variables.add(name.toLowerCase());
    ahead.push(...gatherPart(part, variables, looking, into));
  }
}

/** @returns the parts of it that are still to be looked into */
function gatherPart(part: Part, variables: ReadonlySet<string>, looking: Looking, into: SourcesFound): readonly Part[] {
  switch (part?.type) {
    case "UnaryExpression":
      if (part.operator !== "#") return part.arguments;
      addSpill(part.arguments[0], looking, into);
      return [];
    case "BinaryExpression":
      if (part.operator !== ":") return part.arguments;
      if (addSheets(part.arguments, looking, into)) return [];
      if (!part.arguments.every((one) => one.type === "ReferenceIdentifier")) gatherBetween(part.arguments, looking, into);
      return part.arguments;
    case "CallExpression":
      return gatherCall(part, variables, looking, into);
    case "ReferenceIdentifier":
      gatherReference(part, variables, looking, into);
      return [];
    default:
      return partsOf(part);
  }
}

function gatherCall(part: Call, variables: ReadonlySet<string>, looking: Looking, into: SourcesFound): readonly Part[] {
  const called = nameCalled(part);
  const name = called.toUpperCase();
  const [first] = part.arguments;
  if (catalogueName(name) !== undefined) into.isOurs = true;
  if (name !== "" && !variables.has(name.toLowerCase())) gatherName(called, looking, into);
  if (REFERS_UNSEEN.has(name)) gatherPicked(part, looking, into);
  // Counts the sheets of the workbook, or tells which one it is.
  if ((name === "SHEET" || name === "SHEETS") && looking.place.isGone !== undefined) into.isBeyond = true;
  if (name === "HYPERLINK" && leadsToGone(first, looking)) into.isBeyond = true;
  if (VOLATILE.has(name)) into.isVolatile = true;
  if (TAKES_AS_MANY.has(name)) addAsMany(name, part, looking, into);
  if (name === "ANCHORARRAY") {
    addSpill(first, looking, into);
    return [];
  }
  return ASKS_WHERE.has(name) ? part.arguments.filter((one) => !addPlace(one, looking, into)) : partsOf(part);
}

/** A range between two references that are worked out lies on one sheet: where that is not shared, nothing of it is to be followed. */
function gatherBetween(ends: readonly Part[], looking: Looking, into: SourcesFound): void {
  const alone = into.apart();
  for (const end of ends) gather(end, looking, alone);
  if (!alone.isBeyond || alone.precedents.length > 0 || alone.isUnseen) into.untold();
}

/** What INDIRECT or OFFSET referred to. It refers to something else as soon as what it is told changes. */
function gatherPicked(call: Call, looking: Looking, into: SourcesFound): void {
  into.isUnseen = true;
  const found = pickedBy(call, looking);
  const alone = into.apart();
  if (found === undefined) {
    into.isUntold = true;
    if (nameCalled(call).toUpperCase() === "INDIRECT") into.isAnywhere = true;
  } else if (typeof found === "object") alone.add(found);
  else if (!gatherName(found, looking, alone)) into.isUntold = true;
  into.addPicked(alone);
}

function gatherReference(part: Reference, variables: ReadonlySet<string>, looking: Looking, into: SourcesFound): void {
  const { tree, place } = looking;
  const text = tree.textOf(part);
  const found = part.kind === "table" ? tableCellsReferred(text, place) : part.kind === "name" ? undefined : cellsReferred(text, place.sheet);
  if (found !== undefined) return into.add(found);
  if (part.kind === "table") return into.untold();
  // The name of a function of ours without a call: behind a space, or handed to another function.
  if (catalogueName(text) !== undefined) into.isOurs = true;
  if (part.kind === "name" && variables.has(text.toLowerCase())) return;
  if (!gatherName(text, looking, into)) into.untold();
}

/** What a name stands for, be it called or not. @returns false where it is not known */
function gatherName(text: string, looking: Looking, into: SourcesFound): boolean {
  const formula = formulaNamed(text, looking.place);
  if (formula === undefined) return false;
  if (looking.seen.has(formula) || into.names.has(formula)) return true;
  into.names.add(formula);
  const named = formulaTree(formula.startsWith("=") ? formula : `=${formula}`);
  if (named === undefined) into.untold();
  else gather(named.root, { ...looking, tree: named, seen: new Set([...looking.seen, formula]) }, into);
  return true;
}
