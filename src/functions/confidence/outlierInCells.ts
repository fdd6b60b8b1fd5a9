import { FEW, FEWEST, outlierVerdict, ROUNDING, type Sides, SIDES, tailOf } from "../../confidence/outlierAssessment";
import { numberText } from "../../inputs/numberText";
import { rowRefused } from "../../problems/sharing/plainCellProblems";
import { refusal } from "../inCells/problemInCells";
import { textInCells } from "../inCells/sentenceInCells";
import { isTypedNumber, isTypedText, typedTextOf } from "../inCells/typedInCells";
import type { TableInCells, Workings } from "../inCells/Workings";
import { countedInCells } from "./countedInCells";
import { byWhoSaid, roundingInCells, tooCoarseInCells, type RoundingInCells } from "./roundingInCells";
import { askedAs, USUAL_ALPHA } from "./outlierForm";

export type OutlierTexts = Readonly<Record<"values" | "alpha" | "sides" | "zeros" | "readability", string>>;

/** What a test for an outlier is, as it stands in cells. */
export interface OutlierTest {
  readonly called: string;
  readonly statistic: string;
  /** The most results that it takes. */
  readonly most: number;
  readonly critical: (n: number, tail: number) => number;
  /** How far each end stands out, not yet over what it is held against: comparing them finds the suspect. */
  readonly standsOut: (counted: string) => Readonly<Record<"low" | "high", string>>;
  /** What that is divided by. */
  readonly over: (counted: string) => string;
  /** The statistic of an end less what rounding to the step may have put into it. */
  readonly reduced: (end: EndOfResults) => string;
  /** The most it may be when every result stands for any within half a step. */
  readonly mostOf: (end: EndOfResults) => string;
}

/** One end of the results that count. */
export interface EndOfResults {
  readonly counted: string;
  readonly length: number;
  readonly isHigh: boolean;
  readonly step: string;
  readonly workings: Workings;
}

/**
 * The table of a test for one outlier in cells, its critical values tabulated for every count there can be. Undefined where the level or the
 * side stands in a cell.
 */
export function outlierInCells(test: OutlierTest, texts: OutlierTexts, workings: Workings): TableInCells | undefined {
  const { alpha: level, sides: side, readability } = texts;
  const cells = workings.cellsOf(texts.values);
  if (cells === undefined || !(level === "" || isTypedNumber(level)) || !(side === "" || isTypedText(side))) return undefined;
  const alpha = level === "" ? USUAL_ALPHA : Number(level);
  const sides: Sides = SIDES.find((one) => side !== "" && one === typedTextOf(side).trim().toLowerCase()) ?? "two";
  const counted = countedInCells(cells, texts.zeros, workings);
  const rounding = roundingInCells(counted, cells.length, readability, workings);
  if (rounding === undefined) return undefined;
  const [n, least, most] = [`COUNT(${counted})`, `MIN(${counted})`, `MAX(${counted})`];
  const largest = `IF(ABS(${least})>ABS(${most}),ABS(${least}),ABS(${most}))`;
  const critical = `INDEX(${criticalInCells(test, cells.length, tailOf({ alpha, sides }), workings)},${n})`;
  const ends = endsInCells(test, { counted, length: cells.length, step: rounding.step, workings }, sides, rounding);
  const statistic = `${ends.standsOut}/${test.over(counted)}`;
  const noAnswer = `IF((${n}<${FEWEST})${test.most === Infinity ? "" : `+(${n}>${test.most})`},NA(),IF(${most}-${least}<=${numberText(ROUNDING)}*${largest},NA(),"Quantity"))`;
  return [
    [`IF(ISERROR(SUM(${counted})),SUM(${counted}),IF(${n}=0,${refusal(rowRefused(1))},${noAnswer}))`, '"Value"'],
    ['"Results, n"', n],
    ['"Suspect"', ends.suspect],
    ['"Row of the suspect in values"', ends.row],
    [textInCells(test.statistic), statistic],
    [textInCells(`Critical value, ${askedAs({ alpha, sides })}`), critical],
    ['"Verdict"', verdictInCells({ n, statistic, critical, reduced: ends.reduced, further: ends.further }, rounding)],
  ];
}

interface EndsInCells {
  readonly suspect: string;
  readonly row: string;
  readonly standsOut: string;
  readonly reduced: string;
  /** The most that the statistic of any end may be. */
  readonly further: string;
}

// The columns of the block of ends.
const COLUMNS = ["suspect", "row", "standsOut", "reduced", "most"] as const;

/** The end that stands out most; of two alike the first given. */
function endsInCells(test: OutlierTest, results: Omit<EndOfResults, "isHigh">, sides: Sides, { isGiven }: RoundingInCells): EndsInCells {
  const { counted, workings } = results;
  const [low, high] = [false, true].map((isHigh) => ({ ...results, isHigh })) as [EndOfResults, EndOfResults];
  const [lowest, highest] = [low, high].map((end) => ({ reduced: test.reduced(end), most: isGiven === "0" ? '""' : test.mostOf(end) }));
  const far = test.standsOut(counted);
  let ends: EndsInCells | undefined;
  workings.block(`${test.called}: smallest and largest, their rows, how far they stand out, less rounding, at most`, 2, COLUMNS.length, (at) => {
    const cell = (row: number, column: (typeof COLUMNS)[number]): string => at(row, COLUMNS.indexOf(column));
    const isLow = `(${cell(0, "standsOut")}>${cell(1, "standsOut")})+(${cell(0, "standsOut")}=${cell(1, "standsOut")})*(${cell(0, "row")}<${cell(1, "row")})`;
    const chosen = (column: (typeof COLUMNS)[number]): string =>
      sides === "two" ? `IF(${isLow},${cell(0, column)},${cell(1, column)})` : cell(sides === "smallest" ? 0 : 1, column);
    const further = sides === "two" ? `MAX(${cell(0, "most")},${cell(1, "most")})` : chosen("most");
    ends = { suspect: chosen("suspect"), row: chosen("row"), standsOut: chosen("standsOut"), reduced: chosen("reduced"), further };
    return [
      [`MIN(${counted})`, `MATCH(${cell(0, "suspect")},${counted},0)`, far.low, lowest?.reduced ?? "", lowest?.most ?? ""],
      [`MAX(${counted})`, `MATCH(${cell(1, "suspect")},${counted},0)`, far.high, highest?.reduced ?? "", highest?.most ?? ""],
    ];
  });
  return ends as unknown as EndsInCells;
}

/** The critical values for 1, 2, 3, ... results under one another; none where the test takes no such count. */
function criticalInCells({ called, critical, most }: OutlierTest, length: number, tail: number, workings: Workings): string {
  const valueFor = (n: number): string => (n < FEWEST || n > most ? "NA()" : numberText(critical(n, tail)));
  return workings.block(`${called}: critical values, n = 1, 2, 3, ...`, length, 1, () => Array.from({ length }, (_, index) => [valueFor(index + 1)]));
}

/** As `outlierAssessment` has it: a step read off the results is held against outliers alone. */
function verdictInCells(
  { n, statistic, critical, reduced, further }: Readonly<Record<"n" | "statistic" | "critical" | "reduced" | "further", string>>,
  rounding: RoundingInCells,
): string {
  const doubtful = tooCoarseInCells(rounding);
  const outlier = textInCells(outlierVerdict({ count: FEWEST, isOutlier: true }));
  const none = (count: number): string => textInCells(outlierVerdict({ count, isOutlier: false }));
  const few = `IF(${n}<=${FEW},IF(${n}=${FEWEST},${none(FEWEST)},${none(FEW)}),${none(FEW + 1)})`;
  const hasStep = byWhoSaid(rounding, "1", `(${rounding.step}>0)`);
  const missed = byWhoSaid(rounding, `IF(${further}>${critical},${doubtful},${few})`, few);
  return `IF(${statistic}>${critical},IF(${hasStep}*(${reduced}<=${critical}),${doubtful},${outlier}),${missed})`;
}
