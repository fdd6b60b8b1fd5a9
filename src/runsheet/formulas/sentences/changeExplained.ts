import { onceNumbers, sum } from "../../expressions/choices";
import { fn, reckon, type Call } from "../../expressions/Expression";
import type { RunSheet } from "../../sheet/RunSheet";

// About 95 % for the change between two weighings (GUM, JCGM 100:2008, 6.3.3).
const COVERAGE = 2;
// Twelfths of a squared display step that rounding puts into one reading (GUM 4.3.7).
const TWELFTHS = 12;
// A change of two steps is not quite that in binary: 50.02 - 50. Well below any balance, g.
const PER_GRAM = 1_000_000_000;

/**
 * The change that two weighings explain, g, as CHANGE.SIGNIFICANT has it for a known display step d: 2 sqrt(2) s + d with
 * s^2 = u^2 - d^2 / 12, and no less than 2 d, since the balance is zeroed before each weighing, so that u is at least d / sqrt(6).
 */
export function changeExplained({ working: { u }, settings: { readability } }: RunSheet): Call {
  const scatter = fn("SQRT", reckon(reckon(u, "^", 2), "-", reckon(reckon(readability, "^", 2), "/", TWELFTHS)));
  const byScatter = sum(reckon(reckon(COVERAGE, "*", fn("SQRT", 2)), "*", scatter), readability);
  return onceNumbers([u, readability], sum(fn("MAX", byScatter, reckon(2, "*", readability)), reckon(1, "/", PER_GRAM)));
}
