import { dixonCritical, MOST } from "../../confidence/dixonAssessment";
import { FEW, FEWEST, outlierVerdict, ROUNDING, type Sides, SIDES, tailOf } from "../../confidence/outlierAssessment";
import { CLEAR } from "../../confidence/rounding";
import { numberText } from "../../inputs/numberText";
import { rowRefused } from "../../problems/plainCellProblems";
import { refusal } from "../inCells/problemInCells";
import { textInCells } from "../inCells/sentenceInCells";
import { isTypedNumber, isTypedText, typedTextOf } from "../inCells/typedInCells";
import type { TableInCells, Workings } from "../inCells/Workings";
import { countedInCells } from "./countedInCells";
import { askedAs, STATISTIC_OF_DIXON, USUAL_ALPHA } from "./outlierForm";

type Texts = Readonly<Record<"values" | "alpha" | "sides" | "zeros" | "readability", string>>;

/**
 * The table of DIXON in cells, its critical values tabulated for every count there can be. Undefined where the level or the side stands in
 * a cell, and where the results' own step would decide, which built-in functions cannot read off them.
 */
export function dixonInCells(texts: Texts, workings: Workings): TableInCells | undefined {
  const { alpha: level, sides: side, readability } = texts;
  const cells = workings.cellsOf(texts.values);
  if (cells === undefined || !isTypedNumber(readability) || !(level === "" || isTypedNumber(level)) || !(side === "" || isTypedText(side)))
    return undefined;
  const [alpha, step] = [level === "" ? USUAL_ALPHA : Number(level), Number(readability)];
  const sides: Sides = SIDES.find((one) => side !== "" && one === typedTextOf(side).trim().toLowerCase()) ?? "two";
  const counted = countedInCells(cells, texts.zeros, workings);
  const [n, least, most] = [`COUNT(${counted})`, `MIN(${counted})`, `MAX(${counted})`];
  const range = `(${most}-${least})`;
  const largest = `IF(ABS(${least})>ABS(${most}),ABS(${least}),ABS(${most}))`;
  const ends = endsInCells(counted, sides, workings);
  const critical = `INDEX(${criticalInCells(cells.length, tailOf({ alpha, sides }), workings)},${n})`;
  const statistic = `${ends.gap}/${range}`;
  const noAnswer = `IF((${n}<${FEWEST})+(${n}>${MOST}),NA(),IF(${range}<=${numberText(ROUNDING)}*${largest},NA(),"Quantity"))`;
  return [
    [`IF(ISERROR(SUM(${counted})),SUM(${counted}),IF(${n}=0,${refusal(rowRefused(1))},${noAnswer}))`, '"Value"'],
    ['"Results, n"', n],
    ['"Suspect"', ends.suspect],
    ['"Row of the suspect in values"', ends.row],
    [textInCells(STATISTIC_OF_DIXON), statistic],
    [textInCells(`Critical value, ${askedAs({ alpha, sides })}`), critical],
    ['"Verdict"', verdictInCells({ ...ends, n, range, critical }, step)],
  ];
}

interface EndsInCells {
  readonly suspect: string;
  readonly row: string;
  /** Between the suspect and its neighbour. */
  readonly gap: string;
  /** The widest gap of the ends that are looked at. */
  readonly widest: string;
}

/** The end that stands out most; of two alike the first given. */
function endsInCells(counted: string, sides: Sides, workings: Workings): EndsInCells {
  let ends: EndsInCells = { suspect: "", row: "", gap: "", widest: "" };
  workings.block("Dixon: smallest and largest, their rows, their gaps", 2, 3, (at) => {
    const [low, high] = [0, 1].map((row) => ({ value: at(row, 0), row: at(row, 1), gap: at(row, 2) })) as [End, End];
    const isLow = `(${low.gap}>${high.gap})+(${low.gap}=${high.gap})*(${low.row}<${high.row})`;
    const chosen = (of: keyof End): string => (sides === "two" ? `IF(${isLow},${low[of]},${high[of]})` : sides === "smallest" ? low[of] : high[of]);
    const widest = sides === "two" ? `IF(${low.gap}>${high.gap},${low.gap},${high.gap})` : chosen("gap");
    ends = { suspect: chosen("value"), row: chosen("row"), gap: chosen("gap"), widest };
    return [
      [`SMALL(${counted},1)`, `MATCH(${low.value},${counted},0)`, `SMALL(${counted},2)-${low.value}`],
      [`LARGE(${counted},1)`, `MATCH(${high.value},${counted},0)`, `${high.value}-LARGE(${counted},2)`],
    ];
  });
  return ends;
}

type End = Readonly<Record<"value" | "row" | "gap", string>>;

/** The critical values for 1, 2, 3, ... results under one another; none below three and above thirty. */
function criticalInCells(most: number, tail: number, workings: Workings): string {
  const valueFor = (n: number): string => (n < FEWEST || n > MOST ? "NA()" : numberText(dixonCritical(n, tail)));
  return workings.block("Critical values of r10, n = 1, 2, 3, ...", most, 1, () => Array.from({ length: most }, (_, index) => [valueFor(index + 1)]));
}

/** The verdict for a step that is known, as `outlierAssessment` has it. */
function verdictInCells(
  { n, gap, widest, range, critical }: EndsInCells & Readonly<Record<"n" | "range" | "critical", string>>,
  step: number,
): string {
  const d = numberText(step);
  const reduced = `IF(${gap}>=${numberText(CLEAR)}*${d},(${gap}-${d}/2)/(${range}+${d}/2),0)`;
  const further = `(${widest}+${d})/${range}`;
  const doubtful = textInCells(outlierVerdict({ count: FEWEST, isOutlier: true, doubt: { step, isGiven: true } }));
  const outlier = textInCells(outlierVerdict({ count: FEWEST, isOutlier: true }));
  const none = (count: number): string => textInCells(outlierVerdict({ count, isOutlier: false }));
  const few = `IF(${n}<=${FEW},IF(${n}=${FEWEST},${none(FEWEST)},${none(FEW)}),${none(FEW + 1)})`;
  return `IF(${gap}/${range}>${critical},IF(${reduced}<=${critical},${doubtful},${outlier}),IF(IF(${further}>1,1,${further})>${critical},${doubtful},${few}))`;
}
