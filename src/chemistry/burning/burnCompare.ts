import { airDemand } from "./airDemand";
import type { BurnedGram } from "./burnedGram";

/** One dry sample, charred without air or burned in the open; every mass in g. */
export interface Fate {
  readonly oxygenTaken: number;
  readonly massIn: number;
  /** Char, or ash. */
  readonly left: number;
  /** Vapours, or gases. */
  readonly gone: number;
  readonly notCovered: number;
  readonly massOut: number;
}

export interface CharAndBurn {
  readonly dry: number;
  readonly charred: Fate;
  readonly burned: Fate & { readonly carbonDioxide: number; readonly water: number; readonly otherGases: number; readonly air: number };
}

/**
 * Charring as weighed, set against complete burning of the same dry sample: charred, out = char + (dry - char); burned, in = dry + O2 taken
 * up, out = ash + CO2 + H2O + other gases + what the analysis does not cover. The nitrogen of the air is not counted: it goes in and out
 * unchanged and would hide the rest. Source: weighings and conservation of mass.
 * @param dry, char net, g
 */
export function burnCompare(dry: number, char: number, perGram: BurnedGram): CharAndBurn {
  const carbonDioxide = dry * perGram.carbonDioxide;
  const water = dry * perGram.water;
  const otherGases = dry * perGram.otherGases;
  const oxygenTaken = dry * perGram.oxygenTaken;
  const burned = fate(dry, oxygenTaken, dry * perGram.solid, carbonDioxide + water + otherGases, dry * perGram.notCovered);
  return { dry, charred: fate(dry, 0, char, dry - char, 0), burned: { ...burned, carbonDioxide, water, otherGases, air: airDemand(oxygenTaken) } };
}

const fate = (dry: number, oxygenTaken: number, left: number, gone: number, notCovered: number): Fate => ({
  oxygenTaken,
  massIn: dry + oxygenTaken,
  left,
  gone,
  notCovered,
  massOut: left + gone + notCovered,
});
