import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { gatherRuns } from "../../../src/runsheet/gathering/gatherRuns";
import { SAMPLE_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { gatherWords } from "../../../src/runsheet/words/gatherWords";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

jest.setTimeout(60_000);

const host = new ExcelHost();
host.calculate = () => "";
loadClientLibrary(host);
beforeEach(() => host.newBook());
const workbook = new ExcelWorkbook();

const options: RunSheetOptions = { kind: "drying", weighIns: 4, intervalMinutes: 30, readability: 0.01, vessel: "lidded steel tin", replicates: 2 };

describe("gathered runs in Excel", () => {
  test("refer to each sample of each run sheet, whatever its sheet is called, and stand on a new sheet each time", async () => {
    for (const kind of SAMPLE_KINDS) await workbook.addSheet({ ...buildRunSheet({ ...options, kind }), name: `Ana's ${kind}` });
    const withoutVapour = [
      { sheet: "Ana's staged", why: gatherWords.without.lostInAll },
      { sheet: "Ana's salt", why: gatherWords.without.lossOnHeating },
    ];
    const gathered = { samples: 2 * SAMPLE_KINDS.length, runs: SAMPLE_KINDS.length, leftOut: [], withoutVapour };
    expect(await gatherRuns(workbook)).toEqual({ sheet: "Gathered runs", ...gathered });
    expect(await gatherRuns(workbook)).toEqual({ sheet: "Gathered runs (2)", ...gathered });
    const [first, second] = await Promise.all(["Gathered runs", "Gathered runs (2)"].map(async (name) => (await workbook.readUsed(name)).rows));
    const formulas = (rows: typeof first): string[] => (rows ?? []).flat().map(({ formula }) => formula);
    expect(formulas(first)).toEqual(formulas(second));
    const refersTo = (kind: string): string[] => formulas(first).filter((formula) => formula.includes(`'Ana''s ${kind}'!`));
    for (const kind of SAMPLE_KINDS) expect(refersTo(kind).length).toBeGreaterThanOrEqual(2 * 5);
    expect(first?.slice(6, 6 + 2 * SAMPLE_KINDS.length).map(([run]) => run?.value)).toEqual(
      SAMPLE_KINDS.flatMap((kind) => [`Ana's ${kind}`, `Ana's ${kind}`]),
    );
    expect(host.book.sheet("Gathered runs").charts[0]?.series).toHaveLength(5);
  });

  test("say that there is none in a workbook without run sheets, and make nothing", async () => {
    const before = await workbook.sheetNames();
    await expect(gatherRuns(workbook)).rejects.toThrow("No run sheet is in this workbook yet.");
    expect(await workbook.sheetNames()).toEqual(before);
  });
});
