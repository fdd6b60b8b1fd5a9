import fc from "fast-check";
import { cellArea, cellAt } from "../../../src/workbook/cellArea";
import { alikeAreas } from "../../../src/workbook/excel/writing/alikeAreas";
import { cellBlocks } from "../../../src/workbook/excel/writing/cellBlocks";
import { cellEntry } from "../../../src/workbook/excel/writing/cellEntry";
import { CELLS_A_REQUEST, rowBands } from "../../../src/workbook/excel/inRequests";
import { columnPoints } from "../../../src/workbook/excel/writing/writePlan";
import type { PlannedCell } from "../../../src/workbook/SheetPlan";
import { entered } from "../../host/entered";

/** Cells of a small sheet, each at most once. */
const someCells = fc.uniqueArray(
  fc.record({
    row: fc.integer({ min: 0, max: 30 }),
    column: fc.integer({ min: 0, max: 8 }),
    content: fc.oneof(fc.integer(), fc.string(), fc.boolean()),
    style: fc.constantFrom<"input" | "label" | undefined>("input", "label", undefined),
  }),
  { selector: ({ row, column }) => `${row} ${column}` },
);
const planned = (
  cells: readonly { row: number; column: number; content: string | number | boolean; style?: "input" | "label" | undefined }[],
): PlannedCell[] =>
  cells.map(({ row, column, content, style }) => ({ cell: cellAt(row, column), content, ...(style === undefined ? {} : { style }) }));

describe("cellBlocks(cells)", () => {
  test("write every planned cell once and no other", () => {
    fc.assert(
      fc.property(someCells, (cells) => {
        const written = cellBlocks(planned(cells)).flatMap(({ area, entries }) =>
          entries.flatMap((row, down) =>
            row.flatMap((entry, across) => (entry === null ? [] : [[cellAt(area.row + down, area.column + across), entry]])),
          ),
        );
        const wanted = cells.map(({ row, column, content }) => [cellAt(row, column), cellEntry(content)]);
        expect([...written].sort()).toEqual([...wanted].sort());
      }),
    );
  });

  test("are one for cells without a blank row between them, however wide the gaps within a row", () => {
    expect(cellBlocks(planned([{ row: 0, column: 0, content: 1 }, { row: 0, column: 7, content: 2 }, { row: 1, column: 3, content: 3 }]))).toHaveLength(1); // prettier-ignore
  });

  test("never hold more cells than a request takes", () => {
    const column = Array.from({ length: 3000 }, (_, row) => ({ row, column: row % 2 === 0 ? 0 : 9, content: row }));
    const blocks = cellBlocks(planned(column));
    expect(blocks.map(({ area }) => area.rows * area.columns <= CELLS_A_REQUEST)).toEqual([true, true]);
  });
});

describe("alikeAreas(cells, property)", () => {
  test("cover each cell that has the property once, and no other cell", () => {
    fc.assert(
      fc.property(someCells, (cells) => {
        const covered = alikeAreas(planned(cells), ({ style }) => style).flatMap(({ value, area }) =>
          Array.from({ length: area.rows * area.columns }, (_, index) => [
            cellAt(area.row + Math.floor(index / area.columns), area.column + (index % area.columns)),
            value,
          ]),
        );
        const wanted = cells.flatMap(({ row, column, style }) => (style === undefined ? [] : [[cellAt(row, column), style]]));
        expect([...covered].sort()).toEqual([...wanted].sort());
      }),
    );
  });

  test("make one rectangle of a table", () => {
    const table = Array.from({ length: 12 }, (_, index) => ({
      row: Math.floor(index / 3) + 5,
      column: index % 3,
      content: 1,
      style: "input" as const,
    }));
    expect(alikeAreas(planned(table), ({ style }) => style)).toEqual([{ value: "input", area: cellArea("A6:C9") }]);
  });
});

describe("rowBands(area, mostCells)", () => {
  test("follow each other without gap or overlap and keep to the limit where a row does", () => {
    const size = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(size, size, size, size, (row, rows, columns, mostCells) => {
        const bands = rowBands({ row, column: 2, rows, columns }, mostCells);
        let next = row;
        for (const band of bands) {
          expect(band).toMatchObject({ row: next, column: 2, columns });
          expect(band.rows === 1 || band.rows * columns <= mostCells).toBe(true);
          next += band.rows;
        }
        expect(next).toBe(row + rows);
      }),
    );
  });
});

describe("cellEntry(content)", () => {
  test("comes out as the same content from a host that reads it as if typed", () => {
    const tricky = fc.constantFrom(
      "",
      "=",
      "=1+1",
      "+",
      "-5",
      "@x",
      "'",
      "1e5",
      "TRUE",
      "false",
      "#N/A",
      "5%",
      "1/2",
      "Mar 3",
      "May",
      "kg",
      "ÄÖ",
      "2024-01-05",
    );
    fc.assert(
      fc.property(fc.oneof(fc.string(), tricky, fc.double({ noNaN: true }), fc.boolean()), (content) => {
        expect(entered(cellEntry(content))).toEqual({ value: content });
      }),
    );
  });

  test.each(["Vessel + sample (g)", "Sample 1 (g)", "Dry at 105 °C until the weight holds", "Run sheet"])("leaves %s without an apostrophe", (text) =>
    expect(cellEntry(text)).toBe(text),
  );

  test.each(["Wednesday, September 25, 2024 10:30 PM", "Mar 3", "3 g", "True", "TRUE"])("puts %s behind an apostrophe", (text) =>
    expect(cellEntry(text)).toBe(`'${text}`),
  );
});

describe("columnPoints(characters)", () => {
  // Excel's own standard column: 8.43 characters are 64 pixels (“Change the column width and row height”), 48 points.
  test("gives 48 points for the standard width of 8.43 characters", () => expect(columnPoints(8.43)).toBe(48));
});
