import fc from "fast-check";
import { cellArea, cellAt, covers, rangeOf } from "../../src/workbook/cellArea";

// Excel specifications and limits: the last cell of a sheet is XFD1048576.
const LAST_ROW = 1_048_575;
const LAST_COLUMN = 16_383;
const anyCell = fc.tuple(fc.integer({ min: 0, max: LAST_ROW }), fc.integer({ min: 0, max: LAST_COLUMN }));

describe("cellArea(range)", () => {
  test.each([
    ["A1", { row: 0, column: 0, rows: 1, columns: 1 }],
    ["B7:C12", { row: 6, column: 1, rows: 6, columns: 2 }],
    ["$B$7:$C$12", { row: 6, column: 1, rows: 6, columns: 2 }],
    ["c12:b7", { row: 6, column: 1, rows: 6, columns: 2 }],
    ["Z1:AA1", { row: 0, column: 25, rows: 1, columns: 2 }],
    ["XFD1048576", { row: LAST_ROW, column: LAST_COLUMN, rows: 1, columns: 1 }],
  ])("reads %s", (range, area) => expect(cellArea(range)).toEqual(area));

  test.each(["", "A", "A0", "7", "A:A", "Sheet1!A1", "A1:B2:C3", "A1,B2", "R1C1", "ABCD1"])("does not take %s for a range", (text) =>
    expect(cellArea(text)).toBeUndefined(),
  );

  test("is undone by rangeOf, for any two corners", () => {
    fc.assert(
      fc.property(anyCell, anyCell, ([row, column], [otherRow, otherColumn]) => {
        const area = cellArea(`${cellAt(row, column)}:${cellAt(otherRow, otherColumn)}`);
        expect(area).toMatchObject({ row: Math.min(row, otherRow), column: Math.min(column, otherColumn) });
        expect(area && cellArea(rangeOf(area))).toEqual(area);
        expect(area && covers(area, row, column) && covers(area, otherRow, otherColumn)).toBe(true);
      }),
    );
  });
});

describe("covers(area, row, column)", () => {
  test("holds for the cells of the area and no other", () => {
    const area = { row: 1, column: 1, rows: 2, columns: 1 };
    const covered = [0, 1, 2, 3].flatMap((row) => [0, 1, 2].filter((column) => covers(area, row, column)).map((column) => cellAt(row, column)));
    expect(covered).toEqual(["B2", "B3"]);
  });
});
