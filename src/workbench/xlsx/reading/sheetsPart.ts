import { coveredValues } from "../../../problems/files/fileProblems";
import { cellAt } from "../../../workbook/cellArea";
import type { GridSheet } from "../../../workbook/grid/writing/GridSheet";
import { isEmpty } from "../../../workbook/grid/reading/readCell";
import type { FileParts } from "../../../xlsx/parts/FileParts";
import { readXml } from "../../../xlsx/parts/readXml";
import { relationshipsOf, type Relationship } from "../../../xlsx/parts/relationships";
import type { Findings } from "./Findings";
import type { AnswerInFile, KeptFormula, SheetSurroundings } from "./CellsReader";
import { SheetReader } from "./SheetReader";
import { tablePart, type Table } from "../../../xlsx/parts/tablePart";
import type { SheetEntry } from "./workbookPart";

export interface ReadSheet {
  readonly sheet: GridSheet;
  readonly answers: readonly AnswerInFile[];
  readonly kept: readonly KeptFormula[];
}

/** What a sheet names beside its cells, by the last word of the type. */
const THINGS: Readonly<Record<string, string>> = {
  chart: "chart",
  chartEx: "chart",
  image: "picture",
  comments: "comment",
  pivotTable: "pivot",
  control: "control",
  ctrlProp: "control",
  oleObject: "drawing",
};

/** Looks, settings of printers, and what the drawing of a comment's box is for: nothing that anybody would miss. */
const SILENT: readonly string[] = [
  "printerSettings",
  "vmlDrawing",
  "threadedComment",
  "hyperlink",
  "drawing",
  "table",
  "sheetMetadata",
  "customProperty",
];

/** Says what a sheet has beside its cells, and gives its tables. */
export async function besideCells(parts: FileParts, { name, part }: SheetEntry, findings: Findings): Promise<Table[]> {
  const related = await relationshipsOf(parts, part);
  for (const one of related) if (one.type === "drawing") await inDrawing(parts, one, name, findings);
  for (const { type } of related) if (!SILENT.includes(type)) findings.add(THINGS[type] ?? "other", name);
  const tables = await Promise.all(related.filter(({ type }) => type === "table").map(({ target }) => tablePart(parts, target, name)));
  const found = tables.filter((table) => table !== undefined);
  if (found.length > 0) findings.add("table", name, found.length);
  return found;
}

async function inDrawing(parts: FileParts, { target }: Relationship, sheet: string, findings: Findings): Promise<void> {
  const related = (await relationshipsOf(parts, target)).map(({ type }) => THINGS[type]).filter((thing) => thing !== undefined);
  for (const thing of related) findings.add(thing, sheet);
  if (related.length === 0) findings.add("drawing", sheet);
}

const SPARKLINES = "sparklineGroup";
const LATER_CONDITIONAL = "conditionalFormatting";

export async function readSheet(parts: FileParts, { name, part }: SheetEntry, around: SheetSurroundings): Promise<ReadSheet> {
  const reader = new SheetReader(name, around);
  await readXml(parts, part, reader, (element) => {
    if (element === SPARKLINES) around.findings.add("sparkline", name);
    if (element === LATER_CONDITIONAL) around.findings.add("conditional", name);
  });
  const sheet = reader.sheet();
  lookUnderMerged(sheet, around.findings);
  return { sheet, answers: reader.answers, kept: reader.kept };
}

/** Only the first cell of merged ones shows what it holds; other programs may have left values under the rest. */
function lookUnderMerged({ name, data }: GridSheet, findings: Findings): void {
  const cells = data.cellData ?? {};
  const covered: string[] = [];
  for (const { startRow, startColumn, endRow, endColumn } of data.mergeData ?? []) {
    for (const row of indicesIn(cells, startRow, endRow)) {
      const inRow = cells[row] ?? {};
      for (const column of indicesIn(inRow, startColumn, endColumn))
        if ((row !== startRow || column !== startColumn) && !isEmpty(inRow[column])) covered.push(`${name}!${cellAt(row, column)}`);
    }
  }
  if (covered[0] !== undefined) findings.note(coveredValues(covered.length, covered[0]));
}

const FEW = 1000;

/** Those of the numbers from first to last that the record has; a merged area may be as large as the sheet. */
const indicesIn = (record: Readonly<Record<number, unknown>>, first: number, last: number): number[] =>
  last - first < FEW
    ? Array.from({ length: last - first + 1 }, (_, index) => first + index).filter((index) => record[index] !== undefined)
    : Object.keys(record)
        .map(Number)
        .filter((index) => index >= first && index <= last);
