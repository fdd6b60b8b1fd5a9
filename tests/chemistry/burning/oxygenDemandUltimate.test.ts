import fc from "fast-check";
import { atomicWeight } from "../../../src/chemistry/atomicWeights";
import { oxygenDemand } from "../../../src/chemistry/burning/oxygenDemand";
import { oxygenDemandUltimate } from "../../../src/chemistry/burning/oxygenDemandUltimate";
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
