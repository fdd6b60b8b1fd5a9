import { cell, range, type Expression } from "../expressions/Expression";
import { weighInFormulas } from "../formulas/weighIn";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import type { WeighInColumn } from "../sheet/weighInColumns";
import { celsiusWords, clockWords, massWords, zeroWords } from "../words/BoxWords";
import { weighInWords } from "../words/weighInWords";
import type { Block, BlockCell, BoxRule } from "./Block";
import { boxRule, CLOCK, CLOCK_FORMAT, masses, numbers, zeros } from "./entries";

/** The weigh-ins of one sample while it dries, a row each. */
export function weighInTable(sheet: RunSheet, sample: SampleCells): Block {
  const { printed, working, width } = sheet.columns;
  const { first, last, columnHeadings } = sample.rows;
  const columns = [
    ...printed.map((column, index) => ({ column, index, isWorking: false })),
    ...working.map((column, index) => ({ column, index: width + index, isWorking: true })),
  ];
  const [formats, rules] = [formatsOf(sheet), rulesOf(sheet)];
  const rows = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  return {
    cells: [
      ...columns.map(({ column, index, isWorking }): BlockCell => ({
        at: cell(columnHeadings, index),
        content: column === "sample" && sheet.columns.zeros ? weighInWords.correctedSample : weighInWords.columns[column],
        style: isWorking ? "noteHeading" : "columnHeading",
      })),
      ...rows.flatMap((row) => {
        const formulas = weighInFormulas(sheet, sample, row);
        return columns.flatMap(({ column, index, isWorking }): BlockCell[] => {
          const at = cell(row, index);
          const format = formats[column] === undefined ? {} : { format: formats[column] };
          if (column === "number") return [{ at, content: row - first + 1, style: "label" }];
          if (column === "notes" || rules[column] !== undefined) return [{ at, style: "input", ...format }];
          return calculated(formulas[column], (formula) => ({ at, formula, style: isWorking ? "note" : "computed", ...format }));
        });
      }),
    ],
    entryRules: columns.flatMap(({ column, index }): BoxRule[] => {
      const rule = rules[column];
      return rule === undefined ? [] : [{ over: range(cell(first, index), cell(last, index)), ...rule }];
    }),
  };
}

/** The first weigh-in has no change since the one before. */
const calculated = (formula: Expression | undefined, as: (formula: Expression) => BlockCell): BlockCell[] =>
  formula === undefined ? [] : [as(formula)];

function formatsOf({ formats: { read, reckoned } }: RunSheet): Partial<Record<WeighInColumn, string>> {
  const wholeMinutes = { elapsed: "0", chartElapsed: "0" };
  const temperatures = { room: "0.0", warmth: "0.0", warmer: "0.0" };
  const weighings = { zeroBefore: read, loaded: read, zeroAfter: read };
  const masses = { sample: reckoned, change: reckoned, chartSample: reckoned, corrected: reckoned };
  return { clock: CLOCK_FORMAT, ...wholeMinutes, ...temperatures, ...weighings, ...masses };
}

// From a balance in a cold shed to a vessel straight from the kiln, °C; own bound.
const AT_THE_BALANCE = { atLeast: -20, atMost: 1800 };

/** What may be typed into each column of boxes; notes are free. */
function rulesOf({ options: { readability } }: RunSheet): Partial<Record<WeighInColumn, Omit<BoxRule, "over">>> {
  const { columns, clock, loaded, room, warmth } = weighInWords;
  const temperature = (heading: string, { title, prompt }: typeof room | typeof warmth): Omit<BoxRule, "over"> =>
    boxRule(celsiusWords(heading, title, prompt, AT_THE_BALANCE), numbers(AT_THE_BALANCE));
  return {
    clock: boxRule(clockWords(columns.clock, clock.title, clock.prompt), CLOCK),
    zeroBefore: boxRule(zeroWords(columns.zeroBefore, "before"), zeros(readability)),
    loaded: boxRule(massWords(columns.loaded, loaded.title, loaded.about, readability), masses(readability)),
    zeroAfter: boxRule(zeroWords(columns.zeroAfter, "after"), zeros(readability)),
    room: temperature(columns.room, room),
    warmth: temperature(columns.warmth, warmth),
  };
}
