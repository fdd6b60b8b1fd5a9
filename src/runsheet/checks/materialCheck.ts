import { all, any, anyWhere, noNumber, product, sum, when } from "../expressions/choices";
import { fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { lastCellWhere, lastRowWhere } from "../formulas/cellsNamed";
import { firesBoxes } from "../formulas/wrongBoxes";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired } from "../sheet/Weighed";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";
import { isFarFromSet } from "./firing/farFromSet";
import { implausible, temperaturesOf } from "./firing/implausible";

const words = checkWords.material;

/**
 * Whether each firing was measured near what was set, nothing is too cold or too hot for what it is to do, and the vessel's material stands
 * the hottest that oven, kiln and furnace are set to or were measured at; it is asked for as soon as one of the list would not stand that.
 * How far stages are from what was set is looked at where they have to rise.
 */
export function materialCheck(sheet: RunSheet): Check {
  const { settings, materials, fired, stages, options } = sheet;
  const { material, oven } = settings;
  const places: readonly (Cell | Range)[] = [oven, ...fired.map(temperaturesOf)];
  const stands = fn("INDEX", materials.stand, fn("MATCH", material, materials.names, 0));
  const isBlank = is(fn("COUNTA", material), "=", 0);
  const isNamed = all(is(isBlank, "=", false), is(is(material, "=", words.noneOfThese), "=", false));
  const hottest = fn("MAX", ...places);
  const far = fired
    .filter((table) => table !== stages)
    .flatMap(firesOf)
    .map((fire) => step(isFarFromSet(fire, options.degrees), checkWords.farFromSet(nameOf(fire.measured))));
  const unlikely = implausible(sheet);
  const areBoth = fired.filter((table) => table !== stages).flatMap((table) => inBothDegrees(table, options.degrees));
  // Set and measured, both: that they agree is in order.
  const isCompared = fired.filter((table) => table !== stages).map((table) => anyWhere(setAndMeasured(table)));
  // What the weakest of the list stands they all stand.
  const isAsked = all(isBlank, is(hottest, ">", fn("MIN", materials.stand)));
  return {
    silentWhile: any(noNumber(...places), is(any(isNamed, isAsked, ...isCompared, ...[...areBoth, ...unlikely].map((one) => one.when)), "=", false)),
    steps: [
      ...areBoth,
      ...far,
      step(all(isNamed, fn("ISERROR", stands)), words.notListed(nameOf(material))),
      ...places.map((place) => {
        const most = fn("MAX", place);
        const at = place.kind === "cell" ? nameOf(place) : lastCellWhere(is(place, "=", most), place);
        return step(when(isNamed, is(most, ">", stands), false), words.aboveLimit(at, most, options.degrees, stands, material));
      }),
      ...unlikely,
      step(isAsked, words.ask(nameOf(material), hottest, options.degrees)),
    ],
  };
}

/** Firing by firing, 1 where a temperature was both set and measured. */
const setAndMeasured = (table: Fired): Expression =>
  product(fn("ISNUMBER", firesBoxes(table, "set", "set")), fn("ISNUMBER", firesBoxes(table, "measured", "measured")));

// °F = 9/5 °C + 32, so that five times the one is nine times the other and 160.
const [FIVE, NINE, OFFSET] = [5, 9, 160] as const;
// A figure rounded on the way, 1 in 100; own bound.
const ALIKE_PER = 100;

/** A firing typed in the one degrees after one in the other: 480 and then 896. Such a rise or fall from firing to firing is hardly meant. */
function inBothDegrees(table: Fired, unit: "C" | "F"): Step[] {
  const { first, last } = table.rows.fire;
  if (first === last) return [];
  const down = (from: number, to: number): Range => range(fixed(table.fire(from).set), fixed(table.fire(to).measured));
  const [above, below] = [down(first, last - 1), down(first + 1, last)];
  const isAs = (celsius: Range, fahrenheit: Range): Expression => {
    const off = reckon(reckon(FIVE, "*", fahrenheit), "-", sum(reckon(NINE, "*", celsius), OFFSET));
    return is(reckon(fn("ABS", off), "*", ALIKE_PER), "<=", reckon(FIVE, "*", fahrenheit));
  };
  const areThere = product(fn("ISNUMBER", above), fn("ISNUMBER", below));
  const holds = product(areThere, is(sum(isAs(above, below), isAs(below, above)), ">", 0));
  return [step(anyWhere(holds), words.bothDegrees(lastRowWhere(holds, below), unit))];
}

const firesOf = ({ rows: { fire }, fire: inRow }: Fired): readonly ReturnType<Fired["fire"]>[] =>
  Array.from({ length: fire.last - fire.first + 1 }, (_, index) => inRow(fire.first + index));
