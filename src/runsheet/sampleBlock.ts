import type { PlannedCell } from "../workbook/SheetPlan";
import type { Block } from "./Block";
import { band } from "./band";
import { workingCell } from "./bySample";
import { massRule } from "./entryRules";
import { glossary } from "./glossary";
import { COLUMNS } from "./columns";
import { HEATING } from "./heatingRecord";
import type { Layout } from "./layout";
import { massFormat } from "./massFormat";
import { newestVerdict } from "./newestVerdict";
import { overheated } from "./overheated";
import { predictionCells } from "./predictionCells";
import type { HeatingRecord } from "./quantities";
import type { RunSheetOptions } from "./RunSheetOptions";
import { sampleCells, type SampleCells } from "./sampleCells";
import { box, weighedRows } from "./weighedRows";
import { weighInTable } from "./weighInTable";

/** One sample from its empty vessel to its last weighing, in the order of the work. */
export function sampleBlock(options: RunSheetOptions, rows: Layout, sample: number): Block {
  const cells = sampleCells(rows, sample);
  const own = cells.rows;
  const vesselRule = massRule(options, "Empty vessel", "Weigh the empty, cold vessel with everything that stays on it, lid included.");
  const parts: Block[] = [
    { cells: [...band(rows, own.heading, glossary.sample(sample), "heading"), workingHeading(rows, own.heading)], entryRules: [] },
    weighedRows(options, "vessel", glossary.emptyVessel, own.vessel, own.zeros.get("vessel"), vesselRule),
    weighInTable(options, rows, cells),
    { cells: [...predictionCells(rows, cells), ...dryRow(rows, cells, options)], entryRules: [] },
    ...[...own.heating].map(([record, row]) => heatingRow(options, rows, cells, record, row)),
  ];
  return { cells: parts.flatMap((part) => part.cells), entryRules: parts.flatMap((part) => part.entryRules) };
}

/** Says what the columns right of everything printed are for. */
const workingHeading = (rows: Layout, row: number): PlannedCell => ({
  cell: workingCell(rows, row, 1),
  content: glossary.workings.weighIns,
  style: "note",
});

function heatingRow(options: RunSheetOptions, rows: Layout, cells: SampleCells, record: HeatingRecord, row: number): Block {
  const { format, rule } = HEATING[record];
  if (record === "char" || record === "ash") return weighedRows(options, record, glossary[record], row, cells.rows.zeros.get(record), rule(options));
  const entry = box(row, glossary[record], format ?? massFormat(options.readability), rule(options));
  return record === "kilnSet" || record === "furnaceSet" ? { ...entry, cells: [...entry.cells, overheated(rows, row)] } : entry;
}

/** The newest weighing counts as the dry one, once it belongs to a steady run. */
function dryRow(rows: Layout, cells: SampleCells, options: RunSheetOptions): PlannedCell[] {
  const [loaded, gross] = [cells.stretch(rows.table.letters.loaded), cells.stretch(cells.gross)];
  const newest = newestVerdict(cells, rows);
  const formula = `=IF(COUNTA(${loaded})=0,"",IF(${newest}="${glossary.verdicts.steady}",INDEX(${gross},COUNTA(${loaded})),""))`;
  const format = massFormat(options.panZeros ? options.readability / 2 : options.readability);
  return [
    { cell: `${COLUMNS.label}${cells.rows.dry}`, content: glossary.dry, style: "label" },
    { cell: `${COLUMNS.value}${cells.rows.dry}`, formula, style: "computed", format },
  ];
}
