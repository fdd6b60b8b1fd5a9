import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { SAMPLE_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { cellArea } from "../../../src/workbook/cellArea";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

const host = new ExcelHost();
host.calculate = () => "";
loadClientLibrary(host);
beforeEach(() => host.newBook());
const workbook = new ExcelWorkbook();

const options: RunSheetOptions = { kind: "drying", weighIns: 12, intervalMinutes: 30, readability: 0.01, vessel: "lidded steel tin", replicates: 1 };
const longest: RunSheetOptions = { ...options, weighIns: 60, replicates: 6, panZeros: true, temperatures: true };

describe("a run sheet in Excel", () => {
  test.each(
    SAMPLE_KINDS.flatMap((kind) => [
      { ...options, kind },
      { ...longest, kind },
    ]),
  )("of $kind with $replicates samples and $weighIns weighings stands in the cells as planned", async (wanted) => {
    const plan = buildRunSheet(wanted);
    const name = await workbook.addSheet(plan);
    const sheet = host.book.sheet(name);
    const wrong = plan.cells.filter(({ cell, content, formula }) => {
      const { row, column } = cellArea(cell) ?? { row: -1, column: -1 };
      return formula === undefined ? sheet.value(row, column) !== (content ?? null) : sheet.formula(row, column) !== formula;
    });
    expect(wrong).toEqual([]);
    expect(sheet.cells.size).toBe(plan.cells.filter(({ content, formula }) => (content ?? formula) !== undefined).length);
    expect(sheet.entryRules.map(({ range }) => range)).toEqual([...new Set(plan.entryRules.map(({ range }) => range))]);
    expect(sheet.charts.map(({ series }) => series.length)).toEqual(plan.charts?.map(({ series }) => series.length));
    expect(sheet.charts[0]?.series.filter(({ name }) => name.startsWith("Sample "))).toHaveLength(wanted.replicates);
  });

  test("of the longest kind takes three requests, the largest of them less than a quarter of the 5 MB that the web takes", async () => {
    await workbook.addSheet(buildRunSheet({ ...longest, kind: "ashing" }));
    const asking = host.requests.filter(({ Actions }) => Actions.some(({ ActionType, Name }) => ActionType !== 1 && Name !== "_RemoveReference"));
    expect(asking).toHaveLength(3);
    expect(host.longest.request).toBeLessThan(QUARTER_OF_MOST);
  });
});

const QUARTER_OF_MOST = 1_250_000;
