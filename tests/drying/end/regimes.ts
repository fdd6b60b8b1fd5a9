/** A way in which water leaves a sample. */
export interface Regime {
  readonly name: string;
  /** Share of the water left after x = rate * time, at a run that ends at x = stage. */
  left(x: number, stage: number): number;
  /** Display steps by which the weighing before the last reads too high. */
  readonly stray?: number;
}

const TERMS = 60;

/** Water that diffuses out of a slab or a sphere into dry air: Crank, The Mathematics of Diffusion, eq. 4.18 and 6.20 (from memory). */
const series =
  (of: (term: number) => number, scale: number) =>
  (x: number): number => {
    if (x === 0) return 1;
    let sum = 0;
    for (let term = 1; term <= TERMS; term++) sum += (scale / of(term) ** 2) * Math.exp(-(of(term) ** 2) * x);
    return sum;
  };

const tail = (percent: number, slower: number): Regime => ({
  name: `${percent} % at 1/${slower} of the rate`,
  left: (x) => (1 - percent / 100) * Math.exp(-x) + (percent / 100) * Math.exp(-x / slower),
});

const page = (n: number): Regime => ({ name: `Page, n = ${n}`, left: (x) => Math.exp(-(x ** n)) });

export const regimes: readonly Regime[] = [
  { name: "one exponential", left: (x) => Math.exp(-x) },
  ...[2, 5, 10].flatMap((percent) => [2, 3, 4, 5, 10].map((slower) => tail(percent, slower))),
  ...[0.7, 0.8, 0.9, 1.1, 1.2].map(page),
  { name: "diffusion, slab", left: series((term) => 2 * term - 1, 8 / Math.PI ** 2) },
  { name: "diffusion, sphere", left: series((term) => term, 6 / Math.PI ** 2) },
  { name: "oven cools, rate falls evenly to 3/4", left: (x, stage) => Math.exp(-x * (1 - x / (8 * stage))) },
  { name: "oven cools, rate falls evenly to 1/2", left: (x, stage) => Math.exp(-x * (1 - x / (4 * stage))) },
  { name: "oven turned down half way, rate to 7/10", left: (x, stage) => Math.exp(-Math.min(x, stage / 2) - 0.7 * Math.max(0, x - stage / 2)) },
  { name: "constant rate at first, hidden", left: (x) => (x < 1 / 2 ? 1.5 - x : Math.exp(1 / 2 - x)) / 1.5 },
  { name: "last but one 10 steps high", left: (x) => Math.exp(-x), stray: 10 },
  { name: "last but one 10 steps low", left: (x) => Math.exp(-x), stray: -10 },
];
