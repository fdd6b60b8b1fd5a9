import { CannotWrite } from "../writing/CannotWrite";
import { TAKES_AS_MANY } from "../formula/functionKinds";
import { nameCalled, type Call, type Part } from "../formula/parts";
import { cellsReferred, type Referred } from "../formula/reference";
import { spillReferred } from "../writing/areaReferred";
import type { SourcesFound } from "./FormulaSources";
import { heldValue, type Standing } from "./heldValue";
import { areaShown, indirectly, offset } from "./picked";

// What a formula refers to in other ways than by a reference that is taken as it stands.

/** What INDIRECT or OFFSET referred to: cells or a name; undefined where that cannot be told. */
export const pickedBy = (call: Call, standing: Standing): Referred | string | undefined =>
  nameCalled(call).toUpperCase() === "INDIRECT"
    ? indirectly(call.arguments, standing)
    : (offset(call.arguments, standing) ?? goneBase(call.arguments[0], standing));

/** OFFSET does not leave the sheet of its first argument. */
function goneBase(from: Part, standing: Standing): Referred | undefined {
  const base = areaShown(from, standing);
  return base?.sheet !== undefined && standing.place.isGone?.(base.sheet) === true ? base : undefined;
}

/** Whether a link leads to a place on a sheet that goes from the file. */
export function leadsToGone(target: Part, standing: Standing): boolean {
  const text = heldValue(target, standing);
  if (typeof text !== "string" || !text.startsWith("#")) return false;
  const sheet = cellsReferred(text.slice(1), standing.place.sheet)?.sheet;
  return sheet !== undefined && standing.place.isGone?.(sheet) === true;
}

export function addSpill(anchor: Part, { tree, place }: Standing, into: SourcesFound): void {
  try {
    const scope = { tree, place, options: {}, variables: new Map(), isSingle: false, isOnEach: false, isQualified: false };
    into.add(spillReferred(anchor, scope));
  } catch (thrown) {
    if (!(thrown instanceof CannotWrite)) throw thrown;
    into.untold();
  }
}

/**
 * Where the names of the sheets look like cells and stand without quotation marks, the parser takes Tin1:Tin2!B4 for a range from Tin1 to Tin2!B4.
 * @returns false for what is no reference to several sheets
 */
export function addSheets(ends: readonly Part[], { tree }: Standing, into: SourcesFound): boolean {
  const [first, last] = ends.map((end) => (end?.type === "ReferenceIdentifier" ? tree.textOf(end) : ""));
  const [, lastSheet, cells] = /^([^!']+)!([^!]+)$/.exec(last ?? "") ?? [];
  const isSheet = (name: string): boolean => into.sheets.some((one) => one.toLowerCase() === name.toLowerCase());
  if (first === undefined || lastSheet === undefined || !isSheet(first) || !isSheet(lastSheet)) return false;
  const found = cellsReferred(cells ?? "", first);
  if (found === undefined) into.untold();
  else into.add({ ...found, sheet: first, lastSheet });
  return true;
}

/**
 * Of the last range such a function takes as many cells as another has, whatever size is written: SUMIF(A1:A9,">0",B1) adds up B1:B9. Where that is
 * no range that the text shows, it cannot be told, but for a vector that LOOKUP has calculated, beside one of more than one cell.
 */
export function addAsMany(name: string, { arguments: given }: Call, standing: Standing, into: SourcesFound): void {
  const [sized, last] = [given[TAKES_AS_MANY.get(name) ?? 0], given[2]];
  if (last === undefined || last === null) return;
  const [asked, taken] = [areaShown(sized, standing), areaShown(last, standing)];
  if (taken === undefined || (asked === undefined && (name !== "LOOKUP" || taken.area.rows * taken.area.columns === 1))) into.untold();
  else if (asked !== undefined) into.add({ ...taken, area: { ...taken.area, rows: asked.area.rows, columns: asked.area.columns } });
}

/** What stands in cells does not matter where only their place is asked for. @returns false for what is no reference to cells */
export function addPlace(part: Part, { tree, place }: Standing, into: SourcesFound): boolean {
  if (part?.type !== "ReferenceIdentifier" || part.kind === "table" || part.kind === "name") return false;
  const found = cellsReferred(tree.textOf(part), place.sheet);
  if (found === undefined) return false;
  const alone = into.apart();
  alone.add(found);
  into.isBeyond ||= alone.isBeyond;
  return true;
}
