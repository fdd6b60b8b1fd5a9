import { blankInput, notA } from "../../problems/inputProblems";
import { PassedError } from "../../problems/PassedError";
import { CellError, type CellValue } from "../CellValue";
import { column, withoutTrailing } from "../column";
import type { ColumnInput } from "../Input";
import { BELOW_ZERO, isNothing, readNumber } from "../number";
import type { Bound, NumberRule } from "../NumberRule";

// Absolute zero in degrees Fahrenheit, and above the melting point of tungsten, 3422 degC: the unit is the user's, as in the rates.
const LOWEST = -459.67;
const HIGHEST = 6200;

const inAnyUnit: readonly Bound[] = [
  { below: LOWEST, says: `below ${LOWEST}` },
  { above: HIGHEST, says: `above ${HIGHEST}` },
];

/** A temperature in a series, in any unit. */
export const temperature: NumberRule = {
  unit: "°C",
  called: "a temperature in order",
  advice: "Give a temperature.",
  zeroIsBlank: true,
  bounds: inAnyUnit,
};

/** A column of temperatures in the order in which they are met. Most hosts hand a blank cell over as 0, so a 0 is a blank. */
export const temperaturesInOrder = (about: string): ColumnInput<readonly number[]> => column(about, temperature);

/** A column whose first cell may be blank, with the number of cells given; undefined where a cell is blank or 0. */
export interface StepColumn {
  readonly values: readonly (number | undefined)[];
  readonly rows: number;
}

const isNone = (cell: CellValue): boolean => isNothing(cell) || cell === 0;

const stepColumn = (about: string, rule: NumberRule): ColumnInput<StepColumn> => ({
  shape: "column",
  about,
  called: rule.called,
  unit: rule.unit,
  optional: false,
  zero: "nothing",
  read: (cells, argument) => {
    const filled = withoutTrailing(cells, isNone);
    if (filled.length === 0 && rule.zeroIsNone !== true) throw blankInput({ argument }, rule.advice);
    const values = filled.map((cell, index) => {
      const place = { argument, row: index + 1 };
      if (!isNone(cell)) return readNumber(cell, place, rule);
      if (rule.zeroIsNone !== true && index > 0) throw blankInput(place, "Fill the gap or remove the row.");
      return undefined;
    });
    return { values, rows: cells.length };
  },
});

export const heatingRateRule: NumberRule = {
  unit: "",
  called: "a heating rate",
  advice: "Give a number above 0; the temperatures say whether it is up or down.",
  zeroIsBlank: true,
  bounds: [BELOW_ZERO],
};

/** A column of heating or cooling rates, above 0 either way; the first cell, beside the start, may be blank. */
export const heatingRates = (about: string): ColumnInput<StepColumn> => stepColumn(about, heatingRateRule);

export const holdingTime: NumberRule = {
  unit: "min",
  called: "a holding time",
  advice: "Give minutes, 0 for none.",
  zeroIsBlank: true,
  zeroIsNone: true,
  // A clock time is a fraction of a day.
  bounds: [BELOW_ZERO, { above: 0, below: 1, says: "below 1 min and looks like a clock time" }],
};

/** A column of holding times in minutes; a blank or a 0 anywhere is no hold. */
export const holdingTimes = (about: string): ColumnInput<StepColumn> => ({
  ...stepColumn(about, holdingTime),
  zero: "none",
});

export const calibrated: NumberRule = {
  unit: "°C",
  called: "a calibration point",
  advice: "Give degrees Celsius.",
  zeroIsBlank: false,
  bounds: inAnyUnit,
};

/** A column of calibration temperatures, in which 0 (ice) is a value; with it the number of cells that are filled or 0. */
export const calibrationPoints = (about: string): ColumnInput<readonly number[]> => ({ ...column(about, calibrated), zero: "value" });

const A_LABEL = "a group's name";
const TYPE_A_LABEL = "Type a word or a number beside each value.";

/** A column of group names, words or numbers, each as text; undefined where a cell is blank or 0. Blanks at the end are left off. */
export const groupLabels = (about: string): ColumnInput<readonly (string | undefined)[]> => ({
  shape: "column",
  about,
  called: A_LABEL,
  unit: "",
  optional: false,
  zero: "nothing",
  read: (cells, argument) => {
    const filled = withoutTrailing(cells, isNone);
    if (filled.length === 0) throw blankInput({ argument }, TYPE_A_LABEL);
    return filled.map((cell, index) => labelOf(cell, argument, index + 1));
  },
});

function labelOf(cell: CellValue, argument: string, row: number): string | undefined {
  if (isNone(cell)) return undefined;
  if (cell instanceof CellError) throw new PassedError(cell.code, argument, row);
  if (typeof cell === "number")
    return String(readNumber(cell, { argument, row }, { unit: "", called: A_LABEL, advice: TYPE_A_LABEL, zeroIsBlank: true }));
  if (typeof cell !== "string") throw notA({ argument, row }, cell as boolean, A_LABEL, TYPE_A_LABEL);
  return cell.trim();
}
