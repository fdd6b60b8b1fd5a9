import { balanceBlocks } from "../../../src/runsheet/blocks/balance/planBalanceSheet";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import type { BalanceCheck, Place } from "../../../src/runsheet/sheet/balanceRows";
import { balanceSheet, type BalanceSheet } from "../../../src/runsheet/sheet/BalanceSheet";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import { plainCells, type PlainCells } from "../plainCells";
import { USUAL } from "../plainRun";
import type { Plain } from "../../../src/explanation/runSheet/Plain";

// 14 November 2026, a Saturday: the orchard's balance is checked every week.
const FIRST_DAY = 46_340;

/** A balance check on plain values, worked out without a spreadsheet. */
export interface PlainBalance extends PlainCells {
  readonly sheet: BalanceSheet;
  /** Types the rounds' readings, a week apart, with the zero after each. */
  rounds(readings: readonly Plain[], zeros?: readonly Plain[]): void;
  corners(readings: Partial<Record<Place, Plain>>): void;
  /** What is next, the answer, the checks, what the ± covers, and the figure for run sheets. */
  head(): readonly Plain[];
  check(name: BalanceCheck): readonly [verdict: Plain, finding: Plain];
}

export function plainBalance(options: Partial<RunSheetOptions> = {}): PlainBalance {
  const sheet = balanceSheet(checkOptions({ ...USUAL, kind: "balance", weighIns: 10, ...options }));
  const cells = plainCells(balanceBlocks(sheet).cells);
  const { type, at } = cells;
  return {
    ...cells,
    sheet,
    rounds: (readings, zeros = []) => {
      for (const [index, reading] of readings.entries()) {
        const round = sheet.round(sheet.rows.rounds.first + index);
        type(round.date, FIRST_DAY + 7 * index);
        type(round.reading, reading);
        if (zeros[index] !== undefined) type(round.zero, zeros[index] ?? null);
      }
    },
    corners: (readings) => {
      for (const [place, reading] of Object.entries(readings)) type(sheet.corner(place as Place).box, reading);
    },
    head: () => {
      const { title, answer, checks, covers, openly } = sheet.rows.head;
      return [at(title, 3), ...[answer, checks, covers, openly].map((row) => at(row, 0))];
    },
    check: (name) => {
      const row = sheet.rows.checks.lines.find(({ check }) => check === name)?.row ?? 0;
      return [at(row, CLOCK), at(row, CLOCK + 1)];
    },
  };
}
