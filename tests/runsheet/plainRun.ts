import { CellProblem } from "../../src/cells/CellProblem";
import { everyBlock } from "../../src/runsheet/buildRunSheet";
import { cell, type Cell } from "../../src/runsheet/expressions/Expression";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../src/runsheet/sheet/Columns";
import type { CheckName } from "../../src/runsheet/sheet/layout";
import { runSheet, type RunSheet } from "../../src/runsheet/sheet/RunSheet";
import { plainCells } from "./plainCells";
import type { Plain } from "../../src/explanation/runSheet/Plain";

/** A run sheet on plain values, worked out without a spreadsheet. */
export interface PlainRun {
  readonly sheet: RunSheet;
  /** Puts a value into a cell, also in place of what a formula would give. Null empties it. */
  type(cell: Cell, content: Plain): void;
  /** The weight of a sample's empty vessel. */
  vessel(content: Plain, sample?: number): void;
  /** Types the rounds of a sample, every 30 min from 9:00 on. */
  weigh(grams: readonly Plain[], sample?: number): void;
  /** Types the weighings after each firing, and that each was held an hour at its temperature. */
  fire(phase: "charring" | "ashing" | "stages" | "heating", grams: readonly Plain[], sample?: number): void;
  /** Types what each part that catches liquids weighed before the fire and after it: tube and lid, trap, receivers. */
  caught(weights: readonly (readonly [before: Plain, after: Plain])[], sample?: number): void;
  /** What a cell holds: null where there is nothing. */
  value(cell: Cell): Plain;
  /** The head of the sheet: what is next, the answer, the checks, what the ± covers, open burning. */
  head(): readonly [next: Plain, answer: Plain, checks: Plain, covers: Plain, openly: Plain];
  /** The verdict and the finding of a check. */
  check(name: CheckName): readonly [verdict: Plain, finding: Plain];
  /** The code and the message of the error in a cell, "" without one. */
  problem(cell: Cell): string;
  /** Every formula cell with what it gives. */
  calculated(): readonly { readonly at: Cell; readonly value: Plain }[];
}

export const USUAL: RunSheetOptions = { kind: "ashing", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 1 };

const MINUTES_PER_DAY = 1440;
const NINE = 540;
/** A clock time as a spreadsheet holds it. */
export const clock = (hours: number, minutes = 0): number => (hours * 60 + minutes) / MINUTES_PER_DAY;

export function plainRun(options: Partial<RunSheetOptions> = {}): PlainRun {
  const sheet = runSheet(checkOptions({ ...USUAL, ...options }));
  const { planned, type, value, at } = plainCells(everyBlock(sheet).cells);
  const fired = (phase: "charring" | "ashing" | "stages" | "heating") => {
    const table = sheet[phase];
    if (table === undefined) throw new Error(`this sheet has no ${phase}`);
    return table;
  };
  return {
    sheet,
    type,
    vessel: (content, sample = 1) => type(sheet.columns.box(sheet.rows.drying.vessel, sample), content),
    weigh: (grams, sample = 1) => {
      const { first } = sheet.rows.drying;
      for (const [index, weight] of grams.entries()) {
        type(cell(first + index, CLOCK), (NINE + 30 * index) / MINUTES_PER_DAY);
        type(sheet.drying.box(first + index, sample), weight);
      }
    },
    fire: (phase, grams, sample = 1) => {
      const table = fired(phase);
      for (const [index, weight] of grams.entries()) {
        type(table.fire(table.rows.fire.first + index).held, 60);
        type(table.box(table.rows.first + index, sample), weight);
      }
    },
    caught: (weights, sample = 1) => {
      const { caught } = sheet;
      if (caught === undefined) throw new Error("this sheet catches nothing");
      for (const [part, [before, after]] of weights.entries()) {
        type(caught.before(part, sample), before);
        type(caught.after(part, sample), after);
      }
    },
    value,
    head: () => {
      const { title, answer, checks, covers, openly } = sheet.rows.head;
      return [at(title, 3), at(answer, 0), at(checks, 0), at(covers, 0), at(openly, 0)];
    },
    check: (name) => {
      const row = sheet.rows.checks.lines.find(({ check }) => check === name)?.row ?? 0;
      return [at(row, CLOCK), at(row, CLOCK + 1)];
    },
    problem: (one) => {
      const found = value(one);
      return found instanceof CellProblem ? `${found.code} ${found.message}` : "";
    },
    calculated: () => [...planned.values()].filter(({ formula }) => formula !== undefined).map((one) => ({ at: one.at, value: value(one.at) })),
  };
}
