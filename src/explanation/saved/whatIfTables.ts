import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import { calculatedFrom } from "../../sharing/plain/change/staleness";
import type { FormulaSources } from "../../sharing/plain/change/FormulaSources";
import type { ReadFormula, ReadSheets } from "../../sharing/plain/reading/ReadSheets";
import type { Surroundings } from "../../sharing/plain/reading/Surroundings";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, covers, type CellArea } from "../../workbook/cellArea";
import { valueAt, type Cells } from "../formula/Cells";
import { isAsSaved } from "./isAsSaved";
import { SavedCells } from "./SavedCells";
import { SavedFormula } from "./SavedFormula";

/** A what-if table: what a formula would give with other values in one cell or two. */
export interface WhatIfTable {
  readonly sheet: string;
  /** The cells of the answers; the values stand beside and above them. */
  readonly area: CellArea;
  /** The cell that gets the values of the row above, "B7". */
  readonly row?: string;
  /** The cell that gets the values of the column to the left. */
  readonly column?: string;
}

/** A cell of a table, and the formula that it asks. */
export interface Answer {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: ReadFormula | undefined;
}

interface Place {
  readonly row: number;
  readonly column: number;
}

// Each is worked out by itself, with all that stands between; own bound.
const MOST_ANSWERS = 2000;

/** Cells of a table that hold something else than the table gives, and those of which that cannot be told. */
export function whatIfAnswers(
  table: WhatIfTable,
  sheets: ReadSheets,
  nameOf: Surroundings["nameOf"],
  sources: readonly FormulaSources[],
): { readonly notGiven: readonly Answer[]; readonly untold: readonly Answer[] } {
  const { sheet, area } = table;
  const found = { notGiven: [] as Answer[], untold: [] as Answer[] };
  const inputs = [table.row, table.column].flatMap((cell) => (cell === undefined ? [] : [areaNamed(cell.replaceAll("$", ""))]));
  const changing = area.rows * area.columns > MOST_ANSWERS ? undefined : readingAny(sheet, inputs, sheets, sources);
  for (let row = area.row; row < area.row + area.rows; row++)
    for (let column = area.column; column < area.column + area.columns; column++) {
      const read = sheets.sheet(sheet);
      const asked = askedIn(table, row, column);
      const formula = read?.formulaAt(asked.row, asked.column);
      const answer: Answer = { sheet, cell: cellAt(row, column), formula };
      const reading = read?.at(row, column) ?? { value: null, error: "" };
      if (reading.error !== "") continue;
      const values = changing && waysOf(table).map((way) => answerWith(way, { row, column }, asked, { sheets, nameOf, changing }));
      if (values === undefined || values.includes(undefined)) found.untold.push(answer);
      else if (!values.some((value) => isAsSaved(value, reading))) found.notGiven.push(answer);
    }
  return found;
}

/** Of two inputs it may be taken either way round: programs have written them so. */
const waysOf = (table: WhatIfTable): readonly WhatIfTable[] =>
  table.row === undefined || table.column === undefined ? [table] : [table, { ...table, row: table.column, column: table.row }];

/** Where the formula stands that a cell of a table asks: of two inputs in the corner, else above its column or beside its row. */
function askedIn({ area, row: rowInput, column: columnInput }: WhatIfTable, row: number, column: number): Place {
  return { row: columnInput === undefined ? row : area.row - 1, column: rowInput === undefined ? column : area.column - 1 };
}

interface Book {
  readonly sheets: ReadSheets;
  readonly nameOf: Surroundings["nameOf"];
  readonly changing: ReadonlySet<number>;
}

/** What the formula gives with the values of a table's row and column put in; undefined where that cannot be told. */
function answerWith(table: WhatIfTable, at: Place, asked: Place, { sheets, nameOf, changing }: Book): CellValue | undefined {
  const { sheet, area } = table;
  const held = (row: number, column: number): CellValue => {
    const { value = null, error = "" } = sheets.sheet(sheet)?.at(row, column) ?? {};
    return error === "" ? (value ?? BLANK) : new CellError(error);
  };
  const put = new Map<string, CellValue>();
  if (table.row !== undefined) put.set(table.row.replaceAll("$", ""), held(area.row - 1, at.column));
  if (table.column !== undefined) put.set(table.column.replaceAll("$", ""), held(at.row, area.column - 1));
  const known = new Map<number, Cells | undefined>();
  const valueIn = (on: string, row: number, column: number): { readonly value: CellValue | undefined } | null => {
    const given = on.toLowerCase() === sheet.toLowerCase() ? put.get(cellAt(row, column)) : undefined;
    if (given !== undefined) return { value: given };
    const formula = sheets.sheet(on)?.formulaAt(row, column);
    if (formula === undefined || !changing.has(formula.id)) return null;
    if (!known.has(formula.id)) {
      // What leads round to itself has no value.
      known.set(formula.id, undefined);
      const saved = formulaOf(formula);
      const values = saved.valuesIn(formula, 0, true);
      known.set(formula.id, values?.length === 1 ? values[0] : undefined);
    }
    const cells = known.get(formula.id);
    return { value: cells && valueAt(cells, { row: row - formula.area.row, column: column - formula.area.column }) };
  };
  const formulaOf = SavedFormula.in({ sheets, cells: new SavedCells(sheets, valueIn), nameOf });
  const value = valueIn(sheet, asked.row, asked.column);
  return value === null ? held(asked.row, asked.column) : value.value;
}

/** The formulas, by number, that are calculated from some cells of a sheet. */
function readingAny(sheet: string, cells: readonly Place[], sheets: ReadSheets, sources: readonly FormulaSources[]): ReadonlySet<number> {
  const isRead = ({ precedents, isUnseen }: FormulaSources): boolean =>
    isUnseen || precedents.some(({ sheet: on, area }) => on.toLowerCase() === sheet.toLowerCase() && cells.some(({ row, column }) => covers(area, row, column))); // prettier-ignore
  const first = new Set(sources.flatMap((one, id) => (isRead(one) ? [id] : [])));
  return new Set([...first, ...calculatedFrom(sheets, sources, first)]);
}
