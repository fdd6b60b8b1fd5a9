import fc from "fast-check";
import { seededNormal } from "../../numerics/seededNormal";
import { published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";
import { scatterOf } from "../laws/scatter";

const CARBONATES = '"CaCO3", "CaO", "MgCO3", "MgO"';
const LIMES = ["CaCO3", "CaO", "Ca(OH)2", "CaO"] as const;

export const evidence: FunctionEvidence = {
  name: "MIXTURE.FROMLOSS",
  answer: ["Share of the first substance", "fraction"],
  published: [
    // The school problem prints 1.19 g with M = 100, 84 and 44; the weights of 2021 make it 1.162 of 2.21 g.
    ...published("worked by hand", "2.21 g of CaCO3 and MgCO3 leave 1.152 g: (1.058/2.21 - 44.009/84.313) / (44.009/100.086 - 44.009/84.313)", [
      [`=RETORT.MIXTURE.FROMLOSS(0.47873303167, ${CARBONATES})`, "1.162", { times: 2.21 }],
      [`=RETORT.MIXTURE.FROMLOSS(0.47873303167, ${CARBONATES})`, "0.525635"],
      [`=RETORT.MIXTURE.FROMLOSS(0.48, ${CARBONATES}, 0.001, "u")`, "0.0121566"],
      [`=RETORT.MIXTURE.FROMLOSS(0.48, ${CARBONATES}, "", "verdict")`, "ill-conditioned: the two losses differ by only 0.08226"],
      ['=RETORT.MIXTURE.FROMLOSS(0.3, "CaCO3", "CaO", "Ca(OH)2", "CaO", "", "verdict")', "holds only if"],
      // (0.3 - 18.015/74.092) / (44.009/100.086 - 18.015/74.092)
      ['=RETORT.MIXTURE.FROMLOSS(0.3, "CaCO3", "CaO", "Ca(OH)2", "CaO")', "0.289245"],
    ]),
  ],
  laws: [
    law("MIXTURE.FROMLOSS", "THEORETICALLOSS")("finds the share of a mixture from what it loses, either substance first", (call) => {
      fc.assert(
        fc.property(between(0, 1), fc.constantFrom(...[LIMES, ["CuSO4·5H2O", "CuSO4", "BaCl2·2H2O", "BaCl2"] as const]), (share, [a, b, c, d]) => {
          const loss = share * numberBy(call)("THEORETICALLOSS", a, b) + (1 - share) * numberBy(call)("THEORETICALLOSS", c, d);
          expect(numberBy(call)("MIXTURE.FROMLOSS", loss, a, b, c, d)).toBeCloseTo(share, 9);
          expect(numberBy(call)("MIXTURE.FROMLOSS", loss, c, d, a, b)).toBeCloseTo(1 - share, 9);
        }),
      );
    }),
    law("MIXTURE.FROMLOSS")("scatters by its u when the loss scatters by u", (call) => {
      const [normal, u] = [seededNormal(20_270_215), 0.002];
      const sd = scatterOf(4000, () => numberBy(call)("MIXTURE.FROMLOSS", 0.34 + u * normal(), ...LIMES));
      const stated = numberBy(call)("MIXTURE.FROMLOSS", 0.34, ...LIMES, u, "u");
      expect(Math.abs(sd / stated - 1)).toBeLessThan(0.04);
      // Within 2 u of the one substance alone a share may stand beyond 1.
      expect(numberBy(call)("MIXTURE.FROMLOSS", 0.442, ...LIMES, u)).toBeGreaterThan(1);
    }),
  ],
  refusals: [
    [
      `=RETORT.MIXTURE.FROMLOSS(, ${CARBONATES})`,
      "#VALUE! loss: nothing here (blank or 0). Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
    ],
    [
      '=RETORT.MIXTURE.FROMLOSS(0.48, 100, "CaO", "MgCO3", "MgO")',
      "#VALUE! start1: 100 is not a chemical formula. Type a chemical formula such as CaCO3.",
    ],
    [
      `=RETORT.MIXTURE.FROMLOSS(48, ${CARBONATES})`,
      "#VALUE! loss: 48 is above 1 and looks like a percentage. Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
      "percentage for a fraction",
    ],
    [
      `=RETORT.MIXTURE.FROMLOSS(0.2, ${CARBONATES})`,
      "#VALUE! loss: 0.2 lies outside 0.4397 to 0.522, what the two lose alone. Check formulas, moisture and a third substance, or give u.",
      "figures that cannot all be of one sample",
    ],
    [
      '=RETORT.MIXTURE.FROMLOSS(0.44, "CaCO3", "CaO", "CaCO3", "CaO")',
      '#VALUE! start2: "CaCO3" and "CaCO3" both lose 0.4397. No loss can tell them apart: use another reaction.',
    ],
    [
      '=RETORT.MIXTURE.FROMLOSS(0.44, "CaCO3", "CaO", "MgO", "MgCO3")',
      '#VALUE! residue2: it holds C, and "MgO" has none. Check for swapped cells; only oxygen can come from the air.',
      "swapped cells",
    ],
    [
      `=RETORT.MIXTURE.FROMLOSS(0.48, ${CARBONATES}, "", "u")`,
      "#VALUE! u: nothing here (blank or 0). Give the standard uncertainty of the loss, such as 0.002.",
    ],
  ],
};
