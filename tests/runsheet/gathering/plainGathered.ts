import type { BlockCell } from "../../../src/runsheet/blocks/Block";
import { cell, elsewhere, type Cell } from "../../../src/runsheet/expressions/Expression";
import { gatheredBlock } from "../../../src/runsheet/gathering/buildGatheredSheet";
import { AT, gatheredSheet, WORK, type GatheredSheet } from "../../../src/runsheet/gathering/GatheredSheet";
import type { LeftOut, RunRow } from "../../../src/runsheet/gathering/RunRow";
import type { Plain } from "../../../src/explanation/runSheet/Plain";
import { workOut } from "../../../src/explanation/runSheet/workOut";

/** What a run's sheet shows of one sample; a share left out is one that its kind of run does not have. */
export interface PlainRow {
  readonly trust: Plain;
  readonly water?: Plain;
  readonly vapour?: Plain;
  readonly char?: Plain;
  readonly ash?: Plain;
  readonly plusMinus?: Plain;
  readonly heading?: Plain;
  readonly name?: Plain;
}

/** A gathered sheet on plain values, worked out without a spreadsheet. */
export interface PlainGathered {
  readonly sheet: GatheredSheet;
  type(at: Cell, content: Plain): void;
  value(at: Cell): Plain;
  /** The head: what the runs come to, what stands apart, and the band. */
  head(): readonly [answer: Plain, apart: Plain, band: Plain];
  /** What stands in a column of a row counted from 1. */
  row(number: number): Readonly<Record<keyof typeof AT, Plain>>;
  z(number: number): Plain;
}

const COLUMNS = ["trust", "water", "vapour", "char", "ash", "plusMinus", "heading", "name"] as const;

export function plainGathered(rows: readonly PlainRow[], leftOut: readonly LeftOut[] = []): PlainGathered {
  // One sheet stands in for all: a row for each sample, a column for each thing it shows.
  const at = (row: number, column: (typeof COLUMNS)[number]): Cell => elsewhere("Run", cell(row + 1, COLUMNS.indexOf(column)));
  const runs = rows.map((one, index): RunRow => {
    const share = (name: "water" | "vapour" | "char" | "ash"): Cell[] => (one[name] === undefined ? [] : [at(index, name)]);
    const [[moistureWet], [volatile], [charYield], [ash]] = [share("water"), share("vapour"), share("char"), share("ash")];
    return {
      sheet: `Run ${index + 1}`,
      heading: at(index, "heading"),
      trust: at(index, "trust"),
      name: at(index, "name"),
      shares: {
        ...(moistureWet === undefined ? {} : { moistureWet }),
        ...(volatile === undefined ? {} : { volatile }),
        ...(charYield === undefined ? {} : { charYield }),
        ...(ash === undefined ? {} : { ash }),
      },
      plusMinus: at(index, "plusMinus"),
    };
  });
  const sheet = gatheredSheet({ rows: runs, leftOut });
  const key = (row: number, column: number): string => `${row},${column}`;
  const planned = new Map<string, BlockCell>(gatheredBlock(sheet).cells.map((one) => [key(one.at.row, one.at.column), one]));
  const typed = new Map<string, Plain>();
  const value = (row: number, column: number, other?: string): Plain => {
    if (other !== undefined) return rows[row - 1]?.[COLUMNS[column] ?? "heading"] ?? null;
    const one = planned.get(key(row, column));
    return typed.get(key(row, column)) ?? (one?.formula === undefined ? (one?.content ?? null) : workOut(one.formula, value));
  };
  const of = (one: Cell): Plain => value(one.row, one.column);
  return {
    sheet,
    type: ({ row, column }, content) => void typed.set(key(row, column), content),
    value: of,
    head: () => [of(cell(sheet.head.answer, 0)), of(cell(sheet.head.apart, 0)), of(cell(sheet.head.band, AT.volatile))],
    row: (number) =>
      // Object.fromEntries forgets which names it was given.
      Object.fromEntries(Object.entries(AT).map(([name, column]) => [name, value(sheet.first + number - 1, column)])) as Record<
        keyof typeof AT,
        Plain
      >,
    z: (number) => value(sheet.first + number - 1, WORK.z),
  };
}
