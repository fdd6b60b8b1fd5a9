import fc from "fast-check";
import { atomicWeight } from "../../../src/chemistry/atomicWeights";
import { oxygenDemand } from "../../../src/chemistry/burning/oxygenDemand";
import { oxygenDemandUltimate, oxygenFactors } from "../../../src/chemistry/burning/oxygenDemandUltimate";
import { molarMass } from "../../../src/chemistry/molarMass";
import { formulaOf } from "../formulaOf";

const NAMES = { C: "carbon", H: "hydrogen", O: "oxygen", N: "nitrogen", S: "sulfur", Cl: "chlorine" } as const;

test("oxygenDemandUltimate of a formula's own mass fractions is the formula's oxygen demand", () => {
  const count = fc.integer({ min: 0, max: 50 });
  fc.assert(
    fc.property(fc.record({ C: fc.integer({ min: 1, max: 50 }), H: count, O: count, N: count, S: count, Cl: count }), (atoms) => {
      const formula = formulaOf(atoms);
      const total = molarMass(formula);
      const fractions = Object.fromEntries(
        Object.entries(NAMES).map(([symbol, name]) => [name, ((formula.atoms.get(symbol) ?? 0) * atomicWeight(symbol)) / total]),
      ) as Record<(typeof NAMES)[keyof typeof NAMES], number>;
      expect(oxygenDemandUltimate(fractions)).toBeCloseTo(oxygenDemand(formula), 12);
    }),
    { numRuns: 2000 },
  );
});

test("oxygenDemandUltimate allows fractions that sum to 1.02", () => {
  expect(oxygenDemandUltimate({ carbon: 0.5, hydrogen: 0.06, oxygen: 0.46 })).toBeCloseTo(0.5 * 2.66406 + 0.06 * 7.93601 - 0.46, 5);
});

// The bound, 1.02, is common practice without a source; what is held here is where it lies and that binary rounding alone never refuses.
const PLAIN = { carbon: 0.5, hydrogen: 0.06, oxygen: 0.3 };
const REFUSAL = (sum: string): Error =>
  new Error(`carbon to chlorine: the fractions sum to ${sum}, above 1.02. Give one basis, hydrogen and oxygen without those of moisture.`);

test.each(["carbon", "hydrogen", "oxygen", "nitrogen", "sulfur", "chlorine"] as const)(
  "oxygenDemandUltimate counts %s in the sum, allows 1.02 and refuses 1.0201",
  (element) => {
    const upTo = (sum: number): Parameters<typeof oxygenDemandUltimate>[0] => {
      const whole = { ...PLAIN, nitrogen: 0, sulfur: 0, chlorine: 0 };
      return { ...whole, [element]: sum - (0.86 - whole[element]) };
    };
    expect(oxygenDemandUltimate(upTo(1.02))).not.toBeNaN();
    expect(() => oxygenDemandUltimate(upTo(1.0201))).toThrow(REFUSAL("1.0201"));
  },
);

test("oxygenDemandUltimate gives the sum a slack of binary rounding, one part in a thousand million, and no more", () => {
  expect(oxygenDemandUltimate({ ...PLAIN, oxygen: 0.46 + 9e-10 })).toBeGreaterThan(0);
  expect(() => oxygenDemandUltimate({ ...PLAIN, oxygen: 0.46 + 1.1e-9 })).toThrow("above 1.02");
  // 1.02 in decimals; above it by 2e-16 in binary.
  expect(0.377 + 0.193 + 0.336 + 0.114).toBeGreaterThan(1.02);
  expect(oxygenDemandUltimate({ carbon: 0.377, hydrogen: 0.193, oxygen: 0.336, nitrogen: 0.114 })).toBeGreaterThan(0);
});

test("oxygenFactors are the grams of O2 on a gram of each element: CO2, H2O, SO2, and HCl that saves some", () => {
  // M(O2) 31.998 over 12.011, 4 x 1.008, 32.06 and 4 x 35.45, CIAAW 2021.
  expect(oxygenFactors()).toEqual({
    carbon: 31.998 / 12.011,
    hydrogen: 31.998 / (4 * 1.008),
    sulfur: 31.998 / 32.06,
    chlorine: 31.998 / (4 * 35.45),
  });
});
