import { heatingRateRule, holdingTime, temperature } from "../../inputs/kinds/series";
import { oneTemperatureAlone, scheduleDoesNotFit } from "../../problems/sharing/plainCellProblems";
import { columnInCells } from "../inCells/columnInCells";
import { refusal } from "../inCells/problemInCells";
import type { Workings } from "../inCells/Workings";
import { wordInCells } from "../wordInCells";

// The columns of the block.
const COLUMNS = ["filledTemperatures", "temperature", "filledRates", "rate", "filledHolds", "hold", "minutes"] as const;
type Column = (typeof COLUMNS)[number];

/**
 * SCHEDULE.TIME in cells, step by step as `schedule` has it. Undefined where a column is not one of a known size.
 */
export function scheduleInCells(
  texts: Readonly<Record<"temperatures" | "rates" | "holds" | "rateUnit", string>>,
  workings: Workings,
): string | undefined {
  const columns = [texts.temperatures, texts.rates, texts.holds].map((text) => (text === "" ? [] : workings.cellsOf(text)));
  const [temperatures, rates, holds] = columns;
  if (temperatures === undefined || rates === undefined || holds === undefined) return undefined;
  // Below the last row there is nothing, which the row before looks at.
  const n = Math.max(temperatures.length, rates.length, holds.length) + 1;
  let answer = "";
  workings.block(`Schedule: ${COLUMNS.join(", ")}`, n, COLUMNS.length, (at) => {
    const cell = (column: Column, row: number): string => at(row, COLUMNS.indexOf(column));
    const whole = (column: Column): string => `${cell(column, 0)}:${cell(column, n - 1)}`;
    const filledIn = (column: Column): string => `COUNTIF(${whole(column)},">0")`;
    const isZeroBlank = (): boolean => true;
    const heat = columnInCells(temperatures, n, (row) => cell("filledTemperatures", row), { rule: temperature, isZeroBlank });
    const first = (row: number): string | undefined => (row === 0 ? '""' : undefined);
    const rate = columnInCells(rates, n, (row) => cell("filledRates", row), { rule: heatingRateRule, isZeroBlank, blankAs: first });
    const hold = columnInCells(holds, n, (row) => cell("filledHolds", row), { rule: holdingTime, isZeroBlank, blankAs: () => "0" });
    const steps = `(${filledIn("filledTemperatures")}-1)`;
    const isRateFirst = `ISNUMBER(${cell("rate", 0)})`;
    const isHoldFirst = `(${holds.length}<=${steps})`;
    const unit = wordInCells(texts.rateUnit, [["per hour", "60"]], "1");
    const numbers = `SUM(${whole("temperature")})+SUM(${whole("rate")})+SUM(${whole("hold")})`;
    const doesNotFit = [
      `(${filledIn("filledRates")}>${steps}+IF(${isRateFirst},0,1))`,
      `(${filledIn("filledHolds")}>${steps}+IF(${isHoldFirst},0,1))`,
      `(COUNT(${whole("rate")})<${steps})`,
    ].join("+");
    const held = `IF(${isHoldFirst},0,${holds.length === 0 ? "0" : `N(${cell("hold", 0)})`})`;
    const sum = `${held}+SUM(${whole("minutes")})`;
    answer = `IF(ISERROR(${numbers}),${numbers},IF(${steps}<1,${refusal(oneTemperatureAlone)},IF(${doesNotFit},${refusal(scheduleDoesNotFit)},${sum})))`;
    return Array.from({ length: n }, (_, row) => {
      const step = (): string => {
        const [from, to] = [cell("temperature", row), cell("temperature", row + 1)];
        const asked = `IF(${isRateFirst},${cell("rate", row)},${cell("rate", row + 1)})`;
        const then = `IF(${isHoldFirst},N(${cell("hold", row)}),N(${cell("hold", row + 1)}))`;
        return `IF(${cell("filledTemperatures", row + 1)}=0,0,ABS(${to}-${from})/${asked}*${unit}+${then})`;
      };
      return [
        ...[heat.filled[row] ?? "", heat.values[row] ?? "", rate.filled[row] ?? "", rate.values[row] ?? ""],
        ...[hold.filled[row] ?? "", hold.values[row] ?? "", row + 1 < n ? step() : "0"],
      ];
    });
  });
  return answer;
}
