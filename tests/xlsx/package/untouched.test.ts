import { readFileSync } from "node:fs";
import path from "node:path";
import { Workbook as FileWorkbook } from "exceljs";
import { Uint8ArrayReader, Uint8ArrayWriter, ZipReader, ZipWriter } from "@zip.js/zip.js";
import { EditableParts } from "../../../src/xlsx/package/parts/EditableParts";
import type { CellChange } from "../../../src/xlsx/package/cells/CellChange";
import type { CellInFile } from "../../../src/xlsx/package/cells/readCells";
import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import { partsDiffering, partsIn, textOf, withoutCells } from "./partsIn";

const FILES = path.join(__dirname, "../../workbench/xlsx/files");
const fileNamed = (name: string): Uint8Array<ArrayBuffer> => new Uint8Array(readFileSync(path.join(FILES, name)));

/** Every cell of a sheet by its name. */
async function cellsOf(file: WorkbookPackage, sheet: string): Promise<Map<string, CellInFile>> {
  const cells = new Map<string, CellInFile>();
  await file.readCells(sheet, (cell) => cells.set(cell.cell, cell));
  return cells;
}

describe.each(["openpyxl.xlsx", "libreoffice.xlsx", "gnumeric.xlsx", "beside.xlsx", "days1904.xlsx"])("%s, by another program", (name) => {
  const content = fileNamed(name);

  test("written again without a change has every part as it was", async () => {
    const again = await (await WorkbookPackage.of(content)).bytes();
    expect(await partsDiffering(content, again)).toEqual({ changed: [], added: [], gone: [] });
    expect([...(await partsIn(again)).keys()]).toEqual([...(await partsIn(content)).keys()]);
  });

  test("with values in place of formulas differs in those cells and the order of calculation alone, and every cell reads as before", async () => {
    const file = await WorkbookPackage.of(content);
    for (const sheet of await file.sheets()) {
      if (sheet.kind !== "worksheet") continue;
      const before = await cellsOf(file, sheet.name);
      const changes = [...before.values()].flatMap(({ cell, formulaKind, value }): CellChange[] =>
        formulaKind === "none" || formulaKind === "dataTable" ? [] : [{ cell, content: { kind: "value", value } }],
      );
      await file.changeCells(sheet.name, changes);
      const after = await cellsOf(file, sheet.name);
      expect([...after.values()].filter(({ formulaKind }) => formulaKind !== "none")).toEqual([]);
      expect([...after].map(([cell, { value, look }]) => [cell, value, look])).toEqual(
        [...before].map(([cell, { value, look }]) => [cell, value, look]),
      );
    }
    const { changed, added, gone } = await partsDiffering(content, await file.bytes());
    const others = changed.filter((part) => !/^xl\/worksheets\/sheet\d+\.xml$/.test(part));
    expect([
      others.filter((part) => !/Content_Types|workbook\.xml\.rels/.test(part)),
      added,
      gone.filter((part) => part !== "xl/calcChain.xml"),
    ]).toEqual([[], [], []]);
    expect(others.length > 0).toBe(gone.includes("xl/calcChain.xml"));
  });

  test("with single cells changed has the rest of their sheet letter for letter, and another reader finds what was put", async () => {
    const file = await WorkbookPackage.of(content);
    const [sheet] = await file.sheets();
    if (sheet === undefined) throw new Error("no sheet");
    const cells = await cellsOf(file, sheet.name);
    const [held = ""] = [...cells.values()]
      .filter(({ formulaKind, value }) => formulaKind === "none" && typeof value === "number")
      .map(({ cell }) => cell);
    const changes: CellChange[] = [
      { cell: held, content: { kind: "value", value: " a < b & “c”\n_x0041_ " } },
      { cell: "ZZ900", content: { kind: "formula", formula: 'IF(A1<2,"a&b","")', value: "a&b" } },
      { cell: "ZZ901", content: { kind: "value", value: { error: "#N/A" } } },
      { cell: "ZX901", content: { kind: "value", value: true } },
      { cell: "ZY901", content: { kind: "value", value: 0.1 + 0.2 } },
    ];
    await file.changeCells(sheet.name, changes);
    const bytes = await file.bytes();
    const { changed } = await partsDiffering(content, bytes);
    const part = changed.find((one) => one.startsWith("xl/worksheets/")) ?? "";
    expect(changed.filter((one) => one !== part && !/Content_Types|workbook\.xml\.rels/.test(one))).toEqual([]);
    const names = changes.map(({ cell }) => cell);
    const [before, after] = [await textOf(content, part), await textOf(bytes, part)].map((markup) =>
      withoutCells(markup, names)
        .replace(/<row r="90[01]"><\/row>/g, "")
        .replace(/(<(?:\w+:)?dimension ref=")[^"]*/, "$1"),
    );
    expect(after).toBe(before);
    const read = new FileWorkbook();
    // That library opens no file with a chart, changed or not.
    if (name === "beside.xlsx") await expect(read.xlsx.load(content.buffer)).rejects.toThrow("anchors");
    else {
      await read.xlsx.load(bytes.buffer);
      const there = read.getWorksheet(sheet.name);
      expect(names.map((cell) => there?.getCell(cell).value)).toEqual([
        " a < b & “c”\n_x005F_x0041_ ",
        { formula: 'IF(A1<2,"a&b","")', result: "a&b" },
        { error: "#N/A" },
        true,
        0.30000000000000004,
      ]);
    }
    const again = await cellsOf(await WorkbookPackage.of(bytes), sheet.name);
    expect(names.slice(1).map((cell) => again.get(cell)?.value)).toEqual(["a&b", { error: "#N/A" }, true, 0.30000000000000004]);
    expect(again.get(held)?.value).toBe(" a < b & “c”\n_x0041_ ");
  });
});

describe("folders that an archive lists", () => {
  const FOLDERS = ["_rels/", "xl/", "xl/Worksheets/", "docProps/", "customXml/empty/"];
  const listedIn = async (content: Uint8Array): Promise<string[]> => {
    const listed = await new ZipReader(new Uint8ArrayReader(content), { useWebWorkers: false }).getEntries();
    return listed.map(({ filename, directory }) => (directory ? filename : "part"));
  };
  const withFolders = async (): Promise<Uint8Array<ArrayBuffer>> => {
    const writer = new ZipWriter(new Uint8ArrayWriter(), { useWebWorkers: false, keepOrder: true });
    const [first, ...others] = [...(await partsIn(fileNamed("beside.xlsx")))];
    await writer.add("_rels/", undefined, { directory: true });
    for (const [name, bytes] of first === undefined ? [] : [first]) await writer.add(name, new Uint8ArrayReader(bytes));
    for (const name of FOLDERS.slice(1)) await writer.add(name, undefined, { directory: true });
    for (const [name, bytes] of others) await writer.add(name, new Uint8ArrayReader(bytes));
    return new Uint8Array(await writer.close());
  };

  test("stay where they stand, and every part with them", async () => {
    const content = await withFolders();
    const file = await WorkbookPackage.of(content);
    const again = await file.bytes();
    expect(await listedIn(again)).toEqual(await listedIn(content));
    expect((await listedIn(again)).filter((one) => one !== "part")).toEqual(FOLDERS);
    expect(await partsDiffering(content, again)).toEqual({ changed: [], added: [], gone: [] });
  });

  test("go with the last of their parts", async () => {
    const parts = await EditableParts.of(await withFolders());
    for (const name of parts.names()) if (name.startsWith("docprops/")) parts.remove(name);
    expect((await listedIn(await parts.bytes())).filter((one) => one !== "part")).toEqual(FOLDERS.filter((name) => name !== "docProps/"));
  });
});
