import { all, noNumber } from "../../expressions/choices";
import { fixed, fn, is, range, reckon } from "../../expressions/Expression";
import { block } from "../../formulas/weighings";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { gained } from "../gainCheck";
import { step, type Check } from "../Check";

const words = checkWords.air;

// The lower end of the char yields that TYPICALRANGE knows for untreated plant matter, percent of dry.
export const LEAST_CHAR_PERCENT = 10;
const WHITE = "*white edge*";
const NOT_WHITE = "*no white edge*";

/** Whether air got in: a gain between firings, white edges seen, or less char than untreated plants leave. */
export function airCheck(sheet: RunSheet): Check | undefined {
  const { charring, across, share } = sheet;
  if (charring === undefined) return undefined;
  const { first, last } = charring.rows.fire;
  const seen = range(fixed(charring.fire(first).seen), fixed(charring.fire(last).seen));
  const yields = across((sample) => share("charYield", sample));
  const lowest = reckon(100, "*", fn("MIN", yields));
  return {
    silentWhile: noNumber(block(sheet, charring)),
    steps: [
      gained(sheet, charring, words.gained),
      step(is(fn("COUNTIF", seen, WHITE), ">", fn("COUNTIF", seen, NOT_WHITE)), words.whiteEdges(fn("ROW", charring.fire(first).seen))),
      step(all(is(fn("COUNT", yields), ">", 0), is(lowest, "<", LEAST_CHAR_PERCENT)), words.low(fn("FIXED", lowest, 1, true))),
    ],
  };
}
