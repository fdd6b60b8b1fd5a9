import { atomicWeightUncertainty } from "../chemistry/atomicWeightUncertainty";
import { molarMass } from "../chemistry/molarMass";
import type { Decomposition } from "./decompose";

/**
 * Standard uncertainty of a theoretical loss [fraction] from that of the atomic weights: sqrt(sum of (dw/dA u(A))^2) over the elements, with
 * dw/dA = (s M(residue) - r M(start)) / M(start)^2 for s atoms in the start and r in its residue. An element that stands on both sides is one
 * weight and counted once; taken for two it would make CaCO3 to CaO 3.0e-5 instead of 1.3e-5. GUM (JCGM 100:2008) equation 13.
 */
export function lossUncertaintyOfWeights({ start, kept, loss }: Decomposition): number {
  const whole = molarMass(start, "start");
  const left = (1 - loss) * whole;
  let variance = 0;
  for (const symbol of new Set([...start.atoms.keys(), ...kept.keys()])) {
    const slope = ((start.atoms.get(symbol) ?? 0) * left - (kept.get(symbol) ?? 0) * whole) / whole ** 2;
    variance += (slope * atomicWeightUncertainty(symbol)) ** 2;
  }
  return Math.sqrt(variance);
}
