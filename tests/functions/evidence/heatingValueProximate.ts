import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import { asTable } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law } from "../laws/Law";

const SHARE = "Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.";

export const evidence: FunctionEvidence = {
  name: "HEATINGVALUE.PROXIMATE",
  answer: ["Higher heating value [MJ/kg], and a row in words", ""],
  published: [
    ...calculated("energyAndClay.mjs", "Parikh, Channiwala and Ghosal, Fuel 84 (2005) 487; red oak sawdust of T. R. Miles", [
      ["=RETORT.HEATINGVALUE.PROXIMATE(0.1347, 0.8622, 0.0031)", "18.202272", "red oak, Parikh and others", { at: [0, 0] }],
    ]),
    ...published("read as printed", "ranges and error in the abstract of that paper: FC 1.0 to 91.5, VM 0.92 to 90.6, ash 0.12 to 77.7 %; 3.74 %", [
      [
        "=RETORT.HEATINGVALUE.PROXIMATE(0.1347, 0.8622, 0.0031)",
        "stated average absolute error 3.74 %; the sample lies inside its range.",
        { at: [1, 0] },
      ],
      ["=RETORT.HEATINGVALUE.PROXIMATE(0.95, 0.03, 0.02)", "OUTSIDE its range: fixed carbon 95 % is not in 1 to 91.5 %", { at: [1, 0] }],
      ['=RETORT.HEATINGVALUE.PROXIMATE(0.15, 0.85, "none")', "OUTSIDE its range: ash 0 % is not in 0.12 to 77.7 %", { at: [1, 0] }],
      ["=RETORT.HEATINGVALUE.PROXIMATE(0.08, 0.91, 0.01)", "OUTSIDE its range: volatile matter 91 % is not in 0.92 to 90.6 %", { at: [1, 0] }],
    ]),
  ],
  laws: [
    law("HEATINGVALUE.PROXIMATE")("rises by 0.1977 MJ/kg for each per cent that is fixed carbon instead of volatile matter", (call) => {
      const value = (...given: readonly unknown[]): number => asTable(call("HEATINGVALUE.PROXIMATE", ...given), "")[0]?.[0] as number;
      fc.assert(
        fc.property(between(0.05, 0.6), between(0.01, 0.2), between(0.01, 0.1), (fixed, ash, more) => {
          const volatile = 1 - fixed - ash;
          expect(value(fixed + more, volatile - more, ash) - value(fixed, volatile, ash)).toBeCloseTo(19.77 * more, 9);
          expect(value(fixed, volatile, ash)).toBeCloseTo(35.36 * fixed + 15.59 * volatile - 0.78 * ash, 9);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.HEATINGVALUE.PROXIMATE(, 0.86, 0.01)", `#VALUE! fixedCarbon: nothing here (blank or 0). ${SHARE}`],
    ['=RETORT.HEATINGVALUE.PROXIMATE(0.13, "most", 0.01)', `#VALUE! volatile: "most" is not a fraction. ${SHARE}`],
    [
      "=RETORT.HEATINGVALUE.PROXIMATE(13.47, 86.22, 0.31)",
      `#VALUE! fixedCarbon: 13.47 is above 1 and looks like a percentage. ${SHARE}`,
      "percentage for a fraction",
    ],
    [
      "=RETORT.HEATINGVALUE.PROXIMATE(0.12, 0.72, 0.01)",
      "#VALUE! fixedCarbon to ash: the fractions sum to 0.85, outside 0.97 to 1.03. Give all three on the dry basis, where they make 1.",
      "figures that cannot all be of one sample",
    ],
    ["=RETORT.HEATINGVALUE.PROXIMATE(0.13, 0.86)", '#VALUE! ash: nothing here (blank or 0). Type a fraction such as 0.012 or 1.2%, or "none".'],
  ],
};
