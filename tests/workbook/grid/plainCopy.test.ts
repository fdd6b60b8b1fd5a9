import { plainBanner } from "../../../src/problems/sharing/sharedCopyWords";
import { shareAsPlainCells } from "../../../src/sharing/shareAsPlainCells";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { FIXED_FILL } from "../../../src/workbook/sheetStyles";
import type { CellContent } from "../../../src/workbook/Workbook";
import { replaceNames } from "../../../src/workbook/grid/writing/definedNames";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

const DATE = "2026-01-31";
let live: HeadlessWorkbook;
beforeEach(async () => {
  live = await openHeadlessWorkbook();
  await live.type("Sheet1", "A1", 25);
  await live.type("Sheet1", "A2", 35);
  await live.type("Sheet1", "A3", 31.5);
  await live.type("Sheet1", "B1", "=RETORT.MOISTURE.WET(A1,A2,A3)");
  await live.type("Sheet1", "B2", "=RETORT.MOISTURE.WET(A1,Sheet1!A2,A3)&A2");
  await live.type("Sheet1", "B3", "=B1*2");
  await live.settled();
});
afterEach(() => live.close());

const valueOf = async (sheet: string, cell: string): Promise<CellContent> => (await live.workbook.read(sheet, cell)).rows[0]?.[0]?.value ?? null;

describe("in the local workbook", () => {
  test("a copy of plain cells goes on calculating, and a fixed cell says so once an input changes", async () => {
    const before = await live.workbook.readUsed("Sheet1");
    const { copy, record, fixed } = await shareAsPlainCells(live.workbook, "Sheet1", DATE);
    await live.settled();
    expect(await live.workbook.sheetNames()).toEqual(["Sheet1", copy, `${copy} changes`, record]);
    expect(live.engine.book.getSheetByName(`${copy} changes`)?.isSheetHidden()).toBe(true);
    expect(await live.workbook.readUsed("Sheet1")).toEqual(before);
    const formulas = (await live.workbook.readUsed(copy)).rows.flat().map(({ formula }) => formula);
    expect(formulas.filter((formula) => formula.includes("RETORT"))).toEqual([]);
    expect(await Promise.all(["B1", "B3", "A4"].map((cell) => valueOf(copy, cell)))).toEqual([0.35, 0.7, plainBanner(DATE, fixed)]);
    expect(await valueOf(copy, "B2")).toBe(await valueOf("Sheet1", "B2"));
    // The same look as in a file of plain cells.
    const fillOf = (cell: string): unknown => live.engine.book.getSheetByName(copy)?.getRange(cell).getBackground();
    expect(["B1", "B2", "B3"].map(fillOf)).toEqual([undefined, FIXED_FILL, undefined].map((fill) => fill ?? fillOf("H9")));
    await live.type(copy, "A2", 45);
    await live.settled();
    expect(await valueOf(copy, "B1")).toBeCloseTo(13.5 / 20, 12);
    expect(await valueOf(copy, "B2")).toBe(`fixed on ${DATE}: inputs changed`);
    expect(await valueOf("Sheet1", "A2")).toBe(35);
  });

  test("a copy says what it is where somebody sees it: in no hidden row and under no merged cells", async () => {
    const sheet = live.engine.book.getSheetByName("Sheet1");
    sheet?.hideRows(3, 2);
    sheet?.getRange("C1:E1").merge();
    await live.settled();
    expect(await live.workbook.firstScreen("Sheet1")).toMatchObject({ hiddenRows: [3, 4], hiddenColumns: [], merged: ["C1:E1"] });
    const { copy } = await shareAsPlainCells(live.workbook, "Sheet1", DATE);
    const banner = (await live.workbook.readUsed(copy)).rows.flat().find(({ value }) => String(value).startsWith("Plain cells of"));
    expect(banner?.cell).toBe("F1");
  });

  test("tells a sheet's rules for entries and names, and on a copy has them in built-in functions", async () => {
    const range = live.engine.book.getSheetByName("Sheet1")?.getRange("C5:C9");
    const condition = "=RETORT.MOISTURE.WET($A$1,$A$2,$A$3)>C5";
    range?.setDataValidation(live.engine.api.newDataValidation().requireFormulaSatisfied(condition).build());
    live.engine.book.getSheetByName("Sheet1")?.getRange("D5").setDataValidation(live.engine.api.newDataValidation().requireValueInList(["yes", "no"]).build()); // prettier-ignore
    await live.settled();
    replaceNames(live.engine, [{ name: "wet_share", refersTo: "RETORT.MOISTURE.WET(Sheet1!$A$1,Sheet1!$A$2,Sheet1!$A$3)" }]);
    await live.type("Sheet1", "B4", "=wet_share*4");
    await live.settled();
    const rule = { kind: "entry", areas: ["C5:C9"] };
    expect(await live.workbook.cellsBeside("Sheet1")).toEqual({
      names: [{ name: "wet_share", formula: "=RETORT.MOISTURE.WET(Sheet1!$A$1,Sheet1!$A$2,Sheet1!$A$3)" }],
      rules: [{ ...rule, formulas: [condition] }],
      unread: [],
    });
    const { copy, put } = await shareAsPlainCells(live.workbook, "Sheet1", DATE);
    const [now] = (await live.workbook.cellsBeside(copy)).rules;
    expect(now).toEqual({ ...rule, formulas: put.rules.flatMap((one) => ("now" in one ? one.now : [])) });
    expect(now?.formulas[0]).toMatch(/^=(?!.*RETORT).*>C5$/);
    expect((await live.workbook.cellsBeside("Sheet1")).rules).toEqual([{ ...rule, formulas: [condition] }]);
    // What goes through the name asks the cells of the copy.
    expect((await live.workbook.read(copy, "B4")).rows[0]?.[0]?.formula).not.toMatch(/RETORT|wet_share/);
    expect(await valueOf(copy, "B4")).toBeCloseTo(1.4, 12);
    await live.type(copy, "A2", 45);
    await live.settled();
    expect(await valueOf(copy, "B4")).toBeCloseTo((4 * 13.5) / 20, 12);
    const values = await shareAsValues(live.workbook, "Sheet1", DATE);
    expect((await live.workbook.cellsBeside(values.copy)).rules).toEqual([]);
    expect(await valueOf(values.copy, "B4")).toBeCloseTo(1.4, 12);
  });

  test("formulas are entered again only where they still stand", async () => {
    await live.type("Sheet1", "D1", "=NOSUCH(A1)");
    await live.settled();
    const cells = [
      { cell: "D1", held: "=NOSUCH(A1)", formula: "=RETORT.MOISTURE.WET(A1,A2,A3)" },
      { cell: "B3", held: "=B1*3", formula: "=B1*4" },
    ];
    expect(await live.workbook.reenter("Sheet1", cells)).toEqual({ entered: ["D1"], changed: ["B3"] });
    expect([await valueOf("Sheet1", "D1"), await valueOf("Sheet1", "B3")]).toEqual([0.35, 0.7]);
  });
});
