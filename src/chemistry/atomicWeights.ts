import { noAtomicWeight } from "../problems/functions/formulaProblems";
import { elementNames } from "./elementNames";
import { isotopicMasses } from "./isotopicMasses";
import { standardAtomicWeights, type StandardAtomicWeight } from "./standardAtomicWeights";

/** Which table the atomic weights come from, as a calculation record names it. */
export const EDITION = "CIAAW 2021";

/**
 * The working value: the abridged one where the standard is an interval, else the standard with all its digits. "" where there is none.
 * An interval has no middle that a sample would tend to; its abridged value is the one the table recommends for trade.
 */
const workingValue = ({ standard, abridged }: StandardAtomicWeight): string => (standard.startsWith("[") ? abridged : standard);

const weights = new Map([
  ...isotopicMasses,
  ...standardAtomicWeights
    .filter(({ standard }) => standard !== "")
    .map((element): [string, number] => [element.symbol, Number(workingValue(element))]),
]);

/**
 * The mass of one mole of an atom [g/mol]: the standard atomic weight, or the mass of the nuclide for "D", "T", "13C" and the like.
 * @throws InputProblem for an element that has no standard atomic weight, under `argument`
 */
export function atomicWeight(symbol: string, argument = "formula"): number {
  const weight = weights.get(symbol);
  if (weight === undefined) throw noAtomicWeight(argument, symbol, elementNames().get(symbol));
  return weight;
}
