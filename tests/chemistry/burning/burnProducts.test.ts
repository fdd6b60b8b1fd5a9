import fc from "fast-check";
import { airDemand } from "../../../src/chemistry/burning/airDemand";
import { burnProducts } from "../../../src/chemistry/burning/burnProducts";
import { burnReaction } from "../../../src/chemistry/burning/burnReaction";
import { oxygenDemand } from "../../../src/chemistry/burning/oxygenDemand";
import { formulaOf } from "../formulaOf";
import { decimalFuel, wholeFuel } from "./randomFuel";

test.each([
  ["wholes", wholeFuel],
  ["decimals", decimalFuel],
])("burnProducts closes: the products weigh as much as the fuel and the oxygen, counts in %s", (_, fuel) => {
  fc.assert(
    fc.property(fuel, (formula) => {
      const { massIn, massOut } = burnProducts(formula);
      expect(massIn).toBeCloseTo(1 + Math.max(0, oxygenDemand(formula)), 12);
      expect(Math.abs(massOut - massIn)).toBeLessThan(1e-12);
    }),
    { numRuns: 2000 },
  );
});

test("burnProducts closes with air as well, whatever the excess", () => {
  fc.assert(
    fc.property(
      wholeFuel.filter((formula) => burnReaction(formula).oxygen > 0),
      fc.double({ min: 0, max: 5, noNaN: true }),
      (formula, excess) => {
        const { massIn, massOut, air } = burnProducts(formula, excess);
        expect(air).toBeCloseTo(airDemand(oxygenDemand(formula)) * (1 + excess), 9);
        expect(Math.abs(massOut - massIn)).toBeLessThan(1e-11);
      },
    ),
    { numRuns: 1000 },
  );
});

test("burnProducts with air leaves oxygen and nitrogen in the ratio of air when the fuel needs next to none", () => {
  // One carbon, five times the air: mole shares of O2 in and left must give back 0.2095 of dry air.
  const { products, air } = burnProducts(formulaOf({ C: 1 }), 5);
  const moles = (name: string): number => products.find(({ product }) => product === name)?.moles ?? Number.NaN;
  const oxygenIn = moles("O2 left over") + moles("CO2");
  expect(oxygenIn / (oxygenIn + moles("N2 of the air, with argon"))).toBeCloseTo(0.2095, 4);
  expect(air).toBeGreaterThan(0);
});

test("burnProducts lists oxygen given off when the formula carries more than it needs", () => {
  const { products, massIn } = burnProducts(formulaOf({ K: 1, Cl: 1, O: 3 }));
  expect(products.map(({ product, moles }) => [product, moles])).toEqual([
    ["KCl", 1],
    ["O2 given off", 1.5],
  ]);
  expect(massIn).toBe(1);
});
