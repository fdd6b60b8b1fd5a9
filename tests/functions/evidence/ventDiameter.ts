import fc from "fast-check";
import { calculated } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

const PEAK = "Give peak flow over mean flow; 3 to 5 is common practice, no source.";

export const evidence: FunctionEvidence = {
  name: "VENTDIAMETER",
  answer: ["Least opening by flow alone", "mm"],
  published: calculated("furnace.mjs", "orifice equation Q = 0.61 A sqrt(2 dp / rho)", [
    ["=RETORT.VENTDIAMETER(13.56, 5, 0.553, 1)", "3.960802", "hole for 13.56 L in 300 s"],
    ["=RETORT.VENTDIAMETER(13.56, 5, 0.553, 4)", "7.921604", "hole for four times that"],
    ["=RETORT.VENTDIAMETER(13.5561223, 5, 0.553251, 1, 30.3808406252)", "3.0000", "hole at 30.38 Pa"],
  ]),
  laws: [
    law("VENTDIAMETER")("lets exactly the greatest flow through at that pressure (Bernoulli, 0.61 of the area)", (call) => {
      fc.assert(
        fc.property(
          between(0.1, 500),
          between(0.5, 300),
          between(0.05, 5),
          between(1, 20),
          between(1, 1000),
          (litres, minutes, density, peak, rise) => {
            const diameter = numberBy(call)("VENTDIAMETER", litres, minutes, density, peak, rise) / 1000;
            const passed = ((0.61 * Math.PI * diameter ** 2) / 4) * Math.sqrt((2 * rise) / density);
            expect(passed / ((peak * litres) / 1000 / (60 * minutes))).toBeCloseTo(1, 10);
          },
        ),
      );
    }),
  ],
  refusals: [
    ["=RETORT.VENTDIAMETER(13.56, 5, 0.553)", `#VALUE! peakFactor: nothing here (blank or 0). ${PEAK}`],
    ['=RETORT.VENTDIAMETER("lots", 5, 0.553, 4)', '#VALUE! volume: "lots" is not a volume of gas. Give litres.'],
    ["=RETORT.VENTDIAMETER(13.56, -5, 0.553, 4)", "#VALUE! minutes: -5 min is below zero. Give minutes."],
    [
      "=RETORT.VENTDIAMETER(13.56, 5, 0.000553, 4)",
      "#VALUE! density: 0.000553 kg/m³ is too low for a gas and looks like g/mL. Give kg/m³ or g/L, which are the same: 7.5 g in 13.56 L is 0.553.",
      "other unit of mass, density or pressure",
    ],
    ["=RETORT.VENTDIAMETER(13.56, 5, 0.553, 0.3)", `#VALUE! peakFactor: 0.3 is below 1: a peak is no less than the mean. ${PEAK}`],
    [
      "=RETORT.VENTDIAMETER(13.56, 5, 0.553, 4, 101335)",
      "#VALUE! overpressure: 101335 Pa is above 5000 Pa, no longer a vented vessel. Give the pascals above the air's own pressure, such as 10.",
      "other unit of mass, density or pressure",
    ],
  ],
};
