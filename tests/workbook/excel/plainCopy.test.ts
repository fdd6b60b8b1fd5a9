import { plainBanner } from "../../../src/problems/sharing/sharedCopyWords";
import { olderThanNeeded } from "../../../src/problems/workbook/workbookProblems";
import { shareAsPlainCells } from "../../../src/sharing/shareAsPlainCells";
import { FIXED_FILL } from "../../../src/workbook/sheetStyles";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

const host = new ExcelHost();
host.calculate = (formula) => (formula.includes("VOLATILEFRACTION(A1:A2") || formula.includes("A1:A2-") ? [[0.7], [0.65]] : 0.35);
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
const DATE = "2026-01-31";

beforeEach(() => {
  host.newBook();
  host.book.rename(host.book.sheet("Sheet1"), "Tin's run");
  host.type("Tin's run", "A1", 25);
  host.type("Tin's run", "A2", 35);
  host.type("Tin's run", "A3", 31.5);
  host.type("Tin's run", "C1", "=RETORT.MOISTURE.WET(A1,A2,A3)");
  host.type("Tin's run", "C2", "=RETORT.DRYING.END(A1:A3,A1:A3)");
  host.type("Tin's run", "C3", "=C1*2");
  host.type("Tin's run", "C4", "=RETORT.MOISTURE.WET('Tin''s run'!A1,A2,A3)");
});

describe("sharing a sheet as plain cells within the workbook", () => {
  test("makes a copy without a call of ours, its record, and hidden flags, and leaves the sheet as it was", async () => {
    const before = await workbook.readUsed("Tin's run");
    const { copy, record, cells, fixed, touched } = await shareAsPlainCells(workbook, "Tin's run", DATE);
    expect([copy, record, cells, touched]).toEqual(["Tin's run plain cells", "Tin's run record", 1, false]);
    expect(await workbook.readUsed("Tin's run")).toEqual(before);
    expect(await workbook.sheetNames()).toEqual(["Tin's run", copy, record, "Tin's run plain cells changes"]);
    expect(host.book.sheets.map(({ visibility }) => visibility)).toEqual(["Visible", "Visible", "Visible", "Hidden"]);
    const formulas = [...host.book.sheet(copy).cells].flatMap(([cell, { formula }]) => (formula === undefined ? [] : [[cell, formula] as const]));
    expect(formulas.map(([cell]) => cell)).toEqual(["C1", "C2", "C3", "C4"]);
    expect(formulas.filter(([, formula]) => /RETORT|Unfinished/.test(formula))).toEqual([]);
    // What names its own sheet would look at the live one, so it is fixed beside what has no plain form.
    expect(fixed).toBe(2);
    expect((await workbook.read(copy, "A5")).rows[0]?.[0]?.value).toBe(plainBanner(DATE, fixed));
    // The same look as in a file of plain cells.
    const fills = ["C1", "C2", "C3", "C4"].map((cell) => host.book.sheet(copy).looks.get(cell)?.["fill.color"]);
    expect(fills).toEqual([undefined, FIXED_FILL, undefined, FIXED_FILL]);
    const flags = [...host.book.sheet("Tin's run plain cells changes").cells.values()].map(({ formula }) => formula ?? "");
    expect(flags.some((formula) => formula.includes("'Tin''s run plain cells'!"))).toBe(true);
    expect(flags.filter((formula) => formula.includes("Unfinished"))).toEqual([]);
  });

  test.each([
    ["in the first row that is blank", [], [], [], "A5"],
    ["not in a hidden row", [4], [], [], "D1"],
    ["not under merged cells", [4], [], ["D1:F1"], "G1"],
    ["not in a hidden column", [4], [6], ["D1:F1"], "H1"],
  ] as const)("says what it is where somebody sees it: %s", async (_, rows, columns, merged, at) => {
    const sheet = host.book.sheet("Tin's run");
    for (const row of rows) sheet.hiddenRows.add(row);
    for (const column of columns) sheet.hiddenColumns.add(column);
    sheet.merged.push(...merged);
    const { copy } = await shareAsPlainCells(workbook, "Tin's run", DATE);
    const banner = (await workbook.readUsed(copy)).rows.flat().find(({ value }) => String(value).startsWith("Plain cells of"));
    expect(banner?.cell).toBe(at);
  });

  test("keeps prompts and lists, since people go on typing there", async () => {
    const { copy } = await shareAsPlainCells(workbook, "Tin's run", DATE);
    expect(host.book.sheet(copy).entryRules.filter(({ isCleared }) => isCleared)).toEqual([]);
  });

  test("is refused before anything is made where Excel sets no formula over arrays", async () => {
    host.book.apiVersion = "1.11";
    const read = await workbook.readUsed("Tin's run");
    const beside = { name: "Beside", cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" };
    const wanted = { name: "Copy", read, areas: [], beside, formulas: [{ range: "D1:D2", formula: "=A1:A2*2" }] };
    await expect(workbook.copyWithValues("Tin's run", wanted)).rejects.toThrow(olderThanNeeded("Excel"));
    expect(await workbook.sheetNames()).toEqual(["Tin's run"]);
  });
});
