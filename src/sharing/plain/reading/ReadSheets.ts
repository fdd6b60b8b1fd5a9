import { areaNamed } from "../../../workbook/areaNamed";
import { covers, type CellArea } from "../../../workbook/cellArea";
import type { CellReading } from "../../../workbook/Workbook";
import type { Growth } from "./Growth";
import type { NameReading, PlainReading } from "./PlainReading";
import type { Surroundings } from "./Surroundings";

/** One cell with a formula. */
export interface ReadFormula {
  readonly id: number;
  readonly sheet: string;
  readonly reading: CellReading;
  /** The cell and all that its spill fills. */
  readonly area: CellArea;
}

/** What one sheet holds, by place. */
export interface ReadSheet {
  readonly name: string;
  /** By row and column from 0. */
  at(row: number, column: number): CellReading | undefined;
  /** The formula that fills a cell, be it by its spill. */
  formulaAt(row: number, column: number): ReadFormula | undefined;
  /** True for a cell that holds anything, be it filled by a formula. */
  isFilled(row: number, column: number): boolean;
  /** Rows with anything in them, rising, of each column with anything in it. */
  readonly filled: ReadonlyMap<number, readonly number[]>;
  readonly rows: number;
  readonly columns: number;
}

const COLUMNS = 16_384;
const keyOf = (row: number, column: number): number => row * COLUMNS + column;

/** Every shared sheet by name and place, and every formula of them. */
export class ReadSheets {
  readonly formulas: readonly ReadFormula[];
  private readonly sheets: ReadonlyMap<string, ReadSheet>;

  constructor(readonly reading: PlainReading) {
    const [formulas, sheets]: [ReadFormula[], Map<string, ReadSheet>] = [[], new Map()];
    for (const { sheet, rows } of reading.sheets) sheets.set(sheet.toLowerCase(), readSheet(sheet, rows.flat(), formulas));
    this.formulas = formulas;
    this.sheets = sheets;
  }

  get names(): readonly string[] {
    return this.reading.sheets.map(({ sheet }) => sheet);
  }

  /** Every sheet of the workbook. */
  get order(): readonly string[] {
    return this.reading.going?.order ?? this.names;
  }

  sheet(name: string): ReadSheet | undefined {
    return this.sheets.get(name.toLowerCase());
  }

  /** The area that a cell's spill fills. */
  readonly spillOf: Surroundings["spillOf"] = (on, cell) => {
    const anchor = areaNamed(cell);
    const found = this.sheet(on)?.at(anchor.row, anchor.column);
    return found === undefined || found.formula === "" ? undefined : found.spill === "" ? cell : found.spill;
  };

  /** What has to be known around a formula. @param nameOf what a defined name stands for @param areUnfilled true where cells are still to be filled in */
  around({ sheet, reading }: ReadFormula, nameOf: Surroundings["nameOf"], areUnfilled = false, growth?: Growth): Surroundings {
    const { tables = [], going } = this.reading;
    const place = areaNamed(reading.cell);
    return {
      sheet,
      cell: reading.cell,
      area: reading.spill === "" ? reading.cell : reading.spill,
      nameOf,
      tableOf: (name) =>
        name === ""
          ? tables.find((table) => table.sheet === sheet && covers(table.area, place.row, place.column))
          : tables.find((table) => table.name.toLowerCase() === name.toLowerCase()),
      spillOf: this.spillOf,
      heldAt: (on, row, column) => (going?.isGone(on) === true ? going.heldAt(on, row, column) : this.sheet(on)?.at(row, column)),
      ...(going && { isGone: going.isGone }),
      isUnfilled: areUnfilled,
      ...(growth && { growth }),
    };
  }
}

/** What a defined name stands for: the sheet's own before the workbook's. */
export function namesOf(names: readonly NameReading[]): Surroundings["nameOf"] {
  const known = new Map(names.map(({ name, sheet, formula }) => [`${sheet?.toLowerCase() ?? ""}!${name.toLowerCase()}`, formula]));
  return (name, sheet) => known.get(`${sheet.toLowerCase()}!${name.toLowerCase()}`) ?? known.get(`!${name.toLowerCase()}`);
}

function readSheet(name: string, readings: readonly CellReading[], formulas: ReadFormula[]): ReadSheet {
  const [cells, owners, filled] = [new Map<number, CellReading>(), new Map<number, ReadFormula>(), new Map<number, number[]>()];
  let [rows, columns] = [0, 0];
  for (const reading of readings) {
    const { row, column } = areaNamed(reading.cell);
    cells.set(keyOf(row, column), reading);
    [rows, columns] = [Math.max(rows, row + 1), Math.max(columns, column + 1)];
    if (reading.formula === "") continue;
    const formula = { id: formulas.length, sheet: name, reading, area: areaNamed(reading.spill === "" ? reading.cell : reading.spill) };
    formulas.push(formula);
    const { area } = formula;
    [rows, columns] = [Math.max(rows, area.row + area.rows), Math.max(columns, area.column + area.columns)];
    for (let down = 0; down < area.rows; down++)
      for (let across = 0; across < area.columns; across++) owners.set(keyOf(area.row + down, area.column + across), formula);
  }
  for (const [key, { value, error }] of cells) {
    if (!owners.has(key) && error === "" && (value === null || value === "")) continue;
    const column = key % COLUMNS;
    const here = filled.get(column);
    if (here === undefined) filled.set(column, [(key - column) / COLUMNS]);
    else here.push((key - column) / COLUMNS);
  }
  for (const here of filled.values()) here.sort((a, b) => a - b);
  return {
    name,
    at: (row, column) => cells.get(keyOf(row, column)),
    formulaAt: (row, column) => owners.get(keyOf(row, column)),
    isFilled: (row, column) => {
      const { value = null, error = "" } = cells.get(keyOf(row, column)) ?? {};
      return owners.has(keyOf(row, column)) || error !== "" || (value !== null && value !== "");
    },
    filled,
    rows,
    columns,
  };
}
