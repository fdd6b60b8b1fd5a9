import { BorderStyleTypes, type ICellData } from "@univerjs/core";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { blockOfText } from "../../../src/workbench/grid/blockOfText";
import { enterBlock } from "../../../src/workbench/grid/enterBlock";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(120_000);

test.each<[string, string, string[][]]>([
  ["a leading tab is an empty first cell", "\t25.00\t25.10\n9:00\t65.00\t65.10", [["", "25.00", "25.10"], ["9:00", "65.00", "65.10"]]], // prettier-ignore
  ["trailing tabs are empty last cells", "1\t2\t\t\n3\t4\t\t", [["1", "2", "", ""], ["3", "4", "", ""]]], // prettier-ignore
  ["an empty row in the middle stays", "1\t2\n\n3\t4\n", [["1", "2"], ["", ""], ["3", "4"]]], // prettier-ignore
  ["an empty first row stays", "\n1\t2", [["", ""], ["1", "2"]]], // prettier-ignore
  ["line ends of any kind", "1\t2\r\n3\t4\r5\t6\r\n", [["1", "2"], ["3", "4"], ["5", "6"]]], // prettier-ignore
  ["quoted cells hold tabs, line ends and marks", 'a\t"b\tc\nd ""e"""\tf\n"g"\t', [["a", 'b\tc\nd "e"', "f"], ["g", "", ""]]], // prettier-ignore
  ["a quotation mark elsewhere is itself", '5" tin\t"half\t"a"b', [['5" tin', '"half', '"a"b']]],
  ["one cell", "oak", [["oak"]]],
  ["blanks around a cell stay", " a \t b", [[" a ", " b"]]],
])("%s", (_what, text, block) => expect(blockOfText(text)).toEqual(block));

describe("entered", () => {
  let open: HeadlessWorkbook;
  let name = "";
  beforeAll(async () => {
    open = await openHeadlessWorkbook();
    name = await open.workbook.addSheet(
      buildRunSheet({ kind: "drying", weighIns: 4, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 2 }),
    );
  });
  afterAll(() => open.close());

  const enter = (sheet: string, text: string, row: number, column: number, rows = 1, columns = 1): boolean =>
    enterBlock(open.engine, blockOfText(text), { sheetId: open.engine.book.getSheetByName(sheet)?.getSheetId() ?? "", row, column, rows, columns });
  const valuesOf = async (sheet: string, range: string): Promise<unknown[][]> => {
    await open.settled();
    return (await open.workbook.read(sheet, range)).rows.map((cells) => cells.map(({ value }) => value));
  };
  const lookOf = (cell: string): ICellData["s"] => open.engine.book.getSheetByName(name)?.getRange(cell).getCellStyleData() ?? null;

  test("a block lands in the boxes of a run sheet as given, which keep fill, border and number format", async () => {
    const boxes = ["B11", "C11", "D11", "B12", "C12", "D13"];
    const before = boxes.map(lookOf);
    expect(before[4]).toMatchObject({ n: { pattern: "0.00" }, bg: expect.anything() as unknown, bd: { b: { s: BorderStyleTypes.THIN } } });
    expect(enter(name, "\t25.00\t25.10\n9:00\t65.00\t65.10\n9:20\t65.20\t51.10", 10, 1)).toBe(true);
    const [[, vessel], first, second] = (await valuesOf(name, "B11:D13")) as [unknown[], unknown[], unknown[]];
    expect([vessel, first, second]).toEqual([25, [expect.closeTo(9 / 24, 12), 65, 65.1], [expect.closeTo(28 / 72, 12), 65.2, 51.1]]);
    expect((await open.workbook.read(name, "C13")).rows[0]?.[0]?.shown).toBe("65.20");
    expect(boxes.map(lookOf)).toEqual(before);
  });

  test("an empty cell of the block empties the cell under it, and a formula calculates", async () => {
    await open.type(FIRST_SHEET, "A1", "old");
    await open.type(FIRST_SHEET, "B2", 7);
    expect(enter(FIRST_SHEET, "\t2\n=B1*2\t", 0, 0)).toBe(true);
    expect(await valuesOf(FIRST_SHEET, "A1:B2")).toEqual([[null, 2], [4, null]]); // prettier-ignore
  });

  test("one text fills what is selected", async () => {
    enter(FIRST_SHEET, "3", 4, 0, 2, 2);
    expect(await valuesOf(FIRST_SHEET, "A5:B6")).toEqual([[3, 3], [3, 3]]); // prettier-ignore
  });

  test("what reaches beyond the sheet or into merged cells is not entered", async () => {
    expect(enter(FIRST_SHEET, "1\t2", 0, 25)).toBe(false);
    open.engine.book.getSheetByName(FIRST_SHEET)?.getRange("D1:E2").merge();
    expect(enter(FIRST_SHEET, "1\t2", 1, 2)).toBe(false);
    expect(await valuesOf(FIRST_SHEET, "C2:D2")).toEqual([[null, null]]);
  });
});
