import { clockText } from "../../../explanation/runSheet/plainText";
import { isOfSamples, type SheetCells } from "../../../explanation/runSheet/RunCells";
import { weighInWords } from "../../../problems/runsheet/weighInWords";
import { placeOf } from "../../../runsheet/expressions/formulaText";
import { decimalsOf } from "../../../runsheet/sheet/massFormats";
import type { Step } from "./order/Step";
import { dayText } from "./readClock";

/** "10:42", of a run in minutes "34 min", and of a balance check "2026-11-21". */
export function timeText({ sheet }: SheetCells, time: number): string {
  if (sheet.options.kind === "balance") return dayText(time);
  return sheet.options.timing === "minutes" ? `${time} min` : clockText(time);
}

/** What was entered, what that comes to, and what the sheet says of it. @param cells as they are now */
export function report(cells: SheetCells, { at, name, unit, kind, change, total, clock }: Step, content: number | string): string {
  if (kind === "clock") return weighInWords.clockEntered(name, clockText(Number(content)), placeOf(at));
  const { columns, options } = cells.sheet;
  const time = clock && cells.at(clock.row, clock.column);
  const read = typeof content === "number" && unit === GRAMS ? `${asOnBalance(content, decimalsOf(options.readability))} ${unit}` : content;
  const told = weighInWords.entered(name, read, unit, placeOf(at), typeof time === "number" ? timeText(cells, time) : "", isOfSamples(cells));
  const value = change && cells.at(change.at.row, change.at.column);
  const rows = total === undefined ? [at.row] : [at.row, total];
  // Beside some boxes stand words for who weighs, which are no verdict.
  const says = rows
    .filter((row) => cells.planned(row, columns.verdict)?.formula !== undefined)
    .map((row) => cells.at(row, columns.verdict))
    .filter((one): one is string => typeof one === "string" && one !== "");
  return [
    told,
    ...(change !== undefined && typeof value === "number"
      ? [change.said(change.isShare ? toDecimals(PERCENT * value, SHARE_DECIMALS) : toDecimals(value, decimalsOf(options.readability)))]
      : []),
    ...(says.length === 0 ? [] : [weighInWords.says(says.join("; "))]),
  ].join(" ");
}

const GRAMS = "g";

/** 25 as 25.00; figures that the balance does not show stay. */
const asOnBalance = (grams: number, decimals: number): string =>
  Number(grams.toFixed(decimals)) === grams ? grams.toFixed(decimals) : String(grams);

// As shares are shown on the sheet.
const SHARE_DECIMALS = 2;
const PERCENT = 100;

/** Without the sign that rounding leaves before 0. */
const toDecimals = (value: number, decimals: number): string => (Number(value.toFixed(decimals)) || 0).toFixed(decimals);
