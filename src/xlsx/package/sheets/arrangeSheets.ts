import type { EditableParts } from "../parts/EditableParts";
import { placeInFile } from "../alone/placeInFile";
import { FORMULAS_OF_SHAPES } from "../besideCells/cellLinks";
import { attributeOf, childNamed, elementsOf, escapedText, unescapedText, withAttributes } from "../parts/markup";
import { holdsFormulas, mendFormulas } from "../besideCells/mendFormulas";
import { withSheetsRenamed } from "./namedSheets";
import { workbookOutline } from "../workbookOutline";

/** Gives sheets other names, also in every formula of the file. @param names new names by the old ones */
export async function renameSheets(parts: EditableParts, names: ReadonlyMap<string, string>): Promise<void> {
  if (names.size === 0) return;
  const { part, text, sheets } = await workbookOutline(parts);
  const edits = sheets.flatMap(({ name, element }) => (names.has(name) ? [withAttributes(text, element, { name: names.get(name) })] : []));
  await parts.edit(part, edits);
  const byCapitals = new Map([...names].map(([old, now]) => [old.toUpperCase(), now]));
  const mend = (formula: string): string => withSheetsRenamed(formula, byCapitals);
  for (const one of [part, ...parts.names().filter(holdsFormulas)]) await mendFormulas(parts, one, mend, (sheet) => names.get(sheet) ?? sheet);
  await mendPlaces(parts, mend);
}

const LINKS_OF = /^xl\/(worksheets|drawings|charts)\/_rels\/[^/]*\.rels$/i;
const OLDER_SHAPES = /^xl\/drawings\/[^/]*\.vml$/i;

/** Links of shapes to places of the file, and what shapes of the older kind read. */
async function mendPlaces(parts: EditableParts, mend: (formula: string) => string): Promise<void> {
  for (const list of parts.names().filter((name) => LINKS_OF.test(name))) {
    const text = await parts.text(list);
    const links = text.includes('"#') ? elementsOf(list, text).children : [];
    const edits = links.flatMap((link) => {
      const place = placeInFile(link.attributes.Target ?? "");
      return place === undefined || mend(place) === place ? [] : [withAttributes(text, link, { Target: `#${encodeURI(mend(place))}` })];
    });
    await parts.edit(list, edits);
  }
  for (const shapes of parts.names().filter((name) => OLDER_SHAPES.test(name))) {
    const edits = [...(await parts.text(shapes)).matchAll(FORMULAS_OF_SHAPES)].flatMap(({ 0: whole, 3: said = "", index }) => {
      const from = index + whole.lastIndexOf(`${said}</`);
      const formula = unescapedText(said);
      return mend(formula) === formula ? [] : [{ from, to: from + said.length, text: escapedText(mend(formula)) }];
    });
    await parts.edit(shapes, edits);
  }
}

/** Puts the sheets into another order. @param names every sheet's, in the order wanted */
export async function orderSheets(parts: EditableParts, names: readonly string[]): Promise<void> {
  const { part, text, root, sheets, names: defined } = await workbookOutline(parts);
  if (sheets.every(({ name }, place) => name === names[place])) return;
  const inOrder = names.flatMap((name) => sheets.find((sheet) => sheet.name === name) ?? []);
  const placeOf = (old: number): string => String(inOrder.findIndex(({ name }) => name === sheets[old]?.name));
  await parts.edit(part, [
    ...sheets.map(({ element }, place) => {
      const put = inOrder[place]?.element ?? element;
      return { from: element.start, to: element.close.end, text: text.slice(put.start, put.close.end) };
    }),
    ...defined.flatMap(({ sheet, element }) => (sheet === undefined ? [] : [withAttributes(text, element, { localSheetId: placeOf(sheet) })])),
    ...(childNamed(root, "bookViews")?.children ?? []).map((view) =>
      withAttributes(text, view, { activeTab: placeOf(Number(attributeOf(view, "activeTab") ?? 0)), firstSheet: undefined }),
    ),
  ]);
}
