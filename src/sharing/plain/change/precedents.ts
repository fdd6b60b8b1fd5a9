import type { CellArea } from "../../../workbook/cellArea";
import { catalogueName } from "../../catalogueName";
import type { Part } from "../formula/parts";
import { spillReferred } from "../writing/areaReferred";
import { CannotWrite } from "../writing/CannotWrite";
import { formulaTree, type FormulaTree } from "../formula/formulaTree";
import { ASKS_WHERE, REFERS_UNSEEN, TAKES_AS_MANY, VOLATILE } from "../formula/functionKinds";
import { cellsReferred, tableCellsReferred, type Referred } from "../formula/reference";
import { heldValue } from "./heldValue";
import { areaShown, indirectly, offset } from "./picked";
import type { Surroundings } from "../reading/Surroundings";

/** Cells that a formula is calculated from. */
export interface Precedent {
  readonly sheet: string;
  readonly area: CellArea;
}

/** What a formula is calculated from. */
export interface FormulaSources {
  readonly precedents: readonly Precedent[];
  /** True where it calls one of our functions, itself or through a defined name. */
  readonly isOurs: boolean;
  /** True where its text does not show all that it refers to. */
  readonly isUnseen: boolean;
  /** What else it referred to as the workbook was read, where its text does not show it and that can be told. */
  readonly asRead?: readonly Precedent[];
  /** True where it may refer to any sheet, which one cannot be told. */
  readonly isAnywhere: boolean;
  /** True where it gives something else without any cell changing, such as NOW(). */
  readonly isVolatile: boolean;
  /** True where it refers to a sheet that is not shared. */
  readonly isBeyond: boolean;
}

interface Gathered {
  readonly precedents: Precedent[];
  /** What calls of INDIRECT and OFFSET referred to. */
  readonly picked: Precedent[];
  isOurs: boolean;
  isUnseen: boolean;
  /** True where what its text does not show cannot be told from the cells either. */
  isUntold: boolean;
  isAnywhere: boolean;
  isVolatile: boolean;
  isBeyond: boolean;
  /** The formulas of names that are gathered already: names of names would be looked into again and again. */
  readonly names: Set<string>;
}

/**
 * @param sheets that are shared, in their order
 * @param order every sheet of the workbook, for references that go through several
 */
export function sourcesOf(formula: string, place: Surroundings, sheets: readonly string[], order = sheets): FormulaSources {
  const gathered = nothing();
  const tree = formulaTree(formula);
  if (tree === undefined) untold(Object.assign(gathered, { isOurs: mayBeOurs(formula) }));
  else gather(tree.root, { tree, place, sheets, order, seen: new Set() }, gathered);
  const { precedents, picked, isUntold, isOurs, isUnseen, isAnywhere, isVolatile, isBeyond } = gathered;
  return { precedents, isOurs, isUnseen, isAnywhere, isVolatile, isBeyond, ...(isUnseen && !isUntold && { asRead: picked }) };
}

const nothing = (): Gathered => ({
  ...{ precedents: [], picked: [], isOurs: false, isUnseen: false, isUntold: false },
  ...{ isAnywhere: false, isVolatile: false, isBeyond: false, names: new Set<string>() },
});

function untold(into: Gathered): void {
  into.isUnseen = true;
  into.isUntold = true;
}

/** A formula that cannot be taken apart is looked at as text: better taken for ours than left alone. */
export const mayBeOurs = (formula: string): boolean => /RETORT[._]/i.test(formula);

interface Looking {
  readonly tree: FormulaTree;
  readonly place: Surroundings;
  readonly sheets: readonly string[];
  readonly order: readonly string[];
  /** The formulas of names that are being looked into. */
  readonly seen: ReadonlySet<string>;
}

/** Loops over what stands ahead: a sum of thousands of terms is as deep as it is long. */
function gather(root: Part, looking: Looking, into: Gathered): void {
  const ahead: Part[] = [root];
  const variables = new Set<string>();
  while (ahead.length > 0) {
    const part = ahead.pop();
    switch (part?.type) {
      case "UnaryExpression":
        if (part.operator === "#") gatherSpill(part.arguments[0], looking, into);
        else ahead.push(...part.arguments);
        break;
      case "BinaryExpression":
        if (part.operator === ":" && gatherSheets(part.arguments, looking, into)) break;
        if (part.operator === ":" && !part.arguments.every((one) => one.type === "ReferenceIdentifier")) gatherBetween(part.arguments, looking, into);
        ahead.push(...part.arguments);
        break;
      case "ArrayExpression":
        break;
      case "LetExpression":
        for (const { id } of part.declarations) variables.add(id.name.toLowerCase());
        ahead.push(part.body, ...part.declarations.map(({ init }) => init));
        break;
      case "LambdaExpression":
        for (const { name } of part.params) variables.add(name.toLowerCase());
        ahead.push(part.body);
        break;
      case "CallExpression": {
        const name = part.callee.name?.toUpperCase() ?? "";
        if (name === "") ahead.push(part.callee as unknown as Part);
        const ours = catalogueName(name);
        if (ours !== undefined) into.isOurs = true;
        if (name !== "" && !variables.has(name.toLowerCase())) gatherName(part.callee.name, looking, into);
        if (REFERS_UNSEEN.has(name)) gatherPicked(name, part, looking, into);
        // Counts the sheets of the workbook, or tells which one it is.
        if ((name === "SHEET" || name === "SHEETS") && looking.place.isGone !== undefined) into.isBeyond = true;
        if (name === "HYPERLINK" && leadsToGone(part.arguments[0], looking)) into.isBeyond = true;
        if (VOLATILE.has(name)) into.isVolatile = true;
        if (TAKES_AS_MANY.has(name)) gatherAsMany(name, part, looking, into);
        if (name === "ANCHORARRAY") gatherSpill(part.arguments[0], looking, into);
        else for (const one of part.arguments) if (!ASKS_WHERE.has(name) || !gatherPlace(one, looking, into)) ahead.push(one);
        break;
      }
      case "ReferenceIdentifier":
        gatherReference(part, looking, variables, into);
        break;
      default:
    }
  }
}

/** A range between two references that are worked out lies on one sheet: where that is not shared, nothing of it is to be followed. */
function gatherBetween(ends: readonly Part[], looking: Looking, into: Gathered): void {
  const alone = nothing();
  for (const end of ends) gather(end, looking, alone);
  if (alone.isBeyond && alone.precedents.length === 0 && !alone.isUnseen) return;
  untold(into);
}

/** What INDIRECT or OFFSET referred to. It refers to something else as soon as what it is told changes. */
function gatherPicked(name: string, call: Extract<Part, { type: "CallExpression" }>, looking: Looking, into: Gathered): void {
  into.isUnseen = true;
  const alone = nothing();
  const found = name === "INDIRECT" ? indirectly(call.arguments, looking) : (offset(call.arguments, looking) ?? goneBase(call.arguments[0], looking));
  if (found === undefined) {
    into.isUntold = true;
    if (name === "INDIRECT") into.isAnywhere = true;
  } else if (typeof found === "object") add(found, looking, alone);
  else if (!gatherName(found, looking, alone)) into.isUntold = true;
  into.picked.push(...alone.precedents, ...alone.picked);
  into.isBeyond ||= alone.isBeyond;
  into.isUntold ||= alone.isUntold;
  into.isAnywhere ||= alone.isAnywhere;
}

/** OFFSET does not leave the sheet of its first argument. */
function goneBase(from: Part, looking: Looking): Referred | undefined {
  const base = areaShown(from, looking);
  return base?.sheet !== undefined && looking.place.isGone?.(base.sheet) === true ? base : undefined;
}

/** Whether a link leads to a place on a sheet that goes from the file. */
function leadsToGone(target: Part, looking: Looking): boolean {
  const text = heldValue(target, looking);
  if (typeof text !== "string" || !text.startsWith("#")) return false;
  const sheet = cellsReferred(text.slice(1), looking.place.sheet)?.sheet;
  return sheet !== undefined && looking.place.isGone?.(sheet) === true;
}

function gatherSpill(anchor: Part, looking: Looking, into: Gathered): void {
  const { tree, place } = looking;
  try {
    const scope = { tree, place, options: {}, variables: new Map(), isSingle: false, isOnEach: false, isQualified: false };
    add(spillReferred(anchor, scope), looking, into);
  } catch (thrown) {
    if (!(thrown instanceof CannotWrite)) throw thrown;
    untold(into);
  }
}

/**
 * Where the names of the sheets look like cells and stand without quotation marks, the parser takes Tin1:Tin2!B4 for a range from Tin1 to Tin2!B4.
 * @returns false for what is no reference to several sheets
 */
function gatherSheets(ends: readonly Part[], looking: Looking, into: Gathered): boolean {
  const { tree, sheets } = looking;
  const [first, last] = ends.map((end) => (end?.type === "ReferenceIdentifier" ? tree.textOf(end) : ""));
  const [, lastSheet, cells] = /^([^!']+)!([^!]+)$/.exec(last ?? "") ?? [];
  const isSheet = (name: string): boolean => sheets.some((one) => one.toLowerCase() === name.toLowerCase());
  if (first === undefined || lastSheet === undefined || !isSheet(first) || !isSheet(lastSheet)) return false;
  const found = cellsReferred(cells ?? "", first);
  if (found === undefined) untold(into);
  else add({ ...found, sheet: first, lastSheet }, looking, into);
  return true;
}

/**
 * Of the last range such a function takes as many cells as another has, whatever size is written: SUMIF(A1:A9,">0",B1) adds up B1:B9. Where that is
 * no range that the text shows, it cannot be told, but for a vector that LOOKUP has calculated, beside one of more than one cell.
 */
function gatherAsMany(name: string, { arguments: given }: { readonly arguments: readonly Part[] }, looking: Looking, into: Gathered): void {
  const [sized, last] = [given[TAKES_AS_MANY.get(name) ?? 0], given[2]];
  if (last === undefined || last === null) return;
  const [asked, taken] = [areaShown(sized, looking), areaShown(last, looking)];
  if (taken === undefined || (asked === undefined && (name !== "LOOKUP" || taken.area.rows * taken.area.columns === 1))) untold(into);
  else if (asked !== undefined) add({ ...taken, area: { ...taken.area, rows: asked.area.rows, columns: asked.area.columns } }, looking, into);
}

/** What stands in cells does not matter where only their place is asked for. @returns false for what is no reference to cells */
function gatherPlace(part: Part, looking: Looking, into: Gathered): boolean {
  const { tree, place } = looking;
  if (part?.type !== "ReferenceIdentifier" || part.kind === "table" || part.kind === "name") return false;
  const found = cellsReferred(tree.textOf(part), place.sheet);
  if (found === undefined) return false;
  const alone = nothing();
  add(found, looking, alone);
  into.isBeyond ||= alone.isBeyond;
  return true;
}

function gatherReference(
  part: Extract<Part, { type: "ReferenceIdentifier" }>,
  looking: Looking,
  variables: ReadonlySet<string>,
  into: Gathered,
): void {
  const { tree, place } = looking;
  const text = tree.textOf(part);
  if (part.kind === "table") {
    const found = tableCellsReferred(text, place);
    if (found === undefined) untold(into);
    else add(found, looking, into);
    return;
  }
  const found = part.kind === "name" ? undefined : cellsReferred(text, place.sheet);
  if (found !== undefined) return add(found, looking, into);
  // The name of a function of ours without a call: behind a space, or handed to another function.
  if (catalogueName(text) !== undefined) into.isOurs = true;
  if (part.kind === "name" && variables.has(text.toLowerCase())) return;
  if (!gatherName(text, looking, into)) untold(into);
}

/** What a name stands for, be it called or not. @returns false where it is not known */
function gatherName(text: string, looking: Looking, into: Gathered): boolean {
  const { place, seen } = looking;
  const [, quoted, bare, name = text] = /^(?:'((?:[^']|'')*)'|([^'!]+))!(.+)$/.exec(text) ?? [];
  const formula = place.nameOf(name, quoted?.replaceAll("''", "'") ?? bare ?? place.sheet);
  if (formula === undefined) return false;
  if (seen.has(formula) || into.names.has(formula)) return true;
  into.names.add(formula);
  const named = formulaTree(formula.startsWith("=") ? formula : `=${formula}`);
  if (named === undefined) {
    untold(into);
    return true;
  }
  gather(named.root, { ...looking, tree: named, seen: new Set([...seen, formula]) }, into);
  return true;
}

function add({ sheet, lastSheet, area }: Referred, { sheets, order }: Looking, into: Gathered): void {
  // Another workbook changes nothing here.
  if (sheet === undefined) return;
  const placeOf = (name: string): number => order.findIndex((one) => one.toLowerCase() === name.toLowerCase());
  const [first, last] = [placeOf(sheet), placeOf(lastSheet ?? sheet)];
  const through = first === -1 || last === -1 ? [] : order.slice(Math.min(first, last), Math.max(first, last) + 1);
  const shared = through.filter((name) => sheets.includes(name));
  if (shared.length === 0 || shared.length < through.length) into.isBeyond = true;
  for (const name of shared) into.precedents.push({ sheet: name, area });
}
