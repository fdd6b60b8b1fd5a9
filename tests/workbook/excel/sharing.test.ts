import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { valuesBanner } from "../../../src/problems/sharing/sharedCopyWords";
import { sheetStyles } from "../../../src/workbook/sheetStyles";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

const host = new ExcelHost();
host.calculate = (formula) => (formula.includes("VOLATILEFRACTION") ? [[0.7], [0.65], [""]] : formula === '=IF(A9="","","later")' ? "" : 1.4);
loadClientLibrary(host);
const workbook = new ExcelWorkbook();

describe("sharing a sheet as values in Excel", () => {
  test("leaves the original as it was and a copy without a single formula, its values the same and empty text blank", async () => {
    host.newBook();
    host.type("Sheet1", "A1", 25);
    host.type("Sheet1", "D1", "=RETORT.VOLATILEFRACTION(A1:A3, B1:B3, C1:C3)");
    host.type("Sheet1", "E1", "=D1*2");
    host.type("Sheet1", "E2", '=IF(A9="","","later")');
    host.type("Sheet1", "F1", "'=not a formula");
    const before = await workbook.readUsed("Sheet1");

    const { copy, record } = await shareAsValues(workbook, "Sheet1", "2026-01-31");

    expect(await workbook.readUsed("Sheet1")).toEqual(before);
    const shared = await workbook.read(copy, before.range);
    expect(shared.rows.flat().filter(({ formula, spill }) => formula !== "" || spill !== "")).toEqual([]);
    expect(shared.rows.map((row) => row.map(({ value }) => value))).toEqual(
      before.rows.map((row) => row.map(({ value }) => (value === "" ? null : value))),
    );
    // In the first row that is blank from end to end, as in a file.
    expect((await workbook.read(copy, "A4")).rows[0]?.[0]?.value).toBe(valuesBanner("2026-01-31"));
    expect(host.book.sheet(copy).entryRules.at(-1)).toEqual({ range: "A1:XFD1048576", isCleared: true });
    expect(host.book.sheet("Sheet1").entryRules).toEqual([]);
    expect(await workbook.sheetNames()).toEqual(["Sheet1", copy, record]);
    expect((await workbook.readUsed(record)).rows.flat().some(({ value }) => value === "=RETORT.VOLATILEFRACTION(A1:A3, B1:B3, C1:C3)")).toBe(true);
  });

  test("of a run sheet, leaves no cell that looks like a box to fill in, and a banner that is seen at once", async () => {
    host.newBook();
    const plan = buildRunSheet({ kind: "charring", weighIns: 3, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 1 });
    const name = await workbook.addSheet(plan);
    const { copy } = await shareAsValues(workbook, name, "2026-01-31");
    const [sheet, shared] = [host.book.sheet(name), host.book.sheet(copy)];
    const boxes = plan.cells.filter(({ style }) => style?.startsWith("runBox")).map(({ cell }) => cell);
    expect(boxes.length).toBeGreaterThan(20);
    for (const cell of boxes) {
      expect(sheet.looks.get(cell)).toMatchObject({ "fill.color": sheetStyles.runBox.fill });
      expect(shared.looks.get(cell)?.["fill.color"]).toBeUndefined();
      expect(shared.looks.get(cell)).toMatchObject({ "font.color": sheetStyles.label.fontColour, "border.EdgeTop.style": "None" });
    }
    expect(shared.looks.get("D1")).toMatchObject({ "fill.color": sheetStyles.caution.fill, "font.bold": true });
    expect((await workbook.read(copy, "D1")).rows[0]?.[0]?.value).toBe(valuesBanner("2026-01-31"));
  });
});
