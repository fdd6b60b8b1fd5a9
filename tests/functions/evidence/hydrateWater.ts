import fc from "fast-check";
import { seededNormal } from "../../numerics/seededNormal";
import { published } from "../../published/Published";
import { asTable } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { figureBy, law, numberBy } from "../laws/Law";
import { anySalt } from "../laws/salts";
import { scatterOf } from "../laws/scatter";

const SCHOOL = '=RETORT.HYDRATEWATER("tared", 25, 16, "CuSO4", 0.05)';
const CADMIUM = '=RETORT.HYDRATEWATER("tared", 10, 8.1269, "CdSO4", 0.002)';
const PLASTER = '=RETORT.HYDRATEWATER("tared", 10, 9.38, "CaSO4", 0.005)';
const FINE = '=RETORT.HYDRATEWATER(20, 25, 23.2, "CuSO4", 0.001)';
const COARSE = '=RETORT.HYDRATEWATER("tared", 1, 0.64, "CuSO4", 0.03)';

export const evidence: FunctionEvidence = {
  name: "HYDRATEWATER",
  answer: ["Water of the hydrate", ""],
  published: [
    ...published("read as printed", "a school problem: 25.0 g of hydrated copper sulfate leave 16.0 g, so 5 waters", [
      [SCHOOL, "5", { at: ["Nearest", 1] }],
    ]),
    ...published("worked by hand", "9/25 of water: 9/16 x 159.602 / 18.015; u 0.05/25 sqrt(1 + 0.64^2), over 0.64^2 and times 159.602 / 18.015", [
      [SCHOOL, "4.98341", { at: ["Water per", 1] }],
      [SCHOOL, "0.051360", { at: ["its standard", 1] }],
      [SCHOOL, "CuSO4·5H2O within 2 u", { at: ["Verdict", 1] }],
    ]),
    ...published("worked by hand", "the same with a common tare: u 0.001/5 sqrt(0.64^2 + 1 + 0.36^2); 5 lies 3 u off", [
      [FINE, "0.00536688", { at: ["its standard", 1] }],
      [FINE, "between 4 and 5", { at: ["Verdict", 1] }],
    ]),
    // BaCl2 at 14.75 % and CaSO4 at 20.93 % are the printed losses of the dihydrates.
    ...published("worked by hand", "0.1475/0.8525 x 208.227/18.015 and 0.2093/0.7907 x 136.134/18.015", [
      [
        '=RETORT.HYDRATEWATER("tared", 100, 85.25, "BaCl2")',
        "1.99989",
        { at: ["Water per", 1], within: [5e-5, "barium in full is 137.327, by hand 137.33"] },
      ],
      ['=RETORT.HYDRATEWATER("tared", 100, 79.07, "CaSO4")', "2.00028", { at: ["Water per", 1] }],
      ['=RETORT.HYDRATEWATER("tared", 100, 63.92, "CuSO4")', "5.0007", { at: ["Water per", 1] }],
    ]),
    ...published("worked by hand", "3CdSO4·8H2O holds 8/3 waters for one CdSO4; 18.731 % of 769.5 g/mol", [
      [CADMIUM, "2.6667", { at: ["Nearest", 1] }],
      [CADMIUM, "3CdSO4·8H2O within 2 u", { at: ["Verdict", 1] }],
      [PLASTER, "2CaSO4·H2O within 2 u", { at: ["Verdict", 1] }],
      [COARSE, "cannot tell: CuSO4·4H2O, CuSO4·5H2O, CuSO4·6H2O", { at: ["Verdict", 1] }],
      ['=RETORT.HYDRATEWATER("tared", 10, 9.998, "CaSO4", 0.005)', "no water told from none", { at: ["Verdict", 1] }],
    ]),
  ],
  laws: [
    law("HYDRATEWATER", "MOLARMASS")("finds the waters of any hydrate, and names it", (call) => {
      fc.assert(
        fc.property(
          anySalt.filter(({ water }) => water > 0),
          fc.boolean(),
          ({ salt, water }, isTared) => {
            const dry = salt.split("·")[0] as string;
            const share = numberBy(call)("MOLARMASS", dry) / numberBy(call)("MOLARMASS", salt);
            const [tare, sample] = isTared ? [0, 10] : [25, 10];
            const table = asTable(call("HYDRATEWATER", isTared ? "tared" : tare, tare + sample, tare + sample * share, dry, 1e-4), salt);
            expect(table[2]?.[1]).toBeCloseTo(water, 7);
            expect(table[4]?.[1]).toBe(water);
            expect(String(table[5]?.[1])).toMatch(`${dry}·${water === 1 ? "" : water}H2O within 2 u`);
          },
        ),
      );
    }),
    law("HYDRATEWATER")("n scatters by its uncertainty when each weighing scatters by u", (call) => {
      const [normal, u] = [seededNormal(20_270_213), 0.002];
      for (const vessel of [20, "tared"] as const) {
        const tare = vessel === "tared" ? 0 : vessel;
        const n = (empty: number): number =>
          figureBy(call)(
            "Water per",
            1,
            "HYDRATEWATER",
            vessel === "tared" ? vessel : empty,
            tare + 5 + u * normal(),
            tare + 3.1962 + u * normal(),
            "CuSO4",
          );
        const sd = scatterOf(4000, () => n(tare + u * normal()));
        const stated = figureBy(call)("its standard", 1, "HYDRATEWATER", vessel, tare + 5, tare + 3.1962, "CuSO4", u);
        expect(Math.abs(sd / stated - 1)).toBeLessThan(0.04);
        const exact = figureBy(call)("Water per", 1, "HYDRATEWATER", vessel, tare + 5, tare + 3.1962, "CuSO4");
        expect(exact).toBeCloseTo(5, 3);
      }
    }),
  ],
  refusals: [
    [
      '=RETORT.HYDRATEWATER("tared", 25, 16, "CuSO4 x 5H2O")',
      '#VALUE! anhydrous: "CuSO4 x 5H2O" holds its water already. Give the salt without it, such as CuSO4.',
    ],
    [
      '=RETORT.HYDRATEWATER("tared", 25, 16, "CuSO4(H2O)5")',
      '#VALUE! anhydrous: "CuSO4(H2O)5" holds its water already. Give the salt without it, such as CuSO4.',
    ],
    ['=RETORT.HYDRATEWATER("tared", 0, 16, "CuSO4")', "#VALUE! before: nothing here (blank or 0). Give grams."],
    ['=RETORT.HYDRATEWATER("tared", 25, "dry", "CuSO4")', '#VALUE! after: "dry" is not a weighing. Give grams.'],
    ['=RETORT.HYDRATEWATER("tared", 25, 16, 159.6)', "#VALUE! anhydrous: 159.6 is not a chemical formula. Type a chemical formula such as CaCO3."],
    [
      '=RETORT.HYDRATEWATER("tared", 25, 16, "CuSO4·5H2O")',
      '#VALUE! anhydrous: "CuSO4·5H2O" holds its water already. Give the salt without it, such as CuSO4.',
      "figures that cannot all be of one sample",
    ],
    [
      '=RETORT.HYDRATEWATER("tared", 25, 16, "CuSO4.5H2O")',
      '#VALUE! anhydrous: "CuSO4.5H2O" holds its water already. Give the salt without it, such as CuSO4.',
    ],
    [
      '=RETORT.HYDRATEWATER("tared", 16, 25, "CuSO4")',
      "#VALUE! after: 25 g is more than before, 16 g. Check for swapped cells or regained moisture.",
      "swapped cells",
    ],
    [
      '=RETORT.HYDRATEWATER(20, 25, 20, "CuSO4")',
      "#VALUE! after: 20 g is not more than vessel, 20 g. Check for swapped cells or a different vessel.",
      "another vessel",
    ],
    [
      '=RETORT.HYDRATEWATER("tared", 2, 1.28, "CuSO4", 0.5)',
      "#N/A u: 0.5 g is more than a tenth of the sample, 2 g, so the loss is not known. Check the grams, or take more sample.",
      "other unit of mass, density or pressure",
    ],
    [
      '=RETORT.HYDRATEWATER("tared", 25, 16, "SO4^2-")',
      '#VALUE! anhydrous: "SO4^2-" is an ion, and no ion is weighed alone. Write the whole salt, such as CaCO3.',
    ],
  ],
};
