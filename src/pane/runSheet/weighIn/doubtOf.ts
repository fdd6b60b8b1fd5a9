import type { Plain } from "../../../explanation/runSheet/Plain";
import type { RunCells } from "../../../explanation/runSheet/RunCells";
import { CLOCK } from "../../../runsheet/sheet/Columns";
import type { CheckName } from "../../../runsheet/sheet/layout";
import { recalculated } from "./recalculated";

/** Checks whose findings are about what was just typed; others wait for more, or are about the whole run. */
const ON_ENTRIES: readonly CheckName[] = ["vessel", "times", "gain", "order", "opened", "air", "vesselAgain", "warmth"];

/**
 * What the sheet's own checks would newly say of an entry, "" for nothing.
 * @param typed what is to be entered, by name of cell
 */
export function doubtOf(cells: RunCells, typed: ReadonlyMap<string, Plain>): string {
  const found = (of: RunCells): string[] =>
    cells.sheet.rows.checks.lines
      .filter(({ check }) => ON_ENTRIES.includes(check))
      .map(({ row }) => findingAt(of, row))
      .filter((finding) => finding !== "");
  const before = new Set(found(recalculated(cells, new Map())));
  return found(recalculated(cells, typed)).find((finding) => !before.has(finding)) ?? "";
}

/** "" too where only the spreadsheet can work the check out; it will say so itself once the entry stands. */
function findingAt(of: RunCells, row: number): string {
  try {
    const finding = of.at(row, CLOCK + 1);
    return typeof finding === "string" ? finding : "";
  } catch {
    return "";
  }
}
