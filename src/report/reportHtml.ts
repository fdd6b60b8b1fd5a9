import { columnsMoved } from "../problems/runsheet/growingProblems";
import { readRunSheet } from "../runsheet/reading/readRunSheet";
import type { RangeReading } from "../workbook/Workbook";
import { calculationsReport } from "./calculationsReport";
import type { ReportExtras } from "./ReportExtras";
import { runReport } from "./runReport";
import { reportWords } from "./words/reportWords";

/**
 * A sheet as a file to print or to send: HTML that needs nothing else and runs nothing. A run sheet of any kind becomes the report of its
 * run, in its own words and with the numbers it shows; any other sheet that calls Retort functions one of its calculations.
 * @param reading all cells of the sheet that hold anything, its workings too. Where `shown` is "" beside a value, as in a reading of a
 *   file, the value is written as the sheet's own format shows it
 * @throws InputProblem for a sheet that is neither
 */
export function reportHtml(reading: RangeReading, extras: ReportExtras): string {
  const read = readRunSheet(reading);
  const { older, rearranged, columnsMoved: moved } = reportWords.calculations;
  switch (read.is) {
    case "whole":
    case "balance":
      return runReport(reading, read, extras);
    case "older":
      return calculationsReport(reading, extras, older);
    case "rearranged":
      return calculationsReport(
        reading,
        extras,
        read.stands === undefined ? rearranged(read.missing, read.cell) : moved(columnsMoved(read.missing, read.cell, read.stands)),
      );
    case "other":
      return calculationsReport(reading, extras);
  }
}
