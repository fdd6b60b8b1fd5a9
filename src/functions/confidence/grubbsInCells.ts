import { grubbsCritical } from "../../confidence/grubbsAssessment";
import { CLEAR } from "../../confidence/rounding";
import { numberText } from "../../inputs/numberText";
import type { TableInCells, Workings } from "../inCells/Workings";
import { STATISTIC_OF_GRUBBS } from "./outlierForm";
import { type EndOfResults, outlierInCells, type OutlierTest, type OutlierTexts } from "./outlierInCells";

const distanceOf = (counted: string, end: "MIN" | "MAX"): string => `ABS(${end}(${counted})-AVERAGE(${counted}))`;

/** The statistic of an end by the ratio of the others' sum of squares to the square of its distance from their mean; m of them. */
const statistic = (ratio: string, m: string): string => `${m}/(${m}+1)*SQRT(${m}/(${ratio}+${m}/(${m}+1)))`;

/** The others less the suspect, turned so that none is above 0, and beside each 1; 0 and 0 beyond the last. */
const other = ({ counted, isHigh }: EndOfResults, row: number): readonly [value: string, counts: string] => {
  const value = isHigh ? `SMALL(${counted},${row + 1})-MAX(${counted})` : `MIN(${counted})-LARGE(${counted},${row + 1})`;
  return [`IF(${row + 1}<COUNT(${counted}),${value},0)`, `IF(${row + 1}<COUNT(${counted}),1,0)`];
};

/** As `reducedGrubbs` has it. */
function reducedInCells(end: EndOfResults): string {
  const { counted, isHigh, step, length, workings } = end;
  const d = `(${step})`;
  let reduced = "";
  workings.block("Grubbs: the other results less the suspect, 1 where there is one", length, 2, (at) => {
    const [values, counts] = [0, 1].map((column) => `${at(0, column)}:${at(length - 1, column)}`) as [string, string];
    const m = `(COUNT(${counted})-1)`;
    const mean = `SUM(${values})/${m}`;
    const squares = `SUMPRODUCT(${counts}*(${values}-${mean})^2)`;
    const gap = isHigh ? `LARGE(${counted},1)-LARGE(${counted},2)` : `SMALL(${counted},2)-SMALL(${counted},1)`;
    reduced = `IF(${gap}>=${numberText(CLEAR)}*${d},${statistic(`(${squares}+${m}*${d}^2/12)/(${d}/2+${mean})^2`, m)},0)`;
    return Array.from({ length }, (_, row) => other(end, row));
  });
  return reduced;
}

// The columns of the block in which the most is found.
const COLUMNS = ["other", "counts", "edge", "sorted", "between", "fixed", "sum", "squares", "level", "statistic"] as const;
type Column = (typeof COLUMNS)[number];

/**
 * As `mostGrubbs` has it: every other result as near as its interval lets it to one level c. Between two neighbouring edges of the intervals
 * the same p of the m results stand at an edge of theirs, with sum P and sum of squares Q, and the derivative vanishes at
 * c = (a P - Q) / (a p - P), a the suspect's farther edge; so the most is the largest of what each stretch gives, c held within it.
 */
function mostInCells(end: EndOfResults): string {
  const { counted, step, length, workings } = end;
  const half = `(${step}/2)`;
  const [m, rows] = [`(COUNT(${counted})-1)`, 2 * length];
  let most = "";
  workings.block(`Grubbs, at most: ${COLUMNS.join(", ")}`, rows, COLUMNS.length, (at) => {
    const cell = (column: Column, row: number): string => at(row, COLUMNS.indexOf(column));
    const whole = (column: Column, last: number): string => `${cell(column, 0)}:${cell(column, last)}`;
    const [others, counts] = [whole("other", length - 1), whole("counts", length - 1)];
    most = `MAX(${whole("statistic", rows - 1)})`;
    return Array.from({ length: rows }, (_, row) => {
      const [value, isOne] = row < length ? other(end, row) : ["", ""];
      const of = row % length;
      const edge = `IF(${cell("counts", of)}=1,${cell("other", of)}${row < length ? "-" : "+"}${half},"")`;
      if (row === rows - 1) return [value, isOne, edge, `IF(${row + 1}>2*${m},"",SMALL(${whole("edge", rows - 1)},${row + 1}))`];
      const stretch = (text: string): string => `IF(${row + 1}<2*${m},${text},"")`;
      const between = cell("between", row);
      const below = `(${others}+${half}<=${between})`;
      const above = `(${others}-${half}>=${between})`;
      const [p, sum, squares, level] = [cell("fixed", row), cell("sum", row), cell("squares", row), cell("level", row)];
      const [from, to] = [cell("sorted", row), cell("sorted", row + 1)];
      const best = `(${half}*${sum}-${squares})/(${half}*${p}-${sum})`;
      const mean = `(${sum}+(${m}-${p})*${level})/${m}`;
      const scatter = `(${squares}+(${m}-${p})*${level}^2-${m}*(${mean})^2)`;
      return [
        ...[value, isOne, edge, `IF(${row + 1}>2*${m},"",SMALL(${whole("edge", rows - 1)},${row + 1}))`],
        stretch(`(${from}+${to})/2`),
        stretch(`SUMPRODUCT(${counts}*(${below}+${above}))`),
        stretch(`SUMPRODUCT(${counts}*(${below}*(${others}+${half})+${above}*(${others}-${half})))`),
        stretch(`SUMPRODUCT(${counts}*(${below}*(${others}+${half})^2+${above}*(${others}-${half})^2))`),
        stretch(`IF(${half}*${p}-${sum}<=0,${between},MAX(${from},MIN(${to},${best})))`),
        stretch(`IF(${half}-${mean}<=0,0,${statistic(`MAX(0,${scatter})/(${half}-${mean})^2`, m)})`),
      ];
    });
  });
  return most;
}

const GRUBBS: OutlierTest = {
  called: "Grubbs",
  statistic: STATISTIC_OF_GRUBBS,
  most: Infinity,
  critical: grubbsCritical,
  standsOut: (counted) => ({ low: distanceOf(counted, "MIN"), high: distanceOf(counted, "MAX") }),
  over: (counted) => `STDEV(${counted})`,
  reduced: reducedInCells,
  mostOf: mostInCells,
};

/** The table of GRUBBS in cells; undefined for arguments that have no such form. */
export const grubbsInCells = (texts: OutlierTexts, workings: Workings): TableInCells | undefined => outlierInCells(GRUBBS, texts, workings);
