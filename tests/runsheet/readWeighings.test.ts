import { readWeighings } from "../../src/runsheet/reading/readWeighings";
import type { CellContent, RangeReading } from "../../src/workbook/Workbook";

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

test("a sheet without both headings in one row has no drying table", () => {
  expect(readWeighings(reading([["Elapsed (min)"], ["Sample (g)"], [5]]))).toEqual([]);
});
