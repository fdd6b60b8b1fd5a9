import { cell, fixed, range, type Cell, type Range } from "../expressions/Expression";
import type { CheckedOptions } from "../options/RunSheetOptions";
import type { Performance, Place } from "./balanceRows";
import { CLOCK, columns, LABEL } from "./Columns";
import { balanceLayout, type BalanceLayout } from "./layout";
import { massFormats } from "./massFormats";
import type { Sheet } from "./RunSheet";

/** Where everything stands on a balance check: a check weight with its history, round by round, and the corners of the pan. */
export interface BalanceSheet extends Sheet {
  readonly rows: BalanceLayout;
  readonly setup: Readonly<Record<"date" | "operator" | "balance" | "value" | "mark" | "known" | "step", Cell>>;
  /** Rounds from first to last, and in ranges down to the empty row of the total, so that rows put in above it belong to them. */
  readonly dates: Range;
  readonly readings: Range;
  readonly zeros: Range;
  round(row: number): Readonly<Record<"date" | "reading" | "zero" | "off" | "apart" | "expected" | "says" | "number", Cell>>;
  corner(place: Place): Readonly<Record<"box" | "off" | "says", Cell>>;
  readonly largestOff: Cell;
  finding(name: Performance): Readonly<Record<"trust" | "value" | "plusMinus" | "says", Cell>>;
  readonly working: BalanceWorking;
}

/** Cells right of everything printed. */
export interface BalanceWorking {
  /** Mean of all rounds, g, their standard deviation, g, and how many there are. */
  readonly mean: Cell;
  readonly scatter: Cell;
  readonly count: Cell;
  /** The change that two readings explain, g. */
  readonly explained: Cell;
  readonly next: Cell;
  /** The row of the round that lies apart from all the others, 0 for none. */
  readonly apart: Cell;
  /** The ends of the chart's lines: at the first round and at the last row, mean less 2 s, mean, mean and 2 s. */
  readonly limits: readonly { readonly at: Cell; readonly low: Cell; readonly mean: Cell; readonly high: Cell }[];
}

/** The sheet for options that serve, as checkOptions gives them. */
export function balanceSheet(options: CheckedOptions): BalanceSheet {
  const [rows, at] = [balanceLayout(options), columns(options)];
  const { head, weight, rounds, corners, performance } = rows;
  const value = (row: number): Cell => fixed(cell(row, CLOCK));
  const beside = (row: number): Cell => fixed(at.box(row, 1));
  const work = (row: number, place: number): Cell => fixed(at.working(row, place));
  const down = (column: number): Range => range(fixed(cell(rounds.first, column)), fixed(cell(rounds.total, column)));
  const [reading, zero] = [at.box(1, 1).column, at.box(1, 2).column];
  return {
    options,
    formats: massFormats(options),
    rows,
    columns: at,
    samples: [1],
    setup: {
      date: value(weight.date),
      operator: beside(weight.date),
      balance: value(weight.balance),
      value: value(weight.value),
      mark: beside(weight.value),
      known: value(weight.known),
      step: value(weight.step),
    },
    dates: down(CLOCK),
    readings: down(reading),
    zeros: down(zero),
    round: (row) => ({
      date: cell(row, CLOCK),
      reading: cell(row, reading),
      zero: cell(row, zero),
      off: at.reckoned(row, 1),
      apart: at.reckoned(row, 2),
      expected: at.reckoned(row, 3),
      says: cell(row, at.verdict),
      number: cell(row, at.elapsed),
    }),
    corner: (place) => {
      const row = corners.places[place];
      return { box: fixed(at.box(row, 1)), off: fixed(at.reckoned(row, 1)), says: cell(row, at.verdict) };
    },
    largestOff: fixed(at.reckoned(corners.total, 1)),
    finding: (name) => {
      const row = performance.lines[name];
      return { trust: cell(row, CLOCK), value: fixed(at.box(row, 1)), plusMinus: fixed(at.reckoned(row, 1)), says: fixed(cell(row, at.verdict)) };
    },
    working: {
      mean: work(head.answer, 1),
      scatter: work(head.answer, 2),
      count: work(head.answer, 3),
      explained: work(head.checks, 2),
      next: work(head.checks, 1),
      apart: work(head.checks, 3),
      limits: [head.covers, head.openly].map((row) => ({
        at: fixed(cell(row, at.elapsed)),
        low: work(row, 1),
        mean: work(row, 2),
        high: work(row, 3),
      })),
    },
  };
}

/** The column of the labels, for words that run over the row. */
export const labelAt = (row: number): Cell => cell(row, LABEL);
