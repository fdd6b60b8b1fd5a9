import { calculatedInCircle, errorInCall, nameNotKnown, stillCalculating, type CellInTheWay } from "../problems/sharing/sharingProblems";
import { stepsOf } from "../runsheet/reading/stepsOf";
import { areaNamed } from "../workbook/areaNamed";
import { cellAt, cellsOfArea } from "../workbook/cellArea";
import type { CellContent, CellReading, FrozenArea, RangeReading } from "../workbook/Workbook";
import { circles } from "./circles";
import { findCalls, type RetortCall } from "./findCalls";
import { labelsOf } from "./labelsOf";

/** One cell with a cell formula, and the values that its formula fills. */
export interface FormulaCell {
  readonly cell: string;
  /** What the sheet calls it: "Moisture, wet basis"; "" where it says nothing. */
  readonly label: string;
  /** The step of the work that the cell belongs to on a run sheet: "1 DRYING"; left out on any other sheet. */
  readonly step?: string;
  /** True where it stands among the workings of a run sheet, beyond what is printed. */
  readonly isWorking?: true;
  /** As the workbook holds it, beginning with "=". */
  readonly formula: string;
  readonly calls: readonly RetortCall[];
  /** The cell, or the whole area of its spill, with the values shown; an empty text counts as a blank cell. */
  readonly area: FrozenArea;
  /** Errors shown by the cell or by a cell that its spill fills. */
  readonly errors: readonly CellInTheWay[];
  /** Every cell of a column that the formula is filled down to from this one, where they are told as one: "B7:B900". */
  readonly filledDown?: string;
}

// What hosts show while a value is on its way.
export const ON_ITS_WAY: readonly string[] = ["#BUSY!", "#CALC!", "#GETTING_DATA"];

/**
 * Every cell formula of a sheet with the values it fills, ready to be shared.
 * @param withErrors true where errors that Retort calls show are shared as they are
 * @throws InputProblem while a cell still calculates, or when a Retort call shows an error: a shared number must be final
 * @throws CellsInError also where cells are calculated in a circle, which show no error
 */
export function formulaCellsOf(used: RangeReading, withErrors = false): readonly FormulaCell[] {
  const formulaCells = everyFormulaCell(used);
  refuseUnfinished(used.sheet, formulaCells, withErrors);
  const around = withErrors ? [] : circles([used]);
  if (around.length > 0) throw calculatedInCircle(used.sheet, around);
  return formulaCells;
}

/** The same, finished or not, for whoever has looked. */
export function everyFormulaCell(used: RangeReading): readonly FormulaCell[] {
  const readings = new Map(used.rows.flat().map((reading) => [reading.cell, reading]));
  const withFormulas = [...readings.values()].filter(({ formula }) => formula !== "");
  const labelOf = labelsOf(used);
  const steps = stepsOf(withRange(used));
  return withFormulas.map((reading) => {
    const cell = formulaCell(reading, labelOf(reading), readings);
    if (steps === undefined) return cell;
    const { row, column } = areaNamed(reading.cell);
    return { ...cell, step: steps.headingOf(row), ...(steps.isPrinted(column) ? {} : { isWorking: true }) };
  });
}

/** Of a file the cells alone are read, without the range that they cover. */
function withRange(used: RangeReading): RangeReading {
  if (used.range !== "" || used.rows.length === 0) return used;
  let [top, bottom, right] = [-1, 0, 0];
  for (const line of used.rows)
    for (const { cell } of line) {
      const { row, column } = areaNamed(cell);
      if (top === -1) top = row;
      [bottom, right] = [Math.max(bottom, row), Math.max(right, column)];
    }
  return { ...used, range: `A${Math.max(top, 0) + 1}:${cellAt(bottom, right)}` };
}

function formulaCell(reading: CellReading, label: string, readings: ReadonlyMap<string, CellReading>): FormulaCell {
  const range = reading.spill === "" ? reading.cell : reading.spill;
  const filled = cellsOfArea(areaNamed(range)).map((row) => row.map((cell) => readings.get(cell)));
  return {
    cell: reading.cell,
    label,
    formula: reading.formula,
    calls: findCalls(reading.formula),
    area: { range, values: filled.map((row) => row.map(valueOf)) },
    errors: filled.flat().flatMap((cell) => (cell === undefined || cell.error === "" ? [] : [{ cell: cell.cell, code: cell.error }])),
  };
}

const valueOf = (reading: CellReading | undefined): CellContent => (reading === undefined || reading.value === "" ? null : reading.value);

function refuseUnfinished(sheet: string, formulaCells: readonly FormulaCell[], withErrors: boolean): void {
  const errors = formulaCells.flatMap((cell) => cell.errors);
  const ours = formulaCells.filter(({ calls }) => calls.length > 0).flatMap((cell) => cell.errors);
  const refuse = (inTheWay: readonly CellInTheWay[], problem: (sheet: string, cells: readonly CellInTheWay[]) => Error): void => {
    if (inTheWay.length > 0) throw problem(sheet, inTheWay);
  };
  refuse(
    errors.filter(({ code }) => ON_ITS_WAY.includes(code)),
    stillCalculating,
  );
  refuse(
    ours.filter(({ code }) => code === "#NAME?"),
    nameNotKnown,
  );
  if (!withErrors) refuse(ours, errorInCall);
}
