import type { Plain } from "../../../explanation/runSheet/Plain";
import type { SheetCells } from "../../../explanation/runSheet/RunCells";
import { CLOCK } from "../../../runsheet/sheet/Columns";
import type { BalanceCheck } from "../../../runsheet/sheet/balanceRows";
import type { CheckName } from "../../../runsheet/sheet/layout";
import type { Step } from "./order/Step";
import { recalculated } from "./recalculated";

/** Checks whose findings are about what was just typed; others wait for more, or are about the whole run. */
const ON_ENTRIES: readonly (CheckName | BalanceCheck)[] = [
  ...(["vessel", "times", "gain", "order", "opened", "rising", "air", "vesselAgain", "warmth"] as const),
  ...(["dates", "slip"] as const),
];

const DOUBT = "?";

/**
 * What the sheet's own checks would newly say of an entry, "" for nothing.
 * @param typed what is to be entered, by name of cell
 */
export function doubtOf(cells: SheetCells, { at, isJudgedInRow }: Step, typed: ReadonlyMap<string, Plain>): string {
  const found = (of: SheetCells): string[] =>
    cells.sheet.rows.checks.lines
      .filter(({ check }) => ON_ENTRIES.includes(check))
      .map(({ row }) => findingAt(of, row))
      .filter((finding) => finding !== "");
  const before = new Set(found(recalculated(cells, new Map())));
  const after = recalculated(cells, typed);
  const doubt = found(after).find((finding) => !before.has(finding)) ?? "";
  const verdict = isJudgedInRow && after.at(at.row, cells.sheet.columns.verdict);
  return doubt === "" && typeof verdict === "string" && verdict.startsWith(DOUBT) ? verdict : doubt;
}

/** "" too where only the spreadsheet can work the check out; it will say so itself once the entry stands. */
function findingAt(of: SheetCells, row: number): string {
  try {
    const finding = of.at(row, CLOCK + 1);
    return typeof finding === "string" ? finding : "";
  } catch {
    return "";
  }
}
