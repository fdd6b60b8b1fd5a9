import { gatheredChartOn } from "../../runsheet/gathering/gatheredChart";
import { historyChart } from "../../runsheet/blocks/balance/planBalanceSheet";
import { readRunSheet, type ReadRunSheet } from "../../runsheet/reading/readRunSheet";
import type { RangeReading } from "../../workbook/Workbook";
import { ShownCells } from "../sheet/ShownCells";
import type { Chart } from "./Chart";
import { hasCurves, plannedChart } from "./plannedChart";
import { dryingChart, sampleCharts } from "./sampleCharts";

/**
 * Everything on a sheet that can be drawn so far: the curves of a run, the history of a balance check, the runs of a gathered sheet, and
 * drying tables of earlier versions and of a user's own.
 */
export function chartsOn(reading: RangeReading): readonly Chart[] {
  const shown = new ShownCells(reading);
  const read = readRunSheet(reading);
  if (read.is === "balance" || read.is === "whole") return chartsOf(read, reading, shown);
  const gathered = gatheredChartOn(reading);
  return withPoints([gathered === undefined ? dryingChart(reading) : plannedChart(gathered, (at) => shown.number(at), "%")]);
}

/** The curves of a sheet that was read. */
export const chartsOf = (read: ReadRunSheet & { is: "balance" | "whole" }, reading: RangeReading, shown: ShownCells): readonly Chart[] =>
  withPoints(
    read.is === "balance" ? [plannedChart(historyChart(read.sheet), (at) => shown.number(at), "g")] : sampleCharts(reading, read.sheet, shown),
  );

const withPoints = (charts: readonly Chart[]): readonly Chart[] => charts.filter((chart) => hasCurves(chart));
