import { threePointEnd, type ThreePointEnd } from "../../src/drying/end/threePointEnd";

const end = (weighings: [number, number, number]): ThreePointEnd => threePointEnd(weighings) as ThreePointEnd;

// Exact for a first-order curve, 20 + 5 exp(-0.8 t): weighings at 0, 0.5 and 1 h. DRYING.END, which rounds its weighings
// and its answer, is held to the same figures in drying.ts.
test("the three-point extrapolation of an exact first-order curve is its end, 20 g, and its rate is 0.8 per hour", () => {
  const { final, ratio } = end([25, 23.351600230178196, 22.24664482058611]);
  expect(Math.abs(final - 20)).toBeLessThan(1e-9);
  expect(Math.abs(-Math.log(ratio) / 0.5 - 0.8)).toBeLessThan(1e-9);
});

// Worked by hand: (25 x 22.25 - 23.35^2) / (25 - 2 x 23.35 + 22.25) = 11.0275 / 0.55. DRYING.END refuses so early a run.
test("the three-point extrapolation of the same weighings rounded to 0.01 g is 20.05 g", () => {
  expect(Math.abs(end([25, 23.35, 22.25]).final - 20.05)).toBeLessThan(1e-6);
});

// The peel's means at 930, 1410 and 1890 min (drying.ts); the mean at 2370 min was 71.4718 %, above the predicted end.
test("the three-point extrapolation of the peel's loss at 930, 1410 and 1890 min is 71.3586 %, below what was lost later", () => {
  const lost = 100 - end([100 - 69.8813, 100 - 71.2191, 100 - 71.3454]).final;
  expect(Math.abs(lost - 71.3585921)).toBeLessThan(0.0005);
  expect(lost).toBeLessThan(71.4718);
});
