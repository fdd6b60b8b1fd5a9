import fc from "fast-check";
import { published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

export const evidence: FunctionEvidence = {
  name: "ACID.FROMTITRATION",
  answer: ["Acids, as acetic", ""],
  published: published("worked by hand", "mL x mol/L x 60.052 / 1000 over the sample, M of CH3COOH by CIAAW 2021", [
    ['=RETORT.ACID.FROMTITRATION(27.8, 0.1, 2, "g")', "0.0834723"],
    ['=RETORT.ACID.FROMTITRATION(16.8, 0.1, 2, "mL", 1.005, 0.1)', "0.0498940"],
    ['=RETORT.ACID.FROMTITRATION(13.9, 0.1, 10, "mL", "", "", 10)', "0.0834723"],
    // A page prints 33.33 % m/V for what is 16.67.
    ['=RETORT.ACID.FROMTITRATION(27.76, 1, 10, "mL")', "16.67", { times: 100 }],
    // 1 mmol of base for 60.052 mg.
    ['=RETORT.ACID.FROMTITRATION(10, 0.1, 1, "g")', "0.060052"],
  ]),
  laws: [
    law("ACID.FROMTITRATION", "MOLARMASS")("finds the acid that a sample was made with, however it was measured and made up", (call) => {
      fc.assert(
        fc.property(
          between(0.005, 0.2),
          between(1, 20),
          between(0.05, 1),
          between(0.9, 1.1),
          between(0, 1),
          between(1, 50),
          (share, grams, base, density, blank, times) => {
            const volume = (share * grams * 1000) / numberBy(call)("MOLARMASS", "CH3COOH") / base / times + blank;
            const acid = (...raw: readonly unknown[]): number => numberBy(call)("ACID.FROMTITRATION", volume, base, ...raw);
            expect(acid(grams, "g", null, blank, times) / share).toBeCloseTo(1, 9);
            expect(acid(grams / density, "mL", density, blank, times) / share).toBeCloseTo(1, 9);
            expect(acid(grams / density, "mL", null, blank, times) / share).toBeCloseTo(density, 9);
          },
        ),
      );
    }),
    law("ACID.FROMTITRATION")("a blank takes its share off, and a density changes nothing of a sample in g", (call) => {
      const acid = (...raw: readonly unknown[]): number => numberBy(call)("ACID.FROMTITRATION", ...raw);
      expect(acid(20, 0.1, 2, "g", null, 5)).toBeCloseTo(0.75 * acid(20, 0.1, 2, "g"), 12);
      expect(acid(20, 0.1, 2, "g", 1.01)).toBe(acid(20, 0.1, 2, "g"));
      expect(acid(20, 0.1, 2, "g")).toBeCloseTo(0.060052, 9);
    }),
  ],
  refusals: [
    ['=RETORT.ACID.FROMTITRATION(, 0.1, 2, "g")', "#VALUE! volume: nothing here (blank or 0). Give millilitres, such as 27.8."],
    ['=RETORT.ACID.FROMTITRATION("pink", 0.1, 2, "g")', '#VALUE! volume: "pink" is not a volume. Give millilitres, such as 27.8.'],
    ['=RETORT.ACID.FROMTITRATION(27.8, 0.1, 2, "L")', '#VALUE! unit: "L" is not one of "g", "mL".'],
    [
      '=RETORT.ACID.FROMTITRATION(27.8, 100, 2, "g")',
      "#VALUE! concentration: 100 mol/L is above 20 mol/L, stronger than any base sold. Give mol/L: 100 mmol/L is 0.1.",
      "other unit of mass, density or pressure",
    ],
    [
      '=RETORT.ACID.FROMTITRATION(27.8, 0.1, 2, "mL", 1005)',
      "#VALUE! density: 1005 g/mL is above 1.3 g/mL, no wood liquid. Give g/mL: 1005 kg/m³ is 1.005.",
      "other unit of mass, density or pressure",
    ],
    // Once printed for 1.005.
    [
      '=RETORT.ACID.FROMTITRATION(27.8, 0.1, 2, "mL", 1.5)',
      "#VALUE! density: 1.5 g/mL is above 1.3 g/mL, no wood liquid. Give g/mL: 1005 kg/m³ is 1.005.",
    ],
    [
      '=RETORT.ACID.FROMTITRATION(1, 0.1, 2, "g", "", 27.8)',
      "#VALUE! blank: 27.8 mL is not below volume, 1 mL. Check for swapped cells.",
      "swapped cells",
    ],
    [
      '=RETORT.ACID.FROMTITRATION(27.8, 1, 1, "g")',
      "#VALUE! sample: 1 g cannot hold 1.67 g of acid. Check mL and mol/L of the base, and the dilution.",
      "figures that cannot all be of one sample",
    ],
    [
      '=RETORT.ACID.FROMTITRATION(27.8, 0.1, 2, "g", "", "", 0.1)',
      "#VALUE! dilution: 0.1 is below 1. Give made-up volume over titrated volume, such as 10.",
    ],
  ],
};
