import { covers, rangeOf, type CellArea } from "../../../workbook/cellArea";
import type { FormulaSources } from "../change/FormulaSources";
import type { Growth } from "../reading/Growth";
import type { ReadFormula, ReadSheets } from "../reading/ReadSheets";
import { mayReferToSpill } from "../formula/spills";
import type { TablePlace } from "../reading/Surroundings";
import { isSpillReader } from "./isSpillReader";

// Further down nobody looks for a cell of an answer that was smaller.
const FURTHEST = { rows: 200, columns: 12 } as const;

/** The cells around formulas that spill. */
export class RoomToGrow {
  constructor(
    private readonly sheets: ReadSheets,
    private readonly sources: readonly FormulaSources[],
    private readonly tables: readonly TablePlace[] = [],
  ) {}

  /** Undefined for a formula that keeps its size. */
  around(formula: ReadFormula): Growth | undefined {
    if (formula.reading.spills !== true) return undefined;
    const sized = (rows: number, columns: number): CellArea => ({ ...formula.area, rows, columns });
    return {
      isFree: (rows, columns) => this.isFree(formula, sized(rows, columns)),
      isAsked: (rows, columns) => this.isAsked(formula, sized(rows, columns)),
    };
  }

  /** The cells that a formula may come to fill as far as they are free, for one whose size nothing tells. */
  reachOf(formula: ReadFormula): CellArea {
    const { area } = formula;
    if (formula.reading.spills !== true) return area;
    let { rows, columns } = area;
    if (rows * columns === 1) while (columns < FURTHEST.columns && this.isFree(formula, { ...area, columns: columns + 1 })) columns++;
    while (rows < FURTHEST.rows && this.isFree(formula, { ...area, rows: rows + 1, columns: 1 })) rows++;
    return { ...area, rows, columns };
  }

  private isFree(formula: ReadFormula, area: CellArea): boolean {
    const sheet = this.sheets.sheet(formula.sheet);
    if (this.tables.some((table) => table.sheet === formula.sheet && overlaps(table.area, area))) return false;
    for (let row = area.row; row < area.row + area.rows; row++)
      for (let column = area.column; column < area.column + area.columns; column++) {
        if (covers(formula.area, row, column)) continue;
        if (row < (sheet?.rows ?? 0) && column < (sheet?.columns ?? 0) && sheet?.isFilled(row, column) === true) return false;
      }
    return true;
  }

  private isAsked(formula: ReadFormula, area: CellArea): boolean {
    const first = { ...area, rows: 1, columns: 1 };
    return this.sources.some(({ precedents, isUnseen }, id) => {
      if (id === formula.id) return false;
      const asked = precedents.filter((one) => one.sheet === formula.sheet && overlaps(one.area, area));
      if (asked.length === 0) return isUnseen;
      const reader = this.sheets.formulas[id] as ReadFormula;
      // A33# is all that is filled by now.
      if (mayReferToSpill(reader.reading.formula)) return true;
      if (asked.every((one) => isSame(one.area, first))) return isUnseen;
      return !isSpillReader(reader.reading.formula, reader.sheet, (sheet, cells) => sheet === formula.sheet && overlaps(cells, area) && !isSame(cells, first)); // prettier-ignore
    });
  }
}

const overlaps = (one: CellArea, other: CellArea): boolean =>
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;

const isSame = (one: CellArea, other: CellArea): boolean => rangeOf(one) === rangeOf(other);
