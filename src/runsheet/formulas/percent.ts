import { fn, reckon, type Expression } from "../expressions/Expression";

/** A fraction in percent, as it reads in a sentence. */
export const percent = (fraction: Expression, decimals = 1): Expression => fn("FIXED", reckon(100, "*", fraction), decimals, true);
