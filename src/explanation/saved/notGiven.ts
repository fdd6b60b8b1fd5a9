import type { FormulaSources } from "../../sharing/plain/change/FormulaSources";
import { namesOf, ReadSheets, type ReadFormula } from "../../sharing/plain/reading/ReadSheets";
import type { PlainReading } from "../../sharing/plain/reading/PlainReading";
import { CellError } from "../../inputs/CellValue";
import { ownFormulas } from "../../runsheet/reading/formulasNotOwn";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, cellsOfArea, type CellArea } from "../../workbook/cellArea";
import { valueAt, type Cells } from "../formula/Cells";
import { isAsSaved } from "./isAsSaved";
import { SavedCells } from "./SavedCells";
import { SavedFormula } from "./SavedFormula";
import { calculatedFromOurs, everySource } from "./calculatedFromOurs";
import { runCellsNotGiven } from "./runCellsNotGiven";
import { mayBeOurs, usesNameOfOurs } from "./usesNameOfOurs";
import { whatIfAnswers, type WhatIfTable } from "./whatIfTables";

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
  /** True for a formula over arrays, as the file says; left out where that is not known. */
  readonly areOverArrays?: (sheet: string, cell: string) => boolean;
  /** True for a row, from 0, that is not shown; left out where that is not known. */
  readonly isHidden?: (sheet: string, row: number) => boolean;
  /** The what-if tables on its sheets. */
  readonly whatIf?: readonly WhatIfTable[];
  /** True where formulas were calculated just now, so that what-if tables alone may be from before. */
  readonly areTablesAlone?: boolean;
  /** True for a workbook in which every cell that a formula fills holds something, as in files. */
  readonly areFilled?: boolean;
}

/** What came of looking at what cells hold. */
export interface LookedAt {
  /** Cells that hold something else than their formulas give. */
  readonly notGiven: readonly CellNotGiven[];
  /** Cells of which it cannot be told here whether they hold what their formulas give, and that are calculated from a call of ours. */
  readonly unchecked: readonly Pick<CellNotGiven, "sheet" | "cell">[];
}

/**
 * Cells that hold something else than their cell formula gives from its inputs as they stand, and the like of every calculated cell of a run sheet.
 * What only a spreadsheet can work out is not among them, nor is a cell with a call of ours in error.
 */
export const notGiven = (book: PlainReading, checked: Checked = {}): readonly CellNotGiven[] => lookedAt(book, checked, false).notGiven;

/** The same, and the cells of which it cannot be told. */
export function lookedAt(book: PlainReading, checked: Checked = {}, areUncheckedAsked = true): LookedAt {
  const { spills = () => false, areOverArrays = () => false, areFilled = false, whatIf = [], areTablesAlone = false } = checked;
  const sheets = new ReadSheets(book);
  const names = book.names ?? [];
  const nameOf = namesOf(names);
  // Each reads so many cells at most, so that the one takes nothing from the other.
  const [byCall, builtIn] = [0, 1].map(() => SavedFormula.in({ sheets, cells: new SavedCells(sheets), nameOf, isHidden: checked.isHidden })) as [
    FormulaOf,
    FormulaOf,
  ];
  const usesOne = usesNameOfOurs(names);
  const wanted = new Set(checked.sheets ?? book.sheets.map(({ sheet }) => sheet));
  const known = new Map(book.sheets.filter(({ sheet }) => wanted.has(sheet)).map((one) => [one.sheet, new Set(runCellsNotGiven(one))]));
  const own = new Map(book.sheets.filter(({ sheet }) => wanted.has(sheet)).map((one) => [one.sheet, new Set(ownFormulas(one))]));
  const isOurs = ({ reading }: ReadFormula): boolean => mayBeOurs(reading.formula) || usesOne(reading.formula);
  const [found, untold]: [CellNotGiven[], ReadFormula[]] = [[], []];
  for (const formula of areTablesAlone ? [] : sheets.formulas) {
    const { sheet, reading } = formula;
    if (!wanted.has(sheet)) continue;
    const around = { sheets, spills, areFilled, isOverArrays: areOverArrays(sheet, reading.cell) || worksOverArrays(reading.formula) };
    const isOtherRun = reading.error === "" && known.get(sheet)?.has(reading.cell) === true;
    const other = isOtherRun ? [] : isOurs(formula) ? otherThanCalled(formula, byCall(formula), around) : otherThanBuiltIn(formula, builtIn, around);
    if (other === UNTOLD && own.get(sheet)?.has(reading.cell) !== true) untold.push(formula);
    if (typeof other === "object") found.push({ sheet, cell: reading.cell, lacking: other });
  }
  let sourcesKnown: readonly FormulaSources[] | undefined;
  const sources = (): readonly FormulaSources[] => (sourcesKnown ??= everySource(sheets, nameOf));
  const tables = whatIf.filter(({ sheet }) => wanted.has(sheet)).map((table) => whatIfAnswers(table, sheets, nameOf, sources()));
  found.push(...tables.flatMap((table) => table.notGiven.map(({ sheet, cell }) => ({ sheet, cell, lacking: [] }))));
  if (!areUncheckedAsked) return { notGiven: found, unchecked: [] };
  const answers = tables.flatMap((table) => table.untold);
  const ours = calculatedFromOurs([...untold, ...answers.flatMap(({ formula }) => formula ?? [])], isOurs, sheets, sources);
  const isUnchecked = new Set(ours);
  const unchecked = [
    ...untold.filter((formula) => isUnchecked.has(formula)).map(({ sheet, reading }) => ({ sheet, cell: reading.cell })),
    ...answers.filter(({ formula }) => formula !== undefined && isUnchecked.has(formula)).map(({ sheet, cell }) => ({ sheet, cell })),
  ];
  return { notGiven: found, unchecked };
}

/** Which formulas of a workbook give here what every spreadsheet gives, as far as that can be known; of the values that the workbook holds. */
export function provenFormulas(book: PlainReading, isOverArrays: (formula: ReadFormula) => boolean): (formula: ReadFormula) => boolean {
  const sheets = new ReadSheets(book);
  const formulaOf = SavedFormula.in({ sheets, cells: new SavedCells(sheets), nameOf: namesOf(book.names ?? []) });
  return (formula) => formulaOf(formula).isProvenIn(formula, isOverArrays(formula));
}

type FormulaOf = ReturnType<typeof SavedFormula.in>;

// What programs without arrays that fill cells do not have is over arrays wherever it stands.
const worksOverArrays = (formula: string): boolean => /ANCHORARRAY\(|LAMBDA\(|[A-Z]\$?\d+#/i.test(formula);

const UNTOLD = "untold";
/** The cells that lack what they are filled with, none where some hold something else; undefined where all is as it should be. */
type Other = readonly string[] | typeof UNTOLD | undefined;

interface Around extends Required<Pick<Checked, "spills" | "areFilled">> {
  readonly sheets: ReadSheets;
  readonly isOverArrays: boolean;
}

/** Hosts differ in how they hand over a blank cell, so one way is enough. */
function otherThanCalled(formula: ReadFormula, saved: SavedFormula, around: Around): Other {
  if (formula.reading.error !== "") return undefined;
  let found: Other;
  for (const blankAs of [0, null] as const) {
    const values = saved.valuesIn(formula, blankAs, around.isOverArrays);
    if (values === undefined)
      return unfilled(formula, around) ?? (isOneOf(saved.valuesIn(formula, blankAs, true), formula, around) ? undefined : UNTOLD);
    for (const value of values) {
      const other = otherThan(value, formula, around);
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
  const value = formulaOf(formula).certainIn(formula, around.isOverArrays);
  if (value === undefined) {
    const lacking = unfilled(formula, around);
    if (lacking !== undefined || reading.error !== "") return lacking;
    const eitherWay = (["counted", "left out"] as const).flatMap((hidden) => [formulaOf(formula).certainIn(formula, true, hidden) ?? []]);
    return isOneOf([...eitherWay, ...(formulaOf(formula).valuesIn(formula, 0, true) ?? [])], formula, around) ? undefined : UNTOLD;
  }
  if (reading.error === "") return otherThan(value, formula, around);
  const only = value.length === 1 && value[0]?.length === 1 ? value[0][0] : undefined;
  return only === undefined || only instanceof CellError ? undefined : [];
}

/** What may be given shows a value to be right, and none to be wrong. */
const isOneOf = (values: readonly Cells[] | undefined, formula: ReadFormula, around: Around): boolean =>
  values?.some((value) => otherThan(value, formula, around) === undefined) === true;

/** Cells of what a formula fills that hold nothing, where it cannot be told what it gives there. */
function unfilled({ sheet, area }: ReadFormula, { sheets, areFilled }: Around): readonly string[] | undefined {
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
function otherThan(given: Cells, { sheet, reading, area }: ReadFormula, { sheets, spills }: Around): readonly string[] | undefined {
  if (area.rows * area.columns === 1) {
    if (!given.some((row) => row.some((value) => isAsSaved(value, reading)))) return [];
    return given.flat().length > 1 && spills(sheet, reading.cell) ? beside(area, given) : undefined;
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
