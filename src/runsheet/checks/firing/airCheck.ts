import { all, noNumber, sum, type Condition } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../../expressions/Expression";
import { block } from "../../formulas/weighings";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired } from "../../sheet/Weighed";
import { checkWords } from "../../words/checkWords";
import { fireWords } from "../../words/fireWords";
import { gained } from "../gainCheck";
import { step, type Check } from "../Check";

const words = checkWords.air;
const noted = fireWords.whiteEdges;

// The lower end of the char yields that TYPICALRANGE knows for untreated plant matter, percent of dry.
export const LEAST_CHAR_PERCENT = 10;
/** Whether white edges were noted of any firing, which stands for all that was fired then. */
export function areEdgesWhite({ rows: { fire }, fire: at }: Fired): Condition {
  const seen = range(fixed(at(fire.first).seen), fixed(at(fire.last).seen));
  const counted = (notes: readonly string[]): Expression => sum(...notes.map((note) => fn("COUNTIF", seen, note)));
  return is(counted([...noted.white, ...noted.both]), ">", counted([...noted.notWhite, noted.onlyNot, noted.onlyNot]));
}

const percentOf = (yields: Range | Cell): Expression => reckon(100, "*", fn("MIN", yields));

/** Whether less char is left than untreated plants leave. */
export const isLow = (yields: Range | Cell): Condition => all(is(fn("COUNT", yields), ">", 0), is(percentOf(yields), "<", LEAST_CHAR_PERCENT));

/** Whether air got in: a gain between firings, white edges seen, or less char than untreated plants leave. */
export function airCheck(sheet: RunSheet): Check | undefined {
  const { charring, across, share } = sheet;
  if (charring === undefined) return undefined;
  const yields = across((sample) => share("charYield", sample));
  return {
    silentWhile: noNumber(block(sheet, charring)),
    steps: [
      gained(sheet, charring, words.gained),
      step(areEdgesWhite(charring), words.whiteEdges(fn("ROW", charring.fire(charring.rows.fire.first).seen))),
      step(isLow(yields), words.low(fn("FIXED", percentOf(yields), 1, true))),
    ],
  };
}
