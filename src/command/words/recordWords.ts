import { plainNumber } from "../../problems/quoted";
import type { RecordedRule } from "../../sharing/record/recordedRules";
import type { RecordRow } from "../../sharing/record/recordRows";

/** A calculation record as lines of text. */
export const recordLines = (sheet: string, rows: readonly RecordRow[], rules: readonly RecordedRule[]): string[] => [
  `Calculation record of "${sheet}"`,
  ...rows.flatMap(({ cells, label, typed, value, unit, about, source, builtIn }) => [
    "",
    `${cells}${label === "" ? "" : `, ${label}`} = ${typeof value === "number" ? plainNumber(value) : (value ?? "blank")}${unit === "" ? "" : ` (${unit})`}`,
    `  ${typed}`,
    `  ${about}`,
    ...(source === "" ? [] : [`  Source: ${source}`]),
    ...(builtIn === "" ? [] : [`  With built-in functions only: ${builtIn}`]),
  ]),
  ...rules.flatMap(({ where, kind, typed, now }) => ["", `${where} (${kind})`, `  ${typed}`, `  With built-in functions only: ${now}`]),
  "",
];
