// The runs here are invented: prunings from a community orchard, dried in its oven and charred in its kiln.
import { cell, type Cell } from "../../src/runsheet/expressions/Expression";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { STRIP_COLUMNS, stripCell } from "../../src/runsheet/formulas/strip";
import { CLOCK } from "../../src/runsheet/sheet/Columns";
import type { RunSheet } from "../../src/runsheet/sheet/RunSheet";
import { cellArea } from "../../src/workbook/cellArea";
import type { CellContent, CellReading } from "../../src/workbook/Workbook";
import { seededUniform } from "../numerics/seededUniform";
import { openRunSheet } from "./openRunSheet";
import { clock, plainRun } from "./plainRun";

// Typing and calculating box by box takes a while on a busy machine.
jest.setTimeout(60_000);

const SAMPLES = [
  { vessel: 25, loaded: [65.2, 55.31, 52.1, 51.22, 51.21], char: [32.9, 32.54, 32.53], ash: [25.42, 25.41], again: 25.04 },
  { vessel: "tared", loaded: [35.3, 25.22, 22.9, 22.88, 22.88], char: [7.9, 7.51, 7.5], ash: [0.42, 0.41], again: 0.03 },
] as const;

const OPTIONS: RunSheetOptions = {
  ...{ kind: "ashing", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 2 },
  ...{ panZeros: true, temperatures: true },
};

/** Every box of the sheet with something to type into it, and the boxes that come filled in. */
function boxesOf(sheet: RunSheet): { typed: [Cell, CellContent][]; filled: Cell[] } {
  const { drying, charring, ashing, columns, settings, setup, composition, end } = sheet;
  const typed: [Cell, CellContent][] = [
    [setup.date, 46_347],
    [setup.operator, "orchard crew"],
    [setup.material, "plum prunings"],
    [settings.material, "mild steel"],
    [settings.repeatability, 0.01],
    [settings.oven, 105],
    [settings.methodScatter, 0.003],
  ];
  if (composition) typed.push([composition.carbon, 48.8], [composition.hydrogen, 6.1], [composition.oxygen, 43.1]);
  SAMPLES.forEach(({ vessel, loaded, char, ash, again }, index) => {
    const sample = index + 1;
    typed.push([columns.box(drying.rows.first - 1, sample), vessel], [setup.name(sample), `tree ${sample}`]);
    loaded.forEach((grams, round) => typed.push([drying.box(drying.rows.first + round, sample), grams]));
    [charring, ashing].forEach((table, phase) =>
      (phase === 0 ? char : ash).forEach((grams, firing) => table && typed.push([table.box(table.rows.first + firing, sample), grams])),
    );
    if (end) typed.push([end.vessel(sample), again]);
  });
  SAMPLES[0].loaded.forEach((_, round) => {
    const strip = drying.rows.strip?.first ?? 0;
    typed.push([cell(drying.rows.first + round, CLOCK), clock(9 + Math.floor(round / 2), round % 2 === 0 ? 0 : 30)]);
    for (const name of ["before", "after"] as const) typed.push([stripCell(strip + round, name), name === "after" ? 0.02 : 0]);
    typed.push([stripCell(strip + round, "room"), 20], [stripCell(strip + round, "warmth"), 21 + 3 * round]);
  });
  [charring, ashing].forEach((table) => {
    if (table === undefined) return;
    for (let row = table.rows.fire.first; row <= table.rows.fire.last; row++) {
      const { lit, set, measured, held, quiet, opened, seen } = table.fire(row);
      typed.push([lit, clock(13)], [set, 450], [measured, 441], [held, 60], [quiet, clock(14, 10)], [opened, clock(15, 30)], [seen, "white smoke"]);
    }
  });
  const filled = [settings.readability, settings.wanted, settings.interval, settings.criterion, settings.limit, settings.closed, setup.samplesAre];
  return { typed, filled };
}

/** Calculated cells in which the engine and the reading on plain values come apart, given the same boxes. */
function apart(readings: readonly CellReading[]): unknown[] {
  const run = plainRun(OPTIONS);
  const placed = readings.flatMap((reading) => {
    const { row, column } = cellArea(reading.cell) ?? { row: 0, column: 0 };
    return [{ ...reading, at: cell(row + 1, column) }];
  });
  for (const { at, formula, value } of placed) if (formula === "") run.type(at, value);
  return placed.flatMap(({ cell: name, at, formula, value }) => {
    if (formula === "") return [];
    const plain = run.value(at);
    // The engine reads a reference to a cell that shows nothing as blank.
    const [one, other] = [value ?? "", plain ?? ""];
    const isSame =
      typeof one === "number" && typeof other === "number" ? Math.abs(one - other) <= 1e-9 * Math.max(1e-3, Math.abs(one)) : one === other;
    return isSame ? [] : [[name, formula, value, plain]];
  });
}

test("the strip of zeros and temperatures has four boxes a row", () => {
  expect(Object.keys(STRIP_COLUMNS)).toHaveLength(4);
});

describe("A run sheet filled in halfway, in any order", () => {
  it.each([
    [1, 0.15, 0],
    [2, 0.3, 0.2],
    [3, 0.45, 0],
    [4, 0.6, 0.2],
    [5, 0.7, 0],
    [6, 0.8, 0.2],
    [7, 0.85, 0],
    [8, 0.9, 0],
    [9, 0.95, 0],
    [10, 1, 0],
    [11, 1, 0.2],
    [12, 1, 0.4],
  ])(
    "shows no error, and what its formulas give on plain values: choice %s, about %s of the boxes, %s of what came filled in emptied",
    async (seed, part, emptied) => {
      const sheet = await openRunSheet(OPTIONS);
      const uniform = seededUniform(seed);
      const { typed, filled } = boxesOf(sheet.sheet);
      for (const [at, content] of typed) if (uniform() < part) await sheet.type(at, content);
      for (const at of filled) if (uniform() < emptied) await sheet.type(at, "");
      const errors = (await sheet.calculated()).filter(({ error }) => error !== "");
      expect(errors.map(({ cell: at, error, message }) => [at, error, message])).toEqual([]);
      const readings = (await sheet.workbook.readUsed(sheet.name)).rows.flat();
      sheet.close();
      expect(apart(readings)).toEqual([]);
    },
  );
});
