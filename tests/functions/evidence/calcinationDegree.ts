import fc from "fast-check";
import { published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

export const evidence: FunctionEvidence = {
  name: "CALCINATION.DEGREE",
  answer: ["Degree of calcination", "fraction"],
  published: [
    // 100 g of CaCO3 hold 56.029 g of CaO; with 5 % still to lose the product is 58.978 g and holds 2.949 of 43.971 g.
    ...published("worked by hand", "balance of 100 g of limestone; (L0 - L) / L0 would give 0.886", [
      ["=RETORT.CALCINATION.DEGREE(0.05, 0.43971184781)", "0.932936"],
      ["=RETORT.CALCINATION.DEGREE(0.05, 0.428)", "0.929661"],
      ["=RETORT.CALCINATION.DEGREE(0, 0.428)", "1"],
      ["=RETORT.CALCINATION.DEGREE(0.2, 0.5)", "0.75"],
    ]),
  ],
  laws: [
    law("CALCINATION.DEGREE")("finds the share that left a raw material again, from what product and raw material still lose", (call) => {
      fc.assert(
        fc.property(between(0.01, 0.9), between(0, 1), (raw, degree) => {
          const product = ((1 - degree) * raw) / (1 - degree * raw);
          expect(numberBy(call)("CALCINATION.DEGREE", Math.min(product, raw), raw)).toBeCloseTo(degree, 9);
        }),
      );
    }),
    law("CALCINATION.DEGREE")("is never less than the share by the losses alone", (call) => {
      fc.assert(
        fc.property(between(0.01, 0.9), between(0, 1), (raw, part) => {
          expect(numberBy(call)("CALCINATION.DEGREE", raw * part, raw)).toBeGreaterThanOrEqual(1 - part - 1e-12);
          expect(numberBy(call)("CALCINATION.DEGREE", 0, raw)).toBe(1);
        }),
      );
    }),
  ],
  refusals: [
    [
      "=RETORT.CALCINATION.DEGREE(0.05, 0)",
      "#VALUE! rawLoss: nothing here (blank or 0). Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
    ],
    ['=RETORT.CALCINATION.DEGREE("low", 0.43)', '#VALUE! productLoss: "low" is not a fraction. Type a share from 0 to 1, such as 0.35 or 35%.'],
    [
      "=RETORT.CALCINATION.DEGREE(5, 0.43)",
      "#VALUE! productLoss: 5 is above 1 and looks like a percentage. Type a share from 0 to 1, such as 0.35 or 35%.",
      "percentage for a fraction",
    ],
    [
      "=RETORT.CALCINATION.DEGREE(0.43, 0.05)",
      "#VALUE! productLoss: 0.43 is more than rawLoss, 0.05. Check for swapped cells, or a product that took up water or CO2.",
      "swapped cells",
    ],
    ["=RETORT.CALCINATION.DEGREE(0.05, 1)", "#VALUE! rawLoss: 1 would leave no product. Type 1 % as 0.01 or 1%.", "percentage for a fraction"],
  ],
};
