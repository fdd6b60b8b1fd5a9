import type { RunCells } from "../../../../explanation/runSheet/RunCells";
import { workOut } from "../../../../explanation/runSheet/workOut";
import { isNotDry } from "../../../../runsheet/formulas/weighings";
import type { Weighed } from "../../../../runsheet/sheet/Weighed";
import { isBlank } from "./Step";

export const isSteady = ({ at }: RunCells, { allSteady }: Weighed): boolean => Number(at(allSteady.row, allSteady.column)) > 0;

/** Whether drying is done, by the sheet's own condition: shown dry, fed moist with its moisture given, or a salt heated as weighed in. */
export const isKnownDry = ({ sheet, at }: RunCells): boolean => workOut(isNotDry(sheet), at) === false;

export const rowsOf = ({ rows: { first, last } }: Pick<Weighed, "rows">): number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

export const isAnyFilled = (cells: RunCells, table: Weighed, sample: number): boolean =>
  rowsOf(table).some((row) => !isBlank(cells, table.box(row, sample)));

export const isRowFilled = (cells: RunCells, table: Weighed, row: number, inUse: readonly number[]): boolean =>
  inUse.some((sample) => !isBlank(cells, table.box(row, sample)));

export const isEveryRowFilled = (cells: RunCells, table: Weighed, inUse: readonly number[]): boolean =>
  rowsOf(table).every((row) => inUse.every((sample) => !isBlank(cells, table.box(row, sample))));
