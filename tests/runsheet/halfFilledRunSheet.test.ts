// The runs here are invented: prunings from a community orchard, dried in its oven and charred in its kiln.
import { cell } from "../../src/runsheet/expressions/Expression";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { cellArea } from "../../src/workbook/cellArea";
import type { CellContent, CellReading } from "../../src/workbook/Workbook";
import { seededUniform } from "../numerics/seededUniform";
import { openRunSheet, type OpenRunSheet } from "./openRunSheet";
import { plainRun } from "./plainRun";

// Typing and calculating box by box takes a while on a busy machine.
jest.setTimeout(60_000);

const SAMPLES = [
  { vessel: 25, loaded: [65.2, 55.31, 52.1, 51.22, 51.21], char: 32.53, ash: 25.4 },
  { vessel: 24.8, loaded: [60.1, 50.02, 47.7, 47.68, 47.68], char: 31.2, ash: 25.1 },
];

type FillIn = (sheet: OpenRunSheet) => Promise<void>;

/** Boxes that come filled in, as a way to empty them. */
const EMPTIED: readonly FillIn[] = [
  "Balance readability (g)",
  "Wanted uncertainty (k = 2)",
  "Planned interval (min)",
  "Drying criterion",
  "Drying limit",
].map((label) => (sheet) => sheet.fillIn(label, ""));

/** Every box of a run in order, as a way to fill it in. */
const BOXES: readonly FillIn[] = [
  ...(
    [
      ["Vessel material", "tinned steel"],
      ["Balance repeatability (g)", 0.01],
      ["Oven temperature (°C)", 105],
      ["Carbon (fraction of dry)", 0.44],
      ["Hydrogen (fraction of dry)", 0.06],
      ["Oxygen (fraction of dry)", 0.49],
    ] as const
  ).map(
    ([label, content]) =>
      (sheet: OpenRunSheet) =>
        sheet.fillIn(label, content),
  ),
  ...SAMPLES.flatMap(({ vessel, loaded, char, ash }, index) => {
    const sample = index + 1;
    const boxes: readonly (readonly [string, CellContent])[] = [
      ["Pan zero before vessel (g)", 0],
      ["Empty vessel (g)", vessel],
      ["Pan zero after vessel (g)", 0.01],
      ["Kiln set (°C)", 450],
      ["Pan zero before char (g)", 0],
      ["Vessel + char (g)", char],
      ["Pan zero after char (g)", -0.01],
      ["Ashing furnace set (°C)", 550],
      ["Pan zero before ash (g)", 0.01],
      ["Vessel + ash (g)", ash],
      ["Pan zero after ash (g)", 0.01],
    ];
    return [
      ...boxes.map(
        ([label, content]) =>
          (sheet: OpenRunSheet) =>
            sheet.fillIn(label, content, sample),
      ),
      ...loaded.flatMap((grams, row) => [
        (sheet: OpenRunSheet) => sheet.weighIn(row + 1, `${9 + Math.floor(row / 2)}:${row % 2 ? "30" : "00"}`, null, sample),
        (sheet: OpenRunSheet) => sheet.weighIn(row + 1, null, grams, sample),
        (sheet: OpenRunSheet) => sheet.enter(row + 1, "Pan zero before (g)", 0, sample),
        (sheet: OpenRunSheet) => sheet.enter(row + 1, "Pan zero after (g)", 0.01, sample),
        (sheet: OpenRunSheet) => sheet.enter(row + 1, "Room (°C)", 20, sample),
        (sheet: OpenRunSheet) => sheet.enter(row + 1, "Sample when weighed (°C)", 21 + row, sample),
      ]),
    ];
  }),
];

const OPTIONS: RunSheetOptions = {
  ...{ kind: "ashing", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 2 },
  ...{ panZeros: true, temperatures: true },
};

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
    const isSame = typeof one === "number" && typeof other === "number" ? Math.abs(one - other) <= 1e-9 * Math.abs(one) : one === other;
    return isSame ? [] : [[name, formula, value, plain]];
  });
}

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
      for (const fillIn of BOXES) if (uniform() < part) await fillIn(sheet);
      for (const empty of EMPTIED) if (uniform() < emptied) await empty(sheet);
      const errors = (await sheet.calculated()).filter(({ error }) => error !== "");
      expect(errors.map(({ cell, error, message }) => [cell, error, message])).toEqual([]);
      const readings = (await sheet.workbook.readUsed(sheet.name)).rows.flat();
      sheet.close();
      expect(apart(readings)).toEqual([]);
    },
  );
});
