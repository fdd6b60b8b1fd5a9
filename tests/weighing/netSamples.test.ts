import { netSamples } from "../../src/drying/weighingSeries";

test("netSamples clears the rounding of binary subtraction", () => {
  expect(netSamples([35, 33.893], 25)).toEqual([10, 8.893]);
});

test("netSamples lets a sample regain up to a tenth of its first weighing", () => {
  expect(netSamples([35, 36], 25)).toEqual([10, 11]);
  expect(() => netSamples([35, 36.001], 25)).toThrow(
    "weights: row 2 holds 36.001 g, far above row 1, 35 g. Check for a wrong cell, a slipped decimal or another vessel.",
  );
});
