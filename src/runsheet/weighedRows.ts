import type { EntryRule, PlannedCell } from "../workbook/SheetPlan";
import type { Block } from "./Block";
import { COLUMNS } from "./columns";
import { driftCorrected } from "./driftCorrected";
import { zeroRule, type Rule } from "./entryRules";
import { glossary } from "./glossary";
import type { ZeroRows } from "./layout";
import { massFormat } from "./massFormat";
import type { Weighed } from "./quantities";
import type { RunSheetOptions } from "./RunSheetOptions";

/** A label with its box, and what may be typed there. */
export const box = (row: number, content: string, format: string, rule: Rule): Block => ({
  cells: [
    { cell: `${COLUMNS.label}${row}`, content, style: "label" },
    { cell: `${COLUMNS.value}${row}`, style: "input", format },
  ],
  entryRules: [{ range: `${COLUMNS.value}${row}`, ...rule }],
});

/** One weighing's box, between those of the balance's zero where the sheet has them, with the corrected mass below. */
export function weighedRows(options: RunSheetOptions, what: Weighed, label: string, row: number, zeros: ZeroRows | undefined, rule: Rule): Block {
  const grams = massFormat(options.readability);
  const weighing = box(row, label, grams, rule);
  if (zeros === undefined) return weighing;
  const words = glossary.zeros[what];
  const before = box(zeros.before, words.before, grams, zeroRule(options, "Pan zero before", "before this weighing"));
  const after = box(zeros.after, words.after, grams, zeroRule(options, "Pan zero after", "after this weighing"));
  const [read, zeroBefore, zeroAfter] = [row, zeros.before, zeros.after].map((at) => `${COLUMNS.value}${at}`) as [string, string, string];
  const corrected: PlannedCell[] = [
    { cell: `${COLUMNS.label}${zeros.corrected}`, content: words.corrected, style: "label" },
    {
      cell: `${COLUMNS.value}${zeros.corrected}`,
      formula: `=${driftCorrected(read, zeroBefore, zeroAfter)}`,
      style: "computed",
      format: massFormat(options.readability / 2),
    },
  ];
  const rules: EntryRule[] = [before, weighing, after].flatMap(({ entryRules }) => entryRules);
  return { cells: [...[before, weighing, after].flatMap(({ cells }) => cells), ...corrected], entryRules: rules };
}
