import { plainNumber } from "../../problems/quoted";
import type { RecordRow } from "../../sharing/record/recordRows";

/** A calculation record as lines of text. */
export const recordLines = (sheet: string, rows: readonly RecordRow[]): string[] => [
  `Calculation record of "${sheet}"`,
  ...rows.flatMap(({ cells, label, typed, value, unit, about, source, builtIn }) => [
    "",
    `${cells}${label === "" ? "" : `, ${label}`} = ${typeof value === "number" ? plainNumber(value) : (value ?? "blank")}${unit === "" ? "" : ` (${unit})`}`,
    `  ${typed}`,
    `  ${about}`,
    ...(source === "" ? [] : [`  Source: ${source}`]),
    ...(builtIn === "" ? [] : [`  With built-in functions only: ${builtIn}`]),
  ]),
  "",
];
