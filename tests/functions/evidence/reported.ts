import fc from "fast-check";
import { published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law } from "../laws/Law";

export const evidence: FunctionEvidence = {
  name: "REPORTED",
  answer: ["Result as text", ""],
  published: [
    ...published("read as printed", "GUM (JCGM 100:2008) 7.2.2: m_S = 100.021 47 g with u_c = 0.35 mg; expanded by 2.26, (100.021 47 ± 0.000 79) g", [
      ["=RETORT.REPORTED(100.02147, 0.00035)", "100.02147 ± 0.00035"],
      ["=RETORT.REPORTED(100.02147, 0.00035, 2.26)", "100.02147 ± 0.00079 (k = 2.26)"],
    ]),
    ...published("read as printed", "GUM (JCGM 100:2008) 7.2.6: 10.057 62 ohm with u_c of 27 milliohm is rounded to 10.058 ohm", [
      ["=RETORT.REPORTED(10.05762, 0.027)", "10.058 ± 0.027"],
    ]),
    ...published("worked by hand", "two significant digits, a half away from zero, as ROUND has it on the decimals that are seen", [
      ["=RETORT.REPORTED(0.34802, 0.00131)", "0.3480 ± 0.0013"],
      ["=RETORT.REPORTED(34812, 1262)", "34800 ± 1300"],
      ["=RETORT.REPORTED(0.125, 0.0996)", "0.13 ± 0.10"],
      ["=RETORT.REPORTED(1.005, 0.0125)", "1.005 ± 0.013"],
      ["=RETORT.REPORTED(-2.5, 12)", "-3 ± 12"],
      ["=RETORT.REPORTED(-0.00001, 0.00131)", "0.0000 ± 0.0013"],
      ["=RETORT.REPORTED(0, 0.0995)", "0.00 ± 0.10"],
      ["=RETORT.REPORTED(98.7, 9.96, 2)", "99 ± 20 (k = 2)"],
    ]),
  ],
  laws: [
    law("REPORTED")("strays no further than half of the last place from value and k u, and prints two digits", (call) => {
      fc.assert(
        fc.property(between(-1e6, 1e6), between(-6, 4), fc.constantFrom(undefined, 2, 3), (value, exponent, k) => {
          const u = 10 ** exponent;
          const text = call("REPORTED", value, u, k) as string;
          const [shown = "", uncertainty = ""] = text.replace(/ \(k = \d\)$/, "").split(" ± ");
          const decimals = uncertainty.split(".")[1]?.length ?? 0;
          const last = decimals > 0 ? 10 ** -decimals : 10 ** (uncertainty.length - 2);
          expect(Math.abs(Number(uncertainty) - (k ?? 1) * u)).toBeLessThanOrEqual(0.5000001 * last);
          expect(Math.abs(Number(shown) - value)).toBeLessThanOrEqual(0.5000001 * last);
          expect(uncertainty.replace(".", "").replace(/^0+/, "").slice(0, 2)).toMatch(/^[1-9]\d$/);
          expect(shown.split(".")[1]?.length ?? 0).toBe(decimals);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.REPORTED(0.348)", "#VALUE! u: nothing here (blank or 0). Give a number above 0 in the unit of the value."],
    ["=RETORT.REPORTED(, 0.0013)", "#VALUE! value: nothing here (blank). Give a number."],
    ['=RETORT.REPORTED("0.348 g", 0.0013)', '#VALUE! value: "0.348 g" is not a result. Give a number.'],
    ["=RETORT.REPORTED(0.348, -0.0013)", "#VALUE! u: -0.0013 is below zero. Give a number above 0 in the unit of the value."],
    [
      "=RETORT.REPORTED(0.348, 0.0013, 95)",
      "#VALUE! k: 95 is above 13 and looks like a confidence level. Give a coverage factor, such as 2 for about 95 %.",
      "confidence level for alpha or k",
    ],
    [
      "=RETORT.REPORTED(123456789012345, 0.1)",
      "#VALUE! u: 0.1 is finer than a spreadsheet holds 123456789012345. Give both in one unit, a smaller one if need be.",
    ],
  ],
};
