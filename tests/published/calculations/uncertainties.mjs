// Uncertainties of weighings: the formulas of the GUM (JCGM 100:2008, equation 10) with derivatives taken by hand, and a
// simulation with a seeded generator.

/** Loss (B - A) / (B - T) with one u on each of the three weighings. */
function lossUncertainty(vessel, before, after, u) {
  const sample = before - vessel;
  const dBefore = (after - vessel) / sample ** 2;
  const dAfter = -1 / sample;
  const dVessel = (before - after) / sample ** 2;
  return u * Math.hypot(dBefore, dAfter, dVessel);
}

/** Mulberry32, 32 bits a draw. */
function uniform(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Spread of the loss over runs whose weighings scatter normally (Box and Muller). */
function simulated(vessel, before, after, u, runs) {
  const draw = uniform(20080101);
  const normal = () => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
  let sum = 0;
  let squares = 0;
  const centre = (before - after) / (before - vessel);
  for (let i = 0; i < runs; i++) {
    const [t, b, a] = [vessel + u * normal(), before + u * normal(), after + u * normal()];
    const off = (b - a) / (b - t) - centre;
    sum += off;
    squares += off * off;
  }
  return Math.sqrt((squares - (sum * sum) / runs) / (runs - 1));
}

// One step d rounds a reading to within d / 2 either way: variance d^2 / 12.
const rounding = (step) => step / Math.sqrt(12);

console.log(
  JSON.stringify({
    "5 g losing 3.5 g, u 0.001": lossUncertainty(20, 25, 21.5, 0.001),
    "10 g losing 3 g, u 0.01": lossUncertainty(25, 35, 32, 0.01),
    "10 g net losing 3 g, u 0.01": 0.01 * Math.hypot(7 / 10 ** 2, 1 / 10),
    "10 g losing 3 g, u 0.01, simulated": simulated(25, 35, 32, 0.01, 2_000_000),
    "one rounding of 0.01 g": rounding(0.01),
    "two roundings of 1 step": Math.SQRT2 * rounding(1),
    "linearity 0.15 counted twice": (Math.SQRT2 * 0.15) / Math.sqrt(3),
    "rounding 0.01, repeatability 0.01": Math.hypot(rounding(0.01), 0.01),
    "smallest sample, u 0.01, wanted 0.005, loss 0.3, k 1": (0.01 / 0.005) * Math.sqrt(1 + 0.3 ** 2 + 0.7 ** 2),
    "smallest sample, u 0.01, wanted 0.005, loss 0.3, k 2": ((2 * 0.01) / 0.005) * Math.sqrt(1 + 0.3 ** 2 + 0.7 ** 2),
    "smallest sample, u 0.01, wanted 0.005, any loss, k 1": (0.01 / 0.005) * Math.SQRT2,
    "smallest sample, u 0.01, wanted 0.005, any loss, k 2": ((2 * 0.01) / 0.005) * Math.SQRT2,
  }),
);
