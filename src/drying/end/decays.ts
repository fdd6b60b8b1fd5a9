/**
 * How the water of a falling-rate run goes: the share left after x = rate * time, and the slope of that share to ln x.
 * @param x rate times the minutes since the first point, 0 or more
 * @param done share of the weighed span that has passed: 0 at the first point, 1 at the last
 */
export type Decay = (x: number, done: number) => readonly [left: number, slope: number];

/** The law of Lewis (Ind. Eng. Chem. 13 (1921) 427): exp(-x). */
export const steadyDecay: Decay = (x) => {
  const left = Math.exp(-x);
  return [left, -x * left];
};

/**
 * A part of the water that leaves more slowly, as from knots, pores or large pieces: (1 - share) exp(-x) + share exp(-pace x).
 * @param share of the water at the first point, 0 to 1
 * @param pace rate of that part over the rate of the rest, below 1
 */
const withTail =
  (share: number, pace: number): Decay =>
  (x) => {
    const quick = (1 - share) * Math.exp(-x);
    const slow = share * Math.exp(-pace * x);
    return [quick + slow, -x * (quick + pace * slow)];
  };

/** Page's law, thesis, Purdue University (1949), from memory: exp(-x^n). Below n = 1 it slows down more and more, above it less. */
const page =
  (n: number): Decay =>
  (x) => {
    const power = x ** n;
    const left = Math.exp(-power);
    return [left, -n * power * left];
  };

/** An oven that cools: the rate itself falls evenly, by a share of it over the weighed span. */
const coolingOven =
  (fall: number): Decay =>
  (x, done) => {
    const passed = x * (1 - (fall * done) / 2);
    const left = Math.exp(-passed);
    return [left, -passed * left];
  };

/** An oven turned down half way through the weighed span, which lowers the rate by a share of it. */
const turnedDown =
  (fall: number): Decay =>
  (x, done) => {
    const passed = done > 0.5 ? x * (1 - fall * (1 - 0.5 / done)) : x;
    const left = Math.exp(-passed);
    return [left, -passed * left];
  };

/** How much of a run's water may leave more slowly, and at which shares of the rate. */
interface Tails {
  readonly most: number;
  readonly paces: readonly number[];
  readonly sharesOfMost: readonly number[];
}

// How far real drying is taken to stray from one rate: the exponents of published Page curves of plant matter lie mostly
// between 0.7 and 1.2 (domain knowledge, no single source); the slower part, its pace and the oven are choices of this program.
const UNSEEN_TAILS: Tails = { most: 0.2, paces: [1 / 2, 1 / 3, 1 / 5, 1 / 10], sharesOfMost: [0.02, 0.08, 0.25, 0.5, 1] };
// A tail that the weighings show may as well be a large or a very slow one.
const SEEN_TAILS: Tails = { most: 0.3, paces: [1 / 2, 1 / 3, 1 / 5, 1 / 10, 1 / 15], sharesOfMost: [0.01, 0.03, 0.1, 0.25, 0.5, 1] };
const SLOWING_EXPONENTS = [0.9, 0.75, 0.65];
const QUICKENING_EXPONENTS = [1.1, 1.2, 1.35];
const OVEN_FALLS = [0.15, 0.3, 0.5];

/** Decays that lead away from the steady one, step by step. */
export interface DecayPath {
  /** True where the last weighings fall more slowly than the first promise. */
  readonly slower: boolean;
  /** What changes along the path, beginning with its value for the steady decay. */
  readonly steps: readonly number[];
  decayAt(step: number): Decay;
}

/**
 * The ways in which drying may depart from one steady rate, each from nearly steady to as far as is reckoned with.
 * @param waterOver water at the run's beginning over that at the first point: a slow part that was small then is a larger share of it
 * @param tailIsSeen true where the weighings show a slower tail
 */
export function departures(waterOver: number, tailIsSeen = false): readonly DecayPath[] {
  const tails = tailIsSeen ? SEEN_TAILS : UNSEEN_TAILS;
  const most = Math.min(1, tails.most * waterOver);
  const shares = [0, ...tails.sharesOfMost.map((share) => share * most)];
  return [
    ...tails.paces.map((pace) => ({ slower: true, steps: shares, decayAt: (share: number) => withTail(share, pace) })),
    { slower: true, steps: [1, ...SLOWING_EXPONENTS], decayAt: page },
    { slower: true, steps: [0, ...OVEN_FALLS], decayAt: coolingOven },
    { slower: true, steps: [0, ...OVEN_FALLS], decayAt: turnedDown },
    { slower: false, steps: [1, ...QUICKENING_EXPONENTS], decayAt: page },
  ];
}
