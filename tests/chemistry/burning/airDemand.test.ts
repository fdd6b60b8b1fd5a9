import { AIR_MOLAR_MASS, airDemand, kindOfAir, OXYGEN_IN_AIR, oxygenByVolume } from "../../../src/chemistry/burning/airDemand";
import { burnProducts } from "../../../src/chemistry/burning/burnProducts";
import { workingIn } from "../../functions/call";
import { formulaOf } from "../formulaOf";

// Picard, Davis, Glaser, Fujii, Metrologia 45 (2008) 149-155, CIPM-2007: M(air) = 28.965 46 g/mol at 400 ppm of carbon dioxide.
test("the molar mass of dry air is that of CIPM-2007 to three decimals", () => {
  expect(AIR_MOLAR_MASS).toBe(Number("28.96546".slice(0, -2)));
});

// U.S. Standard Atmosphere 1976, table 3 (from memory): mole fractions N2 0.780 84, O2 0.209 476, Ar 0.009 34, CO2 0.000 314.
const SHARES: Readonly<Record<string, readonly [moleFraction: number, gramsPerMole: number]>> = {
  nitrogen: [0.78084, 28.014],
  oxygen: [0.209476, 31.998],
  argon: [0.00934, 39.95],
  carbonDioxide: [0.000314, 44.009],
};
const massOf = (gases: readonly string[]): number => gases.reduce((sum, gas) => sum + (SHARES[gas]?.[0] ?? NaN) * (SHARES[gas]?.[1] ?? NaN), 0);
const all = Object.keys(SHARES);

test("oxygen by mass in dry air is that of its composition, to four decimals", () => {
  expect(OXYGEN_IN_AIR).toBe(Number((massOf(["oxygen"]) / massOf(all)).toFixed(4)));
});

test("airDemand divides by 0.2314 or by the share given", () => {
  expect(airDemand(2.314)).toBeCloseTo(10, 12);
  expect(airDemand(2.3, 0.23)).toBeCloseTo(10, 12);
});

test("the air without its oxygen weighs 28.16 g/mol, as its composition says", () => {
  const rest = all.filter((gas) => gas !== "oxygen");
  const moles = rest.reduce((sum, gas) => sum + (SHARES[gas]?.[0] ?? NaN), 0);
  const { products } = burnProducts(formulaOf({ C: 1 }), 0);
  const nitrogen = products.find(({ product }) => product === "N2 of the air, with argon");
  const gramsPerMole = ((nitrogen?.grams ?? NaN) * 12.011) / (nitrogen?.moles ?? NaN);
  expect(gramsPerMole).toBeCloseTo(massOf(rest) / moles, 2);
  // (1 - w) / (1/M - w/M(O2)) by hand from 0.2314, 28.965 and 31.998.
  expect(gramsPerMole).toBeCloseTo(0.7686 / (1 / 28.965 - 0.2314 / 31.998), 9);
});

test("burnProducts with air lists by the mole what it lists by mass", () => {
  const { products, air } = burnProducts(formulaOf({ C: 1, H: 4 }), 0.5);
  const moles = (name: string): number => products.find(({ product }) => product === name)?.moles ?? NaN;
  expect(moles("O2 left over")).toBeCloseTo(1, 12);
  // Three moles of O2 let in, and the rest of the air by mass on 28.16 g/mol.
  expect(moles("N2 of the air, with argon")).toBeCloseTo(((3 * 31.998) / 0.2314) * (1 / 28.965) - 3, 9);
  expect(air).toBeCloseTo((3 * 31.998) / 0.2314 / 16.043, 9);
});

test.each([
  [0.05, "vitiated"],
  [0.1999, "vitiated"],
  [0.22, undefined],
  [0.2314, undefined],
  [0.25, undefined],
  [0.2501, "enriched"],
  [1, "enriched"],
])("air with %d of oxygen by mass is %s", (share, kind) => {
  expect(kindOfAir(share)).toBe(kind);
});

// Worked by hand: mixtures of oxygen, 31.998 g/mol, and what is left of air, 28.16 g/mol.
test("the share by volume of dry air, of pure oxygen and of a half-and-half mixture", () => {
  expect(oxygenByVolume(0.2314)).toBeCloseTo(0.20947, 5);
  expect(oxygenByVolume(1)).toBe(1);
  expect(oxygenByVolume(31.998 / (31.998 + 28.16))).toBeCloseTo(0.5, 4);
});

test("This cell says so where the gas is not ordinary air", () => {
  expect(workingIn("=RETORT.AIRDEMAND(1.2, 0.3)")).toEqual([
    "air demand = 1.2 / 0.3 = 4 g air per g",
    "0.3 of oxygen by mass is 0.274 by volume: enriched air, in which things catch fire more easily and burn faster and hotter.",
  ]);
  expect(workingIn("=RETORT.AIRDEMAND(1.2, 0.15)")).toEqual([
    "air demand = 1.2 / 0.15 = 8 g air per g",
    "0.15 of oxygen by mass is 0.134 by volume: air short of oxygen, in which many flames go out and burning is not complete.",
  ]);
  expect(workingIn("=RETORT.AIRDEMAND(1.2, 0.24)")).toHaveLength(1);
});
