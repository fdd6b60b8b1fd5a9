import fc from "fast-check";
import { seededNormal } from "../../numerics/seededNormal";
import { published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";
import { anySalt } from "../laws/salts";
import { scatterOf } from "../laws/scatter";

export const evidence: FunctionEvidence = {
  name: "PURITY.FROMLOSS",
  answer: ["Purity", "fraction"],
  published: [
    ...published("worked by hand", "0.42 over 44.009/100.086; with a hundredth of moisture 0.41/0.99 over the same", [
      ['=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO")', "0.955171"],
      ['=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO", 0.01)', "0.941847"],
      ['=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO", 0.01, 0.002, "u")', "0.00459438"],
      ['=RETORT.PURITY.FROMLOSS(0.45, "CaCO3", "CaO")', "1.02340"],
      ['=RETORT.PURITY.FROMLOSS(0.45, "CaCO3", "CaO", 0, 0.002, "verdict")', "above 1 (1.023)"],
      ['=RETORT.PURITY.FROMLOSS(0.44, "CaCO3", "CaO", 0, 0.002, "verdict")', "not told from pure: 1.001"],
      ['=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO", 0, 0.002, "verdict")', "0.9552 of the dry sample"],
    ]),
  ],
  laws: [
    law("PURITY.FROMLOSS", "THEORETICALLOSS")("finds the share of a salt in a moist mixture with something that loses nothing", (call) => {
      fc.assert(
        fc.property(anySalt, between(0.05, 1), between(0, 0.3), ({ salt, oxide }, share, moisture) => {
          const loss = moisture + (1 - moisture) * share * numberBy(call)("THEORETICALLOSS", salt, oxide);
          expect(numberBy(call)("PURITY.FROMLOSS", loss, salt, oxide, moisture)).toBeCloseTo(share, 9);
        }),
      );
    }),
    law("PURITY.FROMLOSS")("scatters by its u when the loss scatters by u", (call) => {
      const [normal, u] = [seededNormal(20_270_214), 0.002];
      const sd = scatterOf(4000, () => numberBy(call)("PURITY.FROMLOSS", 0.42 + u * normal(), "CaCO3", "CaO", 0.02));
      const stated = numberBy(call)("PURITY.FROMLOSS", 0.42, "CaCO3", "CaO", 0.02, u, "u");
      expect(Math.abs(sd / stated - 1)).toBeLessThan(0.04);
    }),
  ],
  refusals: [
    [
      '=RETORT.PURITY.FROMLOSS(, "CaCO3", "CaO")',
      "#VALUE! loss: nothing here (blank or 0). Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
    ],
    [
      '=RETORT.PURITY.FROMLOSS("high", "CaCO3", "CaO")',
      '#VALUE! loss: "high" is not a fraction. Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.',
    ],
    [
      '=RETORT.PURITY.FROMLOSS(42, "CaCO3", "CaO")',
      "#VALUE! loss: 42 is above 1 and looks like a percentage. Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
      "percentage for a fraction",
    ],
    [
      '=RETORT.PURITY.FROMLOSS(0.42, "CaO", "CaCO3")',
      '#VALUE! residue: it holds C, and "CaO" has none. Check for swapped cells; only oxygen can come from the air.',
      "swapped cells",
    ],
    [
      '=RETORT.PURITY.FROMLOSS(0.42, "Mg", "MgO")',
      '#VALUE! residue: "Mg" loses nothing on its way to "MgO", so no loss tells how pure it is. Check both formulas.',
    ],
    [
      '=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO", 0.5)',
      "#VALUE! moisture: 0.5 is more than the whole loss on heating, 0.42. Take both from one sample; moisture on the wet basis.",
      "figures that cannot all be of one sample",
    ],
    [
      '=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO", "", 0.5)',
      "#VALUE! u: 0.5 is above 0.1, too coarse or a percentage. Type 0.2 % as 0.002 or 0.2%.",
    ],
    [
      '=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO", "", "", "u")',
      "#VALUE! u: nothing here (blank or 0). Give the standard uncertainty of the loss, such as 0.002.",
    ],
  ],
};
