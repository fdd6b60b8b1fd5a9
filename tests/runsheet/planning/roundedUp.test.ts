import fc from "fast-check";
import { roundedUp } from "../../../src/runsheet/planning/roundedUp";

describe("roundedUp(grams, readability)", () => {
  test.each([
    [5.0279, 0.01, 5.03],
    [1.4515, 0.01, 1.46],
    [1.4515, 0.1, 1.5],
    [0.014515, 0.0001, 0.0146],
    [145.15, 0.01, 146],
    [1451.5, 0.1, 1460],
    [5, 0.01, 5],
    [0.3, 0.1, 0.3],
  ])("takes %d g on a balance with steps of %d g to %d g", (grams, readability, rounded) => {
    expect(roundedUp(grams, readability)).toBeCloseTo(rounded, 10);
  });

  test("never comes out below the mass, and by less than a hundredth of it or a display step above", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1e5, noNaN: true }), fc.constantFrom(0.1, 0.01, 0.001, 0.0001), (grams, readability) => {
        const rounded = roundedUp(grams, readability);
        expect(rounded).toBeGreaterThanOrEqual(grams * (1 - 1e-9));
        expect(rounded - grams).toBeLessThanOrEqual(Math.max(readability, grams / 100) * (1 + 1e-9));
      }),
    );
  });
});
