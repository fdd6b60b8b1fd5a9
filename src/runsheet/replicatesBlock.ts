import { cellAt } from "../workbook/cellArea";
import type { PlannedCell } from "../workbook/SheetPlan";
import type { Block } from "./Block";
import { band } from "./band";
import { allSamples } from "./bySample";
import { numberRule, type Rule } from "./entryRules";
import { glossary } from "./glossary";
import type { Layout } from "./layout";
import type { Share } from "./quantities";
import type { RunSheetOptions } from "./RunSheetOptions";

const { replicates: words, results } = glossary;
const HEADINGS = [words.column, words.count, words.range, words.known, words.critical, words.verdict];
const FORMAT = "0.00%";
// REPLICATES gives the critical range in this row and column of its table.
const CRITICAL_RANGE = [9, 2] as const;

/** Whether the samples agree as well as the method allows, share by share. */
export function replicatesBlock({ replicates }: RunSheetOptions, rows: Layout): Block {
  const own = rows.replicates;
  if (own === undefined) return { cells: [], entryRules: [] };
  return {
    cells: [
      ...band(rows, own.heading, words.heading, "heading"),
      ...HEADINGS.map((content, column): PlannedCell => ({ cell: cellAt(own.columnHeadings - 1, column), content, style: "columnHeading" })),
      ...[...own.shares].flatMap(([share, row]) => shareRow(share, row, allSamples(rows.results.get(share) as number, replicates))),
    ],
    entryRules: [...own.shares.values()].map((row) => ({ range: cellAt(row - 1, 3), ...KNOWN })),
  };
}

function shareRow(share: Share, row: number, all: string): PlannedCell[] {
  const [count, range, known, critical, verdict] = [1, 2, 3, 4, 5].map((column) => cellAt(row - 1, column)) as [
    string,
    string,
    string,
    string,
    string,
  ];
  // A share of exactly 0 is a result, which REPLICATES has to be told.
  const zeros = `IF(COUNTIF(${all},0)=0,"skip","count")`;
  const call = `INDEX(RETORT.REPLICATES(${all},${known},${zeros}),${CRITICAL_RANGE.join(",")})`;
  return [
    { cell: cellAt(row - 1, 0), content: results[share], style: "label" },
    { cell: count, formula: `=IF(COUNT(${all})=0,"",COUNT(${all}))`, style: "computed", format: "0" },
    { cell: range, formula: `=IF(COUNT(${all})<2,"",MAX(${all})-MIN(${all}))`, style: "computed", format: FORMAT },
    { cell: known, style: "input", format: FORMAT },
    { cell: critical, formula: `=IF(COUNT(${range},${known})<2,"",IFERROR(${call},""))`, style: "computed", format: FORMAT },
    {
      cell: verdict,
      formula: `=IF(COUNT(${range},${critical})<2,"",IF(${range}<=${critical},"${words.agree}","${words.apart}"))`,
      style: "computed",
    },
  ];
}

const KNOWN: Rule = numberRule(
  "Repeatability s",
  "Standard deviation of this share between replicates, from earlier work with this method: 0.3% or 0.003. Blank: the replicates are not judged; their own s cannot do that.",
  0.000001,
  1,
  "Type a fraction such as 0.003 or 0.3%, or leave the box blank.",
);
