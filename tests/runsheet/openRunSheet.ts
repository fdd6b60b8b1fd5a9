import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import type { Cell } from "../../src/runsheet/expressions/Expression";
import { cell } from "../../src/runsheet/expressions/Expression";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../src/runsheet/sheet/Columns";
import type { CheckName, ShareName } from "../../src/runsheet/sheet/layout";
import { runSheet, type RunSheet } from "../../src/runsheet/sheet/RunSheet";
import type { FireColumn } from "../../src/runsheet/sheet/Weighed";
import type { GridEngine } from "../../src/workbook/grid/GridEngine";
import type { CellContent, CellReading, Workbook } from "../../src/workbook/Workbook";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";

/** A run sheet in the headless workbook, handled as the person at the engine would: box by box. */
export interface OpenRunSheet {
  readonly workbook: Workbook;
  readonly engine: GridEngine;
  readonly name: string;
  readonly sheet: RunSheet;
  /** Cells with a cell formula that show anything, or an error. */
  calculated(): Promise<CellReading[]>;
  type(at: Cell, content: CellContent): Promise<void>;
  read(at: Cell): Promise<CellReading>;
  vessel(content: CellContent, sample?: number): Promise<void>;
  /** Types clock and weight of a round; null leaves a box as it is. */
  round(number: number, clock: CellContent, grams: CellContent, sample?: number): Promise<void>;
  /** Types the weighing after a firing, and what was noted of the firing. */
  fire(
    phase: "charring" | "ashing",
    number: number,
    grams: CellContent,
    noted?: Partial<Record<FireColumn, CellContent>>,
    sample?: number,
  ): Promise<void>;
  /** The head of the sheet as shown: what is next, the answer, the checks, what the ± covers, open burning. */
  head(): Promise<readonly string[]>;
  check(name: CheckName): Promise<readonly [verdict: string, finding: string]>;
  share(name: ShareName, sample?: number): Promise<CellReading>;
  together(name: ShareName): Promise<string>;
  close(): void;
}

export async function openRunSheet(options: RunSheetOptions): Promise<OpenRunSheet> {
  const open = await openHeadlessWorkbook();
  const name = await open.workbook.addSheet(buildRunSheet(options));
  const sheet = runSheet(checkOptions(options));
  const type = async (at: Cell, content: CellContent): Promise<void> => open.type(name, placeOf(at), content);
  const read = async (at: Cell): Promise<CellReading> => {
    const reading = (await open.workbook.read(name, placeOf(at))).rows[0]?.[0];
    if (reading === undefined) throw new Error("nothing read");
    return reading;
  };
  const shown = async (at: Cell): Promise<string> => (await read(at)).shown;
  return {
    workbook: open.workbook,
    engine: open.engine,
    name,
    sheet,
    calculated: async () =>
      (await open.workbook.readUsed(name)).rows
        .flat()
        .filter(({ formula, value, error }) => error !== "" || (formula !== "" && value !== "" && value !== null)),
    type,
    read,
    vessel: (content, sample = 1) => type(sheet.columns.box(sheet.rows.drying.vessel, sample), content),
    round: async (number, clock, grams, sample = 1) => {
      const row = sheet.rows.drying.first + number - 1;
      if (clock !== null) await type(cell(row, CLOCK), clock);
      if (grams !== null) await type(sheet.drying.box(row, sample), grams);
    },
    fire: async (phase, number, grams, noted = {}, sample = 1) => {
      const table = sheet[phase];
      if (table === undefined) throw new Error(`this sheet has no ${phase}`);
      const row = table.fire(table.rows.fire.first + number - 1);
      for (const [column, content] of Object.entries(noted)) await type(row[column as FireColumn], content);
      if (grams !== null) await type(table.box(table.rows.first + number - 1, sample), grams);
    },
    head: async () => {
      const { title, answer, checks, covers, openly } = sheet.rows.head;
      return Promise.all([cell(title, 3), ...[answer, checks, covers, openly].map((row) => cell(row, 0))].map(shown));
    },
    check: async (check) => {
      const row = sheet.rows.checks.lines.find((line) => line.check === check)?.row ?? 0;
      return [await shown(cell(row, CLOCK)), await shown(cell(row, CLOCK + 1))];
    },
    share: (of, sample = 1) => read(sheet.share(of, sample)),
    together: (of) => shown(cell(sheet.rows.results.shares[of] ?? 0, sheet.columns.verdict)),
    close: () => open.close(),
  };
}
