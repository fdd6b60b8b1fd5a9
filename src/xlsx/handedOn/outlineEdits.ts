import type { NameReading } from "../../sharing/plain/PlainReading";
import type { TablePlace } from "../../sharing/plain/Surroundings";
import { cellArea } from "../../workbook/cellArea";
import { storedFormula, typedFormula } from "../formulas/storedFormula";
import { attributeOf, childNamed, elementsOf, escapedText, withAttributes } from "../package/markup";
import type { WorkbookPackage } from "../package/WorkbookPackage";
import { workbookOutline } from "../package/workbookOutline";
import { relationshipsOf } from "../parts/relationships";

/** Hides sheets; a reader can show them again. */
export async function hideSheets({ parts }: Pick<WorkbookPackage, "parts">, names: readonly string[]): Promise<void> {
  const { part, text, sheets } = await workbookOutline(parts);
  const hidden = sheets.filter(({ name }) => names.includes(name));
  await parts.edit(part, hidden.map(({ element }) => withAttributes(text, element, { state: "hidden" }))); // prettier-ignore
}

/** The file's defined names as typed, those that a program keeps for itself left out. */
export async function namesInFile({ parts }: Pick<WorkbookPackage, "parts">): Promise<NameReading[]> {
  const { names, sheets } = await workbookOutline(parts);
  return names
    .filter(({ name }) => !/^_xlnm\./i.test(name))
    .map(({ name, refersTo, sheet }) => ({
      name,
      formula: typedFormula(refersTo),
      ...(sheet !== undefined && sheets[sheet] !== undefined && { sheet: sheets[sheet].name }),
    }));
}

/** Gives defined names other formulas. */
export async function changeNames({ parts }: Pick<WorkbookPackage, "parts">, changed: readonly NameReading[]): Promise<void> {
  const { part, names, sheets } = await workbookOutline(parts);
  const keyOf = (name: string, sheet: string | undefined): string => `${sheet?.toLowerCase() ?? ""}!${name.toLowerCase()}`;
  const formulas = new Map(changed.map(({ name, sheet, formula }) => [keyOf(name, sheet), storedFormula(formula)]));
  const edits = names.flatMap(({ name, sheet, element }) => {
    const formula = formulas.get(keyOf(name, sheet === undefined ? undefined : sheets[sheet]?.name));
    return formula === undefined ? [] : [{ from: element.end, to: element.close.start, text: escapedText(formula) }];
  });
  await parts.edit(part, edits);
}

/** Where the tables of the file stand. */
export async function tablesInFile({ parts }: Pick<WorkbookPackage, "parts">): Promise<TablePlace[]> {
  const found: TablePlace[] = [];
  for (const { name: sheet, part, kind } of (await workbookOutline(parts)).sheets) {
    if (kind !== "worksheet") continue;
    for (const { type, target } of await relationshipsOf(parts, part)) {
      if (type !== "table" || !parts.has(target)) continue;
      const table = elementsOf(target, await parts.text(target));
      const area = cellArea(attributeOf(table, "ref") ?? "");
      if (area === undefined) continue;
      found.push({
        ...{ sheet, area, name: attributeOf(table, "displayName") ?? attributeOf(table, "name") ?? "" },
        headingRows: Number(attributeOf(table, "headerRowCount") ?? 1),
        totalsRows: Number(attributeOf(table, "totalsRowCount") ?? 0),
        columns: (childNamed(table, "tableColumns")?.children ?? []).map((column) => attributeOf(column, "name") ?? ""),
      });
    }
  }
  return found;
}
