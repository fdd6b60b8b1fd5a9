import { fn, is, reckon, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";

// More than any weight, g. One reference, since Gather runs writes it with the sheet's name.
const NO_LIMIT = 1_000_000;

/**
 * The change that two readings explain, g. While it is not known, because the step or the repeatability of the balance cannot be used, any change
 * might be explained, so that nothing is accused by it; what cannot be used is named by its own check.
 */
export const explainedBy = ({ working: { explained } }: RunSheet): Expression => fn("IFERROR", reckon(explained, "*", 1), NO_LIMIT);

/** Whether it is known. */
export const isExplainedKnown = ({ working: { explained } }: RunSheet) => is(fn("COUNT", explained), ">", 0);
