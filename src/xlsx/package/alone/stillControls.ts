import { relationshipsOf } from "../../parts/relationships";
import { cellLinks, FORMULAS_OF_SHAPES } from "../besideCells/cellLinks";
import { withoutCells } from "../besideCells/withoutCells";
import type { EditableParts } from "../parts/EditableParts";
import { childrenNamed, elementsOf, elementsThat, removal, unescapedText, withAttributes, type Element } from "../parts/markup";

/** Makes the controls of a sheet keep what they show and no longer name cells that go; a consolidation of such cells is forgotten. */
export async function stillControls(parts: EditableParts, sheet: string, isGone: (formula: string) => boolean): Promise<void> {
  const root = elementsOf(sheet, withoutCells(await parts.text(sheet)));
  const gathers = (one: Element): boolean => isGone(nameOf(one.attributes.sheet, one.attributes.ref)) || isGone(one.attributes.name ?? "");
  const gathered = childrenNamed(root, "dataConsolidate").filter((one) => elementsThat(one, ({ name }) => name === "dataRef").some(gathers));
  await parts.edit(sheet, gathered.map(removal));
  await loosen(parts, sheet, isGone);
  for (const { type, target } of await relationshipsOf(parts, sheet)) {
    if (!parts.has(target)) continue;
    if (type === "ctrlProp") await loosen(parts, target, isGone);
    if (type === "vmlDrawing") await loosenShapes(parts, target, isGone);
  }
}

const nameOf = (sheet: string | undefined, area: string | undefined): string =>
  sheet === undefined ? "" : `'${sheet.replaceAll("'", "''")}'!${area ?? "A1"}`;

async function loosen(parts: EditableParts, part: string, isGone: (formula: string) => boolean): Promise<void> {
  const text = await parts.text(part);
  if (!/ (?:fmla\w+|linkedCell|listFillRange)=/.test(text)) return;
  const isLoose = (one: Element): string[] => cellLinks(one).filter((name) => isGone(one.attributes[name] ?? ""));
  const found = elementsThat(elementsOf(part, withoutCells(text)), (one) => isLoose(one).length > 0);
  await parts.edit(part, found.map((one) => withAttributes(text, one, Object.fromEntries(isLoose(one).map((name) => [name, undefined]))))); // prettier-ignore
}

/** Shapes of the older kind are not always XML. */
async function loosenShapes(parts: EditableParts, part: string, isGone: (formula: string) => boolean): Promise<void> {
  const text = await parts.text(part).catch(() => "");
  const edits = [...text.matchAll(FORMULAS_OF_SHAPES)].flatMap(({ 0: whole, 3: formula = "", index }) =>
    isGone(unescapedText(formula.trim())) ? [{ from: index, to: index + whole.length, text: "" }] : [],
  );
  await parts.edit(part, edits);
}
