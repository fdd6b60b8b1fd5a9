import { airDensity } from "../../src/balance/airDensity";
import { blankCorrected } from "../../src/balance/blankCorrected";
import { buoyancy } from "../../src/balance/buoyancy";
import { hotWeighing } from "../../src/balance/hotWeighing";
import { zeroDrift } from "../../src/balance/zeroDrift";
import { halfLastDigit } from "./halfLastDigit";

const expectPrinted = (ours: number, printed: string): void => {
  expect(Math.abs(ours - Number(printed))).toBeLessThanOrEqual(halfLastDigit(printed));
};

describe("BUOYANCY", () => {
  test.each([
    ["2 g of aluminium, 2700 kg/m3", 2, 2700, "2.000589", "a balance maker's manual, page 84, prints 2000.589 mg"],
    ["2.3200 g of a liquid of 920 kg/m3", 2.32, 920, "2.3227", "Skoog, West and Holler, example, from memory"],
    ["100.00 g of tris, 1330 kg/m3", 100, 1330, "100.08", "Harris, Quantitative Chemical Analysis, from memory"],
    ["100 g of water, 998.2 kg/m3", 100, 998.2, "100.105", "handbook correction for water at 20 degC, from memory"],
  ])("%s is %4$s g (%5$s)", (_what, reading, density, printed) => {
    expectPrinted(buoyancy(reading, density), printed);
  });

  test("2 g of aluminium to twelve figures, worked out apart from this program", () => {
    expect(buoyancy(2, 2700)).toBeCloseTo(2.00058915073, 9);
    expect(buoyancy(2.32, 920)).toBeCloseTo(2.32268158468, 9);
  });

  // OIML D 28: conventional mass = mass (1 - 1.2 / density) / (1 - 1.2 / 8000); "about -3e-4 for aluminium to +1e-4 for
  // platinum". With everything left out the reading is the conventional mass.
  test.each([
    ["aluminium", 2700, -2.944884e-4, "-0.0003"],
    ["platinum", 21_450, 9.4e-5, "0.0001"],
  ])("the conventional mass of %s deviates by %3$s from its mass", (_metal, density, deviation, printed) => {
    const ours = 1 / buoyancy(1, density) - 1;
    expect(Math.abs(ours - deviation)).toBeLessThan(1e-7 + 5e-7 * Number(density === 21_450));
    expectPrinted(ours, printed);
  });
});

describe("AIRDENSITY", () => {
  // Constants of Picard, Davis, Glaeser, Fujii, Metrologia 45 (2008) 149, evaluated apart from this program, 400 ppm CO2.
  test.each([
    [20, 101_325, 0.5, 1.19931389547],
    [25, 101_325, 0.5, 1.17731537365],
    [23, 95_000, 0.4, 1.11287836248],
  ])("CIPM-2007 at %s degC, %s Pa, humidity %s is %s kg/m3", (temperature, pressure, humidity, expected) => {
    expect(airDensity(temperature, pressure, humidity)).toBeCloseTo(expected, 9);
  });

  test("CIPM-2007 for dry air at 20 degC and 101325 Pa is 1.204557 kg/m3", () => {
    expectPrinted(airDensity(20, 101_325, 0), "1.204557");
  });

  // OIML R 111-1, equation E.3-1, formula from memory.
  test("OIML at 20 degC, 101325 Pa, 50 % is 1.199294 kg/m3", () => {
    expect(airDensity(20, 101_325, 0.5, "OIML")).toBeCloseTo(1.19929430503, 9);
  });

  // NPL guidance note on buoyancy correction: [0.348444 P - h (0.00252 t - 0.020582)] / (273.15 + t), P in mbar, h in %.
  const npl = (t: number, p: number, h: number): number => (0.348444 * p - h * (0.00252 * t - 0.020582)) / (273.15 + t);

  test("both formulas agree with that of NPL within 3 parts in 100 000 at 20 degC, 1013.25 mbar, 50 %", () => {
    expect(npl(20, 1013.25, 50)).toBeCloseTo(1.1992835852, 9);
    for (const formula of ["CIPM-2007", "OIML"] as const)
      expect(Math.abs(airDensity(20, 101_325, 0.5, formula) / npl(20, 1013.25, 50) - 1)).toBeLessThan(3e-5);
  });

  // Its humidity term is a straight line through 20 degC, so it strays further out: 1.2e-3 at 15 degC and 80 %.
  test("CIPM-2007 agrees with the NPL formula within 4 parts in 10 000 over 18 to 23 degC, 900 to 1100 mbar, 20 to 60 %", () => {
    for (let t = 18; t <= 23; t++)
      for (let p = 900; p <= 1100; p += 20)
        for (let h = 20; h <= 60; h += 10) expect(Math.abs(airDensity(t, 100 * p, h / 100) / npl(t, p, h) - 1)).toBeLessThan(4e-4);
  });
});

describe("what else is put into a reading", () => {
  // A-B-A weighing, B - (A1 + A2) / 2, as in the weighing designs of NIST.
  test("ZERODRIFT of 10.0051 g between 10.0002 g and 10.0006 g is 0.0047 g", () => {
    expect(zeroDrift(10.0051, 10.0002, 10.0006)).toBeCloseTo(0.0047, 9);
  });

  // Worked out by hand: zero 0.002 g at 0 min and 0.006 g at 5 min is 0.0036 g at 2 min.
  test("ZERODRIFT of 31.5 g, 2 min into 5 min of drift from 0.002 g to 0.006 g, is 31.4964 g", () => {
    expectPrinted(zeroDrift(31.5, 0.002, 0.006, { before: 0, at: 2, after: 5 }), "31.4964");
  });

  // Definition of a blank.
  test("BLANKCORRECTED of 0.8500 g with a blank of 0.0040 g is 0.8460 g, and a gain of the blank adds", () => {
    expect(blankCorrected(0.85, 0.004)).toBeCloseTo(0.846, 9);
    expect(blankCorrected(0.85, -0.004)).toBeCloseTo(0.854, 9);
  });

  // Blade, "Differential Temperature Error in Weighing", Analytical Chemistry: 0.19 mg/degC for a 17 g porcelain
  // crucible, 0.05 mg/degC for a 17 g steel plummet.
  test("HOTWEIGHING of 30 degC too warm is 5.7 mg for a porcelain crucible and 1.5 mg for a compact body", () => {
    expect(1000 * hotWeighing(30)).toBeCloseTo(5.7, 9);
    expect(1000 * hotWeighing(30, 0.00005)).toBeCloseTo(1.5, 9);
  });
});
