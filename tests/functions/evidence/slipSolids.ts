import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

export const evidence: FunctionEvidence = {
  name: "SLIP.SOLIDS",
  answer: ["Dry solids", "fraction"],
  published: [
    ...published(
      "read as printed",
      "Brongniart's formula in metric units (S. Altmann, 1998): a litre of 1500 g with grains of 2500 g/L holds 833.3 g",
      [['=RETORT.SLIP.SOLIDS("tared", 1500, 1000, 2500)', "833.3", { times: 1500 }]],
    ),
    ...published("read as printed", "table of Brongniart's formula for grains of 2.6: dry matter of a litre of 1.2, 1.4 and 1.6", [
      ['=RETORT.SLIP.SOLIDS("tared", 1200, 1000)', "325", { times: 1200 }],
      ['=RETORT.SLIP.SOLIDS("tared", 1400, 1000, 2600)', "650", { times: 1400 }],
      ['=RETORT.SLIP.SOLIDS("tared", 1600, 1000)', "975", { times: 1600 }],
    ]),
    ...calculated("energyAndClay.mjs", "excess over water divided by 1 - 1000 / 2600", [
      ["=RETORT.SLIP.SOLIDS(120, 294, 100)", "0.691092", "solids of 1740 g/L, grains of 2600"],
    ]),
  ],
  laws: [
    law("SLIP.SOLIDS")("finds the solids that were stirred in: grains and water add up in mass and in volume", (call) => {
      fc.assert(
        fc.property(between(1, 500), between(10, 500), between(2000, 5000), between(5, 200), (solids, water, grain, vessel) => {
          const volume = (1000 * solids) / grain + water;
          const share = numberBy(call)("SLIP.SOLIDS", vessel, vessel + solids + water, volume, grain);
          expect(share * (solids + water)).toBeCloseTo(solids, 6);
          expect(numberBy(call)("SLIP.SOLIDS", "tared", solids + water, volume, grain)).toBeCloseTo(share, 9);
        }),
      );
    }),
  ],
  refusals: [
    [
      "=RETORT.SLIP.SOLIDS(, 294, 100)",
      '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
    ],
    ['=RETORT.SLIP.SOLIDS(120, 294, "a cup")', '#VALUE! volume: "a cup" is not a volume of slip. Give millilitres: 1 L is 1000, a pint (UK) 568.'],
    [
      "=RETORT.SLIP.SOLIDS(120, 294, 0.1)",
      "#VALUE! full: 1740000 g/L is no slip of grains of 2600 kg/m³. Give volume in mL (1 L is 1000), and the empty vessel.",
      "volume in another unit",
    ],
    ["=RETORT.SLIP.SOLIDS(120, 200, 100)", "#VALUE! full: 800 g/L is lighter than water. Give volume in mL (1 L is 1000), and the empty vessel."],
    [
      "=RETORT.SLIP.SOLIDS(294, 120, 100)",
      "#VALUE! full: 120 g is not more than vessel, 294 g. Check for swapped cells or a different vessel.",
      "swapped cells",
    ],
    [
      "=RETORT.SLIP.SOLIDS(120, 294, 100, 2.6)",
      "#VALUE! density: 2.6 kg/m³ is too low for a solid and looks like g/cm³. Give kg/m³: 2.7 g/cm³ is 2700.",
      "other unit of mass, density or pressure",
    ],
  ],
};
