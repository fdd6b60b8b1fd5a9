import { clockText } from "../../../explanation/runSheet/plainText";
import type { RunCells } from "../../../explanation/runSheet/RunCells";
import { weighInWords } from "../../../problems/weighInWords";
import { placeOf } from "../../../runsheet/expressions/formulaText";
import { decimalsOf } from "../../../runsheet/sheet/massFormats";
import type { Step } from "./nextStep";

/** "10:42", or of a run in minutes "34 min". */
export const timeText = ({ sheet }: RunCells, time: number): string => (sheet.options.timing === "minutes" ? `${time} min` : clockText(time));

/** What was entered, what was lost, and what the sheet says of it. @param cells as they are now */
export function report(cells: RunCells, { at, name, unit, kind, table, clock }: Step, content: number | string): string {
  if (kind === "clock") return weighInWords.clockEntered(name, clockText(Number(content)), placeOf(at));
  const { samples, columns, options } = cells.sheet;
  const time = clock && cells.at(clock.row, clock.column);
  const told = weighInWords.entered(name, content, unit, placeOf(at), typeof time === "number" ? timeText(cells, time) : "");
  const sample = samples.find((one) => table?.box(at.row, one).column === at.column) ?? 1;
  const lost = table && cells.at(at.row, table.lost(at.row, sample).column);
  const rows = table === undefined ? [at.row] : [at.row, table.rows.total];
  // Beside some boxes stand words for who weighs, which are no verdict.
  const says = rows
    .filter((row) => cells.planned(row, columns.verdict)?.formula !== undefined)
    .map((row) => cells.at(row, columns.verdict))
    .filter((one): one is string => typeof one === "string" && one !== "");
  return [
    told,
    ...(typeof lost === "number" ? [weighInWords.lost(toDecimals(lost, decimalsOf(options.readability)))] : []),
    ...(says.length === 0 ? [] : [weighInWords.says(says.join("; "))]),
  ].join(" ");
}

/** Without the sign that rounding leaves before 0. */
const toDecimals = (value: number, decimals: number): string => (Number(value.toFixed(decimals)) || 0).toFixed(decimals);
