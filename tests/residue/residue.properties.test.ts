import fc from "fast-check";
import { ashFraction } from "../../src/residue/ashFraction";
import { BASES, type Basis, BASIS_QUANTITIES, type Composition, convertBasis } from "../../src/residue/convertBasis";
import { fixedCarbon } from "../../src/residue/fixedCarbon";
import { lossOnIgnition } from "../../src/residue/lossOnIgnition";
import { moistureWetBasis } from "../../src/drying/moisture";
import { proximate } from "../../src/residue/proximate";
import { volatileMatter } from "../../src/residue/volatileMatter";
import { BASIS_FACTORS } from "./basisFactors";

/** Whole milligrams as a balance shows them, in g. */
const grams = (fewest: number, most: number): fc.Arbitrary<number> => fc.integer({ min: fewest, max: most }).map((milligrams) => milligrams / 1000);
const share = (least: number, most: number): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });

/** Five weighings of one vessel, in the order they are taken. */
const run = fc
  .record({ vessel: grams(0, 60_000), ash: grams(0, 2000), carbon: grams(0, 9000), volatile: grams(1, 20_000), water: grams(0, 20_000) })
  .map(({ vessel, ash, carbon, volatile, water }) => {
    const [burnt, char] = [vessel + ash, vessel + ash + carbon];
    return [vessel, char + volatile + water, char + volatile, char, burnt] as const;
  });

test("PROXIMATE: the four shares are between 0 and 1 and sum to 1 on both bases", () => {
  fc.assert(
    fc.property(run, (weighings) => {
      for (const shares of Object.values(proximate(...weighings))) {
        const values = Object.values(shares) as number[];
        for (const value of values) expect(value).toBeGreaterThanOrEqual(0);
        expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 9);
      }
    }),
  );
});

test("PROXIMATE as received, carried to dry by BASIS.CONVERT, is PROXIMATE dry", () => {
  fc.assert(
    fc.property(run, (weighings) => {
      const { asReceived, dry } = proximate(...weighings);
      for (const name of ["volatileMatter", "fixedCarbon", "ash"] as const) {
        fc.pre(dry[name] < 0.999999);
        expect(convertBasis(asReceived[name], "as received", "dry", { moistureReceived: asReceived.moisture })).toBeCloseTo(dry[name], 9);
      }
    }),
  );
});

test("VOLATILEMATTER, ASHFRACTION and FIXEDCARBON give the shares of PROXIMATE, as analysed and dry", () => {
  fc.assert(
    fc.property(run, ([vessel, moist, dry, char, ash]) => {
      const expected = proximate(vessel, moist, dry, char, ash);
      const moisture = moistureWetBasis(vessel, moist, dry);
      const volatile = volatileMatter(vessel, moist, char, moisture);
      const ashes = ashFraction(vessel, moist, ash);
      expect(volatile).toBeCloseTo(expected.asReceived.volatileMatter, 9);
      expect(ashes).toBeCloseTo(expected.asReceived.ash, 9);
      expect(fixedCarbon(moisture, volatile, ashes)).toBeCloseTo(expected.asReceived.fixedCarbon, 9);
      expect(volatileMatter(vessel, moist, char, moisture, "dry")).toBeCloseTo(expected.dry.volatileMatter, 6);
      expect(ashFraction(vessel, moist, ash, moisture)).toBeCloseTo(expected.dry.ash, 6);
    }),
  );
});

test("LOSSONIGNITION and ASHFRACTION of one dry sample add up to 1", () => {
  fc.assert(
    fc.property(run, ([vessel, , dry, , ash]) => {
      expect(lossOnIgnition(vessel, dry, ash) + ashFraction(vessel, dry, ash)).toBeCloseTo(1, 9);
    }),
  );
});

const composition: fc.Arbitrary<Composition> = fc.record({
  moistureReceived: share(0.001, 0.7),
  moistureAnalysis: share(0.001, 0.2),
  ash: share(0, 0.3),
});
const basis = fc.constantFrom<Basis>(...BASES);
// A share of the dry and ash-free sample, so that it is possible on every basis.
const pure = share(0.01, 0.98);
const diluted = fc.constantFrom(...BASIS_QUANTITIES.filter((quantity) => quantity !== "ash" && quantity !== "moisture"));

test("BASIS.CONVERT there and back is the same share, for each pair of bases, hydrogen and oxygen included", () => {
  fc.assert(
    fc.property(pure, basis, basis, composition, diluted, (value, from, to, given, quantity) => {
      const there = convertBasis(value, "ash-free", from, given, quantity);
      expect(convertBasis(convertBasis(there, from, to, given, quantity), to, from, given, quantity)).toBeCloseTo(there, 9);
    }),
  );
});

test("BASIS.CONVERT by way of a third basis is the direct conversion", () => {
  fc.assert(
    fc.property(pure, basis, basis, basis, composition, diluted, (value, from, by, to, given, quantity) => {
      const there = convertBasis(value, "ash-free", from, given, quantity);
      expect(convertBasis(convertBasis(there, from, by, given, quantity), by, to, given, quantity)).toBeCloseTo(
        convertBasis(there, from, to, given, quantity),
        9,
      );
    }),
  );
});

test.each(Object.entries(BASIS_FACTORS))("BASIS.CONVERT %s multiplies by the printed factor", (way, factor) => {
  const [from, to] = way.split(" to ") as [Basis, Basis];
  fc.assert(
    fc.property(share(0.01, 0.2), composition, (value, given) => {
      const { moistureReceived = 0, moistureAnalysis = 0, ash = 0 } = given;
      expect(convertBasis(value, from, to, given)).toBeCloseTo(value * factor(100 * moistureReceived, 100 * moistureAnalysis, 100 * ash), 9);
    }),
  );
});

test("BASIS.CONVERT of hydrogen: water alone has no hydrogen left when dry, and a dry sample gains exactly that of its moisture", () => {
  fc.assert(
    fc.property(share(0.001, 0.5), (moisture) => {
      const given = { moistureReceived: moisture };
      const ofWater = convertBasis(0, "dry", "as received", given, "hydrogen");
      expect(ofWater).toBeCloseTo((moisture * 2.016) / 18.015, 12);
      expect(convertBasis(ofWater, "as received", "dry", given, "hydrogen")).toBeCloseTo(0, 12);
      // Water is hydrogen and oxygen and nothing else.
      expect(ofWater + convertBasis(0, "dry", "as received", given, "oxygen")).toBeCloseTo(moisture, 12);
    }),
  );
});

test("a heavier vessel changes no share", () => {
  fc.assert(
    fc.property(run, grams(1, 90_000), (weighings, heavier) => {
      const moved = proximate(...(weighings.map((weight) => weight + heavier) as unknown as typeof weighings));
      const expected = proximate(...weighings);
      for (const basisName of ["asReceived", "dry"] as const)
        for (const name of ["moisture", "volatileMatter", "fixedCarbon", "ash"] as const)
          expect(moved[basisName][name]).toBeCloseTo(expected[basisName][name], 6);
    }),
  );
});

test("BASIS.CONVERT: every quantity on the basis it already stands on is itself, moisture too", () => {
  for (const basis of BASES.filter((one) => one !== "ash-free"))
    for (const quantity of BASIS_QUANTITIES) expect([basis, quantity, convertBasis(0.3, basis, basis, {}, quantity)]).toEqual([basis, quantity, 0.3]);
});
