import type { Plain } from "../../../explanation/runSheet/Plain";
import { isOfSamples, type SheetCells } from "../../../explanation/runSheet/RunCells";
import { weighInWords } from "../../../problems/runsheet/weighInWords";
import type { Cell } from "../../../runsheet/expressions/Expression";
import { placeOf } from "../../../runsheet/expressions/formulaText";
import { readsAsKilograms, readsAsMilligrams } from "../../../runsheet/formulas/slips/unitSlip";
import { CLOCK } from "../../../runsheet/sheet/Columns";
import type { BalanceCheck } from "../../../runsheet/sheet/balanceRows";
import { decimalsOf } from "../../../runsheet/sheet/massFormats";
import { CLEAR_OTHERS, MARKS } from "../../../runsheet/words/checkWords";
import type { CheckName } from "../../../runsheet/sheet/layout";
import type { Step } from "./order/Step";
import { recalculated } from "./recalculated";

/** Checks whose findings are about what was just typed; others wait for more, or are about the whole run. */
const ON_ENTRIES: readonly (CheckName | BalanceCheck)[] = [
  ...(["vessel", "times", "gain", "order", "opened", "rising", "air", "vesselAgain", "warmth"] as const),
  ...(["dates", "slip"] as const),
];
/** Checks of which only what cannot be is about what was just typed: a corner may be off by the balance's fault. */
const CONTRADICTING: readonly (CheckName | BalanceCheck)[] = ["corners"];

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
      .map(({ check, row }) => ({ check, finding: asked.includes(check) || CONTRADICTING.includes(check) ? findingAt(of, row) : "" }))
      .map(({ check, finding }) => (asked.includes(check) || finding.startsWith(MARKS.contradiction) ? finding : ""))
      // One vessel is entered before the next, which the next step asks for.
      .filter((finding) => finding !== "" && !finding.endsWith(CLEAR_OTHERS));
  const before = new Set(found(recalculated(cells, new Map())));
  const after = recalculated(cells, typed);
  const doubt = found(after).find((finding) => !before.has(finding)) ?? "";
  if (doubt !== "") return doubt;
  const unit = unitDoubt(cells, at, typed.get(placeOf(at)));
  if (unit !== "" || change?.doubtedBelow === undefined) return unit;
  const { explained } = cells.sheet.working;
  const [value, least] = [after.at(change.at.row, change.at.column), Number(after.at(explained.row, explained.column))];
  return typeof value === "number" && value < -least ? change.doubtedBelow(value.toFixed(decimalsOf(cells.sheet.options.readability))) : "";
}

/** What the figures of a weighing say of its unit, with nothing beside it to hold it against: a first vessel, a part, a corner. */
function unitDoubt(cells: SheetCells, at: Cell, typed: Plain | undefined): string {
  const step = cells.sheet.options.readability;
  const allow = cells.ruleOver(at.row, at.column)?.allow;
  const isVessel = isOfSamples(cells) && at.row === cells.sheet.rows.drying.vessel;
  // What a certificate says, a gas or a zero may have more figures than the balance.
  const isWeighing = isVessel || (allow?.kind === "number" && allow.atLeast === step && !isCertified(cells, at));
  if (!isWeighing || typeof typed !== "number") return "";
  if (readsAsKilograms(typed, step)) return weighInWords.kilograms(typed, step);
  return readsAsMilligrams(typed, step) ? weighInWords.milligrams(typed, step) : "";
}

const isCertified = (cells: SheetCells, at: Cell): boolean => !isOfSamples(cells) && placeOf(at) === placeOf(cells.sheet.setup.value);

/** "" too where it is in order as far as seen, and where only the spreadsheet can work the check out; it will say so once the entry stands. */
function findingAt(of: SheetCells, row: number): string {
  try {
    const finding = of.at(row, CLOCK + 1);
    return typeof finding === "string" && !finding.startsWith(MARKS.unseen) ? finding : "";
  } catch {
    return "";
  }
}
