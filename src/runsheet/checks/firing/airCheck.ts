import { all, noNumber, sum } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression } from "../../expressions/Expression";
import { block } from "../../formulas/weighings";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { fireWords } from "../../words/fireWords";
import { gained } from "../gainCheck";
import { step, type Check } from "../Check";

const words = checkWords.air;
const noted = fireWords.whiteEdges;

// The lower end of the char yields that TYPICALRANGE knows for untreated plant matter, percent of dry.
export const LEAST_CHAR_PERCENT = 10;
/** Whether air got in: a gain between firings, white edges seen, or less char than untreated plants leave. */
export function airCheck(sheet: RunSheet): Check | undefined {
  const { charring, across, share } = sheet;
  if (charring === undefined) return undefined;
  const { first, last } = charring.rows.fire;
  const seen = range(fixed(charring.fire(first).seen), fixed(charring.fire(last).seen));
  const counted = (notes: readonly string[]): Expression => sum(...notes.map((note) => fn("COUNTIF", seen, note)));
  const yields = across((sample) => share("charYield", sample));
  const lowest = reckon(100, "*", fn("MIN", yields));
  return {
    silentWhile: noNumber(block(sheet, charring)),
    steps: [
      gained(sheet, charring, words.gained),
      step(
        is(counted([...noted.white, ...noted.both]), ">", counted([...noted.notWhite, noted.onlyNot, noted.onlyNot])),
        words.whiteEdges(fn("ROW", charring.fire(first).seen)),
      ),
      step(all(is(fn("COUNT", yields), ">", 0), is(lowest, "<", LEAST_CHAR_PERCENT)), words.low(fn("FIXED", lowest, 1, true))),
    ],
  };
}
