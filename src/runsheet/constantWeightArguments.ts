import { COLUMNS } from "./columns";
import type { Detail } from "./quantities";
import type { Layout } from "./layout";
import type { SampleCells } from "./sampleCells";

/** The box of one of the run details, from anywhere on the sheet: "$B$10". */
export const detailBox = (rows: Layout, detail: Detail): string => `$${COLUMNS.value}$${rows.details[detail]}`;

/** What CONSTANTWEIGHT and CONSTANTWEIGHT.STEPS are given: one sample's weighings down to a row, and the run details. */
export function constantWeightArguments(rows: Layout, cells: SampleCells, to?: number): string {
  const [limit, criterion, readability, interval] = (["limit", "criterion", "readability", "interval"] as const).map((detail) =>
    detailBox(rows, detail),
  );
  const { elapsed } = rows.table.letters;
  return [cells.stretch(cells.gross, to), limit, criterion, cells.stretch(elapsed, to), cells.vessel, readability, interval].join(",");
}
