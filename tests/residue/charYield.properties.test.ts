import fc from "fast-check";
import { charYield } from "../../src/residue/charYield";
import { volatileFraction } from "../../src/residue/volatileMatter";

/** Whole milligrams as a balance shows them, in g. */
const grams = (fewest: number, most: number): fc.Arbitrary<number> => fc.integer({ min: fewest, max: most }).map((milligrams) => milligrams / 1000);
const vessel = grams(0, 60_000);
const loaded = fc.record({ vessel, residue: grams(1, 40_000), lost: grams(0, 40_000) });

test("char yield and volatile fraction of one run add up to 1", () => {
  fc.assert(
    fc.property(loaded, ({ vessel, residue, lost }) => {
      const weighings = [vessel, vessel + residue + lost, vessel + residue] as const;
      expect(charYield(...weighings) + volatileFraction(...weighings)).toBeCloseTo(1, 9);
    }),
  );
});

test("taking ash off the char never raises the char yield", () => {
  fc.assert(
    fc.property(loaded, fc.double({ min: 0, max: 0.99, noNaN: true }), ({ vessel, residue, lost }, ashShare) => {
      const [dry, char] = [vessel + residue + lost, vessel + residue];
      expect(charYield(vessel, dry, char, vessel + ashShare * residue)).toBeLessThanOrEqual(charYield(vessel, dry, char) + 1e-9);
    }),
  );
});

test("scaling every weighing changes no char yield", () => {
  fc.assert(
    fc.property(loaded, fc.double({ min: 0.01, max: 1000, noNaN: true }), ({ vessel, residue, lost }, scale) => {
      const [moist, dry] = [vessel + residue + lost, vessel + residue];
      expect(charYield(vessel * scale, moist * scale, dry * scale)).toBeCloseTo(charYield(vessel, moist, dry), 6);
    }),
  );
});

test("a heavier vessel changes no char yield", () => {
  fc.assert(
    fc.property(loaded, grams(1, 90_000), ({ vessel, residue, lost }, heavier) => {
      const [moist, dry] = [vessel + residue + lost, vessel + residue];
      expect(charYield(vessel + heavier, moist + heavier, dry + heavier)).toBeCloseTo(charYield(vessel, moist, dry), 6);
    }),
  );
});
