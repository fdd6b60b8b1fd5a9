import fc from "fast-check";
import { AreaIndex } from "../../../src/sharing/plain/change/AreaIndex";
import { FilledCells } from "../../../src/sharing/plain/reading/FilledCells";
import { covers, type CellArea } from "../../../src/workbook/cellArea";

const SIZE = 20;
const place = fc.integer({ min: 0, max: SIZE - 1 });
const area: fc.Arbitrary<CellArea> = fc
  .record({ row: place, column: place, rows: fc.integer({ min: 1, max: 40 }), columns: fc.integer({ min: 1, max: 40 }) })
  .map((one) => one);
const cell = fc.record({ row: place, column: place });

test("AreaIndex tells each formula that refers to a cell, once over all lookups", () => {
  fc.assert(
    fc.property(fc.array(area, { maxLength: 12 }), fc.array(cell, { maxLength: 12 }), (areas, cells) => {
      const index = new AreaIndex(SIZE, SIZE);
      areas.forEach((one, formula) => index.add(one, formula));
      const told = new Set(cells.flatMap(({ row, column }) => index.take(row, column)));
      const expected = areas.flatMap((one, formula) => (cells.some(({ row, column }) => covers(one, row, column)) ? [formula] : []));
      expect([...told].sort((a, b) => a - b)).toEqual(expected);
    }),
  );
});

test("FilledCells counts the cells of an area and visits each cell once", () => {
  fc.assert(
    fc.property(fc.array(cell, { maxLength: 40 }), fc.array(area, { maxLength: 6 }), (cells, areas) => {
      const rows = new Map<number, number[]>();
      for (const { row, column } of cells)
        rows.set(
          column,
          [...new Set([...(rows.get(column) ?? []), row])].sort((a, b) => a - b),
        );
      const all = [...rows].flatMap(([column, here]) => here.map((row) => ({ row, column })));
      const filled = new FilledCells(rows);
      for (const one of areas) expect(filled.count(one)).toBe(all.filter(({ row, column }) => covers(one, row, column)).length);
      const visited: string[] = [];
      for (const one of areas) filled.visit(one, (row, column) => visited.push(`${row},${column}`));
      const expected = all.filter(({ row, column }) => areas.some((one) => covers(one, row, column))).map(({ row, column }) => `${row},${column}`);
      expect(visited.sort()).toEqual(expected.sort());
    }),
  );
});
