import { numberOf } from "../functions/call";
import { halfLastDigit } from "./halfLastDigit";

// OIML D 28: conventional mass = mass (1 - 1.2 / density) / (1 - 1.2 / 8000); "about -3e-4 for aluminium to +1e-4 for
// platinum". With everything left out the reading is the conventional mass.
test.each([
  ["aluminium", 2700, -2.944884e-4, "-0.0003"],
  ["platinum", 21_450, 9.4e-5, "0.0001"],
])("BUOYANCY: the conventional mass of %s deviates by %3$s from its mass", (_metal, density, deviation, printed) => {
  const ours = 1 / numberOf("BUOYANCY", 1, density) - 1;
  expect(Math.abs(ours - deviation)).toBeLessThan(1e-7 + 5e-7 * Number(density === 21_450));
  expect(Math.abs(ours - Number(printed))).toBeLessThanOrEqual(halfLastDigit(printed));
});

// NPL guidance note on buoyancy correction: [0.348444 P - h (0.00252 t - 0.020582)] / (273.15 + t), P in mbar, h in %.
const npl = (t: number, p: number, h: number): number => (0.348444 * p - h * (0.00252 * t - 0.020582)) / (273.15 + t);

test("both formulas of AIRDENSITY agree with that of NPL within 3 parts in 100 000 at 20 degC, 1013.25 mbar, 50 %", () => {
  expect(npl(20, 1013.25, 50)).toBeCloseTo(1.1992835852, 9);
  for (const formula of ["CIPM-2007", "OIML"])
    expect(Math.abs(numberOf("AIRDENSITY", 20, 101_325, 0.5, formula) / npl(20, 1013.25, 50) - 1)).toBeLessThan(3e-5);
});

// Its humidity term is a straight line through 20 degC, so it strays further out: 1.2e-3 at 15 degC and 80 %.
test("AIRDENSITY by CIPM-2007 agrees with the NPL formula within 4 parts in 10 000 over 18 to 23 degC, 900 to 1100 mbar, 20 to 60 %", () => {
  for (let t = 18; t <= 23; t++)
    for (let p = 900; p <= 1100; p += 20)
      for (let h = 20; h <= 60; h += 10) expect(Math.abs(numberOf("AIRDENSITY", t, 100 * p, h / 100) / npl(t, p, h) - 1)).toBeLessThan(4e-4);
});
