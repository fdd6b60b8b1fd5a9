import type { AstExpression } from "@borgar/fx";
import { type Cells, onlyValue } from "../../formula/Cells";
import { each, type Arguments } from "../../formula/workedOut";
import { builtInSurely } from "./builtInSurely";
import type { Certain } from "./certain";

/** By their numbers in SUBTOTAL and AGGREGATE, from 1 (Excel's help on SUBTOTAL, from memory). */
const COUNTED = ["AVERAGE", "COUNT", "COUNTA", "MAX", "MIN", "PRODUCT", "STDEV", "STDEVP", "SUM", "VAR", "VARP"];
// From here on rows hidden by hand are left out as well.
const WITHOUT_HIDDEN = 100;
/** What AGGREGATE leaves out: 5 says hidden rows, 4 nothing. */
const [HIDDEN_ROWS, NO_ROWS] = [5, 4];

/** The cells of an argument that count. */
type Counted = (part: AstExpression, areHiddenLeft: boolean) => Certain<Cells>;

/** What SUBTOTAL or AGGREGATE gives; undefined where that is not certain. */
export function subtotal(name: string, given: Arguments, worked: (part: AstExpression | null) => Certain<Cells>, counted: Counted): Certain<Cells> {
  const isAggregate = name === "AGGREGATE";
  const numbers = each(given.slice(0, isAggregate ? 2 : 1), (part) => {
    const value = onlyValue(worked(part));
    return typeof value === "number" && Number.isInteger(value) ? value : undefined;
  });
  const [which, option] = numbers ?? [];
  if (which === undefined || (isAggregate && option !== HIDDEN_ROWS && option !== NO_ROWS)) return undefined;
  const areHiddenLeft = isAggregate ? option === HIDDEN_ROWS : which > WITHOUT_HIDDEN;
  const of = COUNTED[(areHiddenLeft && !isAggregate ? which - WITHOUT_HIDDEN : which) - 1];
  const read = each(given.slice(isAggregate ? 2 : 1), (part) => part && counted(part, areHiddenLeft));
  if (of === undefined || read === undefined || read.length === 0) return undefined;
  // Every cell counts by its own, so that all may stand in one list.
  return builtInSurely(of, [{ cells: read.flatMap((cells) => cells ?? []), isReference: true }], false);
}
