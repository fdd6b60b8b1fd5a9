import { sum, when, type Condition } from "../expressions/choices";
import { fn, is, type Cell, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";

// LibreOffice makes of an unknown name inside INDEX an error that ERROR.TYPE has no number for, which counts as well.
// What ERROR.TYPE calls a function that the spreadsheet does not know, #NAME? (ECMA-376 Part 1, from memory).
const UNKNOWN_NAME = 5;

const isUnknown = (at: Cell): Expression =>
  when(fn("ISERROR", at), when(is(fn("IFERROR", fn("ERROR.TYPE", at), UNKNOWN_NAME), "=", UNKNOWN_NAME), 1, 0), 0);

/**
 * How many verdicts on constant weight fail because our functions are unknown, as on the machine of a colleague without Retort. Other errors
 * are told by the check that meets them. A verdict is asked for only once there is something to judge, and a spreadsheet that keeps the
 * answers a file came with asks only after a change, so nothing is said before.
 */
export const verdictsMissing = ({ drying, charring, ashing, samples }: RunSheet): Expression =>
  sum(...[drying, charring, ashing].flatMap((table) => (table === undefined ? [] : samples.map((sample) => isUnknown(table.steady(sample))))));

export const isAbsent = ({ working }: RunSheet): Condition => is(working.absent, ">", 0);
