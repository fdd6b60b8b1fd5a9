import { criticalRangeFactor } from "../../confidence/criticalRangeFactor";
import { FACTOR, REPLICATE_ROUNDING, replicateVerdict, STRAY } from "../../confidence/replicateStatistics";
import { numberText } from "../../inputs/numberText";
import { rowRefused } from "../../problems/sharing/plainCellProblems";
import { refusal } from "../inCells/problemInCells";
import { textInCells } from "../inCells/sentenceInCells";
import { isTypedNumber } from "../inCells/typedInCells";
import type { TableInCells, Workings } from "../inCells/Workings";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { countedInCells } from "./countedInCells";
import { byWhoSaid, roundingInCells, tooCoarseInCells, type RoundingInCells } from "./roundingInCells";

type Texts = Readonly<Record<"values" | "repeatabilitySd" | "zeros" | "readability", string>>;

/** The table of REPLICATES in cells, with each result looked at in a cell of its own; undefined for arguments that have no such form. */
export function replicatesInCells(texts: Texts, workings: Workings): TableInCells | undefined {
  const cells = workings.cellsOf(texts.values);
  if (cells === undefined) return undefined;
  const counted = countedInCells(cells, texts.zeros, workings);
  const rounding = texts.repeatabilitySd === "" ? undefined : roundingInCells(counted, cells.length, texts.readability, workings);
  if (rounding === undefined && texts.repeatabilitySd !== "") return undefined;
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
      ifGiven(
        rounding === undefined ? "" : verdictInCells(range, critical, rounding),
        textInCells(replicateVerdict({ range: 0, criticalRange: undefined })),
      ),
    ],
  ];
}

/** The critical-range factors f(n) of ISO 5725-6 for up to so many results, under one another; the first is none. */
function factorsInCells(most: number, workings: Workings): string {
  return workings.block("Critical-range factors f(n), n = 1, 2, 3, ...", most, 1, () =>
    Array.from({ length: most }, (_, index) => [index === 0 ? "NA()" : numberText(criticalRangeFactor(index + 1))]),
  );
}

/** As `replicateVerdict` has it. */
function verdictInCells(range: string, critical: string, rounding: RoundingInCells): string {
  const said = (wide: number): string => textInCells(replicateVerdict({ range: wide, criticalRange: 1, rounding: { step: 0, isGiven: true } }));
  const { step } = rounding;
  const within = byWhoSaid(rounding, `${range}+${step}`, range);
  const open = `IF(${range}-${step}<=${critical}+${numberText(STRAY)}*${step},${tooCoarseInCells(rounding)},${said(2)})`;
  return `IF(${within}<=${critical},${said(0)},${open})`;
}
