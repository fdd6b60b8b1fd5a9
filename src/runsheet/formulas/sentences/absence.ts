import { any, when, type Condition } from "../../expressions/choices";
import { fn, is, retort, type Expression } from "../../expressions/Expression";
import type { RunSheet } from "../../sheet/RunSheet";

// Always answered where Retort is at hand, and a plain number in plain cells, which need no Retort.
const ASKED = retort("MOLARMASS", "H2O");

/**
 * 1 where a verdict on constant weight fails because our functions are unknown, as on the machine of a colleague without Retort. The error alone
 * does not tell: what a refused weighing gives is #VALUE! in Excel and an error that ERROR.TYPE has no number for in LibreOffice, as an unknown
 * name within INDEX is there. Refused weighings are told by the check that meets them. A verdict is asked for only once there is something to
 * judge, and a spreadsheet that keeps the answers a file came with asks only after a change, so nothing is said before.
 */
export const verdictsMissing = ({ drying, charring, ashing, samples }: RunSheet): Expression => {
  const verdicts = [drying, charring, ashing].flatMap((table) => (table === undefined ? [] : samples.map((sample) => table.steady(sample))));
  if (verdicts.length === 0) return 0;
  return when(any(...verdicts.map((at) => fn("ISERROR", at))), when(fn("ISERROR", ASKED), 1, 0), 0);
};

export const isAbsent = ({ working }: RunSheet): Condition => is(working.absent, ">", 0);
