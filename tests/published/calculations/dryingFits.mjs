// Least squares by a search over the nonlinear parameters, the linear ones solved for at each step: it follows no gradient
// and shares nothing with the program's own fit.

function leastSquares(columns, values) {
  // Normal equations of one or two columns, solved by Cramer's rule.
  const dot = (a, b) => a.reduce((sum, one, i) => sum + one * b[i], 0);
  const coefficients =
    columns.length === 1
      ? [dot(columns[0], values) / dot(columns[0], columns[0])]
      : (() => {
          const [a, b] = columns;
          const [aa, ab, bb, ay, by] = [dot(a, a), dot(a, b), dot(b, b), dot(a, values), dot(b, values)];
          const det = aa * bb - ab * ab;
          return [(ay * bb - by * ab) / det, (aa * by - ab * ay) / det];
        })();
  const left = values.map((value, i) => value - coefficients.reduce((sum, c, j) => sum + c * columns[j][i], 0));
  return { coefficients, squares: dot(left, left) };
}

/** Narrowing search over a box of parameters on a logarithmic scale, eleven points a side. */
function search(squaresAt, box) {
  let sides = box.map(([low, high]) => [Math.log(low), Math.log(high)]);
  let best;
  for (let round = 0; round < 60; round++) {
    best = { squares: Infinity };
    const grid = sides.map(([low, high]) => Array.from({ length: 11 }, (_, i) => low + ((high - low) * i) / 10));
    const visit = (chosen) => {
      if (chosen.length < grid.length) return grid[chosen.length].forEach((one) => visit([...chosen, one]));
      const squares = squaresAt(chosen.map(Math.exp));
      if (squares < best.squares) best = { squares, at: chosen };
    };
    visit([]);
    sides = sides.map(([low, high], i) => {
      const half = (high - low) * 0.3;
      return [best.at[i] - half, best.at[i] + half];
    });
  }
  return best.at.map(Math.exp);
}

// Pomegranate peel, mass lost in per cent, means of 8: data set "granada" of the R package AgroReg. The first sample is
// taken as exact, so the mass is M(t) = end + (100 - end) ratio(t), linear in the end.
const minutes = [0, 60, 210, 390, 720, 930, 1410, 1890, 2370];
const left = [0, 18.507, 39.421, 48.01, 65.648, 69.881, 71.219, 71.345, 71.472].map((lost) => 100 - lost);
const peel = (ratio, box) => {
  const fit = (parameters) => {
    const ratios = minutes.map((t) => ratio(t, parameters));
    return leastSquares(
      [ratios.map((r) => 1 - r)],
      left.map((mass, i) => mass - 100 * ratios[i]),
    );
  };
  const parameters = search((p) => fit(p).squares, box);
  return [fit(parameters).coefficients[0], ...parameters];
};

// Data set "waterloss" (arsilva87/seedwater, described there as hypothetical): water in g over hours, dry mass 0, start exact.
const hours = [0, 1 / 12, 2 / 12, 3 / 12, 4 / 12, 5 / 12, 0.5, 0.75, 1, 1.5, 2];
const water = [
  0.13999696172, 0.05630950724, 0.04266682476, 0.03004829982, 0.0204798832, 0.01461220992, 0.00604734354, 0.00280339234, 0.00280726152, 0, 0,
];
const waterLoss = (ratio, box) => search((p) => hours.reduce((sum, t, i) => sum + (water[i] / water[0] - ratio(t, p)) ** 2, 0), box);

const newton = (t, [k]) => Math.exp(-k * t);
const page = (t, [k, n]) => Math.exp(-k * t ** n);
const modifiedPage = (t, [k, n]) => Math.exp(-((k * t) ** n));

const [newtonEnd, newtonRate] = peel(newton, [[1e-4, 1e-1]]);
const [pageEnd, pageRate, pageExponent] = peel(modifiedPage, [
  [1e-4, 1e-1],
  [0.2, 3],
]);
const [waterRate] = waterLoss(newton, [[0.1, 100]]);
const [waterPageRate, waterPageExponent] = waterLoss(page, [
  [0.1, 100],
  [0.1, 3],
]);

// Three equidistant weighings of 20 + 5 exp(-0.8 t) at 0, 0.5 and 1 h, and of 8.4 + 1.6 / 2^(t / 30 min).
const threePoints = ([a, b, c]) => (a * c - b * b) / (a - 2 * b + c);

console.log(
  JSON.stringify({
    "peel, Newton: end": newtonEnd,
    "peel, Newton: k": newtonRate,
    "peel, modified Page: end": pageEnd,
    "peel, modified Page: k": pageRate,
    "peel, modified Page: n": pageExponent,
    "water loss, Newton: k": waterRate,
    "water loss, Page: k": waterPageRate,
    "water loss, Page: n": waterPageExponent,
    "three points, exact": threePoints([25, 23.351600230178196, 22.24664482058611]),
    "three points, peel": threePoints([30.1187, 28.7809, 28.6546]),
    "halving every 30 min: k": Math.LN2 / 30,
  }),
);
