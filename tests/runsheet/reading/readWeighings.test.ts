import { readWeighings } from "../../../src/runsheet/reading/readWeighings";
import type { CellContent, RangeReading } from "../../../src/workbook/Workbook";

const reading = (rows: readonly (readonly CellContent[])[]): RangeReading => ({
  sheet: "Own",
  range: "",
  rows: rows.map((row) => row.map((value) => ({ cell: "", formula: "", value, shown: String(value ?? ""), error: "", message: "", spill: "" }))),
});

test("a table of the user's own with elapsed minutes and sample mass is read to the end of its times", () => {
  const rows = [
    ["Walnut shells", null, null],
    ["Elapsed (min)", "Tin + sample (g)", "Sample (g)"],
    [0, 35, 10],
    [30, 34.2, 9.2],
    [60, null, ""],
    [null, null, 8],
  ];
  expect(readWeighings(reading(rows))).toEqual([
    {
      name: "Sample 1",
      points: [
        { minutes: 0, grams: 10 },
        { minutes: 30, grams: 9.2 },
      ],
    },
  ]);
});

test("the tables of sheets that version 0.2 made are read as before, one a sample below the other", () => {
  const table = (name: string, vessel: number, grams: readonly (number | null)[]): CellContent[][] => [
    [name, null, null, null, null],
    ["Empty vessel (g)", vessel, null, null, null],
    ["Weigh-in", "Clock", "Elapsed (min)", "Vessel + sample (g)", "Sample (g)"],
    ...grams.map((mass, index): CellContent[] => [index + 1, 0.375, mass === null ? "" : 30 * index, mass, mass === null ? "" : mass - vessel]),
    ["Still to dry (a prediction)", "", null, null, null],
  ];
  const rows = [...table("Sample 1", 25, [65, 55, null]), ...table("Sample 2", 24, [60, null, null])];
  expect(readWeighings(reading(rows))).toEqual([
    {
      name: "Sample 1",
      points: [
        { minutes: 0, grams: 40 },
        { minutes: 30, grams: 30 },
      ],
    },
    { name: "Sample 2", points: [{ minutes: 0, grams: 36 }] },
  ]);
});

test("so are those with pan zeros, whose masses are corrected and whose names stand higher", () => {
  const rows: CellContent[][] = [
    ["Sample 1", null, null],
    ["Pan zero before vessel (g)", 0, null],
    ["Empty vessel (g)", 25, null],
    ["Pan zero after vessel (g)", 0, null],
    ["Empty vessel, drift-corrected (g)", 25, null],
    ["Weigh-in", "Elapsed (min)", "Sample, drift-corrected (g)"],
    [1, 0, 40.1],
  ];
  expect(readWeighings(reading(rows))).toEqual([{ name: "Sample 1", points: [{ minutes: 0, grams: 40.1 }] }]);
});

test("a sheet without both headings in one row has no drying table", () => {
  expect(readWeighings(reading([["Elapsed (min)"], ["Sample (g)"], [5]]))).toEqual([]);
});
