import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, withAttributes } from "../parts/markup";
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
