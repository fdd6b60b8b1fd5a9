import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

const LENGTH = "Give the length, in one unit for both.";

export const evidence: FunctionEvidence = {
  name: "SHRINKAGE",
  answer: ["Shrinkage", "fraction"],
  published: [
    ...published("worked by hand", "(100 - 88) / 100, and a bar of 10 cm that is 9.4 cm dry", [
      ["=RETORT.SHRINKAGE(100, 88)", "0.12"],
      ["=RETORT.SHRINKAGE(10, 9.4)", "0.06"],
      ["=RETORT.SHRINKAGE(100, 100)", "0"],
    ]),
    ...calculated("energyAndClay.mjs", "volume of a cube of 0.88 of the edge", [
      ['=RETORT.SHRINKAGE(100, 88, "volume")', "0.318528", "volume lost by 12 % of length"],
    ]),
  ],
  laws: [
    law("SHRINKAGE")("of two stages multiplies up: what is left is the product of what each leaves", (call) => {
      fc.assert(
        fc.property(between(10, 500), between(0.8, 0.999), between(0.8, 0.999), (length, dried, fired) => {
          const left = (...given: readonly unknown[]): number => 1 - numberBy(call)("SHRINKAGE", ...given);
          expect(left(length, length * dried) * left(length * dried, length * dried * fired)).toBeCloseTo(left(length, length * dried * fired), 10);
          expect(left(length, length * dried, "volume")).toBeCloseTo(left(length, length * dried) ** 3, 10);
          expect(left(length, length * dried)).toBeCloseTo(dried, 10);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.SHRINKAGE(, 88)", `#VALUE! before: nothing here (blank or 0). ${LENGTH}`],
    ['=RETORT.SHRINKAGE("10 cm", 88)', `#VALUE! before: "10 cm" is not a length. ${LENGTH}`],
    [
      "=RETORT.SHRINKAGE(88, 100)",
      "#VALUE! after: 100 is more than before, 88. Check for swapped cells; a body that bloats has no shrinkage.",
      "swapped cells",
    ],
    [
      "=RETORT.SHRINKAGE(100, 8.8)",
      "#VALUE! after: 8.8 is less than half of before, 100. Give one length, in one unit.",
      "lengths or sizes in two units",
    ],
    ['=RETORT.SHRINKAGE(100, 88, "area")', '#VALUE! of: "area" is not one of "length", "volume".'],
  ],
};
