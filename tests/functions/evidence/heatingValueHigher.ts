import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import { asTable } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law } from "../laws/Law";

const OAK = "0.4996, 0.0592, 0.4377, 0.0003, 0.0001, 0.0031";
const SHARE = "Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.";

export const evidence: FunctionEvidence = {
  name: "HEATINGVALUE.HIGHER",
  answer: ["Higher heating value [MJ/kg], and a row in words", ""],
  published: [
    ...calculated(
      "energyAndClay.mjs",
      "Channiwala and Parikh, Fuel 81 (2002) 1051; red oak sawdust of T. R. Miles, coconut shell of Raveendran 1995",
      [
        [`=RETORT.HEATINGVALUE.HIGHER(${OAK})`, "19.884765", "red oak, Channiwala and Parikh", { at: [0, 0] }],
        ["=RETORT.HEATINGVALUE.HIGHER(0.502, 0.057, 0.434, 0, 0, 0.007)", "19.7388", "coconut shell, Channiwala and Parikh", { at: [0, 0] }],
      ],
    ),
    ...published("read as printed", "Raveendran and others, Fuel 74 (1995): coconut shell measured at 20.50 MJ/kg, rice husk at 15.29", [
      ["=RETORT.HEATINGVALUE.HIGHER(0.502, 0.057, 0.434, 0, 0, 0.007)", "20.50", { at: [0, 0], within: [0.8, "a correlation, not the measurement"] }],
      [
        "=RETORT.HEATINGVALUE.HIGHER(0.389, 0.051, 0.32, 0.006, 0, 0.235)",
        "15.29",
        { at: [0, 0], within: [0.6, "a correlation, not the measurement"] },
      ],
    ]),
    ...calculated("energyAndClay.mjs", "the other correlations, coefficients from memory", [
      [`=RETORT.HEATINGVALUE.HIGHER(${OAK}, "Boie")`, "19.597985", "red oak, Boie", { at: [0, 0] }],
      [`=RETORT.HEATINGVALUE.HIGHER(${OAK}, "Milne")`, "19.602543", "red oak, Milne", { at: [0, 0] }],
      [`=RETORT.HEATINGVALUE.HIGHER(${OAK}, "Dulong")`, "17.549956", "red oak, Dulong", { at: [0, 0] }],
      [`=RETORT.HEATINGVALUE.HIGHER(${OAK}, "Sheng-Azevedo")`, "19.847438", "red oak, Sheng and Azevedo", { at: [0, 0] }],
    ]),
    ...published(
      "read as printed",
      "ranges and error of Channiwala and Parikh: C to 92.25, H 0.43 to 25.15, O to 50, N to 5.6, ash to 71.4 %; 1.45 %",
      [
        [`=RETORT.HEATINGVALUE.HIGHER(${OAK})`, "stated average absolute error 1.45 %; the sample lies inside its range.", { at: [1, 0] }],
        ["=RETORT.HEATINGVALUE.HIGHER(0.95, 0.01, 0.02, 0, 0, 0.01)", "OUTSIDE its range: carbon 95 % is not in 0 to 92.25 %", { at: [1, 0] }],
        ["=RETORT.HEATINGVALUE.HIGHER(0.9225, 0.0043, 0.05, 0, 0, 0.0232)", "inside its range", { at: [1, 0] }],
        ["=RETORT.HEATINGVALUE.HIGHER(0.9, 0.004, 0.07)", "OUTSIDE its range: hydrogen 0.4 % is not in 0.43 to 25.15 %", { at: [1, 0] }],
        [`=RETORT.HEATINGVALUE.HIGHER(${OAK}, "Dulong")`, "OUTSIDE its range: oxygen 43.77 % is not in 0 to 15 %", { at: [1, 0] }],
        [`=RETORT.HEATINGVALUE.HIGHER(${OAK}, "Boie")`, "whether the sample lies inside is open", { at: [1, 0] }],
        ["=RETORT.HEATINGVALUE.HIGHER(0.487, 0.0613, 0.4069)", "the fractions sum to 0.9552, so look at the analysis again", { at: [1, 0] }],
      ],
    ),
  ],
  laws: [
    law("HEATINGVALUE.HIGHER")("of a mixture is the mean of its parts by weight (linear in every element)", (call) => {
      const value = (...given: readonly unknown[]): number => asTable(call("HEATINGVALUE.HIGHER", ...given), "")[0]?.[0] as number;
      fc.assert(
        fc.property(between(0.4, 0.6), between(0.04, 0.07), between(0.005, 0.05), between(0, 1), (carbon, hydrogen, ash, share) => {
          const wood = [carbon, hydrogen, 0.98 - carbon - hydrogen - ash, 0.01, 0.01, ash];
          const char = [0.85, 0.03, 0.06, 0.01, 0.005, 0.045];
          const mixed = wood.map((part, index) => share * part + (1 - share) * (char[index] as number));
          expect(value(...mixed)).toBeCloseTo(share * value(...wood) + (1 - share) * value(...char), 9);
          // One gram of ash more for one of carbon costs both their factors, 0.3491 and 0.0211 MJ/kg a per cent.
          const [c, h, o] = wood as [number, number, number];
          expect(value(c, h, o, 0, 0, ash) - value(c - 0.01, h, o, 0, 0, ash + 0.01)).toBeCloseTo(0.3702, 9);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.HEATINGVALUE.HIGHER(, 0.06, 0.44)", `#VALUE! carbon: nothing here (blank or 0). ${SHARE}`],
    ['=RETORT.HEATINGVALUE.HIGHER("half", 0.06, 0.44)', `#VALUE! carbon: "half" is not a fraction. ${SHARE}`],
    [
      "=RETORT.HEATINGVALUE.HIGHER(49.96, 5.92, 43.77)",
      `#VALUE! carbon: 49.96 is above 1 and looks like a percentage. ${SHARE}`,
      "percentage for a fraction",
    ],
    [
      "=RETORT.HEATINGVALUE.HIGHER(0.389, 0.051, 0.32, 0.006)",
      "#VALUE! carbon to ash: the fractions sum to 0.766, outside 0.9 to 1.1 of the dry sample. Give the ash as well, and one dry basis.",
      "figures that cannot all be of one sample",
    ],
    [
      "=RETORT.HEATINGVALUE.HIGHER(0.5, 0.06, 0.44, 0, 0, 0.2)",
      "#VALUE! carbon to ash: the fractions sum to 1.2, outside 0.9 to 1.1 of the dry sample. Give one dry basis.",
    ],
    [
      '=RETORT.HEATINGVALUE.HIGHER(0.5, 0.06, 0.44, 0, 0, 0, "Vondracek")',
      '#VALUE! correlation: "Vondracek" is not one of "Channiwala-Parikh", "Boie", "Milne", "Dulong", "Sheng-Azevedo".',
    ],
  ],
};
