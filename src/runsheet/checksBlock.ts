import type { PlannedCell } from "../workbook/SheetPlan";
import type { Block } from "./Block";
import { band } from "./band";
import { workingCell } from "./bySample";
import { CHECK_FORMULAS } from "./checkFormulas";
import { COLUMNS } from "./columns";
import { glossary } from "./glossary";
import type { Layout } from "./layout";
import type { Check } from "./quantities";
import type { RunSheetOptions } from "./RunSheetOptions";

const { checks: words } = glossary;

/** What the sheet can tell about the run itself, a line each: empty until it can be judged, then "in order" or what to look at. */
export function checksBlock({ replicates }: RunSheetOptions, rows: Layout): Block {
  const samples = Array.from({ length: replicates }, (_, index) => index + 1);
  return {
    cells: [
      ...band(rows, rows.checksHeading, words.heading, "heading"),
      ...[...rows.checks].flatMap(([check, row]): PlannedCell[] => [
        { cell: `${COLUMNS.label}${row}`, content: words[check], style: "label" },
        {
          cell: `${COLUMNS.value}${row}`,
          formula: overall(
            check,
            samples.map((sample) => workingCell(rows, row, sample)),
          ),
          style: "computed",
        },
        ...samples.map((sample): PlannedCell => ({
          cell: workingCell(rows, row, sample),
          formula: `=${CHECK_FORMULAS[check](rows, sample)}`,
          style: "note",
        })),
      ]),
    ],
    entryRules: [],
  };
}

/** What is wrong with the first sample that is not in order, and which others are not. */
function overall(check: Check, findings: readonly string[]): string {
  const shown = (finding: string): string => (check === "range" ? upToSource(finding) : finding);
  const [only] = findings;
  if (only !== undefined && findings.length === 1) return `=${shown(only)}`;
  const isFine = (finding: string): string => `OR(${finding}="",${finding}="${words.inOrder}")`;
  const others = (after: number): string =>
    findings
      .map((finding, index) => ({ finding, index }))
      .slice(after + 1)
      .map(({ finding, index }) => `&IF(${isFine(finding)},"","; also sample ${index + 1}")`)
      .join("");
  const said = findings.reduceRight(
    (otherwise, finding, index) => `IF(${isFine(finding)},${otherwise},"${glossary.sample(index + 1)}: "&${shown(finding)}${others(index)})`,
    `"${words.inOrder}"`,
  );
  return `=IF(${findings.join("&")}="","",${said})`;
}

/** A typical range stands in full, with its source, right of everything printed; the line itself ends before the brackets. */
const upToSource = (finding: string): string => `LEFT(${finding},FIND(" (",${finding}&" (")-1)`;
