import fc from "fast-check";
import { published } from "../../published/Published";
import { asTable } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import type { Refusal } from "../refusals/Refusal";
import { law, numberBy } from "../laws/Law";
import { anySalt, atomsOf } from "../laws/salts";

export const evidence: FunctionEvidence = {
  name: "MASSFRACTION",
  answer: ["Mass fraction", "fraction"],
  published: [
    ...published("worked by hand", "5 x 18.015 / 249.677, 63.546 / 249.677, 2 x 96.056 / 474.372, weights of CIAAW 2021", [
      ['=RETORT.MASSFRACTION("CuSO4·5H2O", "H2O")', "0.360766"],
      ['=RETORT.MASSFRACTION("CuSO4.5H2O", "HOH", "count")', "5"],
      ['=RETORT.MASSFRACTION("CuSO4·5H2O", "Cu")', "0.254513"],
      ['=RETORT.MASSFRACTION("KAl(SO4)2.12H2O", "SO4", "count")', "2"],
      ['=RETORT.MASSFRACTION("KAl(SO4)2·12H2O", "SO4")', "0.404982"],
      ['=RETORT.MASSFRACTION("CaSO4·0.5H2O", "H2O", "count")', "0.5"],
      ['=RETORT.MASSFRACTION("CaCO3", "N", "count")', "0"],
    ]),
    ...published("worked by hand", "40.078, 12.011 and 47.997 of the 100.086 of CaCO3; 60.008 of CO3", [
      ['=RETORT.MASSFRACTION("CaCO3", "Ca")', "0.400436"],
      ['=RETORT.MASSFRACTION("CaCO3", "CO3")', "0.599564"],
      ['=RETORT.MASSFRACTION("CaCO3", "O2")', "0.479558"],
      // Two hydroxides are 34.014 of 74.092; as water 18.015 of it would leave.
      ['=RETORT.MASSFRACTION("Ca(OH)2", "OH")', "0.459078"],
      ['=RETORT.MASSFRACTION("Ca(OH)2", "H2O")', "0.243144"],
      ['=RETORT.MASSFRACTION("(NH4)2SO4", "NH4+", "count")', "2"],
    ]),
    ...published("read as printed", "ASTM D3180: water holds 0.1119 of hydrogen and 0.8881 of oxygen", [
      ['=RETORT.MASSFRACTION("H2O", "H")', "0.1119"],
      ['=RETORT.MASSFRACTION("H2O", "O")', "0.8881"],
    ]),
  ],
  laws: [
    law("MASSFRACTION")("of all elements of a salt sum to 1", (call) => {
      fc.assert(
        fc.property(anySalt, ({ salt }) => {
          const shares = Object.keys(atomsOf(salt)).map((symbol) => numberBy(call)("MASSFRACTION", salt, symbol));
          expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        }),
      );
    }),
    law("MASSFRACTION", "ATOMS")("of an element is what ATOMS gives", (call) => {
      fc.assert(
        fc.property(anySalt, ({ salt }) => {
          for (const [symbol, count, , share] of asTable(call("ATOMS", salt), salt).slice(1)) {
            expect(numberBy(call)("MASSFRACTION", salt, symbol)).toBeCloseTo(share as number, 12);
            expect(numberBy(call)("MASSFRACTION", salt, symbol, "count")).toBeCloseTo(count as number, 12);
          }
        }),
      );
    }),
    law("MASSFRACTION", "THEORETICALLOSS")("of water is what a hydrate without other hydrogen loses", (call) => {
      fc.assert(
        fc.property(
          anySalt.filter(({ salt, water }) => water > 0 && (atomsOf(salt).H ?? 0) === 2 * water),
          ({ salt, water }) => {
            const lost = numberBy(call)("THEORETICALLOSS", salt, salt.split("·")[0]);
            expect(numberBy(call)("MASSFRACTION", salt, "H2O")).toBeCloseTo(lost, 12);
            expect(numberBy(call)("MASSFRACTION", salt, "H2O", "count")).toBe(water);
          },
        ),
      );
    }),
  ],
  refusals: [
    ...[
      ["CaCO3", "Mg"],
      ["CaCO3", "N"],
      ["CuSO4", "H2O"],
      ["NaCl", "SO4"],
      ["Ca(OH)2", "CO3"],
      // The nitrogen is there, the hydrogen is not.
      ["KNO3", "NH4"],
      ["CuSO4·5H2O", "D"],
    ].map(([formula, part]): Refusal => [
      `=RETORT.MASSFRACTION("${formula}", "${part}")`,
      `#VALUE! part: no "${part}" in "${formula}". Check both formulas; asked for its "count", none is 0.`,
    ]),
    ['=RETORT.MASSFRACTION(, "H2O")', "#VALUE! formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
    ['=RETORT.MASSFRACTION("CuSO4", 5)', "#VALUE! part: 5 is not a chemical formula. Type a chemical formula such as CaCO3."],
    [
      '=RETORT.MASSFRACTION("CaCO3", "CO2")',
      '#VALUE! part: "CO2" is no element and none of H2O OH CO3 HCO3 SO4 NO3 PO4 NH4 SiO2. For what leaves on heating use THEORETICALLOSS.',
    ],
    [
      '=RETORT.MASSFRACTION("CuSO4·5H2O", "H20")',
      '#VALUE! part: "H20" at character 1 of "H20" holds the digit 0. For oxygen type the letter O; for that count type (H)20.',
      "letter for digit or wrong capital",
    ],
  ],
};
