import { CellProblem } from "../../src/cells/CellProblem";
import type { BlockCell } from "../../src/runsheet/blocks/Block";
import { everyBlock } from "../../src/runsheet/buildRunSheet";
import type { Cell } from "../../src/runsheet/expressions/Expression";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { runSheet, type RunSheet } from "../../src/runsheet/sheet/RunSheet";
import type { SampleCells } from "../../src/runsheet/sheet/sampleCells";
import { workOut, type Plain } from "./workOut";

/** A run sheet on plain values, worked out without a spreadsheet. */
export interface PlainRun {
  readonly sheet: RunSheet;
  /** The first sample. */
  readonly first: SampleCells;
  /** Puts a value into a cell, also in place of what a formula would give. Null empties it. */
  type(cell: Cell, content: Plain): void;
  /** Types the weigh-ins of a sample, every 30 min from 9:00 on. */
  weigh(grams: readonly (number | null)[], sample?: number): void;
  /** What a cell holds: null where there is nothing. */
  value(cell: Cell): Plain;
  /** The code and the message of the error in a cell, "" without one. */
  problem(cell: Cell): string;
}

export const USUAL: RunSheetOptions = { kind: "ashing", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 1 };

const MINUTES_PER_DAY = 1440;
const NINE = 540;

export function plainRun(options: Partial<RunSheetOptions> = {}): PlainRun {
  const sheet = runSheet(checkOptions({ ...USUAL, ...options }));
  const key = (row: number, column: number): string => `${row},${column}`;
  const planned = new Map<string, BlockCell>(everyBlock(sheet).cells.map((cell) => [key(cell.at.row, cell.at.column), cell]));
  const typed = new Map<string, Plain>();
  let known = new Map<string, Plain>();
  const at = (row: number, column: number): Plain => {
    const name = key(row, column);
    const value = typed.get(name);
    if (value !== undefined) return value;
    const before = known.get(name);
    if (before !== undefined) return before;
    const cell = planned.get(name);
    const now = cell?.formula === undefined ? (cell?.content ?? null) : workOut(cell.formula, at);
    known.set(name, now);
    return now;
  };
  const type = ({ row, column }: Cell, content: Plain): void => {
    typed.set(key(row, column), content);
    known = new Map();
  };
  const sampleAt = (number: number): SampleCells => {
    const sample = sheet.samples[number - 1];
    if (sample === undefined) throw new Error(`no sample ${number}`);
    return sample;
  };
  const value = ({ row, column }: Cell): Plain => at(row, column);
  return {
    sheet,
    first: sampleAt(1),
    type,
    weigh: (grams, number = 1) => {
      const { rows } = sampleAt(number);
      const { clock, loaded } = sheet.columns.at;
      for (const [index, weight] of grams.entries()) {
        const cell = { kind: "cell", row: rows.first + index, fixed: "nothing" } as const;
        type({ ...cell, column: clock }, (NINE + 30 * index) / MINUTES_PER_DAY);
        type({ ...cell, column: loaded }, weight);
      }
    },
    value,
    problem: (cell) => {
      const found = value(cell);
      return found instanceof CellProblem ? `${found.code} ${found.message}` : "";
    },
  };
}
