import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

export const evidence: FunctionEvidence = {
  name: "ABSORPTION",
  answer: ["Water absorption", "fraction"],
  published: [
    ...calculated("energyAndClay.mjs", "(M - D) / D, ASTM C373", [["=RETORT.ABSORPTION(152.4, 158.5)", "0.0400262", "6.1 g of water in 152.4 g"]]),
    ...published("worked by hand", "5 g of water in 100 g, with and without a tray of 20 g", [
      ["=RETORT.ABSORPTION(100, 105)", "0.05"],
      ["=RETORT.ABSORPTION(120, 125, 20)", "0.05"],
      ["=RETORT.ABSORPTION(100, 100)", "0"],
    ]),
  ],
  laws: [
    law("ABSORPTION")("gives the water back, whatever tray stands under the piece", (call) => {
      fc.assert(
        fc.property(between(10, 1000), between(0.001, 0.9), between(1, 500), (dry, share, tray) => {
          expect(numberBy(call)("ABSORPTION", dry, dry * (1 + share))).toBeCloseTo(share, 9);
          expect(numberBy(call)("ABSORPTION", tray + dry, tray + dry * (1 + share), tray)).toBeCloseTo(share, 9);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.ABSORPTION(, 105)", "#VALUE! dry: nothing here (blank or 0). Give grams."],
    ['=RETORT.ABSORPTION(100, "wet")', '#VALUE! saturated: "wet" is not a weighing. Give grams.'],
    ["=RETORT.ABSORPTION(105, 100)", "#VALUE! saturated: 100 g is less than dry, 105 g. Check for swapped cells or a chip lost.", "swapped cells"],
    [
      "=RETORT.ABSORPTION(100, 305)",
      "#VALUE! saturated: 2.05 g of water for each gram, above 1.5. Wipe the piece, and give a tray in both weighings or in none.",
      "another vessel",
    ],
    ["=RETORT.ABSORPTION(100, 105, 120)", "#VALUE! tray: 120 g is not less than dry, 100 g. Give the tray that both weighings include."],
  ],
};
