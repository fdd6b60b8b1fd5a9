import type { EntryRule, PlannedCell } from "../workbook/SheetPlan";
import type { Block } from "./Block";
import { clockRule, massRule, roomRule, zeroRule, type Rule } from "./entryRules";
import { glossary } from "./glossary";
import { CLOCK_FORMAT } from "./heatingRecord";
import type { Layout } from "./layout";
import { massFormat } from "./massFormat";
import type { RunSheetOptions } from "./RunSheetOptions";
import type { SampleCells } from "./sampleCells";
import type { TableColumn } from "./tableColumns";
import { weighInFormulas } from "./weighInFormulas";

/** The weigh-ins of one sample while it dries, a row each. */
export function weighInTable(options: RunSheetOptions, rows: Layout, cells: SampleCells): Block {
  const { printed, working, letters } = rows.table;
  const { first, last, columnHeadings } = cells.rows;
  const columns = [...printed, ...working].map((column) => ({ column, letter: letters[column] as string }));
  const formats = formatsOf(options);
  return {
    cells: [
      ...columns.map(({ column, letter }): PlannedCell => ({
        cell: `${letter}${columnHeadings}`,
        content: column === "sample" && options.panZeros ? glossary.correctedSample : glossary.weighIns[column],
        style: working.includes(column) ? "noteHeading" : "columnHeading",
      })),
      ...Array.from({ length: last - first + 1 }, (_, index) => {
        const formulas = weighInFormulas(rows, cells, first + index);
        return columns.flatMap(({ column, letter }): PlannedCell[] => {
          const cell = `${letter}${first + index}`;
          const format = formats[column] === undefined ? {} : { format: formats[column] };
          if (column === "number") return [{ cell, content: index + 1, style: "label" }];
          if (ENTERED.includes(column)) return [{ cell, style: "input", ...format }];
          const formula = formulas[column];
          return formula === undefined ? [] : [{ cell, formula, style: working.includes(column) ? "note" : "computed", ...format }];
        });
      }).flat(),
    ],
    entryRules: columns.flatMap(({ column, letter }): EntryRule[] => {
      const rule = RULES[column]?.(options);
      return rule === undefined ? [] : [{ range: `${letter}${first}:${letter}${last}`, ...rule }];
    }),
  };
}

const ENTERED: readonly TableColumn[] = ["clock", "zeroBefore", "loaded", "zeroAfter", "room", "warmth", "notes"];

/** The middle of two zeros can lie half a step between two readings, so corrected masses show that half. */
function formatsOf({ readability, panZeros }: RunSheetOptions): Partial<Record<TableColumn, string>> {
  const read = massFormat(readability);
  const reckoned = panZeros ? massFormat(readability / 2) : read;
  const wholeMinutes = { elapsed: "0", chartElapsed: "0" };
  const temperatures = { room: "0.0", warmth: "0.0", warmer: "0.0" };
  const masses = { zeroBefore: read, loaded: read, zeroAfter: read, sample: reckoned, change: reckoned, chartSample: reckoned, corrected: reckoned };
  return { clock: CLOCK_FORMAT, ...wholeMinutes, ...temperatures, ...masses };
}

const RULES: Readonly<Partial<Record<TableColumn, (options: RunSheetOptions) => Rule>>> = {
  clock: () =>
    clockRule(
      "Clock",
      "The time of this weighing, such as 14:30; midnight is understood. For gaps of a day or more type date and time in every row.",
    ),
  zeroBefore: (options) => zeroRule(options, "Pan zero before", "before this weighing"),
  loaded: (options) =>
    massRule(
      options,
      "Vessel + sample",
      "Weigh-in 1 is the moist sample before the oven. Weigh cold each time, with the same lid, on the same balance. Fill row by row.",
    ),
  zeroAfter: (options) => zeroRule(options, "Pan zero after", "after this weighing"),
  room: () => roomRule("Room", "Temperature beside the balance, in degrees Celsius."),
  warmth: () =>
    roomRule(
      "Sample when weighed",
      "In degrees Celsius, held near the vessel. A warm vessel reads light; by how much, yours alone can tell. Published case: a 17 g porcelain crucible, up to 0.19 mg a degree (Blade, Anal. Chem.). Only flagged.",
    ),
};
