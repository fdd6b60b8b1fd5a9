import fc from "fast-check";
import { calculated } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

const DIVIDE = "Divide the gas by the vessel: 13.5 L through 0.1 L is 135.";

export const evidence: FunctionEvidence = {
  name: "AIRLEFT",
  answer: ["Air left", "fraction"],
  published: calculated("furnace.mjs", "e^-N of a perfectly mixed vessel; 20.95 % of oxygen falls to 1 % after ln 20.95 = 3.04 volumes", [
    ["=RETORT.AIRLEFT(5)", "0.006737947", "air left after 5 volumes"],
    ["=RETORT.AIRLEFT(3.0421388)", "0.0477327", "air left after ln(20.95) volumes"],
  ]),
  laws: [
    law("AIRLEFT")("goes down by the same share for each volume more, from 1 at none", (call) => {
      fc.assert(
        fc.property(between(0, 20), between(0, 20), (first, more) => {
          expect(numberBy(call)("AIRLEFT", 0)).toBe(1);
          expect(numberBy(call)("AIRLEFT", first + more) / (numberBy(call)("AIRLEFT", first) * numberBy(call)("AIRLEFT", more))).toBeCloseTo(1, 9);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.AIRLEFT()", `#VALUE! volumes: nothing here (blank). ${DIVIDE}`],
    ['=RETORT.AIRLEFT("five")', `#VALUE! volumes: "five" is not a number of vessel volumes. ${DIVIDE}`],
    ["=RETORT.AIRLEFT(-1)", `#VALUE! volumes: -1 is below zero. ${DIVIDE}`],
    ["=RETORT.AIRLEFT(13500)", `#VALUE! volumes: 13500 is above 1000 and looks like a volume. ${DIVIDE}`, "volume in another unit"],
  ],
};
