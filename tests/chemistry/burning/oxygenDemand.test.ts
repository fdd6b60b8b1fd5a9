import fc from "fast-check";
import { oxygenPerMole, type EndsAs } from "../../../src/chemistry/burning/oxygenDemand";
import { wholeFuel } from "./randomFuel";

const perMole = (atoms: Readonly<Record<string, number>>, endsAs?: EndsAs): number => oxygenPerMole(new Map(Object.entries(atoms)), endsAs);

// Water trade, ThOD: OECD Test Guideline 301, annex (from memory):
// ThOD(NH3) = 16 [2c + (h - cl - 3n)/2 + 3s + (5/2)p + na/2 - o] / M;  ThOD(NO3) = 16 [2c + (h - cl)/2 + (5/2)n + 3s + (5/2)p + na/2 - o] / M.
test.each([
  ["NH3", (n: number) => (-3 * n) / 2],
  ["HNO3", (n: number) => (5 * n) / 2],
] as const)("oxygenPerMole with nitrogen to %s and sulfur to H2SO4 is the theoretical oxygen demand of the water trade", (nitrogenTo, ofNitrogen) => {
  const count = fc.nat(40);
  fc.assert(
    fc.property(fc.record({ C: count, H: count, O: count, N: count, S: count, P: count, Cl: count, Na: count }), (atoms) => {
      const { C, H, O, N, S, P, Cl, Na } = atoms;
      const oxygenAtoms = 2 * C + (H - Cl) / 2 + ofNitrogen(N) + 3 * S + (5 / 2) * P + Na / 2 - O;
      expect(perMole(atoms, { nitrogenTo, sulfurTo: "H2SO4" })).toBeCloseTo(oxygenAtoms / 2, 9);
    }),
  );
});

test("oxygenPerMole in combustion is c + (h - x)/4 - o/2 + s + 5p/4 + alkali/4 + [Mg Ca Ba Zn Cu]/2 + 3[Al Fe]/4 + Si while hydrogen lasts", () => {
  fc.assert(
    fc.property(wholeFuel, ({ atoms }) => {
      const of = (...elements: readonly string[]): number => elements.reduce((sum, element) => sum + (atoms.get(element) ?? 0), 0);
      fc.pre(of("F", "Cl", "Br", "I") <= of("H"));
      const expected =
        of("C") +
        (of("H") - of("F", "Cl", "Br", "I")) / 4 -
        of("O") / 2 +
        of("S") +
        (5 / 4) * of("P") +
        of("Li", "Na", "K") / 4 +
        of("Mg", "Ca", "Ba", "Zn", "Cu") / 2 +
        (3 / 4) * of("Al", "Fe") +
        of("Si");
      expect(oxygenPerMole(atoms)).toBeCloseTo(expected, 9);
    }),
    { numRuns: 2000 },
  );
});

test.each([
  ["chloroform: 1 HCl, 1 Cl2, no hydrogen left to burn", { C: 1, H: 1, Cl: 3 }, 1],
  ["carbon tetrachloride: CO2 and 2 Cl2", { C: 1, Cl: 4 }, 1],
  ["table salt: nothing burns", { Na: 1, Cl: 1 }, 0],
  ["silicon tetrachloride: SiO2 and 2 Cl2", { Si: 1, Cl: 4 }, 1],
])("oxygenPerMole where halogen exceeds hydrogen, %s", (_, atoms, expected) => {
  expect(perMole(atoms as Readonly<Record<string, number>>)).toBe(expected);
});

test("oxygenPerMole in the water trade's convention takes the missing hydrogen from water: CCl4 + 2 H2O = CO2 + 4 HCl", () => {
  expect(perMole({ C: 1, Cl: 4 }, { nitrogenTo: "NH3", sulfurTo: "H2SO4" })).toBe(0);
});
