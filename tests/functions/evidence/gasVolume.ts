import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

const PASCALS = "Give pascals: 1013.25 hPa is 101325.";

export const evidence: FunctionEvidence = {
  name: "GASVOLUME",
  answer: ["Volume of gas", "L"],
  published: [
    ...published("read as printed", "CODATA 2018: molar volume of an ideal gas at 273.15 K and 101.325 kPa, 22.41396954e-3 m3/mol", [
      ["=RETORT.GASVOLUME(18.015, 18.015, 0)", "22.41396954"],
    ]),
    ...calculated("furnace.mjs", "V = n R T / p with R = 8.314462618 J/(mol K); 35.1 g/mol is the mean of pine vapours of the MaCFP database", [
      ["=RETORT.GASVOLUME(1, 18.015, 100)", "1.6996783876", "1 g of steam at 100 degC"],
      ["=RETORT.GASVOLUME(7.5, 35.1, 500)", "13.5561223", "7.5 g of 35.1 g/mol at 500 degC"],
      ["=RETORT.GASVOLUME(7.5, 35.1, 500, 90000)", "15.26193441", "the same at 90 kPa"],
    ]),
  ],
  laws: [
    law("GASVOLUME")("obeys Boyle, Gay-Lussac and Avogadro: pressure times volume over moles and kelvin is one constant", (call) => {
      fc.assert(
        fc.property(between(0.01, 100), between(2, 200), between(-50, 1200), between(2000, 1e6), (grams, molar, celsius, pascals) => {
          const litres = numberBy(call)("GASVOLUME", grams, molar, celsius, pascals);
          expect((litres * pascals) / ((grams / molar) * (celsius + 273.15)) / 8314.462618).toBeCloseTo(1, 10);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.GASVOLUME(, 18.015, 100)", "#VALUE! mass: nothing here (blank or 0). Give grams."],
    ['=RETORT.GASVOLUME("steam", 18.015, 100)', '#VALUE! mass: "steam" is not a weighing. Give grams.'],
    ['=RETORT.GASVOLUME(1, "H2O", 100)', '#VALUE! molarMass: "H2O" is not a molar mass. Give g/mol: 0.018 kg/mol of water is 18.015.'],
    [
      "=RETORT.GASVOLUME(1, 0.018015, 100)",
      "#VALUE! molarMass: 0.018015 g/mol is below 1 g/mol and looks like kg/mol. Give g/mol: 0.018 kg/mol of water is 18.015.",
      "other unit of mass, density or pressure",
    ],
    [
      "=RETORT.GASVOLUME(1, 18.015, 100, 1013.25)",
      `#VALUE! pressure: 1013.25 Pa is too low and looks like hPa, kPa or bar. ${PASCALS}`,
      "other unit of mass, density or pressure",
    ],
    ["=RETORT.GASVOLUME(1, 18.015, 100, 101.325)", `#VALUE! pressure: 101.325 Pa is too low and looks like hPa, kPa or bar. ${PASCALS}`],
    [
      "=RETORT.GASVOLUME(1, 18.015, 2192)",
      "#VALUE! temperature: 2192 °C is above 1800 °C and looks like kelvin or °F. Give degrees Celsius: 673.15 K is 400, and so is 752 °F.",
      "kelvin for degrees Celsius",
    ],
    [
      "=RETORT.GASVOLUME(1, 18.015, 773.15)",
      "#VALUE! temperature: 773.15 °C is a whole °C in kelvin, by its .15; round it if it is °C. Give degrees Celsius: 673.15 K is 400, and so is 752 °F.",
      "kelvin for degrees Celsius",
    ],
    [
      "=RETORT.GASVOLUME(1, 18.015, 273.15)",
      "#VALUE! temperature: 273.15 °C is a whole °C in kelvin, by its .15; round it if it is °C. Give degrees Celsius: 673.15 K is 400, and so is 752 °F.",
    ],
    [
      "=RETORT.GASVOLUME(1, 18.015, -300)",
      "#VALUE! temperature: -300 °C is below -70 °C, colder than any weather. Give degrees Celsius: 673.15 K is 400, and so is 752 °F.",
    ],
    ["=RETORT.GASVOLUME(1, 18.015)", "#VALUE! temperature: nothing here (blank). Give degrees Celsius: 673.15 K is 400, and so is 752 °F."],
  ],
};
