import { neededForBasis } from "../problems/residueProblems";

/** As received from the field, as it stood when analysed, without moisture, without moisture and ash. */
export const BASES = ["as received", "as analysed", "dry", "ash-free"] as const;
export type Basis = (typeof BASES)[number];

/** What tells the bases apart, fractions: the two moistures on the wet basis, the ash on the dry basis. */
export interface Composition {
  readonly moistureReceived?: number | undefined;
  readonly moistureAnalysis?: number | undefined;
  readonly ash?: number | undefined;
}

const MOISTURE_ADVICE = `Give the moisture as a fraction; a sample without any is "dry".`;

/**
 * Grams of water in a gram of sample on this basis.
 * @throws InputProblem when the moisture of that basis is missing
 */
export function moistureOn(basis: Basis, { moistureReceived, moistureAnalysis }: Composition): number {
  if (basis === "as received") return moistureReceived ?? missing("moistureReceived", basis, MOISTURE_ADVICE);
  if (basis === "as analysed") return moistureAnalysis ?? missing("moistureAnalysis", basis, MOISTURE_ADVICE);
  return 0;
}

/**
 * Grams of dry sample that belong to a gram on this basis: below 1 where it holds moisture, above 1 where the ash has
 * been left out.
 * @throws InputProblem when the moisture or ash of that basis is missing
 */
export function dryGrams(basis: Basis, composition: Composition): number {
  if (basis !== "ash-free") return 1 - moistureOn(basis, composition);
  return 1 / (1 - (composition.ash ?? missing("ash", basis, `Give the dry-basis ash as a fraction, or "none".`)));
}

function missing(argument: string, basis: Basis, advice: string): never {
  throw neededForBasis(argument, basis, advice);
}
