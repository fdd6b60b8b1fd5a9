import type { CellArea } from "../../../workbook/cellArea";
import { catalogueName } from "../../catalogueName";
import { CannotWrite } from "../CannotWrite";
import { formulaTree, type FormulaTree, type Part } from "../formulaTree";
import { ASKS_WHERE, REFERS_UNSEEN, TAKES_AS_MANY, VOLATILE } from "../functionKinds";
import { cellsReferred, tableCellsReferred, type Referred } from "../reference";
import { spillReferred } from "../sizeOf";
import type { Surroundings } from "../Surroundings";

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
  /** True where it gives something else without any cell changing, such as NOW(). */
  readonly isVolatile: boolean;
  /** True where it refers to a sheet that is not shared. */
  readonly isBeyond: boolean;
}

interface Gathered {
  readonly precedents: Precedent[];
  isOurs: boolean;
  isUnseen: boolean;
  isVolatile: boolean;
  isBeyond: boolean;
}

/** @param sheets that are shared, in their order */
export function sourcesOf(formula: string, place: Surroundings, sheets: readonly string[]): FormulaSources {
  const gathered: Gathered = { precedents: [], isOurs: false, isUnseen: false, isVolatile: false, isBeyond: false };
  const tree = formulaTree(formula);
  if (tree === undefined) return { ...gathered, isUnseen: true, isOurs: mayBeOurs(formula) };
  gather(tree.root, { tree, place, sheets, seen: new Set() }, gathered);
  return gathered;
}

/** A formula that cannot be taken apart is looked at as text: better taken for ours than left alone. */
export const mayBeOurs = (formula: string): boolean => /RETORT[._]/i.test(formula);

interface Looking {
  readonly tree: FormulaTree;
  readonly place: Surroundings;
  readonly sheets: readonly string[];
  /** Names that are being looked into. */
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
        if (part.operator === ":" && !part.arguments.every((one) => one.type === "ReferenceIdentifier")) into.isUnseen = true;
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
        if (REFERS_UNSEEN.has(name)) into.isUnseen = true;
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

function gatherSpill(anchor: Part, { tree, place, sheets }: Looking, into: Gathered): void {
  try {
    const scope = { tree, place, options: {}, variables: new Map(), isSingle: false, isOnEach: false, isQualified: false };
    add(spillReferred(anchor, scope), sheets, into);
  } catch (thrown) {
    if (!(thrown instanceof CannotWrite)) throw thrown;
    into.isUnseen = true;
  }
}

/**
 * Where the names of the sheets look like cells and stand without quotation marks, the parser takes Tin1:Tin2!B4 for a range from Tin1 to Tin2!B4.
 * @returns false for what is no reference to several sheets
 */
function gatherSheets(ends: readonly Part[], { tree, sheets }: Looking, into: Gathered): boolean {
  const [first, last] = ends.map((end) => (end?.type === "ReferenceIdentifier" ? tree.textOf(end) : ""));
  const [, lastSheet, cells] = /^([^!']+)!([^!]+)$/.exec(last ?? "") ?? [];
  const isSheet = (name: string): boolean => sheets.some((one) => one.toLowerCase() === name.toLowerCase());
  if (first === undefined || lastSheet === undefined || !isSheet(first) || !isSheet(lastSheet)) return false;
  const found = cellsReferred(cells ?? "", first);
  if (found === undefined) into.isUnseen = true;
  else add({ ...found, sheet: first, lastSheet }, sheets, into);
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
  if (taken === undefined || (asked === undefined && (name !== "LOOKUP" || taken.area.rows * taken.area.columns === 1))) into.isUnseen = true;
  else if (asked !== undefined) add({ ...taken, area: { ...taken.area, rows: asked.area.rows, columns: asked.area.columns } }, looking.sheets, into);
}

/** The cells of a reference, be it a name or a table's column. */
function areaShown(part: Part, { tree, place }: Looking): Referred | undefined {
  if (part?.type !== "ReferenceIdentifier") return undefined;
  const text = tree.textOf(part);
  if (part.kind === "table") return tableCellsReferred(text, place);
  return cellsReferred(part.kind === "name" ? (place.nameOf(text, place.sheet) ?? "").replace(/^=/, "") : text, place.sheet);
}

/** What stands in cells does not matter where only their place is asked for. @returns false for what is no reference to cells */
function gatherPlace(part: Part, { tree, place, sheets }: Looking, into: Gathered): boolean {
  if (part?.type !== "ReferenceIdentifier" || part.kind === "table" || part.kind === "name") return false;
  const found = cellsReferred(tree.textOf(part), place.sheet);
  if (found === undefined) return false;
  const alone: Gathered = { ...into, precedents: [], isBeyond: false };
  add(found, sheets, alone);
  into.isBeyond ||= alone.isBeyond;
  return true;
}

function gatherReference(
  part: Extract<Part, { type: "ReferenceIdentifier" }>,
  looking: Looking,
  variables: ReadonlySet<string>,
  into: Gathered,
): void {
  const { tree, place, sheets } = looking;
  const text = tree.textOf(part);
  if (part.kind === "table") {
    const found = tableCellsReferred(text, place);
    if (found === undefined) into.isUnseen = true;
    else add(found, sheets, into);
    return;
  }
  const found = part.kind === "name" ? undefined : cellsReferred(text, place.sheet);
  if (found !== undefined) return add(found, sheets, into);
  // The name of a function of ours without a call: behind a space, or handed to another function.
  if (catalogueName(text) !== undefined) into.isOurs = true;
  if (part.kind === "name" && variables.has(text.toLowerCase())) return;
  if (!gatherName(text, looking, into)) into.isUnseen = true;
}

/** What a name stands for, be it called or not. @returns false where it is not known */
function gatherName(text: string, looking: Looking, into: Gathered): boolean {
  const { place, seen } = looking;
  const [, quoted, bare, name = text] = /^(?:'((?:[^']|'')*)'|([^'!]+))!(.+)$/.exec(text) ?? [];
  const formula = place.nameOf(name, quoted?.replaceAll("''", "'") ?? bare ?? place.sheet);
  const key = name.toUpperCase();
  if (formula === undefined) return false;
  if (seen.has(key)) return true;
  const named = formulaTree(formula.startsWith("=") ? formula : `=${formula}`);
  if (named === undefined) {
    into.isUnseen = true;
    return true;
  }
  gather(named.root, { ...looking, tree: named, seen: new Set([...seen, key]) }, into);
  return true;
}

function add({ sheet, lastSheet, area }: Referred, sheets: readonly string[], into: Gathered): void {
  // Another workbook changes nothing here.
  if (sheet === undefined) return;
  const [first, last] = [sheet, lastSheet ?? sheet].map((name) => sheets.findIndex((one) => one.toLowerCase() === name.toLowerCase())) as [
    number,
    number,
  ];
  if (first === -1 || last === -1) {
    into.isBeyond = true;
    return;
  }
  for (const name of sheets.slice(Math.min(first, last), Math.max(first, last) + 1)) into.precedents.push({ sheet: name, area });
}
