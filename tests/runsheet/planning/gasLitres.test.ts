import { gasLitres } from "../../../src/runsheet/planning/gasLitres";

describe("gasLitres(grams, molarMass, celsius)", () => {
  // CODATA 2018: molar volume of an ideal gas at 273.15 K and 101.325 kPa, 22.413 969 54 L/mol.
  it("gives one mole at 0 °C its published volume", () => {
    expect(gasLitres(18, 18, 0)).toBeCloseTo(22.41396954, 8);
  });

  it("grows with mass and kelvin, and falls with the molar mass", () => {
    // 14 g / 25 g/mol = 0.56 mol; 0.56 * 22.41397 * 723.15 / 273.15 = 33.23
    expect(gasLitres(14, 25, 450)).toBeCloseTo(33.23, 2);
    expect(gasLitres(0, 25, 450)).toBe(0);
  });
});
