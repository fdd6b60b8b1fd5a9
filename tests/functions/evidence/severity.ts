import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

const CELSIUS = "Give degrees Celsius: 673.15 K is 400, and so is 752 °F.";

export const evidence: FunctionEvidence = {
  name: "SEVERITY",
  answer: ["Severity, log10 R0", ""],
  published: [
    ...published(
      "read as printed",
      "steam explosion of Pinus densiflora (J. Korean Wood Sci. Technol.): 225 degC for 1 min 3.68 and for 13 min 4.79",
      [
        ["=RETORT.SEVERITY(225, 1)", "3.68"],
        ["=RETORT.SEVERITY(225, 13)", "4.79"],
      ],
    ),
    ...calculated("furnace.mjs", "log10 of t e^((T - 100) / 14.75), and the same summed over a ramp in short holds", [
      ["=RETORT.SEVERITY(225, 13)", "4.7944050634", "severity of 225 degC, 13 min"],
      ["=RETORT.SEVERITY(450, 30)", "11.78241405", "severity of 450 degC, 30 min"],
      ['=RETORT.SEVERITY(450, "", 100, 10)', "10.47408", "severity of a ramp from 100 to 450 at 10"],
    ]),
  ],
  laws: [
    law("SEVERITY")("adds ordinates: two halves of a hold, and a ramp cut in two, are the whole", (call) => {
      const ordinate = (...given: readonly unknown[]): number => 10 ** numberBy(call)("SEVERITY", ...given);
      fc.assert(
        fc.property(between(150, 250), between(2, 200), between(20, 90), between(0.5, 20), (celsius, minutes, from, rate) => {
          expect((2 * ordinate(celsius, minutes / 2)) / ordinate(celsius, minutes)).toBeCloseTo(1, 9);
          const middle = (from + celsius) / 2;
          const whole = ordinate(celsius, null, from, rate);
          expect((ordinate(middle, null, from, rate) + ordinate(celsius, null, middle, rate)) / whole).toBeCloseTo(1, 9);
          expect(ordinate(celsius, minutes, from, rate) / (whole + ordinate(celsius, minutes))).toBeCloseTo(1, 9);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.SEVERITY(, 30)", `#VALUE! temperature: nothing here (blank or 0). ${CELSIUS}`],
    ['=RETORT.SEVERITY("hot", 30)', `#VALUE! temperature: "hot" is not a temperature of heating. ${CELSIUS}`],
    [
      "=RETORT.SEVERITY(2000, 30)",
      `#VALUE! temperature: 2000 °C is above 1800 °C and looks like kelvin or °F. ${CELSIUS}`,
      "kelvin for degrees Celsius",
    ],
    [
      "=RETORT.SEVERITY(498.15, 30)",
      `#VALUE! temperature: 498.15 °C is a whole °C in kelvin, by its .15; round it if it is °C. ${CELSIUS}`,
      "kelvin for degrees Celsius",
    ],
    ["=RETORT.SEVERITY(450, 30, 373.15, 5)", `#VALUE! from: 373.15 °C is a whole °C in kelvin, by its .15; round it if it is °C. ${CELSIUS}`],
    [
      "=RETORT.SEVERITY(225, 0.02)",
      "#VALUE! minutes: 0.02 min is below 1 min and looks like a clock time. Give minutes, such as 60.",
      "clock times or dates for minutes",
    ],
    ["=RETORT.SEVERITY(225)", "#VALUE! minutes: nothing here (blank or 0). Give the minutes held, or from and rate of a ramp."],
    ["=RETORT.SEVERITY(225, 30, 20)", "#VALUE! rate: left out, blank or 0, but from is given. Give both, or neither."],
    ['=RETORT.SEVERITY(225, 30, "", 5)', "#VALUE! from: left out, but rate is given. Give both, or neither."],
    [
      "=RETORT.SEVERITY(225, 30, 300, 5)",
      "#VALUE! from: 300 °C is not below temperature, 225 °C. Give where the ramp begins; the hold is at temperature.",
      "rows out of order",
    ],
    ["=RETORT.SEVERITY(225, 30, 20, -5)", "#VALUE! rate: -5 °C/min is below zero. Give °C per minute, above 0: 180 an hour is 3."],
  ],
};
