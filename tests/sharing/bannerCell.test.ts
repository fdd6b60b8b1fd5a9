import { bannerCell } from "../../src/sharing/bannerCell";
import { joinedAreas } from "../../src/sharing/joinedAreas";
import { cellAt } from "../../src/workbook/cellArea";
import type { CellContent, CellReading } from "../../src/workbook/Workbook";

const cell = (content: CellContent, row: number, column: number): CellReading => {
  const formula = typeof content === "string" && content.startsWith("=") ? content : "";
  return {
    cell: cellAt(row, column),
    formula,
    value: formula === "" ? content : "",
    shown: String(content ?? ""),
    error: "",
    message: "",
    spill: "",
  };
};
const sheet = (range: string, rows: readonly (readonly CellContent[])[]) => ({
  range,
  rows: rows.map((row, down) => row.map((content, across) => cell(content, down, across))),
});

const RUN = ["Drying", null, "=B9", "Retort run sheet 1, made with {}"];

describe("bannerCell(reading, isStill)", () => {
  it.each([
    ["an empty sheet", "", [], false, "A1"],
    ["a sheet that begins further down", "B3:B3", [[1]], false, "A1"],
    [
      "a blank row near the top, whatever stands in other columns",
      "A1:B3",
      [
        ["Title", null],
        [null, null],
        [1, 2],
      ],
      false,
      "A2",
    ],
    [
      "the right of the first row",
      "A1:B2",
      [
        ["Tin", 25],
        ["Dry", 31.5],
      ],
      false,
      "C1",
    ],
    [
      "the right of a title that runs on over blank cells",
      "A1:B2",
      [
        ["Hazel shells, second run", null],
        ["Dry", 31.5],
      ],
      false,
      "D1",
    ],
    ["no further than a few columns off a very long title", "A1:A2", [["x".repeat(400)], [1]], false, "G1"],
    ["no cell whose formula shows nothing", "A1:A2", [["=B9"], [1]], false, "B1"],
    ["what to weigh next, on the still copy of a run sheet", "A1:D2", [RUN, [1, 1, 1, 1]], true, "C1"],
    ["that cell never, on a run sheet that calculates", "A1:D2", [RUN, [1, 1, 1, 1]], false, "H1"],
  ] as const)("takes %s", (_, range, rows, isStill, at) => {
    expect(bannerCell(sheet(range, rows), isStill)).toBe(at);
  });
});

it("takes no row that a spill fills with nothing", () => {
  const { range, rows } = sheet("A1:B3", [
    ["=X1#", 25],
    [null, null],
    [null, 3],
  ]);
  const spilled = rows.map((row) => row.map((one) => (one.cell === "A1" ? { ...one, spill: "A1:A3" } : one)));
  expect(bannerCell({ range, rows: spilled })).toBe("C1");
});

describe("joinedAreas(areas)", () => {
  const single = (range: string, value: CellContent) => ({ range, values: [[value]] });

  it("joins cells beside and below one another, leaves gaps out and spills whole, and loses no value", () => {
    const spill = { range: "E1:E2", values: [[7], [8]] };
    const areas = [single("A1", 1), single("B1", 2), spill, single("A2", 3), single("B2", 4), single("A4", 5), single("D1", null)];
    expect(joinedAreas(areas)).toEqual([
      spill,
      { range: "D1", values: [[null]] },
      {
        range: "A1:B2",
        values: [
          [1, 2],
          [3, 4],
        ],
      },
      single("A4", 5),
    ]);
  });

  it("makes one block of a long column", () => {
    const areas = Array.from({ length: 5000 }, (_, row) => single(`C${row + 1}`, row));
    expect(joinedAreas(areas)).toEqual([{ range: "C1:C5000", values: areas.map(({ values }) => values[0]) }]);
  });
});
