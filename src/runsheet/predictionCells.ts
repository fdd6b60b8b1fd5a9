import { cellAt } from "../workbook/cellArea";
import type { PlannedCell } from "../workbook/SheetPlan";
import { COLUMNS } from "./columns";
import { detailBox } from "./constantWeightArguments";
import { glossary } from "./glossary";
import type { Layout } from "./layout";
import type { SampleCells } from "./sampleCells";

// DRYING.END gives the weighings still to come in this row and column of its table.
const WEIGHINGS_LEFT = [9, 2] as const;

/** How many more weighings the falling-rate curve foretells, in words; empty once steady, and until the weighings can carry a curve. */
export function predictionCells(rows: Layout, cells: SampleCells): PlannedCell[] {
  const row = cells.rows.prediction;
  const { letters, width } = rows.table;
  const count = cellAt(row - 1, width);
  const details = (["readability", "limit", "criterion"] as const).map((detail) => detailBox(rows, detail));
  const weighings = `${cells.stretch(letters.elapsed)},${cells.stretch(cells.gross)},${cells.vessel}`;
  const call = `INDEX(RETORT.DRYING.END(${weighings},${details.join(",")}),${WEIGHINGS_LEFT.join(",")})`;
  const more = `IF(${count}=1,"about 1 more weighing","about "&${count}&" more weighings")`;
  return [
    { cell: `${COLUMNS.label}${row}`, content: glossary.prediction, style: "label" },
    {
      cell: `${COLUMNS.value}${row}`,
      formula: `=IF(COUNT(${count})=0,"",IF(${count}=0,"",${more}&" ${glossary.notTheDryWeight}"))`,
      style: "note",
    },
    // Too few weighings, a gain or too much noise have no prediction; the table above and the checks say what is wrong.
    {
      cell: count,
      formula: `=IF(COUNT(${cells.stretch(letters.sample)})<3,"",IF(COUNT(${cells.dry})=1,"",IFERROR(${call},"")))`,
      style: "note",
    },
  ];
}
