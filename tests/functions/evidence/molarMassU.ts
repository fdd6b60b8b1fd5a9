import fc from "fast-check";
import { everyLine, printedLimit } from "../../chemistry/print/printedWeights";
import { seededUniform } from "../../numerics/seededUniform";
import { calculated } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { law, numberBy } from "../laws/Law";
import { anySalt, atomsOf } from "../laws/salts";
import { scatterOf } from "../laws/scatter";

export const evidence: FunctionEvidence = {
  name: "MOLARMASS.U",
  answer: ["Standard uncertainty of the molar mass (k = 1)", "g/mol"],
  published: calculated("molarMassUncertainty.mjs", "limits of CIAAW 2021 as rectangular distributions, atoms counted by hand", [
    ['=RETORT.MOLARMASS.U("H2O")', "0.00062183", "H2O"],
    ['=RETORT.MOLARMASS.U("CO2")', "0.00163299", "CO2"],
    ['=RETORT.MOLARMASS.U("CaCO3")', "0.00310913", "CaCO3"],
    ['=RETORT.MOLARMASS.U("CuSO4·5H2O")', "0.0128323", "CuSO4·5H2O"],
    ['=RETORT.MOLARMASS.U("C6H12O6")', "0.00786893", "C6H12O6"],
  ]),
  laws: [
    law("MOLARMASS.U")("is made of the printed limits of its elements, each as often as it is there", (call) => {
      fc.assert(
        fc.property(anySalt, ({ salt }) => {
          const variance = Object.entries(atomsOf(salt)).reduce((sum, [symbol, count]) => sum + (count * printedLimit(symbol)) ** 2 / 3, 0);
          expect(numberBy(call)("MOLARMASS.U", salt)).toBeCloseTo(Math.sqrt(variance), 14);
        }),
      );
    }),
    law("MOLARMASS.U")("of n formulas is n times that of one, not the root of n times", (call) => {
      fc.assert(
        fc.property(fc.constantFrom("CaCO3", "NaHCO3", "FeSO4"), fc.integer({ min: 2, max: 9 }), (formula, times) => {
          const one = numberBy(call)("MOLARMASS.U", formula);
          expect(numberBy(call)("MOLARMASS.U", `(${formula})${times}`)).toBeCloseTo(times * one, 12);
        }),
      );
      expect(numberBy(call)("MOLARMASS.U", "[13C][18O]2")).toBe(0);
    }),
    law("MOLARMASS.U")("is the scatter of the molar mass when each atomic weight lies anywhere within its limit", (call) => {
      const [uniform, atoms] = [seededUniform(20_270_216), atomsOf("CuSO4·5H2O")];
      const values = new Map(everyLine.map(({ symbol, value }) => [symbol, value]));
      const sd = scatterOf(8000, () =>
        Object.entries(atoms).reduce(
          (sum, [symbol, count]) => sum + count * ((values.get(symbol) as number) + printedLimit(symbol) * (2 * uniform() - 1)),
          0,
        ),
      );
      expect(Math.abs(sd / numberBy(call)("MOLARMASS.U", "CuSO4·5H2O") - 1)).toBeLessThan(0.03);
    }),
  ],
  refusals: [
    ["=RETORT.MOLARMASS.U()", "#VALUE! formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
    ["=RETORT.MOLARMASS.U(100.09)", "#VALUE! formula: 100.09 is not a chemical formula. Type a chemical formula such as CaCO3."],
    [
      '=RETORT.MOLARMASS.U("CaCo3")',
      '#VALUE! formula: "Co3" at character 3 of "CaCo3" reads as cobalt. Type CO3 for carbon and oxygen, or (Co)3 if so meant.',
      "letter for digit or wrong capital",
    ],
    [
      '=RETORT.MOLARMASS.U("TcO2")',
      "#VALUE! formula: technetium (Tc) has no standard atomic weight, so no molar mass follows. Leave it out or use one isotope's mass.",
    ],
  ],
};
