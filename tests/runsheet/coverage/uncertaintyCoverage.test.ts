// What a run sheet states as standard uncertainty, against runs whose truth is known. The runs are made up, the noise is seeded.
import { lossUncertainty } from "../../../src/confidence/lossUncertainty";
import { readingUncertainty } from "../../../src/confidence/readingUncertainty";
import { charYield } from "../../../src/residue/charYield";
import { moistureDryBasis, moistureWetBasis } from "../../../src/drying/moisture";
import { volatileFraction } from "../../../src/residue/volatileMatter";
import { seededNormal } from "../../numerics/seededNormal";
import { seededUniform } from "../../numerics/seededUniform";

const RUNS = 1000;
const READABILITY = 0.01;
// Shares of a normal distribution within one and two standard deviations; 1000 runs scatter about them by 1.5 and 0.7 %.
const [WITHIN_ONE, WITHIN_TWO] = [0.683, 0.954];
const [SCATTER_ONE, SCATTER_TWO] = [3 * 0.0147, 3 * 0.0066];
// Six roundings together are nearly, not quite, normal: they lie within one standard deviation this much more seldom.
const NOT_QUITE_NORMAL = 0.015;

interface Masses {
  readonly vessel: number;
  readonly moist: number;
  readonly dry: number;
  readonly char: number;
  readonly ash: number;
}

const SHARES = {
  "moisture, wet basis": ({ vessel, moist, dry }: Masses) => moistureWetBasis(vessel, moist, dry),
  "moisture, dry basis": ({ vessel, moist, dry }: Masses) => moistureDryBasis(vessel, moist, dry),
  "volatile fraction": ({ vessel, dry, char }: Masses) => volatileFraction(vessel, dry, char),
  "char yield": ({ vessel, dry, char }: Masses) => charYield(vessel, dry, char),
  "char yield, ash-free": ({ vessel, dry, char, ash }: Masses) => charYield(vessel, dry, char, ash),
  ash: ({ vessel, dry, ash }: Masses) => (ash - vessel) / (dry - vessel),
};
type Share = keyof typeof SHARES;

/** As the sheet has it: LOSSFRACTION.U of the loss that each share is, or is a function of. */
const STATED: Readonly<Record<Share, (read: Masses, u: number) => number>> = {
  "moisture, wet basis": ({ vessel, moist, dry }, u) => lossUncertainty(vessel, moist, dry, u).commonTare,
  "moisture, dry basis": (read, u) =>
    lossUncertainty(read.vessel, read.moist, read.dry, u).commonTare * (1 + SHARES["moisture, dry basis"](read)) ** 2,
  "volatile fraction": ({ vessel, dry, char }, u) => lossUncertainty(vessel, dry, char, u).commonTare,
  "char yield": ({ vessel, dry, char }, u) => lossUncertainty(vessel, dry, char, u).commonTare,
  "char yield, ash-free": ({ ash, dry, char }, u) => lossUncertainty(ash, dry, char, u).commonTare,
  ash: ({ vessel, dry, ash }, u) => lossUncertainty(vessel, dry, ash, u).commonTare,
};

type Noise = ReturnType<typeof seededNormal>;

/** Tins of 20 to 60 g with as much again of moist prunings: 10 to 55 % water; 20 to 45 % char and 2 to 8 % ash of what is dry. */
function truth(uniform: Noise): Masses {
  const between = (least: number, most: number): number => least + (most - least) * uniform();
  const [vessel, sample] = [between(20, 60), between(20, 60)];
  const dry = sample * (1 - between(0.1, 0.55));
  return { vessel, moist: vessel + sample, dry: vessel + dry, char: vessel + dry * between(0.2, 0.45), ash: vessel + dry * between(0.02, 0.08) };
}

const shown = (grams: number): number => Math.round(grams / READABILITY) * READABILITY;

/** A zeroed balance stands anywhere within the step that it shows as 0; the load scatters, then is rounded. */
const zeroedReading =
  (uniform: Noise, normal: Noise, repeatability: number) =>
  (grams: number): number =>
    shown(grams + repeatability * normal() + (uniform() - 0.5) * READABILITY);

const throughout = (masses: Masses, read: (grams: number) => number): Masses => ({
  vessel: read(masses.vessel),
  moist: read(masses.moist),
  dry: read(masses.dry),
  char: read(masses.char),
  ash: read(masses.ash),
});

/** Share of the runs whose truth lies within k times the stated uncertainty. */
function covered(share: Share, u: number, seed: number, reading: (uniform: Noise, normal: Noise) => (grams: number) => number): [number, number] {
  const [uniform, normal] = [seededUniform(seed), seededNormal(seed + 1)];
  const counts: [number, number] = [0, 0];
  for (let run = 0; run < RUNS; run++) {
    const masses = truth(uniform);
    const read = throughout(masses, reading(uniform, normal));
    const [error, stated] = [Math.abs(SHARES[share](read) - SHARES[share](masses)), STATED[share](read, u)];
    if (error <= stated) counts[0]++;
    if (error <= 2 * stated) counts[1]++;
  }
  return [counts[0] / RUNS, counts[1] / RUNS];
}

const shares = Object.keys(SHARES) as Share[];

describe("The standard uncertainty that a run sheet states", () => {
  it.each(shares)("covers the true %s in 68 of 100 runs, and twice it in 95, by rounding alone", (share) => {
    const [one, two] = covered(share, readingUncertainty({ readability: READABILITY, tared: true }), 11, (uniform, normal) =>
      zeroedReading(uniform, normal, 0),
    );
    expect(Math.abs(one - (WITHIN_ONE - NOT_QUITE_NORMAL))).toBeLessThan(SCATTER_ONE);
    expect(Math.abs(two - WITHIN_TWO)).toBeLessThan(SCATTER_TWO);
  });

  it.each(shares)("covers the true %s as often once the balance also scatters by more than a step and that is stated", (share) => {
    const repeatability = 0.015;
    const u = readingUncertainty({ readability: READABILITY, repeatability, tared: true });
    const [one, two] = covered(share, u, 23, (uniform, normal) => zeroedReading(uniform, normal, repeatability));
    expect(Math.abs(one - WITHIN_ONE)).toBeLessThan(SCATTER_ONE);
    expect(Math.abs(two - WITHIN_TWO)).toBeLessThan(SCATTER_TWO);
  });

  it.each(shares)("covers the true %s far too seldom where that scatter is not stated", (share) => {
    const [one] = covered(share, readingUncertainty({ readability: READABILITY, tared: true }), 23, (uniform, normal) =>
      zeroedReading(uniform, normal, 0.015),
    );
    expect(one).toBeLessThan(0.45);
  });

  // The zero wanders by up to five steps before a weighing and by one more during it.
  const drifting = (uniform: Noise, isCorrected: boolean) => (grams: number) => {
    const [before, during] = [(uniform() - 0.5) * 10 * READABILITY, (uniform() - 0.5) * 2 * READABILITY];
    const reading = shown(grams + before + during / 2);
    return isCorrected ? reading - (shown(before) + shown(before + during)) / 2 : reading;
  };
  const u = readingUncertainty({ readability: READABILITY, tared: true });

  it.each(shares)("covers the true %s at least as often as stated when a drifting zero is read and corrected", (share) => {
    const [one, two] = covered(share, u, 37, (uniform) => drifting(uniform, true));
    expect(one).toBeGreaterThan(WITHIN_ONE - SCATTER_ONE);
    expect(two).toBeGreaterThan(WITHIN_TWO - SCATTER_TWO);
  });

  it.each(shares)("covers the true %s far too seldom when the same drift is not corrected", (share) => {
    expect(covered(share, u, 37, (uniform) => drifting(uniform, false))[0]).toBeLessThan(0.45);
  });
});
