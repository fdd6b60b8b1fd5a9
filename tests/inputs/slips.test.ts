import { checkTimes } from "../../src/drying/weighingSeries";
import type { CellInput } from "../../src/inputs/Input";
import { airDensityInput, airPressure, solidDensity } from "../../src/inputs/kinds/air";
import { oxygenInAir } from "../../src/inputs/kinds/oxygen";
import { coverageFactor, significanceLevel } from "../../src/inputs/kinds/statistics";
import { gramsPerDegree, roomTemperature } from "../../src/inputs/kinds/temperatures";
import { leastMinutes } from "../../src/inputs/kinds/times";

// ISO 2533, standard atmosphere: 101 325 Pa and 288.15 K at sea level, 6.5 K/km, exponent g M / (R L) = 5.25588, dry air 287.053 J/(kg K).
const atmosphere = (metres: number): { readonly pressure: number; readonly celsius: number; readonly density: number } => {
  const kelvin = 288.15 - 0.0065 * metres;
  const pressure = 101_325 * (kelvin / 288.15) ** 5.25588;
  return { pressure, celsius: kelvin - 273.15, density: pressure / (287.053 * kelvin) };
};

/** A good value from outside, and the same in the units and forms that people mix it up with. */
const SLIPS: Readonly<
  Record<string, readonly [input: CellInput<number>, good: readonly number[], slips: readonly (readonly [form: string, value: number])[]]>
> = {
  airPressure: [
    airPressure("Pressure [Pa]."),
    // Lowest place on land and highest summit: -430 m and 8849 m. Highest reading at sea level 1083.8 hPa (from memory).
    [101_325, atmosphere(-430).pressure, atmosphere(8849).pressure, 108_380],
    [
      ["hPa", 1013.25],
      ["kPa", 101.325],
      ["bar", 1.01325],
      ["mmHg", 760],
      ["inHg", 29.92],
      ["psi", 14.696],
      ["tenths of a pascal", 1_013_250],
    ],
  ],
  airDensityInput: [
    airDensityInput("Density [kg/m³]."),
    [1.2, atmosphere(0).density, atmosphere(8849).density, 108_380 / (287.053 * (273.15 - 50))],
    [
      ["g/cm³", 0.0012],
      ["g/m³", 1200],
      ["the density of water", 1000],
    ],
  ],
  solidDensity: [
    solidDensity("Density [kg/m³]."),
    // Lithium, the lightest metal, and osmium, the densest (CRC Handbook, from memory); balsa wood and cork (common practice, no source).
    [534, 22_590, 120, 240, 8000],
    [
      ["g/cm³ of brass", 8.4],
      ["g/cm³ of osmium", 22.59],
      ["g/m³", 8_000_000],
    ],
  ],
  roomTemperature: [
    roomTemperature("Temperature [°C]."),
    [20, 0, atmosphere(8849).celsius, -67.7, 56.7],
    [
      ["kelvin of a room", 293.15],
      ["kelvin of ice", 273.15],
      ["kelvin of the coldest place lived in", 205.45],
    ],
  ],
  gramsPerDegree: [gramsPerDegree("Rate [g/°C]."), [0.00019], [["mg/°C", 0.19]]],
  oxygenInAir: [
    oxygenInAir("Mass fraction."),
    [0.2314, 0.23, 0.232, 0.15, 0.3, 1],
    [
      ["the mole fraction of dry air", 0.2095],
      ["the mole fraction, rounded", 0.21],
      ["a percentage", 23.14],
    ],
  ],
  coverageFactor: [
    coverageFactor("Factor."),
    [1, 1.96, 2, 3, 12.71],
    [
      ["a confidence level", 0.95],
      ["a confidence level in per cent", 95],
      ["another", 99.73],
    ],
  ],
  significanceLevel: [
    significanceLevel("Alpha."),
    [0.1, 0.05, 0.01, 0.001],
    [
      ["a confidence level", 0.95],
      ["per cent", 5],
      ["a confidence level in per cent", 95],
    ],
  ],
  leastMinutes: [
    leastMinutes("Time [min]."),
    [1, 60, 1440],
    [
      ["an hour as a clock time", 1 / 24],
      ["a minute before midnight as a clock time", 1439 / 1440],
    ],
  ],
};

test.each(Object.entries(SLIPS).flatMap(([name, [input, good]]) => good.map((value) => [name, value, input] as const)))(
  "%s takes %d, which occurs",
  (_name, value, input) => {
    expect(input.read(value, "x")).toBe(value);
  },
);

test.each(Object.entries(SLIPS).flatMap(([name, [input, , slips]]) => slips.map(([form, value]) => [name, form, value, input] as const)))(
  "%s refuses %s, %d",
  (_name, _form, value, input) => {
    expect(() => input.read(value, "x")).toThrow(expect.objectContaining({ name: "InputProblem", argument: "x" }));
  },
);

// 36526 is 1 January 2000 (Excel, DATE function: serial numbers count days from 1 January 1900).
test("a run's first time is taken for a date from 1 January 2000 on", () => {
  expect(() => checkTimes([10, 9], [36_525, 36_555])).not.toThrow();
  expect(() => checkTimes([10, 9], [36_526, 36_556])).toThrow(
    "times: row 1 holds 36526 min, which looks like a date. Give minutes since the start: (time - start) * 1440.",
  );
});

// 1440 minutes a day: a run of a day less a moment, given in clock times, lasts less than 1.
test("a run is taken for clock times while it lasts less than a minute", () => {
  expect(() => checkTimes([10, 9], [0, 1])).not.toThrow();
  expect(() => checkTimes([10, 9], [0, 0.99])).toThrow(
    "times: the whole run lasts 0.99 min, which looks like clock times. Give minutes since the start: (time - start) * 1440.",
  );
});
