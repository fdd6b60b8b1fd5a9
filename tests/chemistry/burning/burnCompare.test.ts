import fc from "fast-check";
import { burnCompare, type Fate } from "../../../src/chemistry/burning/burnCompare";
import { burnedAnalysis, burnedFormula } from "../../../src/chemistry/burning/burnedGram";
import { burnReaction } from "../../../src/chemistry/burning/burnReaction";
import { oxygenDemand } from "../../../src/chemistry/burning/oxygenDemand";
import { formulaOf } from "../formulaOf";
import { wholeFuel } from "./randomFuel";

const grams = fc.double({ min: 0.01, max: 5000, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

const expectClosed = ({ massIn, massOut }: Fate): void => expect(Math.abs(massOut - massIn)).toBeLessThan(1e-9 * massIn);

test("burnCompare closes on both sides for any formula that takes up oxygen", () => {
  fc.assert(
    fc.property(
      wholeFuel.filter((formula) => burnReaction(formula).oxygen >= 0),
      grams,
      share,
      share,
      (formula, dry, charShare, ashShare) => {
        const leavesSolids = burnReaction(formula).products.some(({ leaves }) => leaves === "solid");
        const { charred, burned } = burnCompare(dry, dry * charShare, burnedFormula(formula, leavesSolids ? 0 : ashShare));
        expectClosed(charred);
        expectClosed(burned);
        expect(charred.gone).toBeCloseTo(dry * (1 - charShare), 6);
      },
    ),
    { numRuns: 1000 },
  );
});

test("burnCompare closes for any analysis that sums to 0.9 to 1.1, what it does not cover included", () => {
  const analysis = fc.record({
    carbon: share,
    hydrogen: share,
    nitrogen: share,
    sulfur: share,
    ash: share,
    sum: fc.double({ min: 0.9, max: 1.1, noNaN: true }),
  });
  fc.assert(
    fc.property(analysis, grams, ({ sum, ...parts }, dry) => {
      const total = Object.values(parts).reduce((a, b) => a + b, 0);
      fc.pre(total > 0.01);
      const [carbon, hydrogen, nitrogen, sulfur, ash] = Object.values(parts).map((part) => (part * sum) / total) as [
        number,
        number,
        number,
        number,
        number,
      ];
      const { burned } = burnCompare(dry, dry / 2, burnedAnalysis({ carbon, hydrogen, oxygen: 0, nitrogen, sulfur }, ash));
      expectClosed(burned);
      expect(burned.notCovered / dry).toBeCloseTo(1 - sum, 9);
    }),
    { numRuns: 1000 },
  );
});

test("burnCompare burns only what is not ash", () => {
  const cellulose = formulaOf({ C: 6, H: 10, O: 5 });
  const { burned } = burnCompare(10, 3, burnedFormula(cellulose, 0.2));
  expect(burned.oxygenTaken).toBeCloseTo(8 * oxygenDemand(cellulose), 12);
  expect(burned.left).toBeCloseTo(2, 12);
});

test("burnCompare gives the same from cellulose's formula and from its mass fractions", () => {
  const [carbon, hydrogen, oxygen] = [6 * 12.011, 10 * 1.008, 5 * 15.999].map((mass) => mass / 162.141) as [number, number, number];
  const byFormula = burnCompare(10, 3, burnedFormula(formulaOf({ C: 6, H: 10, O: 5 }), 0)).burned;
  const byAnalysis = burnCompare(10, 3, burnedAnalysis({ carbon, hydrogen, oxygen, nitrogen: 0, sulfur: 0 }, 0)).burned;
  for (const key of Object.keys(byFormula) as (keyof typeof byFormula)[]) expect(byAnalysis[key]).toBeCloseTo(byFormula[key], 9);
});

test("burnedFormula leaves the formula's own solids where no ash was weighed: calcium oxalate leaves 0.438 of lime", () => {
  // CaO 56.077 / CaC2O4 128.096, atomic weights CIAAW 2021.
  expect(burnedFormula(formulaOf({ Ca: 1, C: 2, O: 4 }), 0).solid).toBeCloseTo(56.077 / 128.096, 12);
});
