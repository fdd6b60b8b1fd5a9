import { molarMass } from "../chemistry/molarMass";
import { onFirstUse } from "../chemistry/onFirstUse";
import { parseFormula } from "../chemistry/parseFormula";
import { blankAboveVolume, moreAcidThanSample } from "../problems/functions/liquidProblems";

const acetic = onFirstUse(() => ({ molarMass: molarMass(parseFormula("CH3COOH")) }));

/** Molar mass of acetic acid, g/mol. */
export const aceticMolarMass = (): number => acetic().molarMass;

/** How a sample of a titration is measured. */
export type SampleUnit = "g" | "mL";

/** Pure acetic acid weighs 1.049 g/mL at 20 degC (handbooks, from memory); no liquid holds more of it in a millilitre. */
export const MOST_IN_A_MILLILITRE = 1.05;

/** A titration of acid with a strong base. */
export interface Titration {
  /** Base used, mL. */
  readonly volume: number;
  /** Base, mol/L. */
  readonly concentration: number;
  /** Sample taken, in `unit`. */
  readonly sample: number;
  readonly unit: SampleUnit;
  /** Of the sample, g/mL; for a sample in mL. */
  readonly density: number | undefined;
  /** Base that a blank used, mL. */
  readonly blank: number;
  /** How many times what was titrated the made-up sample is. */
  readonly dilution: number;
}

/** The acid found. */
export interface Acid {
  /** In the sample taken, g as acetic acid. */
  readonly grams: number;
  /** g per g of sample, or g per mL where a sample in mL has no density. */
  readonly content: number;
  readonly isPerMillilitre: boolean;
}

/**
 * Acids of a liquid by titration with a strong base, as acetic acid: (V - V0) c M / 1000 times the dilution, over the sample. One mole of base
 * for one of acid, so that stronger acids and phenols that the end point takes in are counted as acetic. Follows from the definition.
 * @throws InputProblem for a blank above the titration, and for more acid than the sample can hold
 */
export function acidFromTitration({ volume, concentration, sample, unit, density, blank, dilution }: Titration): Acid {
  if (blank >= volume) throw blankAboveVolume(blank, volume);
  const grams = ((volume - blank) * concentration * aceticMolarMass() * dilution) / 1000;
  const isPerMillilitre = unit === "mL" && density === undefined;
  const content = grams / (sample * (unit === "mL" ? (density ?? 1) : 1));
  if (content > (isPerMillilitre ? MOST_IN_A_MILLILITRE : 1)) throw moreAcidThanSample(grams, sample, unit);
  return { grams, content, isPerMillilitre };
}
