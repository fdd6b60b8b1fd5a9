import { published } from "../../../published/Published";
import type { FunctionEvidence } from "../../evidenceFiles";
import { law } from "../../laws/Law";

/** Of a function as it comes without a thought, a quotient: what the file of a real one has to hold, and evidence.test.ts tries out. */
export const evidence: FunctionEvidence = {
  name: "NAIVE",
  answer: ["Quotient", ""],
  published: published("worked by hand", "1 over 2", [["=RETORT.NAIVE(1, 2)", "0.5"]]),
  laws: [law("NAIVE")("halves where the divisor is doubled", (call) => expect(call("NAIVE", 1, 4)).toBe((call("NAIVE", 1, 2) as number) / 2))],
  refusals: [
    ["=RETORT.NAIVE(, 2)", "#VALUE! a: nothing here (blank or 0). Give grams."],
    ['=RETORT.NAIVE("one", 2)', '#VALUE! a: "one" is not a weighing. Give grams.'],
    ["=RETORT.NAIVE(2, 1)", "#VALUE! b: 1 g is less than a, 2 g. Check for swapped cells.", "swapped cells"],
  ],
};
