import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

export const evidence: FunctionEvidence = {
  name: "DRYINGHEAT",
  answer: ["Heat to dry, at the least", "kJ"],
  published: [
    ...calculated("energyAndClay.mjs", "degree by degree; wood of the Wood Handbook, 0.1031 + 0.003867 T kJ/(kg K)", [
      ["=RETORT.DRYINGHEAT(6, 4, 20, 105)", "11.08014", "4 g of water and 6 g of wood, 20 to 105 degC"],
      ["=RETORT.DRYINGHEAT(6, 4, 20, 60)", "10.40241", "the same to 60 degC"],
      ['=RETORT.DRYINGHEAT(6, 4, 20, 105, "", 50, 0.49)', "13.16264", "the same to 105 degC in a tin"],
    ]),
    ...published("worked by hand", "1 g of water from 0 to 100 degC and away: 0.418 + 2.257 kJ, and 1 g of solid of 1 kJ/(kg K) 0.1", [
      ["=RETORT.DRYINGHEAT(1, 1, 0, 100, 1)", "2.775"],
    ]),
    ...published("from memory", "steam tables: 2357.7 kJ/kg to evaporate at 60 degC", [
      ["=RETORT.DRYINGHEAT(0.000001, 1, 59.999999, 60, 0.000001)", "2.3577", { within: [0.004, "a straight line between 0 and 100 degC"] }],
    ]),
  ],
  laws: [
    law("DRYINGHEAT")("adds up over samples, and over a warming cut in two", (call) => {
      const heat = numberBy(call);
      fc.assert(
        fc.property(between(1, 50), between(1, 50), between(0, 30), between(105, 250), between(0.2, 2), (dry, water, from, to, specific) => {
          const once = heat("DRYINGHEAT", dry, water, from, to, specific);
          expect(heat("DRYINGHEAT", 3 * dry, 3 * water, from, to, specific)).toBeCloseTo(3 * once, 8);
          const inTin = heat("DRYINGHEAT", dry, water, from, to, specific, 40, 0.5);
          expect(inTin - once).toBeCloseTo((40 * 0.5 * (to - from)) / 1000, 8);
          expect(once).toBeCloseTo((dry * specific * (to - from) + water * (4.18 * (100 - from) + 2257)) / 1000, 8);
          const wood = 0.1031 + 0.003867 * ((from + to) / 2 + 273.15);
          expect(heat("DRYINGHEAT", dry, water, from, to)).toBeCloseTo(heat("DRYINGHEAT", dry, water, from, to, wood), 8);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.DRYINGHEAT(, 4, 20, 105)", "#VALUE! dry: nothing here (blank or 0). Give grams."],
    ['=RETORT.DRYINGHEAT(6, "wet", 20, 105)', '#VALUE! water: "wet" is not a weighing. Give grams.'],
    [
      "=RETORT.DRYINGHEAT(6, 4, 293.15, 378.15)",
      "#VALUE! from: 293.15 °C is above 100 °C and looks like kelvin. Give degrees Celsius: 293.15 K is 20.",
      "kelvin for degrees Celsius",
    ],
    [
      "=RETORT.DRYINGHEAT(6, 4, 20, 105, 1400)",
      "#VALUE! solidHeat: 1400 kJ/(kg K) is above 5 kJ/(kg K) and looks like J/(kg K). Give kJ/(kg K): 1400 J/(kg K) is 1.4.",
      "other unit of energy or heat",
    ],
    ["=RETORT.DRYINGHEAT(6, 4, 60, 20)", "#VALUE! to: 20 °C is not above from, 60 °C. Check for swapped cells.", "swapped cells"],
    [
      "=RETORT.DRYINGHEAT(6, 4, -5, 105)",
      "#VALUE! from: -5 °C is below 0 °C, where the water is ice. Give where the water is liquid; thawing is not counted.",
    ],
    [
      "=RETORT.DRYINGHEAT(6, 4, 100, 105)",
      "#VALUE! from: 100 °C is not below 100 °C, where the water has gone already. Give the temperature before drying.",
    ],
    ["=RETORT.DRYINGHEAT(6, 4, 20, 400)", "#VALUE! to: 400 °C is above 300 °C, where wood chars. Give the temperature of the drying oven."],
    [
      '=RETORT.DRYINGHEAT(6, 4, 20, 105, "", 50)',
      "#VALUE! vesselHeat: left out, but vesselMass is 50 g. Give kJ/(kg K): steel about 0.49, aluminium 0.90, glass and fired clay 0.8 (from memory).",
    ],
    ['=RETORT.DRYINGHEAT(6, 4, 20, 105, "", "", 0.49)', "#VALUE! vesselMass: left out, but vesselHeat is 0.49 kJ/(kg K). Give both, or neither."],
  ],
};
