import { bannerCell } from "../../src/sharing/bannerCell";
import { joinedAreas } from "../../src/sharing/joinedAreas";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { buildGatheredSheet } from "../../src/runsheet/gathering/buildGatheredSheet";
import { KINDS } from "../../src/runsheet/kinds";
import type { RunKind } from "../../src/runsheet/options/RunSheetOptions";
import { areaNamed } from "../../src/workbook/areaNamed";
import { cellArea, cellAt } from "../../src/workbook/cellArea";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
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
    ["the printed title, on a run sheet that calculates", "A1:D2", [RUN, [1, 1, 1, 1]], false, "A1"],
    [
      "no title that somebody wrote, there",
      "A1:D2",
      [
        ["Tin 4, plums", ...RUN.slice(1)],
        [1, 1, 1, 1],
      ],
      false,
      "H1",
    ],
    [
      "a gap in view, where the first row goes far to the right",
      "A1:Z2",
      [
        ["Gathered", ...new Array<null>(24).fill(null), "Workings"],
        [1, ...new Array<null>(24).fill(null), 1],
      ],
      false,
      "B1",
    ],
    [
      "the gap of a later row, where the first is full",
      "A1:L3",
      [new Array<number>(12).fill(1), [1, 2, ...new Array<null>(10).fill(null)], new Array<number>(12).fill(1)],
      false,
      "C2",
    ],
    // To the right of it nobody would look.
    ["what is below a wide table that leaves no gap", "A1:L2", [new Array<number>(12).fill(1), new Array<number>(12).fill(1)], false, "A6"],
    ["the right of a wide table that fills the first screen", "A1:L30", new Array<number[]>(30).fill(new Array<number>(12).fill(1)), false, "M1"],
    [
      "a blank row further down a wide table, but for one next to its end",
      "A1:L9",
      Array.from({ length: 9 }, (_, row) => (row === 7 ? new Array<null>(12).fill(null) : new Array<number>(12).fill(1))),
      false,
      "A8",
    ],
    [
      "no blank cell that a formula refers to, on a copy that calculates",
      "A1:B3",
      [
        ["Tin", null],
        [null, null],
        ["=SUM(A1:A2)", "=COUNTA($C$1)"],
      ],
      false,
      "B1",
    ],
    [
      "it where nothing calculates any more",
      "A1:B3",
      [
        ["Tin", null],
        [null, null],
        ["=SUM(A1:A2)", "=COUNTA($C$1)"],
      ],
      true,
      "A2",
    ],
    ["no cell of a column that a formula sums as a whole", "A1:B1", [["=SUM(A:B)", 1]], false, "C1"],
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

/** A plan as a sheet reads that was made from it, with what its formulas come to left open. */
function asRead({ cells }: SheetPlan) {
  const held = new Map(cells.map((one) => [one.cell.replaceAll("$", ""), one.formula ?? one.content ?? null] as const));
  const places = [...held.keys()].flatMap((at) => cellArea(at) ?? []);
  const [rows, columns] = [Math.max(...places.map(({ row }) => row + 1)), Math.max(...places.map(({ column }) => column + 1))];
  const contents = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_cell, column) => held.get(cellAt(row, column)) ?? null),
  );
  return sheet(`A1:${cellAt(rows - 1, columns - 1)}`, contents);
}

// Columns A to I of a run sheet are printed; its first three rows stay in view.
const FROZEN = 3;
const PRINTED = 9;

describe("on every kind of run sheet", () => {
  it.each(Object.keys(KINDS) as RunKind[])("%s: the banner stands in the rows that stay in view, and covers no box", (kind) => {
    const options = { kind, weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: kind === "balance" ? 1 : 3 } as const;
    const plan = buildRunSheet(options);
    for (const isStill of [false, true]) {
      const at = bannerCell(asRead(plan), isStill);
      const { row, column } = areaNamed(at);
      expect([row < FROZEN, column < PRINTED]).toEqual([true, true]);
      expect(plan.cells.find(({ cell: place }) => place === at)?.style).toBe(isStill ? "runStrong" : "runTitle");
    }
  });

  it("gathered runs: beside the title", () => {
    const gathered = buildGatheredSheet({ rows: [], leftOut: [] });
    expect(areaNamed(bannerCell(asRead(gathered), false))).toMatchObject({ row: 0, column: 4 });
  });
});
