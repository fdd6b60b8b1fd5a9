import { readRunSheet } from "../runsheet/reading/readRunSheet";
import { headWords } from "../runsheet/words/headWords";
import type { RangeReading } from "../workbook/Workbook";
import { everyFormulaCell } from "./formulaCells";
import { cellsToMend } from "./mend";
import { plainSheets } from "./plain/plainSheets";

/** What becomes of a sheet on a machine without the add-in. */
export interface AsItIs {
  /** Cells that call one of our functions. */
  readonly calling: readonly string[];
  /** How many of them go on calculating when the sheet is shared as plain cells. */
  readonly plain: number;
  /** Cells that are broken already. */
  readonly toMend: readonly string[];
  /** True for a run sheet that notices by itself that the functions are missing, and says so at its top. */
  readonly saysSo: boolean;
}

// How the line begins, in sheets of earlier versions too.
const NOT_HERE = headWords.checks.absent.slice(0, headWords.checks.absent.indexOf(":") + 1);

export function asItIs(reading: RangeReading): AsItIs {
  const calling = everyFormulaCell(reading).filter(({ calls }) => calls.length > 0);
  const fixed = new Set(plainSheets({ sheets: [reading] }, { date: "" }).cells.flatMap(({ kind, cell }) => (kind === "fixed" ? [cell] : [])));
  const { is } = readRunSheet(reading);
  return {
    calling: calling.map(({ cell }) => cell),
    plain: calling.filter(({ cell }) => !fixed.has(cell)).length,
    toMend: cellsToMend(reading).cells.map(({ cell }) => cell),
    saysSo: is === "whole" && reading.rows.some((row) => row.some(({ formula }) => formula.includes(NOT_HERE))),
  };
}
