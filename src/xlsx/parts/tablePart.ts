import { cellArea, type CellArea } from "../../workbook/cellArea";
import type { PartSource } from "./FileParts";
import { readXml } from "./readXml";

/** A table: an area with a name, whose columns have names too. */
export interface Table {
  readonly name: string;
  readonly sheet: string;
  readonly area: CellArea;
  readonly headerRows: number;
  readonly totalsRows: number;
  readonly columns: readonly string[];
}

export async function tablePart(parts: PartSource, part: string, sheet: string): Promise<Table | undefined> {
  const columns: string[] = [];
  let found: Omit<Table, "columns"> | undefined;
  await readXml(parts, part, {
    open: (element, { ref = "", displayName, name = "", headerRowCount = "1", totalsRowCount = "0" }) => {
      if (element === "tableColumn") columns.push(lineBreaks(name));
      if (element !== "table") return;
      const area = cellArea(ref);
      if (area !== undefined)
        found = { name: displayName ?? name, sheet, area, headerRows: Number(headerRowCount), totalsRows: Number(totalsRowCount) };
    },
  });
  return found && { ...found, columns };
}

/** Line breaks in a heading stand as numbers in the file and as themselves in a formula. */
const lineBreaks = (name: string): string => name.replace(/_x000a_/gi, "\n");
