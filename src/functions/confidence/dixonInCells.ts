import { dixonCritical, MOST } from "../../confidence/dixonAssessment";
import { CLEAR } from "../../confidence/rounding";
import { numberText } from "../../inputs/numberText";
import type { TableInCells, Workings } from "../inCells/Workings";
import { STATISTIC_OF_DIXON } from "./outlierForm";
import { type EndOfResults, outlierInCells, type OutlierTest, type OutlierTexts } from "./outlierInCells";

const rangeOf = (counted: string): string => `(MAX(${counted})-MIN(${counted}))`;

const gapOf = (counted: string, isHigh: boolean): string =>
  isHigh ? `(LARGE(${counted},1)-LARGE(${counted},2))` : `(SMALL(${counted},2)-SMALL(${counted},1))`;

/** As `reducedDixon` and `mostDixon` have them. */
const DIXON: OutlierTest = {
  called: "Dixon",
  statistic: STATISTIC_OF_DIXON,
  most: MOST,
  critical: dixonCritical,
  standsOut: (counted) => ({ low: gapOf(counted, false), high: gapOf(counted, true) }),
  over: rangeOf,
  reduced: ({ counted, isHigh, step }: EndOfResults) => {
    const [gap, d] = [gapOf(counted, isHigh), `(${step})`];
    return `IF(${gap}>=${numberText(CLEAR)}*${d},(${gap}-${d}/2)/(${rangeOf(counted)}+${d}/2),0)`;
  },
  mostOf: ({ counted, isHigh, step }: EndOfResults) => `MIN(1,(${gapOf(counted, isHigh)}+${step})/${rangeOf(counted)})`,
};

/** The table of DIXON in cells; undefined for arguments that have no such form. */
export const dixonInCells = (texts: OutlierTexts, workings: Workings): TableInCells | undefined => outlierInCells(DIXON, texts, workings);
