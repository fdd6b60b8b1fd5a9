import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, escapedText, readMarkup, withAttributes, type Tag } from "../parts/markup";
import type { Edit } from "../parts/partText";
import { withoutCells } from "./withoutCells";
import { cellLinks } from "./cellLinks";

/** Where parts hold formulas: cells, rules of entry and of colour, charts, small charts, columns of tables, names. */
const FORMULA = /^(f|formula|formula1|formula2|calculatedColumnFormula|totalsRowFormula|definedName)$/;

const PARTS = /^xl\/(worksheets|charts|tables|chartsheets|pivotcache|drawings|ctrlprops)\/[^/]*\.xml$/i;

export const holdsFormulas = (part: string): boolean => PARTS.test(part);

/** The beginning of an element that a cell may hold its formula in. A sheet whose cells hold values is not gone through cell by cell. */
const CELL_FORMULA = /[<:]f[\s/>]/;

/**
 * Puts other formulas in place of those that no cell holds, of rules and charts, where they hold a word.
 * @param mend gives the formula as it is to be, without "=" as it stands there
 */
export async function mendBesideCells(parts: EditableParts, part: string, word: string, mend: (formula: string) => string): Promise<void> {
  if (holdsFormulas(part) && (await parts.text(part)).includes(word)) await mendFormulas(parts, part, mend, undefined, false);
}

/** Puts other formulas in place of those of a part. @param mend gives the formula as it is to be, without "=" as it stands there */
export async function mendFormulas(
  parts: EditableParts,
  part: string,
  mend: (formula: string) => string,
  mendSheet?: (sheet: string) => string,
  withCells = true,
): Promise<void> {
  const text = await parts.text(part);
  const edits: Edit[] = [];
  let open: Tag | undefined;
  let said = "";
  readMarkup(part, withCells && CELL_FORMULA.test(text) ? text : withoutCells(text), {
    open: (tag) => {
      open = FORMULA.test(tag.name) ? tag : undefined;
      said = "";
      edits.push(...named(text, tag, mend, mendSheet));
    },
    text: (more) => void (said += more),
    close: (name, { start }) => {
      if (open?.name !== name || open.isEmpty || said === "") return;
      const mended = mend(said);
      if (mended !== said) edits.push({ from: open.end, to: start, text: escapedText(mended) });
      open = undefined;
    },
  });
  await parts.edit(part, edits);
}

/** What names a sheet alone: what a pivot table or a consolidation reads. */
const SOURCES: readonly string[] = ["worksheetSource", "rangeSet", "dataRef"];

/** A link to a place of the file, what a pivot table reads, and shapes and controls that show a cell name a sheet in an attribute. */
function named(text: string, tag: Tag, mend: (formula: string) => string, mendSheet: ((sheet: string) => string) | undefined): Edit[] {
  if (mendSheet === undefined) return [];
  const wanted: (readonly [name: string, mended: (said: string) => string])[] = cellLinks(tag).map((name) => [name, mend]);
  if (tag.name === "hyperlink") wanted.push(["location", mend]);
  if (SOURCES.includes(tag.name)) wanted.push(["sheet", mendSheet]);
  const now = wanted.flatMap(([name, mended]) => {
    const said = attributeOf(tag, name);
    return said === undefined || mended(said) === said ? [] : [[name, mended(said)] as const];
  });
  return now.length === 0 ? [] : [withAttributes(text, tag, Object.fromEntries(now))];
}
