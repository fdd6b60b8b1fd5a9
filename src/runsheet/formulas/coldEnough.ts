import { CRUCIBLE_RATE } from "../../balance/hotWeighing";
import { firstOf, lacksNumber, NOTHING, onceNumbers } from "../expressions/choices";
import { fn, is, reckon, type Call, type Cell, type Expression } from "../expressions/Expression";
import { weighInWords } from "../words/weighInWords";

// In cell formulas a whole number over a power of ten; 0.19 mg needs five places.
const PER = 100_000;
const GRAMS = Math.round(CRUCIBLE_RATE * PER);
const MILLIGRAMS_PER_GRAM = 1000;
// A larger vessel errs more than the crucible that was measured, so a tenth of a display step counts; own margin, no source.
const SHARE_OF_A_STEP = 10;

/** How far the sample was above the room when weighed, °C. */
export const warmerBy = (room: Cell, sample: Cell): Call => onceNumbers([room, sample], reckon(sample, "-", room));

/**
 * How much lighter a warm vessel reads, mg, by the published case of HOTWEIGHING (Blade, Analytical Chemistry): 0.19 mg for
 * each degree, to a tenth of a mg. A hint, for one crucible.
 */
export const readsLighterBy = (degrees: Expression): Call => fn("ROUND", reckon(reckon(degrees, "*", GRAMS * MILLIGRAMS_PER_GRAM), "/", PER), 1);

/**
 * Whether this balance could show that a sample was warmer or colder than the room when weighed: |t(sample) - t(room)| times
 * 0.00019 g/°C comes to a tenth of a display step. Nothing is corrected.
 */
export function coldEnough(room: Cell, sample: Cell, readability: Cell): Expression {
  const { enough, warm, chilled } = weighInWords.cold;
  const shows = (one: Cell, other: Cell) => {
    const difference = reckon(one, "-", other);
    return is(reckon(difference, "*", GRAMS * SHARE_OF_A_STEP), ">=", reckon(readability, "*", PER));
  };
  const answers = [
    [lacksNumber(room, sample, readability), NOTHING],
    [shows(sample, room), warm],
    [shows(room, sample), chilled],
  ] as const;
  return firstOf(answers, enough);
}
