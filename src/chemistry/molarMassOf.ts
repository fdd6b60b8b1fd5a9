import { atomicWeight } from "./atomicWeights";
import { molarMass } from "./molarMass";
import { plainAtoms } from "./notation/plain/plainAtoms";
import { scanPlainFormula } from "./notation/plain/scanPlainFormula";
import { parseFormula } from "./parseFormula";
import { standardAtomicWeights } from "./standardAtomicWeights";

const weights = Float64Array.from(standardAtomicWeights, ({ symbol, standard }) => (standard === "" ? NaN : atomicWeight(symbol)));

/**
 * Molar mass [g/mol] of a formula's text: that of `molarMass` for what `parseFormula` reads, to the last bit. A plain formula is summed as it is
 * scanned: a long column of them makes no object for each.
 * @throws InputProblem as parseFormula and molarMass
 */
export function molarMassOf(text: string, argument = "formula"): number {
  if (!scanPlainFormula(text)) return molarMass(parseFormula(text, argument), argument);
  const { size, elements, totals } = plainAtoms;
  let sum = 0;
  for (let place = 0; place < size; place++) sum += (totals[place] as number) * (weights[elements[place] as number] as number);
  return sum;
}
