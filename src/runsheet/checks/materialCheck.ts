import { all, any, noNumber, when } from "../expressions/choices";
import { fn, is, type Cell, type Range } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { lastCellWhere } from "../formulas/cellsNamed";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired } from "../sheet/Weighed";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";
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
  // What the weakest of the list stands they all stand.
  const isAsked = all(isBlank, is(hottest, ">", fn("MIN", materials.stand)));
  return {
    silentWhile: any(noNumber(...places), is(any(isNamed, isAsked, ...[...far, ...unlikely].map((one) => one.when)), "=", false)),
    steps: [
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

const firesOf = ({ rows: { fire }, fire: inRow }: Fired): readonly ReturnType<Fired["fire"]>[] =>
  Array.from({ length: fire.last - fire.first + 1 }, (_, index) => inRow(fire.first + index));
