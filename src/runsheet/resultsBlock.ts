import { cellAt } from "../workbook/cellArea";
import type { PlannedCell } from "../workbook/SheetPlan";
import type { Block } from "./Block";
import { band } from "./band";
import { allSamples, columnHeadings, sampleColumnCell, sampleRow, workingCell } from "./bySample";
import { glossary } from "./glossary";
import { sharesOf, type Share } from "./quantities";
import type { Layout } from "./layout";
import { RESULT_FORMULAS } from "./resultFormulas";
import type { RunSheetOptions } from "./RunSheetOptions";
import { sampleCells } from "./sampleCells";
import { shareUncertainty } from "./shareUncertainty";
import { weighingUncertaintyCell } from "./weighingUncertaintyCell";
import { withUncertainty } from "./withUncertainty";

const FRACTION_FORMAT = "0.0%";
const UNCERTAINTY_FORMAT = "0.000000";
// Replicates that agree to the last digit leave a deviation of binary rounding only, far below one in a thousand million.
const BELOW_DISPLAY = 1_000_000_000;
const { results: words } = glossary;

/** What the run gives: one column a sample, with mean and standard deviation (n - 1) of those that are finished. */
export function resultsBlock(options: RunSheetOptions, rows: Layout): Block {
  const { replicates } = options;
  const spread = replicates > 1 ? [words.mean, words.deviation] : [];
  return {
    cells: [
      ...band(rows, rows.resultsHeading, words.heading, "heading"),
      ...columnHeadings(rows.resultColumns, words.column, replicates, spread),
      { cell: workingCell(rows, rows.resultsHeading, 1), content: glossary.workings.results, style: "note" },
      ...samplesOf(replicates).map((sample): PlannedCell => ({
        cell: workingCell(rows, rows.resultColumns, sample),
        content: glossary.working(sample),
        style: "noteHeading",
      })),
      ...[...rows.results].flatMap(([result, row]) => {
        const look = { style: "result", ...(result === "steadySince" ? {} : { format: FRACTION_FORMAT }) } as const;
        return sampleRow(row, words[result], replicates, (sample) => RESULT_FORMULAS[result](sampleCells(rows, sample), rows), look);
      }),
      ...sharesOf(options).flatMap((share) => {
        const row = rows.results.get(share) as number;
        return [...uncertaintyRow(share, row, rows, replicates), ...(replicates === 1 ? [] : spreadCells(row, replicates))];
      }),
    ],
    entryRules: [],
  };
}

const samplesOf = (replicates: number): number[] => Array.from({ length: replicates }, (_, index) => index + 1);

/** Under each share the same share rounded with its uncertainty, and right of everything printed that uncertainty itself. */
function uncertaintyRow(share: Share, row: number, rows: Layout, replicates: number): PlannedCell[] {
  const text = (sample: number): string => {
    const [value, uncertainty] = [sampleColumnCell(row, sample), workingCell(rows, row, sample)];
    return `=IF(COUNT(${value},${uncertainty})<2,"",${withUncertainty(value, uncertainty)})`;
  };
  return [
    ...sampleRow(row + 1, words.uncertain, replicates, text, { style: "result" }),
    ...samplesOf(replicates).map((sample): PlannedCell => {
      const [value, u] = [sampleColumnCell(row, sample), weighingUncertaintyCell(rows)];
      // A sample below ten uncertainties has no answer; the checks say that the balance is too coarse.
      const formula = `=IF(COUNT(${value},${u})<2,"",IFERROR(${shareUncertainty(share, sampleCells(rows, sample), value, u)},""))`;
      return { cell: workingCell(rows, row, sample), formula, style: "note", format: UNCERTAINTY_FORMAT };
    }),
  ];
}

/** Empty until two samples have the result. The mean's own uncertainty is s / sqrt(n), empty where all agree to the last digit. */
function spreadCells(row: number, replicates: number): PlannedCell[] {
  const all = allSamples(row, replicates);
  const [mean, deviation] = [cellAt(row - 1, replicates + 1), cellAt(row - 1, replicates + 2)];
  return [
    { cell: mean, formula: `=IF(COUNT(${all})<2,"",AVERAGE(${all}))`, style: "result", format: FRACTION_FORMAT },
    { cell: deviation, formula: `=IF(COUNT(${all})<2,"",STDEV(${all}))`, style: "result", format: FRACTION_FORMAT },
    {
      cell: cellAt(row, replicates + 1),
      formula: `=IF(COUNT(${mean},${deviation})<2,"",IF(${deviation}*${BELOW_DISPLAY}<1,"",${withUncertainty(mean, `${deviation}/SQRT(COUNT(${all}))`)}))`,
      style: "result",
    },
    { cell: cellAt(row, replicates + 2), style: "result" },
  ];
}
