// Sheets that other spreadsheets opened and saved: each writes formulas its own way, and none of them is taken for another's; a replaced one is.
import { otherFormulas } from "../../src/problems/runsheet/growingProblems";
import { reportHtml } from "../../src/report/reportHtml";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { readRuns } from "../../src/runsheet/gathering/readRuns";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { formulasNotOwn } from "../../src/runsheet/reading/formulasNotOwn";
import { sheetWords } from "../../src/runsheet/words/sheetWords";
import { openXlsx } from "../../src/workbench/xlsx/openXlsx";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import { plannedFile } from "../../src/xlsx/planned/plannedFile";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";
import { recalculatedBy } from "./recalculated";

jest.setTimeout(600_000);

const common = { weighIns: 4, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 2 } as const;
// The last as it is when a sample was added to it, under a name that a person gave.
const SHEETS: readonly (RunSheetOptions & { readonly called: string })[] = [
  { ...common, kind: "charring", called: "Charring run" },
  { ...common, kind: "staged", called: "Staged run" },
  { ...common, kind: "balance", replicates: 1, called: "Balance check" },
  { ...common, kind: "ashing", replicates: 3, addedSample: 3, cautionsAfter: "ashing", called: "Orchard's run" },
];

const named = ({ called, ...options }: (typeof SHEETS)[number]): SheetPlan => ({ ...buildRunSheet(options), name: called });
const whole = SHEETS.map(named);
const replaced = whole.map((plan) => {
  const formulas = plan.cells.filter(({ formula }) => formula !== undefined);
  const cell = formulas[Math.floor(formulas.length / 2)]?.cell ?? "";
  const cells = plan.cells.map((one) => (one.cell === cell ? { ...one, formula: "=1+1" } : one));
  return { cell, plan: { ...plan, name: `${plan.name} 2`, cells } };
});

/** Opened and saved again by the local workbook. */
async function savedHere(content: Uint8Array): Promise<Uint8Array> {
  const open = await openHeadlessWorkbook();
  await openXlsx(open.engine, new Uint8Array(content));
  const saved = await saveXlsx(open.engine);
  open.close();
  return saved;
}

// What Gnumeric saves of these sheets the file library does not read.
test.each(["the local workbook", "LibreOffice"] as const)(
  "saved by %s, a whole sheet is not accused, and a replaced formula is named",
  async (program) => {
    const given = await plannedFile([...whole, ...replaced.map(({ plan }) => plan)]);
    const saved =
      program === "the local workbook" ? await savedHere(given) : new Uint8Array(await (await recalculatedBy(program, given)).xlsx.writeBuffer());
    const open = await openHeadlessWorkbook();
    await openXlsx(open.engine, new Uint8Array(saved));
    const mark = new RegExp(`^${sheetWords.workings.formulas}[a-p]{8}$`);
    for (const { name } of whole) {
      const reading = await open.workbook.readUsed(name);
      expect([name, reading.rows[0]?.some(({ value }) => mark.test(String(value)))]).toEqual([name, true]);
      expect([name, formulasNotOwn(reading)]).toEqual([name, []]);
    }
    for (const { cell, plan } of replaced) {
      const reading = await open.workbook.readUsed(plan.name);
      expect([plan.name, formulasNotOwn(reading)]).toEqual([plan.name, [cell]]);
      const said = otherFormulas([cell]).replace("'", "&#39;");
      expect([plan.name, reportHtml(reading, { date: "2026-11-21", version: "0.2.0" }).includes(said)]).toEqual([plan.name, true]);
      // A balance check is no run of samples, and no sheet gathers it.
      const { rows, leftOut } = readRuns([reading]);
      expect([plan.name, rows.length, leftOut.some(({ why }) => why.includes(cell))]).toEqual([plan.name, 0, !plan.name.startsWith("Balance")]);
    }
    open.close();
  },
);
