import { readRunSheet } from "../runsheet/reading/readRunSheet";
import { headWords } from "../runsheet/words/headWords";
import type { DefinedName } from "../workbook/CellsBeside";
import type { RangeReading } from "../workbook/Workbook";
import { callingBy, namesCalling } from "./callingBeside";
import { everyFormulaCell, type FormulaCell } from "./formulaCells";
import { cellsToMend } from "./mend";
import { plainSheets } from "./plain/plainSheets";

/** What becomes of a sheet on a machine without the add-in. */
export interface AsItIs {
  /** Cells that call one of our functions, themselves or through defined names. */
  readonly calling: readonly string[];
  /** How many of them go on calculating when the sheet is shared as plain cells. */
  readonly plain: number;
  /** Defined names that call one. */
  readonly names: readonly string[];
  /** Cells that are broken already. */
  readonly toMend: readonly string[];
  /** True for a run sheet that notices by itself that the functions are missing, and says so at its top. */
  readonly saysSo: boolean;
}

// How the line begins, in sheets of earlier versions too.
const NOT_HERE = headWords.checks.absent.slice(0, headWords.checks.absent.indexOf(":") + 1);

/** @param names that the cells of the sheet may use */
export function asItIs(reading: RangeReading, names: readonly DefinedName[] = []): AsItIs {
  const named = namesCalling(names);
  const throughNames = named.length === 0 ? undefined : callingBy(names);
  const isCalling = ({ calls, formula }: FormulaCell): boolean => calls.length > 0 || throughNames?.(formula, reading.sheet) === true;
  const calling = everyFormulaCell(reading).filter(isCalling);
  const { cells } = plainSheets({ sheets: [reading], names }, { date: "" });
  const fixed = new Set(cells.flatMap(({ kind, cell }) => (kind === "fixed" ? [cell] : [])));
  const { is } = readRunSheet(reading);
  return {
    calling: calling.map(({ cell }) => cell),
    plain: calling.filter(({ cell }) => !fixed.has(cell)).length,
    names: named.map(({ name }) => name),
    toMend: cellsToMend(reading).cells.map(({ cell }) => cell),
    saysSo: is === "whole" && reading.rows.some((row) => row.some(({ formula }) => formula.includes(NOT_HERE))),
  };
}
