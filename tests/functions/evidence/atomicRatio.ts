import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import { asTable, inTable } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law } from "../laws/Law";

const SHARE = "Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.";
const FROM_THE_FORMULA = "12.011, 1.44 x 1.008 and 0.66 x 15.999 of CH1.44O0.66, each over the sum";

export const evidence: FunctionEvidence = {
  name: "ATOMICRATIO",
  answer: ["Four atomic ratios", ""],
  published: [
    ...calculated("furnace.mjs", "NIST pine and its char of 973 K, composition of the MaCFP materials database, over the atomic weights", [
      ["=RETORT.ATOMICRATIO(0.9119, 0.0228, 0.0365)", "0.2979245", "H/C of char", { at: [1, 1] }],
      ["=RETORT.ATOMICRATIO(0.9119, 0.0228, 0.0365)", "0.03004914", "O/C of char", { at: [2, 1] }],
      ["=RETORT.ATOMICRATIO(0.4877, 0.0613, 0.4069)", "1.497705", "H/C of pine", { at: [1, 1] }],
      ["=RETORT.ATOMICRATIO(0.4877, 0.0613, 0.4069)", "0.6263560", "O/C of pine", { at: [2, 1] }],
    ]),
    ...published("worked by hand", FROM_THE_FORMULA, [
      ["=RETORT.ATOMICRATIO(0.500002914, 0.060424963, 0.439572123)", "1.44000", { at: [1, 1] }],
      ["=RETORT.ATOMICRATIO(0.500002914, 0.060424963, 0.439572123)", "0.66000", { at: [2, 1] }],
    ]),
  ],
  laws: [
    law("ATOMICRATIO")("gives a formula's own numbers back, with water added and taken off, and carbonate carbon left out", (call) => {
      fc.assert(
        fc.property(between(0.1, 1.9), between(0.02, 0.9), between(0, 0.4), between(0, 0.2), (h, o, water, carbonate) => {
          const mass = 12.011 + 1.008 * h + 15.999 * o;
          const [carbon, hydrogen, oxygen] = [12.011, 1.008 * h, 15.999 * o].map((part) => (part / mass) * (1 - water)) as [number, number, number];
          const given = [carbon, hydrogen + (2.016 / 18.015) * water, oxygen + (15.999 / 18.015) * water, carbonate, water];
          const ratio = (row: number): number => inTable(asTable(call("ATOMICRATIO", ...given), "ATOMICRATIO"), [row, 1]) as number;
          fc.pre(carbon - (12.011 / 44.009) * carbonate > 0.01);
          expect(ratio(1)).toBeCloseTo(h, 7);
          expect(ratio(2)).toBeCloseTo(o, 7);
          expect(ratio(3) * (1 - ((12.011 / 44.009) * carbonate) / carbon)).toBeCloseTo(h, 7);
          expect(ratio(4) / ratio(3)).toBeCloseTo(o / h, 7);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.ATOMICRATIO(, 0.02, 0.04)", `#VALUE! carbon: nothing here (blank or 0). ${SHARE}`],
    ['=RETORT.ATOMICRATIO("much", 0.02, 0.04)', `#VALUE! carbon: "much" is not a fraction. ${SHARE}`],
    ["=RETORT.ATOMICRATIO(91.19, 2.28, 3.65)", `#VALUE! carbon: 91.19 is above 1 and looks like a percentage. ${SHARE}`, "percentage for a fraction"],
    [
      "=RETORT.ATOMICRATIO(0.9, 0.1, 0.2)",
      "#VALUE! carbon to oxygen: the fractions sum to 1.2, above 1.02. Give one basis.",
      "figures that cannot all be of one sample",
    ],
    [
      "=RETORT.ATOMICRATIO(0.9119, 0.0228, 0.0365, 0, 0.3)",
      "#VALUE! moisture: water of 0.3 holds more hydrogen than the 0.0228 of the sample. Leave moisture out where the analysis is on the dry basis.",
    ],
    [
      "=RETORT.ATOMICRATIO(0.9119, 0.0228, 0.0365, 0, 0.1)",
      "#VALUE! moisture: water of 0.1 holds more oxygen than the 0.0365 of the sample. Leave moisture out where the analysis is on the dry basis.",
    ],
    [
      "=RETORT.ATOMICRATIO(0.1, 0.01, 0.4, 0.4)",
      "#VALUE! carbonateCO2: CO2 of 0.4 holds all the carbon of the sample, 0.1, or more. Give the CO2 that acid sets free as a fraction.",
    ],
  ],
};
