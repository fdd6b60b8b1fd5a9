import { endOfDrying } from "../../../src/drying/end/endOfDrying";

// Both runs worked by endByHand.py, which stands beside this file and shares nothing with the program.
test("DRYING.END of readings on the curve itself carries the balance's uncertainty, as worked by hand", () => {
  const run = { times: [0, 30, 60, 90, 120], weights: [10, 9.2, 8.8, 8.6, 8.5], readability: 0.001 };
  const { fit, curveUncertainty, rateUncertainty, waterLeft, waterCurveUncertainty, scatter, weighingDeviation } = endOfDrying(run);
  expect(fit.final).toBeCloseTo(8.4, 9);
  expect(fit.rate).toBeCloseTo(0.02310490602, 11);
  expect(curveUncertainty).toEqual({ standard: expect.closeTo(0.00061921273, 10), expanded: expect.closeTo(0.00121363, 8) });
  expect(rateUncertainty).toBeCloseTo(2.5476223e-5, 11);
  expect(waterLeft).toBeCloseTo(0.1, 9);
  expect(waterCurveUncertainty).toEqual({ standard: expect.closeTo(0.00033267317, 10), expanded: expect.closeTo(0.000652027, 8) });
  expect(scatter).toBeCloseTo(0, 9);
  // Two roundings of one step, 1 mg / sqrt 6, and no less although the readings lie closer.
  expect(weighingDeviation).toBeCloseTo(0.00040824829, 10);
});

test("DRYING.END of readings that stray carries their scatter with Student's factor, as worked by hand", () => {
  const run = { times: [0, 30, 60, 90, 120, 150, 200], weights: [10, 9.203, 8.798, 8.603, 8.497, 8.453, 8.414], readability: 0.001 };
  const { fit, curveUncertainty, rateUncertainty, waterLeft, waterCurveUncertainty, scatter, weighingDeviation } = endOfDrying(run);
  expect(fit.final).toBeCloseTo(8.399225836, 8);
  expect(fit.rate).toBeCloseTo(0.02304345793, 10);
  expect(curveUncertainty).toEqual({ standard: expect.closeTo(0.002464982, 8), expanded: expect.closeTo(0.0068439, 7) });
  expect(rateUncertainty).toBeCloseTo(0.00013470192, 9);
  expect(waterLeft).toBeCloseTo(0.01595486567, 9);
  expect(waterCurveUncertainty).toEqual({ standard: expect.closeTo(0.00043793472, 9), expanded: expect.closeTo(0.0012159, 7) });
  expect(scatter).toBeCloseTo(0.003152793414, 9);
  expect(weighingDeviation).toBe(scatter);
});

test("DRYING.END of a run timed from another hour is the same end, uncertainties and water left included", () => {
  const times = [0, 30, 60, 90, 120, 150, 200];
  const weights = [10, 9.203, 8.798, 8.603, 8.497, 8.453, 8.414];
  const [near, far] = [0, 480].map((later) =>
    endOfDrying({ times: times.map((minutes) => minutes + later), weights, readability: 0.001, timing: 0.5 }),
  );
  const figures = [near, far].map((end) => [
    end?.fit.final,
    end?.uncertainty.expanded,
    end?.rateUncertainty,
    end?.waterLeft,
    end?.waterUncertainty.standard,
  ]);
  expect(figures[1]).toEqual(figures[0]?.map((value) => expect.closeTo(value ?? NaN, 8) as number));
});

// In doubt of half a minute, a weighing counts by hypot(1 mg / sqrt 6, 0.5 min / sqrt 3 x its rate); the rate at an end is that
// to its one neighbour. The scatter is put in the terms of the weighing that is known best, here the last.
test("DRYING.END's scatter of a run in doubt of its times is that of its least doubtful weighing, as worked by hand", () => {
  const times = [0, 30, 60, 90, 120, 150, 200];
  const weights = [10, 9.203, 8.798, 8.603, 8.497, 8.453, 8.414];
  const { fit, points, scatter, weighingDeviation } = endOfDrying({ times, weights, readability: 0.001, timing: 0.5 });
  expect(points).toHaveLength(7);
  const rates = [0.797 / 30, 1.202 / 60, 0.6 / 60, 0.301 / 60, 0.15 / 60, 0.083 / 80, 0.039 / 50];
  const deviations = rates.map((rate) => Math.hypot(0.001 / Math.sqrt(6), (0.5 / Math.sqrt(3)) * rate));
  const squares = deviations.map(
    (deviation, i) => (((weights[i] as number) - fit.final - fit.water * Math.exp(-fit.rate * (times[i] as number))) / deviation) ** 2,
  );
  const best = deviations.at(-1) as number;
  expect(Math.min(...deviations)).toBe(best);
  const byHand = best * Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / 4);
  expect(scatter).toBeCloseTo(byHand, 9);
  expect(weighingDeviation).toBeCloseTo(Math.max(best, byHand), 9);
});
