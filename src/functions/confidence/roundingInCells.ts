import { COMMON_STEP } from "../../confidence/rounding";
import { numberText } from "../../inputs/numberText";
import { roundedTooCoarsely, STEP_FIGURES } from "../../problems/functions/roundingVerdicts";
import { filledInCells, significantInCells } from "../inCells/sentenceInCells";
import { isTypedNumber } from "../inCells/typedInCells";
import type { Workings } from "../inCells/Workings";
import { isGivenInCells } from "../numberInCells";
import { operand } from "../operand";

/** The step to which results are rounded, as `roundingOf` has it. */
export interface RoundingInCells {
  readonly step: string;
  /** 1 where somebody said so, else 0: settled where it is typed, else a condition. */
  readonly isGiven: string;
}

// Of more results than that the steps of the search fill too many cells.
const MOST_RESULTS = 40;
// Nearest remainders halve at least, so that after so many none is left above a millionth of the range.
const REMAINDERS = 22;

/**
 * @param counted the results that count, "" beside them, in one column
 * @param length of the column
 * @returns undefined for too many results
 */
export function roundingInCells(counted: string, length: number, readability: string, workings: Workings): RoundingInCells | undefined {
  if (isTypedNumber(readability)) return { step: numberText(Number(readability)), isGiven: "1" };
  if (length > MOST_RESULTS) return undefined;
  const own = commonStepInCells(counted, length, workings);
  const isGiven = isGivenInCells(readability);
  return isGiven === "0" ? { step: own, isGiven } : { step: `IF(${isGiven},${operand(readability)},${own})`, isGiven };
}

/** `then` where the step was given, `otherwise` where it was read off the results. */
export const byWhoSaid = ({ isGiven }: RoundingInCells, then: string, otherwise: string): string =>
  isGiven === "1" ? then : isGiven === "0" ? otherwise : `IF(${isGiven},${then},${otherwise})`;

// Prints as itself, and stands nowhere else in the sentences.
const MARK = 4.5678;

/** The verdict that the rounding leaves open. */
export const tooCoarseInCells = (rounding: RoundingInCells): string => {
  const said = (isGiven: boolean): string =>
    filledInCells(roundedTooCoarsely(MARK, isGiven), [[String(MARK), significantInCells(`(${rounding.step})`, STEP_FIGURES)]]);
  return byWhoSaid(rounding, said(true), said(false));
};

/**
 * The common step of results as `commonStep` finds it: in each row Euclid's remainders of the step so far and one result less the smallest, as
 * far as they go, beside each remainder how far it may stray, and at the end the step from there on. Of two results 0 is a third.
 */
function commonStepInCells(counted: string, length: number, workings: Workings): string {
  const [sizes, strays] = [0, REMAINDERS + 2];
  const [step, stray] = [2 * (REMAINDERS + 2), 2 * (REMAINDERS + 2) + 1];
  let [range, smallest, wander, found] = ["", "", "", ""];
  workings.block("Step of the results: range, smallest, how far they stray", 1, 3, (at) => {
    [range, smallest, wander] = [at(0, 0), at(0, 1), at(0, 2)];
    const withZero = (name: "MIN" | "MAX"): string => `IF(COUNT(${counted})=2,${name}(0,${counted}),${name}(${counted}))`;
    const largest = `MAX(ABS(${smallest}),ABS(${smallest}+${range}))`;
    return [[`${withZero("MAX")}-${smallest}`, withZero("MIN"), `${numberText(COMMON_STEP.stray)}*${largest}`]];
  });
  workings.block("Step of the results: remainders, how far each strays, step, its stray", length + 1, stray + 1, (at) => {
    found = at(length, step);
    return Array.from({ length: length + 1 }, (_, row) => {
      const [stepBefore, strayBefore] = row === 0 ? [range, wander] : [at(row - 1, step), at(row - 1, stray)];
      // The first row is for the 0 beside two results.
      const value = row === 0 ? `IF(COUNT(${counted})=2,0,"")` : `INDEX(${counted},${row})`;
      const size = (index: number): string => at(row, sizes + index);
      const strayOf = (index: number): string => at(row, strays + index);
      const goesOn = (index: number, text: string): string =>
        `IF(ISNUMBER(${size(index - 1)}),IF(${size(index - 1)}<=${strayOf(index - 1)},"",${text}),"")`;
      const times = (index: number): string => `ROUND(${size(index - 2)}/${size(index - 1)},0)`;
      const remainders = Array.from({ length: REMAINDERS }, (_, more) => more + 2).map((index) =>
        goesOn(index, `ABS(${size(index - 2)}-${times(index)}*${size(index - 1)})`),
      );
      const theirStrays = Array.from({ length: REMAINDERS }, (_, more) => more + 2).map((index) =>
        goesOn(index, `${strayOf(index - 2)}+${times(index)}*${strayOf(index - 1)}`),
      );
      const all = `${size(0)}:${size(REMAINDERS + 1)}`;
      // The last remainder is none, so the divisor is the one before it.
      const divisor = `INDEX(${all},1,COUNT(${all})-1)`;
      const isThere = `ISNUMBER(${size(1)})`;
      return [
        ...[stepBefore, `IF(ISNUMBER(${value}),${value}-${smallest},"")`, ...remainders],
        ...[strayBefore, wander, ...theirStrays],
        `IF(${isThere},IF(${stepBefore}=0,0,IF(${divisor}<=${numberText(COMMON_STEP.finest)}*${range},0,${range}/ROUND(${range}/${divisor},0))),${stepBefore})`,
        `IF(${isThere},IF(${at(row, step)}=0,0,${wander}/ROUND(${range}/${at(row, step)},0)),${strayBefore})`,
      ];
    });
  });
  return found;
}
