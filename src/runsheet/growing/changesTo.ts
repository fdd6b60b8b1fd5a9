import { isSameFormula, isSameShape } from "../../workbook/SheetGrowth";
import type { PlannedCell, SheetPlan } from "../../workbook/SheetPlan";
import { saysLabel } from "../words/olderSheets";
import { isBox, type CellNow, type SheetNow } from "./SheetNow";

/** What has to be written so that a sheet is as it was planned, and what stands in the way. */
export interface Changes {
  readonly written: readonly PlannedCell[];
  /** Calculated cells that hold something else than their formula, in their places at the end. */
  readonly typedOver: readonly string[];
  /** Cells that the larger sheet needs and that hold something of the user's, as they stand now. */
  readonly inTheWay: readonly string[];
  /** Cells that hold something typed, where mending would put a formula and none of the sheet's formulas looks for one, as they stand now. */
  readonly unlookedFor: readonly string[];
}

export interface Manner {
  /** Writes formulas over what was typed over them. */
  readonly mends: boolean;
  /** The sheet may hold part of the larger one already. */
  readonly isBegun: boolean;
  /** Rows come in, and the host changes formulas as it moves them. */
  readonly moves: boolean;
}

type Verdict = "write" | "leave" | "typedOver" | "inTheWay" | "unlookedFor";

export function changesTo(plan: SheetPlan, now: SheetNow, manner: Manner): Changes {
  const judged = plan.cells.map((planned) => ({ planned, verdict: verdictOn(planned, now, manner), now: now.held.get(planned.cell)?.now ?? "" }));
  const which = (wanted: Verdict): readonly (typeof judged)[number][] => judged.filter(({ verdict }) => verdict === wanted);
  return {
    written: which("write").map(({ planned }) => planned),
    typedOver: which("typedOver").map(({ planned }) => planned.cell),
    inTheWay: which("inTheWay").map(({ now: cell }) => cell),
    unlookedFor: which("unlookedFor").map(({ now: cell }) => cell),
  };
}

function verdictOn(planned: PlannedCell, { held, made, lookedFor }: SheetNow, manner: Manner): Verdict {
  const [there, before] = [held.get(planned.cell), made.get(planned.cell)];
  const somebodys: Verdict = manner.isBegun ? "leave" : "inTheWay";
  if (isBox(planned)) {
    if (before !== undefined && isBox(before)) return "leave";
    if (there === undefined) return planned.content === undefined ? "leave" : "write";
    return there.value === planned.content ? "leave" : somebodys;
  }
  if (planned.formula !== undefined) {
    const verdict = onFormula(planned.formula, there, before, manner, somebodys);
    const isTypedOver = verdict === "write" && there !== undefined && isTyped(there) && !isOurText(there, before ?? {});
    return isTypedOver && lookedFor?.has(planned.cell) === false ? "unlookedFor" : verdict;
  }
  if (planned.content === undefined) return before === undefined && there !== undefined ? somebodys : "leave";
  if (there === undefined) return "write";
  if (there.value === planned.content) return "leave";
  if (before === undefined) return isOurText(there, planned) ? "write" : somebodys;
  // A label in the user's own words stays.
  return isOurText(there, before) || isOurText(there, planned) ? "write" : "leave";
}

function onFormula(
  formula: string,
  there: CellNow | undefined,
  before: PlannedCell | undefined,
  { mends, moves }: Manner,
  somebodys: Verdict,
): Verdict {
  if (there === undefined) return "write";
  if (there.formula !== "") {
    if (isSameFormula(there.formula, formula)) return moves ? "write" : "leave";
    const [held, wanted, made] = [there.formula, formula, before?.formula ?? formula].map(askedOnce) as [string, string, string];
    if (isSameShape(held, wanted) || isSameShape(held, made)) return "write";
  } else if (before?.content !== undefined && isOurText(there, before)) return "write";
  if (mends) return "write";
  return before === undefined ? somebodys : "typedOver";
}

/** What somebody typed: a formula that names no cell is a sum of theirs, such as =84.17-31.42. */
const isTyped = ({ formula }: CellNow): boolean => formula === "" || !/[A-Z]\$?\d|#REF!/i.test(formula);

/** Cells and rows that are asked one by one cannot count a row put in by hand; as many as there are, they ask the same. */
const askedOnce = (formula: string): string =>
  formula
    .replace(/ISFORMULA\([^(),]*\)(?:,ISFORMULA\([^(),]*\))+/g, "ISFORMULA(A1)")
    .replace(/ROWS\([^(),]*\)(?:\+ROWS\([^(),]*\))+/g, "ROWS(A1:B1)");

/** Numbers in a label count rounds, samples and checks, and change with them. */
const isOurText = ({ formula, value }: CellNow, { content }: Pick<PlannedCell, "content">): boolean =>
  formula === "" && typeof value === "string" && typeof content === "string" && saysLabel(unnumbered(value), unnumbered(content));

const unnumbered = (text: string): string => text.replace(/\d+/g, "#");
