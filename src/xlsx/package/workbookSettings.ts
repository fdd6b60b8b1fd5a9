import type { NameReading } from "../../sharing/plain/reading/PlainReading";
import { storedFormula } from "../formulas/storedFormula";
import type { EditableParts } from "./parts/EditableParts";
import { attributeOf, childNamed, elementsOf, escapedText, withAttributes } from "./parts/markup";
import { workbookOutline } from "./workbookOutline";

/** Takes sheets out of view, or brings them back; whoever looks for hidden ones finds them in the list. */
export async function sayWhetherHidden(parts: EditableParts, names: readonly string[], isHidden: boolean): Promise<void> {
  const { part, text, sheets } = await workbookOutline(parts);
  const others = sheets.filter((sheet) => names.includes(sheet.name) && sheet.isHidden !== isHidden);
  await parts.edit(part, others.map(({ element }) => withAttributes(text, element, { state: isHidden ? "hidden" : undefined }))); // prettier-ignore
}

/** Puts other formulas behind defined names. */
export async function changeNames(parts: EditableParts, changed: readonly NameReading[]): Promise<void> {
  const { part, names, sheets } = await workbookOutline(parts);
  const edits = changed.flatMap(({ name, sheet, formula }) => {
    const found = names.find((one) => one.name === name && (one.sheet === undefined ? undefined : sheets[one.sheet]?.name) === sheet);
    return found === undefined ? [] : [{ from: found.element.end, to: found.element.close.start, text: escapedText(storedFormula(formula)) }];
  });
  await parts.edit(part, edits);
}

/** What comes before the settings of calculation in a workbook's part (ECMA-376 Part 1, 18.2.27). */
const BEFORE: readonly string[] = [
  ...["fileVersion", "fileSharing", "workbookPr", "workbookProtection", "bookViews", "sheets", "functionGroups", "externalReferences"],
  "definedNames",
];

/** Makes whatever opens the file calculate every formula of it. */
export async function calculateOnOpening(parts: EditableParts): Promise<void> {
  const { part, text, root } = await workbookOutline(parts);
  const settings = childNamed(root, "calcPr");
  if (settings !== undefined) return parts.edit(part, [withAttributes(text, settings, { fullCalcOnLoad: "1" })]);
  const at = root.children.filter(({ name }) => BEFORE.includes(name)).at(-1)?.close.end ?? root.end;
  await parts.edit(part, [{ from: at, to: at, text: `<${root.prefix}calcPr fullCalcOnLoad="1"/>` }]);
}

/** Says of a template's part that it is a workbook's (ECMA-376 Part 1, 12.3.23). */
export async function noTemplate(parts: EditableParts): Promise<void> {
  const types = "[Content_Types].xml";
  const text = await parts.text(types);
  const templates = elementsOf(types, text).children.filter((one) =>
    /template\.(main|macroEnabled\.main)\+xml$/i.test(attributeOf(one, "ContentType") ?? ""),
  );
  const workbook = (type: string): string => type.replace(/template\.macroEnabled/i, "sheet.macroEnabled").replace(/template\.main/i, "sheet.main");
  await parts.edit(types, templates.map((one) => withAttributes(text, one, { ContentType: workbook(attributeOf(one, "ContentType") ?? "") }))); // prettier-ignore
}
