import { Workbook as FileWorkbook } from "exceljs";
import { cellAt } from "../../../src/workbook/cellArea";
import type { CellChange, FileValue } from "../../../src/xlsx/package/cells/CellChange";
import type { CellInFile } from "../../../src/xlsx/package/cells/readCells";
import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import { partsDiffering } from "./partsIn";

jest.setTimeout(60_000);

/** Numbers from 0 to below 1, the same each time: Park and Miller, "Random number generators: good ones are hard to find", 1988. */
function chances(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647;
}

/** A sheet of formulas filled down, texts, numbers and blanks, as the file library writes it. */
async function madeFile(chance: () => number): Promise<Uint8Array<ArrayBuffer>> {
  const book = new FileWorkbook();
  const sheet = book.addWorksheet("Kiln");
  book.addWorksheet("Other").getCell("A1").value = "other text";
  for (let row = 1; row <= 12; row++) {
    sheet.getCell(row, 1).value = Math.round(chance() * 1000) / 8;
    if (chance() < 0.5) sheet.getCell(row, 2).value = `text ${Math.floor(chance() * 5)}`;
    if (chance() < 0.5) sheet.getCell(row, 5).value = { formula: `A${row}&"<x>"`, result: "r" };
  }
  sheet.fillFormula("C2:D9", "A2*2+$A$1", (row: number, column: number) => row * column);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

async function cellsOf(content: Uint8Array<ArrayBuffer>): Promise<Map<string, CellInFile>> {
  const cells = new Map<string, CellInFile>();
  await (await WorkbookPackage.of(content)).readCells("Kiln", (cell) => cells.set(cell.cell, cell));
  return cells;
}

const shown = ({ formula, value }: Pick<CellInFile, "formula" | "value">): unknown => [formula, value];

test.each(Array.from({ length: 40 }, (_, index) => index + 1))(
  "any changes, no. %i: what was changed is as wanted, and all else is as it was",
  async (seed) => {
    const chance = chances(seed * 7919);
    const content = await madeFile(chance);
    const before = await cellsOf(content);
    const wanted = new Map<string, CellChange>();
    for (let count = Math.ceil(chance() * 20); count > 0; count--) {
      const cell = cellAt(Math.floor(chance() * 15), Math.floor(chance() * 7));
      const values: FileValue[] = [chance() * 100, "a & b\n", " <c> ", true, false, null, { error: "#N/A" }];
      const value = values[Math.floor(chance() * values.length)] ?? null;
      const kind = (["value", "recalculated", "formula"] as const)[Math.floor(chance() * 3)] ?? "value";
      wanted.set(cell, { cell, content: kind === "formula" ? { kind, formula: 'IF(A1<2,"&",A2)', value } : { kind, value } });
    }
    const file = await WorkbookPackage.of(content);
    await file.changeCells("Kiln", [...wanted.values()]);
    const bytes = await file.bytes();
    const { changed, added, gone } = await partsDiffering(content, bytes);
    // A blank put where nothing stands changes nothing.
    expect([changed.filter((part) => part !== "xl/worksheets/sheet1.xml"), added, gone]).toEqual([[], [], []]);
    const after = await cellsOf(bytes);
    const library = new FileWorkbook();
    await library.xlsx.load(bytes.buffer);
    const there = library.getWorksheet("Kiln");
    for (const cell of new Set([...before.keys(), ...after.keys(), ...wanted.keys()])) {
      const was = before.get(cell);
      const content = wanted.get(cell)?.content;
      const formula = content?.kind === "value" ? "" : content?.kind === "formula" ? content.formula : (was?.formula ?? "");
      const value = content === undefined || content.kind === "kept" ? (was?.value ?? null) : content.value;
      expect([cell, shown(after.get(cell) ?? { formula: "", value: null })]).toEqual([cell, shown({ formula, value })]);
      // Another reader: it slides filled-down formulas by rules of its own.
      expect([cell, there?.getCell(cell).formula ?? ""]).toEqual([cell, formula]);
      expect([cell, after.get(cell)?.look ?? 0]).toEqual([cell, was?.look ?? 0]);
    }
  },
);
