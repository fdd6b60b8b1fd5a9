import { anyWhere, placeWhere } from "../expressions/choices";
import { fn, reckon } from "../expressions/Expression";
import { nameAlong } from "../formulas/cellsNamed";
import type { RunSheet } from "../sheet/RunSheet";
import type { Weighed } from "../sheet/Weighed";
import { checkWords } from "../words/checkWords";
import { step, type Step } from "./Check";

/** The first sample of a table whose verdict is an error, and where it stands. */
export function unjudgedStep({ across }: RunSheet, { steady }: Weighed): Step {
  const isError = fn("ISERROR", across(steady));
  const sample = placeWhere(isError);
  return step(anyWhere(isError), checkWords.dryness.unjudged(sample, nameAlong(steady(1), reckon(sample, "-", 1))));
}
