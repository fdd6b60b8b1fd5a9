import { all, any, noNumber } from "../expressions/choices";
import { fixed, fn, is, range, type Cell, type Range } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { lastCellWhere } from "../formulas/cellsNamed";
import type { Fired, RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";

const words = checkWords.material;

/** Whether the vessel's material stands the hottest that oven, kiln and furnace are set to or were measured at. */
export function materialCheck({ settings, materials, fired, options }: RunSheet): Check {
  const { material, oven } = settings;
  const places: readonly (Cell | Range)[] = [oven, ...fired.map(temperaturesOf)];
  const stands = fn("INDEX", materials.stand, fn("MATCH", material, materials.names, 0));
  return {
    silentWhile: any(is(fn("COUNTA", material), "=", 0), noNumber(...places)),
    steps: [
      step(any(fn("ISERROR", stands)), words.notListed(nameOf(material))),
      ...places.map((place) => {
        const hottest = fn("MAX", place);
        const at = place.kind === "cell" ? nameOf(place) : lastCellWhere(is(place, "=", hottest), place);
        return step(all(is(hottest, ">", stands)), words.aboveLimit(at, hottest, options.degrees, stands, material));
      }),
    ],
  };
}

/** Set and measured, side by side. */
const temperaturesOf = ({ rows: { fire }, fire: inRow }: Fired): Range => range(fixed(inRow(fire.first).set), fixed(inRow(fire.last).measured));
