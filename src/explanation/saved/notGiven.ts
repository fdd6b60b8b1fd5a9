import { namesOf, ReadSheets, type ReadFormula } from "../../sharing/plain/reading/ReadSheets";
import type { PlainReading } from "../../sharing/plain/reading/PlainReading";
import { CellError } from "../../inputs/CellValue";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, cellsOfArea, type CellArea } from "../../workbook/cellArea";
import { valueAt, type Cells } from "../formula/Cells";
import { isAsSaved } from "./isAsSaved";
import { SavedCells } from "./SavedCells";
import { SavedFormula } from "./SavedFormula";
import { runCellsNotGiven } from "./runCellsNotGiven";

/** A cell whose value is not what its formula gives, and its sheet. */
export interface CellNotGiven {
  readonly sheet: string;
  readonly cell: string;
  /** Cells that the formula fills and that hold nothing, though it gives something there; none where it holds something else in any. */
  readonly lacking: readonly string[];
}

export interface Checked {
  /** The sheets whose cells are looked at; left out: every sheet. */
  readonly sheets?: readonly string[] | undefined;
  /** True for a formula that fills as many cells as it gives. */
  readonly spills?: (sheet: string, cell: string) => boolean;
  /** True for a workbook in which every cell that a formula fills holds something, as in files. */
  readonly areFilled?: boolean;
}

/**
 * Cells that hold something else than their cell formula gives from its inputs as they stand, and the like of every calculated cell of a run sheet.
 * What only a spreadsheet can work out is not among them, nor is a cell with a call of ours in error.
 */
export function notGiven(book: PlainReading, { sheets: checked, spills = () => false, areFilled = false }: Checked = {}): readonly CellNotGiven[] {
  const sheets = new ReadSheets(book);
  const names = book.names ?? [];
  const nameOf = namesOf(names);
  // Each reads so many cells at most, so that the one takes nothing from the other.
  const [ours, builtIn] = [0, 1].map(() => SavedFormula.in({ sheets, cells: new SavedCells(sheets), nameOf })) as [FormulaOf, FormulaOf];
  const named = names.filter(({ formula }) => mayBeOurs(formula)).map(({ name }) => name.toLowerCase());
  const wanted = new Set(checked ?? book.sheets.map(({ sheet }) => sheet));
  const known = new Map(book.sheets.filter(({ sheet }) => wanted.has(sheet)).map((one) => [one.sheet, new Set(runCellsNotGiven(one))]));
  return sheets.formulas.flatMap((formula): CellNotGiven[] => {
    const { sheet, reading } = formula;
    if (!wanted.has(sheet)) return [];
    const isOurs = mayBeOurs(reading.formula) || holdsOne(reading.formula, named);
    const isOtherRun = reading.error === "" && known.get(sheet)?.has(reading.cell) === true;
    const around = { sheets, spills, areFilled };
    const found = isOtherRun ? [] : isOurs ? otherThanCalled(formula, ours(formula), around) : otherThanBuiltIn(formula, builtIn, around);
    return found === undefined ? [] : [{ sheet, cell: reading.cell, lacking: found }];
  });
}

/** Which formulas of a workbook give here what every spreadsheet gives, as far as that can be known; of the values that the workbook holds. */
export function provenFormulas(book: PlainReading, isOverArrays: (formula: ReadFormula) => boolean): (formula: ReadFormula) => boolean {
  const sheets = new ReadSheets(book);
  const formulaOf = SavedFormula.in({ sheets, cells: new SavedCells(sheets), nameOf: namesOf(book.names ?? []) });
  return (formula) => formulaOf(formula).isProvenIn(formula, isOverArrays(formula));
}

type FormulaOf = ReturnType<typeof SavedFormula.in>;

const mayBeOurs = (formula: string): boolean => /retort[._]/i.test(formula);

function holdsOne(formula: string, names: readonly string[]): boolean {
  const text = names.length === 0 ? "" : formula.toLowerCase();
  return names.some((name) => text.includes(name));
}

/** The cells that lack what they are filled with, none where some hold something else; undefined where all is as it should be, or cannot be told. */
type Other = readonly string[] | undefined;

interface Around extends Required<Pick<Checked, "spills" | "areFilled">> {
  readonly sheets: ReadSheets;
}

/** Hosts differ in how they hand over a blank cell, so one way is enough. */
function otherThanCalled(formula: ReadFormula, saved: SavedFormula, around: Around): Other {
  const { sheets, spills } = around;
  if (formula.reading.error !== "") return undefined;
  let found: Other;
  for (const blankAs of [0, null] as const) {
    const values = saved.valuesIn(formula, blankAs);
    if (values === undefined) return unfilled(formula, around);
    for (const value of values) {
      const other = otherThan(value, formula, sheets, spills(formula.sheet, formula.reading.cell));
      if (other === undefined) return undefined;
      if (found === undefined || other.length > 0) found = other;
    }
  }
  return found;
}

/** An error may be from before as well. */
function otherThanBuiltIn(formula: ReadFormula, formulaOf: FormulaOf, around: Around): Other {
  const { reading } = formula;
  if (reading.value === null) return undefined;
  const value = formulaOf(formula).certainIn(formula);
  if (value === undefined) return unfilled(formula, around);
  if (reading.error === "") return otherThan(value, formula, around.sheets, around.spills(formula.sheet, reading.cell));
  const only = value.length === 1 && value[0]?.length === 1 ? value[0][0] : undefined;
  return only === undefined || only instanceof CellError ? undefined : [];
}

/** Cells of what a formula fills that hold nothing, where it cannot be told what it gives there. */
function unfilled({ sheet, area }: ReadFormula, { sheets, areFilled }: Around): Other {
  if (!areFilled || area.rows * area.columns === 1) return undefined;
  const places = cellsOfArea(area).flat();
  const read = sheets.sheet(sheet);
  const lacking = places.filter((cell) => {
    const { row, column } = areaNamed(cell);
    return (read?.at(row, column)?.value ?? null) === null;
  });
  return lacking.length === 0 ? undefined : lacking;
}

/** A formula in one cell that gives many values shows one of them, unless it fills as many cells as it gives. */
function otherThan(given: Cells, { sheet, reading, area }: ReadFormula, sheets: ReadSheets, spills: boolean): Other {
  if (area.rows * area.columns === 1) {
    if (!given.some((row) => row.some((value) => isAsSaved(value, reading)))) return [];
    return spills && given.flat().length > 1 ? beside(area, given) : undefined;
  }
  const lacking: string[] = [];
  for (let row = 0; row < area.rows; row++)
    for (let column = 0; column < area.columns; column++) {
      const cell = sheets.sheet(sheet)?.at(area.row + row, area.column + column);
      if (cell !== undefined && cell.error !== "") continue;
      if (isAsSaved(valueAt(given, { row, column }), cell ?? NOTHING)) continue;
      if (cell !== undefined && cell.value !== null) return [];
      lacking.push(cellAt(area.row + row, area.column + column));
    }
  return lacking.length === 0 ? undefined : lacking;
}

const NOTHING = { value: null };

/** The cells that an answer would fill besides the first. */
const beside = ({ row, column }: CellArea, given: Cells): readonly string[] =>
  given.flatMap((line, down) => line.map((_, across) => cellAt(row + down, column + across))).slice(1);
