import { clockSlack } from "../../drying/clock";
import {
  fewestSteps,
  USUAL_OF_LAST,
  WIDEST_SHARE,
  ALWAYS_NARROW,
  type ConstancyCriterion,
  CONSTANCY_CRITERIA,
} from "../../drying/constantWeight/constancyCriteria";
import { EARLIEST_DATE, LARGEST_GAIN, SAME_TIME, SHORTEST_RUN } from "../../drying/weighingSeries";
import { elapsed } from "../../inputs/kinds/times";
import { weighing } from "../../inputs/kinds/weighings";
import { numberText } from "../../inputs/numberText";
import { timesOfAnotherSize } from "../../problems/functions/constancyProblems";
import {
  aboveFirst,
  clockForMinutes,
  dateForMinutes,
  limitOutOfBounds,
  needsTimes,
  notAboveVessel,
  rowRefused,
  timeNotAfter,
  timeNotThere,
} from "../../problems/sharing/plainCellProblems";
import { refusal } from "../inCells/problemInCells";
import { isFilledInCells, seriesCell } from "../inCells/seriesInCells";
import { SLACK } from "../inCells/orderInCells";
import type { Workings } from "../inCells/Workings";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { wordInCells } from "../wordInCells";

/** The texts of the arguments of CONSTANTWEIGHT and CONSTANTWEIGHT.STEPS. */
export type ConstancyTexts = Readonly<Record<"weights" | "limit" | "criterion" | "times" | "vessel" | "readability" | "interval", string>>;

/** What a block of steps gives for one weighing, as references to its cells. */
export interface StepInCells {
  /** How many weighings from this one on are filled. */
  readonly filled: string;
  readonly sample: string;
  readonly change: string;
  readonly limit: string;
  readonly verdict: string;
  /** 1 where this weighing and all after it are steady, or there is none. */
  readonly steady: string;
}

export interface StepsInCells {
  readonly steps: readonly StepInCells[];
  /** An error where anything is refused, else a number. */
  readonly check: string;
}

// The columns of the block, in their order.
const COLUMNS = ["filled", "sample", "timed", "time", "compared", "limit", "change", "verdict", "steady"] as const;
type Column = (typeof COLUMNS)[number];

/**
 * Each weighing of a series in a row of cells: what `drying/constantWeight` does with it, step by step. Undefined where the criterion stands
 * in a cell, or a column is not one of a known size.
 * @throws InputProblem when times and weights are of different sizes
 */
export function constancyInCells(texts: ConstancyTexts, workings: Workings): StepsInCells | undefined {
  const weights = workings.cellsOf(texts.weights);
  const given = texts.times === "" ? undefined : workings.cellsOf(texts.times);
  if (weights === undefined || (given === undefined && texts.times !== "")) return undefined;
  // One blank cell is the same as times left out.
  const lone = given?.length === 1 && weights.length > 1 ? given[0] : undefined;
  const times = lone === undefined ? given : undefined;
  if (times !== undefined && times.length !== weights.length) throw timesOfAnotherSize(times.length, weights.length);
  const n = weights.length;
  let check = "";
  let steps: readonly StepInCells[] = [];
  workings.block(
    "Constant weight: filled, sample, timed, time, compared with, limit, change, verdict, steady from here on",
    n + 1,
    COLUMNS.length,
    (at) => {
      const cell = (column: Column, row: number): string => at(row, COLUMNS.indexOf(column));
      const columnFrom = (column: Column, from: number, to: number): string => `${cell(column, from)}:${cell(column, to)}`;
      const series: Series = { texts, weights, times, lone, cell, columnFrom };
      steps = weights.map((_, row) => ({
        ...{ filled: cell("filled", row), sample: cell("sample", row), change: cell("change", row), limit: cell("limit", row) },
        ...{ verdict: cell("verdict", row), steady: cell("steady", row) },
      }));
      check = cell("sample", n);
      const rows = weights.map((_, row) => rowInCells(series, row));
      const last = [cell("filled", 0), checkInCells(series), "", "", "", limitValue(series), "", "", "1"];
      return [...rows, last];
    },
  );
  return { steps, check };
}

interface Series {
  readonly texts: ConstancyTexts;
  readonly weights: readonly string[];
  readonly times: readonly string[] | undefined;
  /** A single cell given for times, which must be blank. */
  readonly lone: string | undefined;
  readonly cell: (column: Column, row: number) => string;
  readonly columnFrom: (column: Column, from: number, to: number) => string;
}

/** What a cell formula counts with for each criterion: settled at once where the word is typed, else asked of the cell. */
const byCriterion = ({ texts }: Series, text: (criterion: ConstancyCriterion) => string): string =>
  wordInCells(
    texts.criterion,
    CONSTANCY_CRITERIA.filter((one) => one !== USUAL).map((one) => [one, text(one)]),
    text(USUAL),
  );

const USUAL: ConstancyCriterion = "of last";

const vesselOf = ({ texts }: Series): string => numberInCells(texts.vessel, 0);

/** TRUE where times are given at all: a column of nothing but blanks and zeros is none. */
const isTimed = ({ times, cell, columnFrom, weights }: Series): string => {
  if (times === undefined) return "FALSE";
  const later = weights.length > 1 ? `MAX(${columnFrom("timed", 1, weights.length - 1)})>0` : "FALSE";
  return `IF(${later},TRUE,IF(ISNUMBER(${times[0]}),${times[0]}<>0,${cell("timed", 0)}>0))`;
};

function rowInCells(series: Series, row: number): string[] {
  const { weights, times, cell, columnFrom } = series;
  const [weight, time] = [weights[row] as string, times?.[row]];
  const filled = `${isFilledInCells(weight, true)}+${row + 1 < weights.length ? cell("filled", row + 1) : "0"}`;
  const countUp = `IF(${isFilledInCells(weight, true)}+${row + 1 < weights.length ? cell("filled", row + 1) : "0"}>0,${filled},0)`;
  const net = `ROUND(${weight}-${vesselOf(series)},9)`;
  const grown = row === 0 ? net : `IF(${net}>${1 + LARGEST_GAIN}*${cell("sample", 0)}+${SLACK},${refusal(aboveFirst(row + 1))},${net})`;
  const above = `IF(${weight}-${vesselOf(series)}<=${SLACK},${refusal(notAboveVessel(row + 1))},${grown})`;
  const sample = seriesCell(weight, cell("filled", row), weighing, true, row + 1, above);
  const isSeries = `${cell("filled", row)}=0`;
  const compared = row === 0 ? "0" : comparedInCells(series, row);
  const k = cell("compared", row);
  const before = row === 0 ? "0" : `INDEX(${columnFrom("sample", 0, row)},${k})`;
  const none = `IF(${isSeries},TRUE,${k}=0)`;
  const change = row === 0 ? '""' : `IF(${none},"",ROUND(${cell("sample", row)}-${before},9))`;
  const limit = row === 0 ? '""' : `IF(${none},"",${allowedInCells(series, row)})`;
  const verdict = row === 0 ? `IF(${isSeries},"","first")` : `IF(${isSeries},"",IF(${k}=0,"too soon to tell",${verdictInCells(series, row)}))`;
  const steady = `IF(${isSeries},1,IF(${cell("verdict", row)}="steady",${cell("steady", row + 1)},0))`;
  const timed =
    time === undefined
      ? "0"
      : `IF(${isFilledInCells(time, row > 0)}+${row + 1 < weights.length ? cell("timed", row + 1) : "0"}>0,${isFilledInCells(time, row > 0)}+${row + 1 < weights.length ? cell("timed", row + 1) : "0"},0)`;
  return [countUp, sample, timed, time === undefined ? '""' : timeInCells(series, row, time), compared, limit, change, verdict, steady];
}

function timeInCells({ cell }: Series, row: number, time: string): string {
  const read = seriesCell(time, cell("timed", row), elapsed, row > 0, row + 1, time);
  if (row === 0) return read;
  const before = cell("time", row - 1);
  // Of planned times as well, which later weighings will have.
  const early = `IF(ISNUMBER(${time}),IF(ISNUMBER(${before}),(${time}<>0)*(${time}-${before}<=${numberText(SAME_TIME)}),0),0)`;
  return `IF(${early},${refusal(timeNotAfter(row + 1))},${read})`;
}

/** The number of the weighing that this one is compared with, 0 for none. */
function comparedInCells(series: Series, row: number): string {
  const { texts, cell, columnFrom } = series;
  const interval = numberInCells(texts.interval, 0);
  if (interval === "0") return String(row);
  const latest = `${cell("time", row)}-${operand(interval)}+${numberText(clockSlack)}`;
  const earlier = `IF(ISNUMBER(MATCH(${latest},${columnFrom("time", 0, row - 1)},1)),MATCH(${latest},${columnFrom("time", 0, row - 1)},1),0)`;
  return `IF(IF(${operand(interval)}>0,ISNUMBER(${cell("time", row)}),FALSE),${earlier},${row})`;
}

/** The limit in the unit of the criterion, looked at. */
function limitValue(series: Series): string {
  const { texts, cell } = series;
  const given = operand(numberInCells(texts.limit, 0));
  const first = cell("sample", 0);
  const step = operand(numberInCells(texts.readability, 0));
  const limit = byCriterion(series, (criterion) => (criterion === USUAL ? `IF(${given}=0,${USUAL_OF_LAST},${given})` : given));
  const wide = (grams: string): string => `IF(${grams}>${ALWAYS_NARROW},IF(${grams}>${WIDEST_SHARE}*${first}+${SLACK},1,0),0)`;
  const refused = byCriterion(series, (criterion) => {
    if (criterion === USUAL) return `IF(${given}>${WIDEST_SHARE},1,0)`;
    if (criterion === "readability") return `(${step}=0)+(${given}<${fewestSteps})+${wide(`${given}*${step}`)}`;
    return criterion === "absolute" ? `(${given}=0)+${wide(given)}` : `(${given}=0)+(${given}>${WIDEST_SHARE})`;
  });
  return `IF(${refused},${refusal(limitOutOfBounds)},${limit})`;
}

function allowedInCells(series: Series, row: number): string {
  const { texts, weights, cell, columnFrom } = series;
  const limit = cell("limit", weights.length);
  const [first, newer] = [cell("sample", 0), cell("sample", row)];
  const minutes = `(${cell("time", row)}-INDEX(${columnFrom("time", 0, row)},${cell("compared", row)}))`;
  const onTheMinute = `IF(ABS(${minutes}-ROUND(${minutes},0))<${numberText(clockSlack)},ROUND(${minutes},0),${minutes})`;
  const texted: Readonly<Record<ConstancyCriterion, string>> = {
    absolute: limit,
    "of last": `${limit}*${newer}`,
    "of initial": `${limit}*${first}`,
    "per gram": `${limit}*${first}`,
    "of total loss": `${limit}*IF(${first}>${newer},${first}-${newer},0)`,
    "per hour": `${limit}*${newer}*${onTheMinute}/60`,
    readability: `${limit}*${operand(numberInCells(texts.readability, 0))}`,
  };
  return byCriterion(series, (criterion) => texted[criterion]);
}

/** The verdict of `drying/constantWeight` on one comparison. */
function verdictInCells(series: Series, row: number): string {
  const { texts, cell, columnFrom } = series;
  const [change, limit, k] = [cell("change", row), cell("limit", row), cell("compared", row)];
  const blind = `${fewestSteps}*${operand(numberInCells(texts.readability, 0))}`;
  const isVague = `${limit}<${blind}-${SLACK}`;
  const beyond = `(${limit}+${SLACK}+IF(${isVague},${blind},0))`;
  const window = `INDEX(${columnFrom("sample", 0, row)},${k}):${cell("sample", row).split("!").at(-1) ?? ""}`;
  const spread = `(MAX(${window})-MIN(${window}))`;
  const judged = `IF(${change}>${beyond},"gain",IF((${change}<-${beyond})+(${spread}>${beyond}),"not yet",IF(${isVague},"balance too coarse","steady")))`;
  const isOfLoss = byCriterion(series, (criterion) => (criterion === "of total loss" ? "1" : "0"));
  return isOfLoss === "0" ? judged : `IF(${isOfLoss}*(${limit}=0)*(ABS(${change})<=${SLACK}),"too soon to tell",${judged})`;
}

/** An error where the series as a whole is refused, else 0. */
function checkInCells(series: Series): string {
  const { texts, weights, times, lone, cell, columnFrom } = series;
  const n = weights.length;
  const all = `SUM(${columnFrom("sample", 0, n - 1)})`;
  const interval = numberInCells(texts.interval, 0);
  const isPerHour = byCriterion(series, (criterion) => (criterion === "per hour" ? "1" : "0"));
  const wantsTimes = `${isPerHour}+(${interval}>0)`;
  const limit = cell("limit", n);
  const isAlone = lone === undefined ? "0" : isFilledInCells(lone, false);
  const without = `IF(${wantsTimes}+${isAlone},${refusal(needsTimes)},0)`;
  const count = cell("filled", 0);
  const span = `(INDEX(${columnFrom("time", 0, n - 1)},${count})-${cell("time", 0)})`;
  const withTimes = [
    `IF(${count}>${cell("timed", 0)},${refusal(timeNotThere(n))}`,
    `IF(${cell("time", 0)}>=${EARLIEST_DATE},${refusal(dateForMinutes)}`,
    `IF(IF(${count}>1,${span}<${numberText(SHORTEST_RUN - clockSlack)},FALSE),${refusal(clockForMinutes)},SUM(${columnFrom("time", 0, n - 1)})*0)))`,
  ].join(",");
  const timed = times === undefined ? without : `IF(${isTimed(series)},${withTimes},${without})`;
  return `IF(${count}=0,${refusal(rowRefused(1))},${all}*0+${limit}*0+${timed})`;
}

/** The answer of CONSTANTWEIGHT: the first of the unbroken steady weighings, 0 for not yet, #N/A where the balance is too coarse. */
export function constantWeightInCells({ steps, check }: StepsInCells): string {
  const filled = steps[0]?.filled ?? "0";
  const newest = steps.map((step) => `(${step.filled}=1)*(${step.verdict}="balance too coarse")`).join("+");
  const count = steps.map((step) => `(${step.filled}>0)*${step.steady}`).join("+");
  return `IF(ISERROR(${check}),${check},IF(${newest},NA(),IF(${count}=0,0,${filled}-(${count})+1)))`;
}
