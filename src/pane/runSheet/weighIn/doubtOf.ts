import type { Plain } from "../../../explanation/runSheet/Plain";
import type { SheetCells } from "../../../explanation/runSheet/RunCells";
import { CLOCK } from "../../../runsheet/sheet/Columns";
import type { BalanceCheck } from "../../../runsheet/sheet/balanceRows";
import { decimalsOf } from "../../../runsheet/sheet/massFormats";
import { MARKS } from "../../../runsheet/words/checkWords";
import type { CheckName } from "../../../runsheet/sheet/layout";
import type { Step } from "./order/Step";
import { recalculated } from "./recalculated";

/** Checks whose findings are about what was just typed; others wait for more, or are about the whole run. */
const ON_ENTRIES: readonly (CheckName | BalanceCheck)[] = [
  ...(["vessel", "times", "gain", "order", "opened", "rising", "air", "vesselAgain", "warmth"] as const),
  ...(["dates", "slip"] as const),
];

/** While drying another sample can still be taken, so that too little for what is wanted, or less than planned, is told at once. */
const WHILE_DRYING: readonly CheckName[] = ["fine"];

function isWhileDrying({ sheet: { rows } }: SheetCells, { row }: Step["at"]): boolean {
  return "drying" in rows && row > rows.drying.vessel && row <= rows.drying.last;
}

/**
 * What the sheet's own checks would newly say of an entry, "" for nothing.
 * @param typed what is to be entered, by name of cell
 */
export function doubtOf(cells: SheetCells, { at, change }: Step, typed: ReadonlyMap<string, Plain>): string {
  const asked = isWhileDrying(cells, at) ? [...ON_ENTRIES, ...WHILE_DRYING] : ON_ENTRIES;
  const found = (of: SheetCells): string[] =>
    cells.sheet.rows.checks.lines
      .filter(({ check }) => asked.includes(check))
      .map(({ row }) => findingAt(of, row))
      .filter((finding) => finding !== "");
  const before = new Set(found(recalculated(cells, new Map())));
  const after = recalculated(cells, typed);
  const doubt = found(after).find((finding) => !before.has(finding)) ?? "";
  if (doubt !== "" || change?.doubtedBelow === undefined) return doubt;
  const { explained } = cells.sheet.working;
  const [value, least] = [after.at(change.at.row, change.at.column), Number(after.at(explained.row, explained.column))];
  return typeof value === "number" && value < -least ? change.doubtedBelow(value.toFixed(decimalsOf(cells.sheet.options.readability))) : "";
}

/** "" too where it is in order as far as seen, and where only the spreadsheet can work the check out; it will say so once the entry stands. */
function findingAt(of: SheetCells, row: number): string {
  try {
    const finding = of.at(row, CLOCK + 1);
    return typeof finding === "string" && !finding.startsWith(MARKS.unseen) ? finding : "";
  } catch {
    return "";
  }
}
