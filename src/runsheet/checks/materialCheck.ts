import { all, any, noNumber } from "../expressions/choices";
import { fixed, fn, is, range, type Cell, type Range } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { lastCellWhere } from "../formulas/cellsNamed";
import type { Fired, RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";
import { isFarFromSet } from "./firing/farFromSet";

const words = checkWords.material;

/**
 * Whether each firing was measured near what was set, and the vessel's material stands the hottest that oven, kiln and furnace are set to or
 * were measured at. Stages are looked at for that where they have to rise.
 */
export function materialCheck({ settings, materials, fired, stages, options }: RunSheet): Check {
  const { material, oven } = settings;
  const places: readonly (Cell | Range)[] = [oven, ...fired.map(temperaturesOf)];
  const stands = fn("INDEX", materials.stand, fn("MATCH", material, materials.names, 0));
  const far = fired
    .filter((table) => table !== stages)
    .flatMap(firesOf)
    .map((fire) => ({ at: fire.measured, isFar: isFarFromSet(fire, options.degrees) }));
  const isAnyFar = far.map(({ isFar }) => isFar);
  const isUnasked = all(is(fn("COUNTA", material), "=", 0), ...(far.length === 0 ? [] : [is(any(...isAnyFar), "=", false)]));
  return {
    silentWhile: any(isUnasked, noNumber(...places)),
    steps: [
      ...far.map(({ at, isFar }) => step(isFar, checkWords.farFromSet(nameOf(at)))),
      step(any(fn("ISERROR", stands)), words.notListed(nameOf(material))),
      ...places.map((place) => {
        const hottest = fn("MAX", place);
        const at = place.kind === "cell" ? nameOf(place) : lastCellWhere(is(place, "=", hottest), place);
        return step(all(is(hottest, ">", stands)), words.aboveLimit(at, hottest, options.degrees, stands, material));
      }),
    ],
  };
}

const firesOf = ({ rows: { fire }, fire: inRow }: Fired): readonly ReturnType<Fired["fire"]>[] =>
  Array.from({ length: fire.last - fire.first + 1 }, (_, index) => inRow(fire.first + index));

/** Set and measured, side by side. */
const temperaturesOf = ({ rows: { fire }, fire: inRow }: Fired): Range => range(fixed(inRow(fire.first).set), fixed(inRow(fire.last).measured));
