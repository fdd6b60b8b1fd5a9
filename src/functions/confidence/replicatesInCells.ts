import { criticalRangeFactor } from "../../confidence/criticalRangeFactor";
import { FACTOR, REPLICATE_ROUNDING, replicateVerdict, STRAY } from "../../confidence/replicateStatistics";
import { numberText } from "../../inputs/numberText";
import { roundedTooCoarsely } from "../../problems/roundingVerdicts";
import { rowRefused } from "../../problems/plainCellProblems";
import { refusal } from "../inCells/problemInCells";
import { textInCells } from "../inCells/sentenceInCells";
import { isTypedNumber } from "../inCells/typedInCells";
import type { TableInCells, Workings } from "../inCells/Workings";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { countedInCells } from "./countedInCells";

type Texts = Readonly<Record<"values" | "repeatabilitySd" | "zeros" | "readability", string>>;

// Where the results' own step would decide, which built-in functions cannot read off them, the call is shared as its value.
const needsOwnStep = ({ repeatabilitySd, readability }: Texts): boolean => repeatabilitySd !== "" && !isTypedNumber(readability);

/** The table of REPLICATES in cells, with each result looked at in a cell of its own; undefined for arguments that have no such form. */
export function replicatesInCells(texts: Texts, workings: Workings): TableInCells | undefined {
  const cells = workings.cellsOf(texts.values);
  if (cells === undefined || needsOwnStep(texts)) return undefined;
  const counted = countedInCells(cells, texts.zeros, workings);
  const [n, mean, least, most] = [`COUNT(${counted})`, `AVERAGE(${counted})`, `MIN(${counted})`, `MAX(${counted})`];
  const deviation = `STDEV(${counted})`;
  const range = `(${most}-${least})`;
  const largest = `IF(ABS(${least})>ABS(${most}),ABS(${least}),ABS(${most}))`;
  const sd = operand(numberInCells(texts.repeatabilitySd, 0));
  const isGiven = texts.repeatabilitySd === "" ? "0" : isTypedNumber(texts.repeatabilitySd) ? "1" : `(${sd}>0)`;
  const ifGiven = (then: string, otherwise: string): string =>
    isGiven === "0" ? otherwise : isGiven === "1" ? then : `IF(${isGiven},${then},${otherwise})`;
  const critical = isGiven === "0" ? '""' : `INDEX(${factorsInCells(cells.length, workings)},${n})*${sd}`;
  const refused = `IF(ISERROR(SUM(${counted})),SUM(${counted}),IF(${n}=0,${refusal(rowRefused(1))},IF(${n}<2,NA(),"Quantity")))`;
  return [
    [refused, '"Value"'],
    ['"Results, n"', n],
    ['"Mean"', mean],
    ['"Median"', `MEDIAN(${counted})`],
    ['"Standard deviation, s"', deviation],
    [
      '"Relative standard deviation, s / |mean|"',
      `IF(ABS(${mean})<=${numberText(REPLICATE_ROUNDING)}*${largest},"none: the mean is 0",${deviation}/ABS(${mean}))`,
    ],
    [ifGiven('"Repeatability limit, r = 2.8 repeatabilitySd"', '"Repeatability limit, r = 2.8 s"'), `${FACTOR}*${ifGiven(sd, deviation)}`],
    ['"Range, largest - smallest"', range],
    ['"Critical range, 95 %, f(n) repeatabilitySd"', ifGiven(critical, '""')],
    [
      '"Verdict"',
      ifGiven(verdictInCells(range, critical, Number(texts.readability)), textInCells(replicateVerdict({ range: 0, criticalRange: undefined }))),
    ],
  ];
}

/** The critical-range factors f(n) of ISO 5725-6 for up to so many results, under one another; the first is none. */
function factorsInCells(most: number, workings: Workings): string {
  return workings.block("Critical-range factors f(n), n = 1, 2, 3, ...", most, 1, () =>
    Array.from({ length: most }, (_, index) => [index === 0 ? "NA()" : numberText(criticalRangeFactor(index + 1))]),
  );
}

/** The verdict for a step that is known, as `replicateVerdict` has it. */
function verdictInCells(range: string, critical: string, step: number): string {
  const [fits, doubtful, not] = [
    replicateVerdict({ range: 0, criticalRange: 1, rounding: { step: 0, isGiven: true } }),
    roundedTooCoarsely(step, true),
    replicateVerdict({ range: 2, criticalRange: 1, rounding: { step: 0, isGiven: true } }),
  ].map(textInCells);
  return `IF(${range}+${numberText(step)}<=${critical},${fits},IF(${range}-${numberText(step)}<=${critical}+${numberText(STRAY * step)},${doubtful},${not}))`;
}
