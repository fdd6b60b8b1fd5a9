// Critical values by plain numerical integration: Grubbs from Student's t, Dixon's r10 and the studentized range from the
// joint density of normal order statistics. Slow and simple on purpose; it shares no formula with the program.

const density = (x) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

// Standard normal probability on a fine grid from -9, by Simpson's rule over each half step.
const STEP = 0.0005;
const CUMULATIVE = [0];
for (let i = 1; i <= 18 / STEP; i++) {
  const left = -9 + (i - 1) * STEP;
  CUMULATIVE.push(CUMULATIVE[i - 1] + (STEP / 6) * (density(left) + 4 * density(left + STEP / 2) + density(left + STEP)));
}
/** Between grid points by the density there: the error is below 1e-11. */
function below(x) {
  if (x <= -9) return 0;
  if (x >= 9) return 1;
  const at = Math.round((x + 9) / STEP);
  const from = -9 + at * STEP;
  const h = x - from;
  return CUMULATIVE[at] + h * density(from) * (1 - (from * h) / 2 + ((from * from - 1) * h * h) / 6);
}

function simpson(of, from, to, steps) {
  const h = (to - from) / steps;
  let sum = of(from) + of(to);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * of(from + i * h);
  return (h / 3) * sum;
}

/** Secant steps kept inside a bracket (the Illinois rule), to ten digits. */
function rootOf(of, low, high) {
  let [atLow, atHigh] = [of(low), of(high)];
  while (Math.abs(high - low) > 1e-10) {
    const between = (low * atHigh - high * atLow) / (atHigh - atLow);
    const here = of(between);
    if (Math.abs(here) < 1e-13) return between;
    if (here > 0 === atHigh > 0) atLow /= 2;
    else [low, atLow] = [high, atHigh];
    [high, atHigh] = [between, here];
  }
  return high;
}

/** Upper quantile of Student's t: with t = sqrt(degrees) tan(a) the density is proportional to cos(a)^(degrees - 1). */
function studentUpper(probability, degrees) {
  const area = (from) => simpson((a) => Math.cos(a) ** (degrees - 1), from, Math.PI / 2, 2000);
  const all = 2 * area(0);
  const angle = rootOf((a) => area(a) / all - probability, 0, Math.PI / 2 - 1e-9);
  return Math.sqrt(degrees) * Math.tan(angle);
}

/** F. E. Grubbs, Technometrics 11 (1969) 1; alpha for one tail. */
function grubbs(n, alpha) {
  const t2 = studentUpper(alpha / n, n - 2) ** 2;
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt(t2 / (n - 2 + t2));
}

/** Upper tail of r10 = (x_n - x_(n-1)) / (x_n - x_1): smallest x, range r, second largest at x + (1 - q) r. */
function dixonAbove(q, n) {
  const inner = (x, r) => {
    const second = x + (1 - q) * r;
    return density(x) * density(x + r) * (below(second) - below(x)) ** (n - 2);
  };
  // All but smallest and largest lie between x and x + (1 - q) r.
  return n * (n - 1) * simpson((r) => simpson((x) => inner(x, r), -7, 7, 100), 0, 13, 200);
}
const dixon = (n, alpha) => rootOf((q) => dixonAbove(q, n) - alpha, 0.05, 0.999);

/** Range of n standard normal values. */
const rangeBelow = (r, n) => n * simpson((x) => density(x) * (below(x + r) - below(x)) ** (n - 1), -8, 8, 400);
const criticalRange = (n) => rootOf((r) => rangeBelow(r, n) - 0.95, 1, 8);

const out = {};
for (const n of [3, 4, 5, 6, 7, 8, 9, 10, 12, 15]) out[`G two-sided 0.05, n = ${n}`] = grubbs(n, 0.025);
for (const n of [10, 14, 15]) out[`G two-sided 0.01, n = ${n}`] = grubbs(n, 0.005);
for (const n of [3, 4, 5, 6, 7, 8, 9, 10]) {
  out[`Q two-sided 0.05, n = ${n}`] = dixon(n, 0.025);
  out[`Q one-sided 0.05, n = ${n}`] = dixon(n, 0.05);
}
for (const n of [2, 3, 4, 5, 6, 7, 8, 9, 10, 20]) out[`critical range, n = ${n}`] = criticalRange(n);

// Figures of data sets, from the definitions.
const moments = (values) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return [mean, Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1))];
};
const coins = [3.067, 3.049, 3.039, 2.514, 3.048, 3.079, 3.094, 3.109, 3.102];
const [mean, deviation] = moments(coins);
out["G of nine coins"] = (mean - 2.514) / deviation;
out["Q of nine coins"] = (3.039 - 2.514) / (3.109 - 2.514);
const charged = [11.921, 12.04, 11.903, 12.024, 11.989, 12.037, 12.043, 12.019];
const charred = [1.843, 1.843, 1.846, 1.854, 1.844, 1.846, 1.847, 1.866];
const yields = charred.map((char, index) => (100 * char) / charged[index]);
const [meanYield, deviationOfYields] = moments(yields);
out["mean yield"] = meanYield;
out["s of the yields"] = deviationOfYields;
out["RSD of the yields in %"] = (100 * deviationOfYields) / meanYield;
out["r of the yields"] = 2.8 * deviationOfYields;
const first = (100 * 1.747) / 12.037;
const [meanOfNine, deviationOfNine] = moments([first, ...yields]);
out["G of the first run"] = (meanOfNine - first) / deviationOfNine;

console.log(JSON.stringify(out));
