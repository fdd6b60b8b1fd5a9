import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import { asTable } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law } from "../laws/Law";

const MEGAJOULES = "Give MJ/kg: 20000 kJ/kg (J/g) is 20.";

export const evidence: FunctionEvidence = {
  name: "HEATINGVALUE.NET",
  answer: ["Net heating value [MJ/kg], and a row in words", ""],
  published: [
    ...calculated("energyAndClay.mjs", "ISO 18125 form in J/g and per cents, from memory: 20 000 J/g, H 6, O 43, N 0.1 %", [
      ["=RETORT.HEATINGVALUE.NET(20, 0.06, 0.43, 0.001)", "18.69232", "net, dry", { at: [0, 0] }],
      ["=RETORT.HEATINGVALUE.NET(20, 0.06, 0.43, 0.001, 0.1)", "16.578788", "net, 10 % of moisture", { at: [0, 0] }],
      ["=RETORT.HEATINGVALUE.NET(20, 0.06, 0.43, 0.001, 0.5)", "8.12466", "net, 50 % of moisture", { at: [0, 0] }],
    ]),
    // FOSSEE: 35.126 MJ/kg gross and 34.195 net differ by the water of hydrogen alone.
    ...published(
      "worked by hand",
      "H 6 % takes 212.2 x 6 = 1273.2 J/g, O and N 43.1 % take 34.48, moisture of a half takes half the rest and 1221.5",
      [
        ["=RETORT.HEATINGVALUE.NET(20, 0.06, 0, 0)", "18.7268", { at: [0, 0] }],
        ["=RETORT.HEATINGVALUE.NET(20, 0.06, 0.43, 0.001, 0.9)", "below zero: evaporating the water takes more than the fuel gives", { at: [1, 0] }],
        ["=RETORT.HEATINGVALUE.NET(20, 0.06, 0.43, 0.001, 0.1)", "0 at a moisture of 0.884", { at: [1, 0] }],
      ],
    ),
  ],
  laws: [
    law("HEATINGVALUE.NET")("is a straight line in moisture, from the dry value down to minus the heat of evaporating water", (call) => {
      const value = (...given: readonly unknown[]): number => asTable(call("HEATINGVALUE.NET", ...given), "")[0]?.[0] as number;
      fc.assert(
        fc.property(between(15, 35), between(0.01, 0.07), between(0.02, 0.45), between(0.01, 0.95), (gross, hydrogen, oxygen, moisture) => {
          const dry = value(gross, hydrogen, oxygen);
          expect(value(gross, hydrogen, oxygen, 0, moisture)).toBeCloseTo(dry * (1 - moisture) - 2.443 * moisture, 9);
          // 1 g of hydrogen makes 8.937 g of water, whose evaporation at 25 degC (2.442 MJ/kg) less the work of the gas is 21.22 MJ/kg.
          expect((gross - 0.08 * oxygen - dry) / hydrogen / (8.937 * 2.442)).toBeCloseTo(0.972, 2);
          expect((value(gross, hydrogen, oxygen, 0.01) - dry) / 0.01).toBeCloseTo(-0.08, 6);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.HEATINGVALUE.NET(, 0.06, 0.43)", `#VALUE! higherDry: nothing here (blank or 0). ${MEGAJOULES}`],
    ['=RETORT.HEATINGVALUE.NET("wood", 0.06, 0.43)', `#VALUE! higherDry: "wood" is not a heating value. ${MEGAJOULES}`],
    [
      "=RETORT.HEATINGVALUE.NET(20000, 0.06, 0.43)",
      `#VALUE! higherDry: 20000 MJ/kg is above 150 MJ/kg and looks like kJ/kg, kcal/kg or Btu/lb. ${MEGAJOULES}`,
      "other unit of energy or heat",
    ],
    [
      "=RETORT.HEATINGVALUE.NET(20, 0.06, 0.43, 0, 50)",
      "#VALUE! moisture: 50 is not below 1 and looks like a percentage. Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
      "percentage for a fraction",
    ],
    ["=RETORT.HEATINGVALUE.NET(20, 0.6, 0.43)", "#VALUE! hydrogen to nitrogen: the fractions sum to 1.03, above 1. Give those of the dry sample."],
    [
      "=RETORT.HEATINGVALUE.NET(2, 0.2, 0.43)",
      "#VALUE! higherDry: 2 MJ/kg is less than the water from hydrogen of 0.2 takes away. Check both, dry and in MJ/kg.",
    ],
  ],
};
