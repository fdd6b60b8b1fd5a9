import { DAYS, FEWEST, FEWEST_FOR_HALVES, FIRST_DATE, HAIR, MOST_DECIMALS, OF_WIDTH } from "../../furnace/heatingRate";
import { AS_SET, BENT } from "../../furnace/rateVerdict";
import { temperature } from "../../inputs/kinds/series";
import { elapsed } from "../../inputs/kinds/times";
import { RATE_VERDICTS } from "../../problems/functions/furnaceProblems";
import { clockForMinutes, columnsOfRateDiffer, timeNotAfterBefore, windowEmptyOrReversed } from "../../problems/sharing/plainCellProblems";
import { columnInCells } from "../inCells/columnInCells";
import { label } from "../inCells/formulaInCells";
import { refusal } from "../inCells/problemInCells";
import { textInCells } from "../inCells/sentenceInCells";
import type { TableInCells, Workings } from "../inCells/Workings";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { HEADINGS, LABELS } from "./heatingRateLabels";

type Texts = Readonly<Record<"times" | "temperatures" | "set" | "from" | "to", string>>;

// The columns of the block of readings, and of that of sums.
const COLUMNS = [
  "filledTimes",
  "time",
  "filledTemperatures",
  "temperature",
  "isInside",
  "rank",
  "isFirst",
  "isLast",
  "wrong",
  "x",
  "y",
  "decimals",
] as const;
type Column = (typeof COLUMNS)[number];

/** The table of HEATINGRATE; undefined where a column is not one of a known size. */
export function heatingRateInCells(texts: Texts, workings: Workings): TableInCells | undefined {
  const [times, temperatures] = [workings.cellsOf(texts.times), workings.cellsOf(texts.temperatures)];
  if (times === undefined || temperatures === undefined) return undefined;
  const n = Math.max(times.length, temperatures.length);
  let columns: ColumnsInCells | undefined;
  workings.block(`Heating rate: ${COLUMNS.join(", ")}`, n, COLUMNS.length, (at) => {
    const cell = (column: Column, row: number): string => at(row, COLUMNS.indexOf(column));
    const whole = (column: Column): string => `${cell(column, 0)}:${cell(column, n - 1)}`;
    const t = columnInCells(times, n, (row) => cell("filledTimes", row), { rule: elapsed, isZeroBlank: (row) => row > 0 });
    const heat = columnInCells(temperatures, n, (row) => cell("filledTemperatures", row), { rule: temperature, isZeroBlank: () => true });
    columns = {
      ...{
        time: whole("time"),
        temperature: whole("temperature"),
        x: whole("x"),
        y: whole("y"),
        decimals: whole("decimals"),
        inside: whole("isInside"),
        first: whole("isFirst"),
        last: whole("isLast"),
      },
      ...{ wrong: whole("wrong"), filledTimes: cell("filledTimes", 0), filledTemperatures: cell("filledTemperatures", 0), start: cell("time", 0) },
    };
    const count = `SUM(${whole("isInside")})`;
    const half = `INT((${count}+1)/2)`;
    return Array.from({ length: n }, (_, row) => {
      const [time, heated, inside, rank] = [cell("time", row), cell("temperature", row), cell("isInside", row), cell("rank", row)];
      const bound = (text: string, sign: string): string =>
        isGivenInCells(text) === "0" ? "" : `*IF(${isGivenInCells(text)},${heated}${sign}${numberInCells(text, 0)},TRUE)`;
      return [
        ...[t.filled[row] ?? "", t.values[row] ?? "", heat.filled[row] ?? "", heat.values[row] ?? ""],
        `IF(ISNUMBER(${heated}),1${bound(texts.from, ">=")}${bound(texts.to, "<=")},0)`,
        `SUM(${cell("isInside", 0)}:${inside})`,
        `IF((${inside}=1)*(${rank}<=${half}),1,0)`,
        `IF((${inside}=1)*(${rank}>${count}-${half}),1,0)`,
        row === 0 ? "0" : `IF(ISNUMBER(${time}),IF(${time}<=${cell("time", row - 1)},1,0),0)`,
        // A text is no number to multiply with.
        `IF(${inside}=1,${time},0)`,
        `IF(${inside}=1,${heated},0)`,
        `IF(${inside}=1,${decimalsInCells(heated)},0)`,
      ];
    });
  });
  return columns === undefined ? undefined : tableOf(texts, columns, workings);
}

type ColumnsInCells = Readonly<
  Record<
    "time" | "temperature" | "x" | "y" | "decimals" | "inside" | "first" | "last" | "wrong" | "filledTimes" | "filledTemperatures" | "start",
    string
  >
>;

interface SumsInCells {
  readonly rate: string;
  readonly u: string;
  readonly halfWidth: string;
  readonly scatter: string;
  readonly firstHalf: string;
  readonly secondHalf: string;
  readonly count: string;
}

const numbersOf = (column: string, inside: string): string => `SUMPRODUCT(${inside},${column})`;

/** Slope of the line through the readings that count, and their spread and squares about it, each in a cell of its own. */
function lineInCells({ x, y: heat }: ColumnsInCells, counts: string, about: string, workings: Workings) {
  let line = { slope: "", spread: "", squares: "" };
  workings.block(`${about}: count, mean time, mean temperature, spread of times, slope, squares`, 1, 6, (at) => {
    const [n, t, y, spread, slope, squares] = Array.from({ length: 6 }, (_, column) => at(0, column)) as [
      string,
      string,
      string,
      string,
      string,
      string,
    ];
    line = { slope, spread, squares };
    const off = `(${heat}-${y}-${slope}*(${x}-${t}))`;
    return [
      [
        `SUM(${counts})`,
        `${numbersOf(x, counts)}/${n}`,
        `${numbersOf(heat, counts)}/${n}`,
        `SUMPRODUCT(${counts}*(${x}-${t})^2)`,
        `SUMPRODUCT(${counts}*(${x}-${t})*(${heat}-${y}))/${spread}`,
        `SUMPRODUCT(${counts}*${off}^2)`,
      ],
    ];
  });
  return line;
}

function tableOf(texts: Texts, columns: ColumnsInCells, workings: Workings): TableInCells {
  const { inside, filledTimes, filledTemperatures, wrong, start, time, temperature: heat } = columns;
  const count = `SUM(${inside})`;
  const numbers = `SUM(${time})+SUM(${heat})`;
  const isClock = `(${start}>0)*(MAX(${time})>${start})*((MAX(${time})<1)+(${start}>${FIRST_DATE})*(MAX(${time})-${start}<${DAYS})>0)`;
  const [from, to] = [texts.from, texts.to];
  const isReversed = `(${isGivenInCells(from)})*(${isGivenInCells(to)})*(${numberInCells(from, 0)}>=${numberInCells(to, 0)})`;
  const refused = [
    [`(${filledTimes}<>${filledTemperatures})+(${filledTimes}=0)`, refusal(columnsOfRateDiffer)],
    [isClock, refusal(clockForMinutes)],
    [`SUM(${wrong})>0`, refusal(timeNotAfterBefore)],
    [`${isReversed}+(${count}<${FEWEST})`, refusal(windowEmptyOrReversed)],
  ].reduceRight((rest, [when, says]) => `IF(${when},${says},${rest})`, label(HEADINGS[0]));
  const all = lineInCells(columns, inside, "Line through all", workings);
  const first = lineInCells(columns, columns.first, "Line through the first half", workings);
  const last = lineInCells(columns, columns.last, "Line through the second half", workings);
  let sums: SumsInCells | undefined;
  workings.block("Step of the display, scatter, u, half width", 1, 4, (at) => {
    const [step, scatter, u, halfWidth] = [at(0, 0), at(0, 1), at(0, 2), at(0, 3)];
    const hasHalves = (slope: string): string => `IF(${count}<${FEWEST_FOR_HALVES},"",${slope})`;
    sums = { rate: all.slope, u, halfWidth, scatter, count, firstHalf: hasHalves(first.slope), secondHalf: hasHalves(last.slope) };
    return [
      [
        `IF(MAX(${columns.decimals})>${MOST_DECIMALS},0,10^-MAX(${columns.decimals}))`,
        `MAX(SQRT(${all.squares}/(${count}-2)),${step}/SQRT(${OF_WIDTH}))`,
        `${scatter}/SQRT(${all.spread})`,
        `TINV(0.05,${count}-2)*${u}`,
      ],
    ];
  });
  const { rate, u, halfWidth, scatter, firstHalf, secondHalf } = sums as unknown as SumsInCells;
  const set = numberInCells(texts.set, 1);
  const isSet = isGivenInCells(texts.set);
  return [
    [`IF(ISERROR(${numbers}),${numbers},${refused})`, ...HEADINGS.slice(1).map(label)],
    [label(LABELS.rate), rate, label("°C/min")],
    [label(LABELS.u), u, label("°C/min")],
    [label(LABELS.halfWidth), halfWidth, label("°C/min")],
    [label(LABELS.count), count, '""'],
    [label(LABELS.scatter), scatter, label("°C")],
    [label(LABELS.firstHalf), firstHalf, label("°C/min")],
    [label(LABELS.secondHalf), secondHalf, label("°C/min")],
    [label(LABELS.deviation), isSet === "0" ? '""' : `IF(${isSet},ABS(${rate})/${set}-1,"")`, label("fraction")],
    [label(LABELS.verdict), verdictInCells(sums as unknown as SumsInCells, [first.slope, last.slope], isSet, set), '""'],
  ];
}

/** As `shownStep` has it: at how many decimals a reading is a whole number of steps. */
const decimalsInCells = (heat: string): string =>
  Array.from({ length: MOST_DECIMALS + 1 }, (_, decimals) => decimals).reduceRight(
    (rest, decimals) => `IF(ABS(${10 ** decimals}*${heat}-ROUND(${10 ** decimals}*${heat},0))<${HAIR},${decimals},${rest})`,
    String(MOST_DECIMALS + 1),
  );

/** As `rateVerdict` has it. */
function verdictInCells({ rate, halfWidth, count }: SumsInCells, [first, last]: readonly [string, string], isSet: string, set: string): string {
  const [off, allowed] = [`(ABS(${rate})-${set})`, `${AS_SET}*${set}`];
  const judged = `IF(ABS(${off})+${halfWidth}<=${allowed},${textInCells(RATE_VERDICTS.asSet)},IF(ABS(${off})-${halfWidth}<=${allowed},${textInCells(RATE_VERDICTS.open)},IF(${off}<0,${textInCells(RATE_VERDICTS.slower)},${textInCells(RATE_VERDICTS.faster)})))`;
  const against = isSet === "0" ? textInCells(RATE_VERDICTS.noSetRate) : `IF(${isSet},${judged},${textInCells(RATE_VERDICTS.noSetRate)})`;
  return `${against}&IF(${count}<${FEWEST_FOR_HALVES},"",IF(ABS(${first}-${last})>${BENT}*ABS(${rate}),${textInCells(RATE_VERDICTS.uneven)},""))`;
}
