import fc from "fast-check";
import { convertMoisture, moistureDryBasis, moistureWetBasis } from "../../src/drying/moisture";

/** Whole milligrams as a balance shows them, in g. */
const grams = (fewest: number, most: number): fc.Arbitrary<number> => fc.integer({ min: fewest, max: most }).map((milligrams) => milligrams / 1000);
const vessel = grams(0, 60_000);
const loaded = fc.record({ vessel, residue: grams(1, 40_000), lost: grams(0, 40_000) });

test("moisture carried to the other basis and back is the same moisture", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.98, noNaN: true }), (moisture) => {
      expect(convertMoisture(convertMoisture(moisture, "wet", "dry"), "dry", "wet")).toBeCloseTo(moisture, 12);
    }),
  );
});

test("the two moistures of one pair of weighings convert into each other", () => {
  fc.assert(
    fc.property(loaded, ({ vessel, residue, lost }) => {
      const weighings = [vessel, vessel + residue + lost, vessel + residue] as const;
      const wet = moistureWetBasis(...weighings);
      expect(wet).toBeGreaterThanOrEqual(0);
      expect(wet).toBeLessThan(1);
      expect(convertMoisture(wet, "wet", "dry") / (moistureDryBasis(...weighings) || 1)).toBeCloseTo(wet === 0 ? 0 : 1, 6);
    }),
  );
});

test("scaling every weighing changes no moisture", () => {
  fc.assert(
    fc.property(loaded, fc.double({ min: 0.01, max: 1000, noNaN: true }), ({ vessel, residue, lost }, scale) => {
      const [moist, dry] = [vessel + residue + lost, vessel + residue];
      expect(moistureWetBasis(vessel * scale, moist * scale, dry * scale)).toBeCloseTo(moistureWetBasis(vessel, moist, dry), 6);
    }),
  );
});

test("a heavier vessel changes no moisture", () => {
  fc.assert(
    fc.property(loaded, grams(1, 90_000), ({ vessel, residue, lost }, heavier) => {
      const [moist, dry] = [vessel + residue + lost, vessel + residue];
      expect(moistureWetBasis(vessel + heavier, moist + heavier, dry + heavier)).toBeCloseTo(moistureWetBasis(vessel, moist, dry), 6);
    }),
  );
});
