import type { EntryRule, PlannedCell } from "../workbook/SheetPlan";
import { analysedPercent, LEAST_ANALYSED_PERCENT } from "./analysedPercent";
import type { Block } from "./Block";
import { band } from "./band";
import { columnHeadings, sampleColumnCell, sampleRow } from "./bySample";
import { anythingRule, numberRule, type Rule } from "./entryRules";
import { glossary } from "./glossary";
import { COLUMNS } from "./columns";
import { COMPARISON, COMPOSITION, type Comparison, type Composition } from "./quantities";
import type { BurningRows, Layout } from "./layout";
import { massFormat } from "./massFormat";
import type { RunSheetOptions } from "./RunSheetOptions";
import { sampleCells } from "./sampleCells";

const words = glossary.burning;

/** What the closed run left and gave off, beside what the same dry sample would take up and give off when burned openly. */
export function burningBlock(options: RunSheetOptions, rows: Layout): Block {
  const own = rows.burning;
  if (own === undefined) return { cells: [], entryRules: [] };
  const look = { style: "computed", format: massFormat(options.readability) } as const;
  const samples = Array.from({ length: options.replicates }, (_, index) => index + 1);
  return {
    cells: [
      ...band(rows, own.heading, words.heading, "heading"),
      ...COMPOSITION.flatMap((part): PlannedCell[] => [
        { cell: `${COLUMNS.label}${own.composition[part]}`, content: words[part], style: "label" },
        { cell: `${COLUMNS.value}${own.composition[part]}`, style: "input", ...(part === "formula" ? {} : { format: "0.000" }) },
      ]),
      ...columnHeadings(own.columnHeadings, words.column, options.replicates),
      ...COMPARISON.flatMap((quantity) =>
        sampleRow(own.comparison[quantity], words[quantity], options.replicates, (sample) => compared(rows, own, sample, PLACE[quantity]), look),
      ),
      ...samples.map((sample) => noteCell(rows, own, sample)),
    ],
    entryRules: COMPOSITION.map((part): EntryRule => ({ range: `${COLUMNS.value}${own.composition[part]}`, ...RULES[part] })),
  };
}

/** Row and column of a quantity in the table that BURN.COMPARE gives, headings counted as row 1. */
const PLACE: Readonly<Record<Comparison | "notes", readonly [row: number, column: number]>> = {
  dry: [2, 2],
  oxygenTaken: [3, 4],
  massIn: [4, 4],
  charLeft: [5, 2],
  ashLeft: [5, 4],
  vapourLeft: [6, 2],
  gases: [6, 4],
  notCovered: [10, 4],
  massOut: [11, 4],
  air: [12, 4],
  notes: [13, 1],
};

/** Empty until the char is weighed and a composition given: a formula, or carbon, hydrogen and whatever else brings the sum near the whole. */
function compared(rows: Layout, own: BurningRows, sample: number, [row, column]: readonly [number, number]): string {
  const cells = sampleCells(rows, sample);
  const [formula, ...analysis] = COMPOSITION.map((part) => `$${COLUMNS.value}$${own.composition[part]}`);
  const [carbon, hydrogen] = analysis;
  const weighed = `${cells.vessel},${cells.dry},${cells.heating("char")}`;
  const call = `RETORT.BURN.COMPARE(${weighed},${cells.heating("ash")},${formula},${analysis.join(",")})`;
  const isPartial = `AND(COUNTA(${formula})=0,OR(COUNT(${carbon},${hydrogen})<2,${analysedPercent(rows, sample)}<${LEAST_ANALYSED_PERCENT}))`;
  return `=IF(COUNT(${weighed})<3,"",IF(${isPartial},"",INDEX(${call},${row},${column})))`;
}

function noteCell(rows: Layout, own: BurningRows, sample: number): PlannedCell {
  const note = compared(rows, own, sample, PLACE.notes).slice(1);
  const isEmpty = `${sampleColumnCell(own.comparison.dry, sample)}=""`;
  return {
    cell: `${COLUMNS.label}${own.firstNote + sample - 1}`,
    formula: `=IF(${isEmpty},"","${glossary.sample(sample)}: "&${note})`,
    style: "note",
  };
}

const share = (element: string): Rule =>
  numberRule(
    `${element} in the dry sample`,
    `From an ultimate analysis of the dry sample, ash included in the sample, without the moisture: 0.488 or 48.8%. Leave blank when a formula is given.`,
    0,
    1,
    "Type a fraction from 0 to 1, such as 0.488 or 48.8%.",
  );

const RULES: Readonly<Record<Composition, Rule>> = {
  formula: anythingRule(
    "Formula of what burns",
    "The part that burns, without ash, such as C6H10O5 for cellulose or CH1.44O0.66 for wood. Or leave it blank and give the fractions below.",
  ),
  carbon: share("Carbon"),
  hydrogen: share("Hydrogen"),
  oxygen: share("Oxygen"),
  nitrogen: share("Nitrogen"),
  sulfur: share("Sulfur"),
};
