// A filled run sheet as a colleague without Retort has it: opened, and continued with one weighing changed.
import { Workbook, type Worksheet } from "exceljs";
import { headWords } from "../../src/runsheet/words/headWords";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { filledRuns } from "./filledRuns";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(300_000);

/** Printed texts that formulas give. */
function told(sheet: Worksheet | undefined): Map<string, string> {
  const texts = new Map<string, string>();
  sheet?.eachRow((row) =>
    row.eachCell((cell) => {
      const result: unknown = cell.formula ? cell.result : undefined;
      if (Number(cell.col) < 10 && typeof result === "string" && result !== "") texts.set(cell.address, result);
    }),
  );
  return texts;
}

const RUNS = [
  "unfinished drying run",
  "charring run of three samples with its composition, one on a tared balance",
  "run with liquids caught, gas by difference",
];
// What a run sheet must not say of weighings that nothing has judged.
const VERDICT = /✓ (dry|steady)|fire again|still losing|not dry yet|not shown finished|shown dry|Run complete|left as vapour; /;

describe.each(RUNS)("%s", (run) => {
  let saved: ArrayBuffer;
  let name: string;
  beforeAll(async () => {
    const sheet = await filledRuns[run]?.();
    if (sheet === undefined) throw new Error(`no run ${run}`);
    name = sheet.name;
    saved = (await saveXlsx(sheet.engine)).buffer;
    sheet.close();
  });
  const opened = async (): Promise<Workbook> => {
    const file = new Workbook();
    await file.xlsx.load(saved);
    return file;
  };

  test("opened by LibreOffice it says what it said when it was saved", async () => {
    const before = told((await opened()).getWorksheet(name));
    expect(before.size).toBeGreaterThan(15);
    expect(told((await recalculatedBy("LibreOffice", await opened())).getWorksheet(name))).toEqual(before);
  });

  test.each(PROGRAMS)("with one weighing typed as 250 and calculated anew by %s it judges nothing, accuses nobody and says why", async (program) => {
    const file = await opened();
    const sheet = file.getWorksheet(name);
    if (sheet === undefined) throw new Error(`no sheet ${name}`);
    sheet.getCell("C15").value = 250;
    // Stored answers are taken away, so that all is calculated anew; what is over arrays stays so.
    sheet.eachRow((row) =>
      row.eachCell((cell) => {
        if (!cell.formula) return;
        const isOverArrays = (cell.value as { shareType?: string }).shareType === "array";
        cell.value = isOverArrays ? { formula: cell.formula, shareType: "array", ref: cell.address } : { formula: cell.formula };
      }),
    );
    const after = told((await recalculatedBy(program, file)).getWorksheet(name));
    expect(after.get("A3")).toBe(headWords.checks.absent);
    expect([...after].filter(([, text]) => VERDICT.test(text))).toEqual([]);
    expect([...after].filter(([cell, text]) => cell.startsWith("C") && text.includes("before it was shown"))).toEqual([]);
    expect([...after.values()].filter((text) => text.includes("ot judged")).length).toBeGreaterThan(2);
  });
});
