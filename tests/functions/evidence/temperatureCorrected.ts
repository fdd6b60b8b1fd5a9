import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import { column } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import type { Refusal } from "../refusals/Refusal";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

const POINTS = "{0.4; 100.9; 422; 664}, {0; 99.6; 419.527; 660.323}";
const CELSIUS = "Give degrees Celsius: 673.15 K is 400, and so is 752 °F.";

export const evidence: FunctionEvidence = {
  name: "TEMPERATURE.CORRECTED",
  answer: ["Corrected temperature", "°C"],
  published: [
    ...calculated("furnace.mjs", "the straight line from zinc to aluminium, fixed points of ITS-90", [
      [`=RETORT.TEMPERATURE.CORRECTED(450, ${POINTS})`, "447.387694", "100 to 600 between two points"],
    ]),
    ...published("read as printed", "ITS-90 fixed points: a reading at a point is that point (zinc 419.527, aluminium 660.323 degC)", [
      [`=RETORT.TEMPERATURE.CORRECTED(422, ${POINTS})`, "419.527"],
      [`=RETORT.TEMPERATURE.CORRECTED(664, ${POINTS})`, "660.323"],
      [`=RETORT.TEMPERATURE.CORRECTED(0.4, ${POINTS})`, "0"],
      ["=RETORT.TEMPERATURE.CORRECTED(422, {664; 422; 0}, {660.323; 419.527; 0.001})", "419.527"],
    ]),
    ...published("worked by hand", "half-way between 0 at 0 and 98 at 100", [["=RETORT.TEMPERATURE.CORRECTED(50, {0; 100}, {0; 98})", "49"]]),
  ],
  laws: [
    law("TEMPERATURE.CORRECTED")("undoes any straight error exactly, whatever the order of the points", (call) => {
      fc.assert(
        fc.property(between(0.95, 1.05), between(-5, 5), between(0, 1), (gain, zero, share) => {
          const references = [20, 231.928, 419.527, 660.323];
          const readings = references.map((reference) => zero + gain * reference);
          const reading = (readings[0] as number) + share * ((readings[3] as number) - (readings[0] as number));
          const corrected = numberBy(call)("TEMPERATURE.CORRECTED", reading, column(readings), column(references));
          expect(corrected).toBeCloseTo((reading - zero) / gain, 6);
          expect(numberBy(call)("TEMPERATURE.CORRECTED", reading, column([...readings].reverse()), column([...references].reverse()))).toBeCloseTo(
            corrected,
            9,
          );
        }),
      );
    }),
  ],
  refusals: [
    [`=RETORT.TEMPERATURE.CORRECTED(, ${POINTS})`, `#VALUE! reading: nothing here (blank). ${CELSIUS}`],
    [`=RETORT.TEMPERATURE.CORRECTED("red", ${POINTS})`, `#VALUE! reading: "red" is not a thermometer's reading. ${CELSIUS}`],
    [
      `=RETORT.TEMPERATURE.CORRECTED(700, ${POINTS})`,
      "#VALUE! reading: 700 °C is outside the points, 0.4 to 664 °C. Calibrate beyond it; nothing is guessed there.",
    ],
    [
      `=RETORT.TEMPERATURE.CORRECTED(0, ${POINTS})`,
      "#VALUE! reading: 0 °C is outside the points, 0.4 to 664 °C. Calibrate beyond it; nothing is guessed there.",
    ],
    [
      "=RETORT.TEMPERATURE.CORRECTED(50, {32; 212}, {0; 100})",
      "#VALUE! references: row 2 is 100 where 212 was read, over 50 °C off. Check for a blank cell, swapped rows or °F.",
      "degrees Fahrenheit for Celsius",
    ],
    ...(
      [
        [1, "273.15; 372.75", "ice", "273.15", "0"],
        [2, "373.12; 505.078", "tin", "505.078", "231.928"],
        [2, "373.12; 692.677", "zinc", "692.677", "419.527"],
        [2, "373.12; 933.473", "aluminium", "933.473", "660.323"],
      ] as const
    ).map(([row, kelvin, what, is, celsius]): Refusal => [
      `=RETORT.TEMPERATURE.CORRECTED(400, {${kelvin}}, {${kelvin}})`,
      `#VALUE! references: row ${row} is ${is}, ${what} in kelvin. Give degrees Celsius, ${celsius}, there and in readings.`,
      "kelvin for degrees Celsius",
    ]),
    ["=RETORT.TEMPERATURE.CORRECTED(50, {0.4; 101}, {0})", "#VALUE! references: 1 value beside 2 readings. Give one reference for each reading."],
    [
      "=RETORT.TEMPERATURE.CORRECTED(50, {100; 0}, {100; 0})",
      "#VALUE! readings: one calibration point makes no line. Give at least two; a last row of 0 and 0 counts as blank, so put ice first.",
    ],
    [
      "=RETORT.TEMPERATURE.CORRECTED(50, {0.4}, {0})",
      "#VALUE! readings: one calibration point makes no line. Give at least two; a last row of 0 and 0 counts as blank, so put ice first.",
    ],
    [
      "=RETORT.TEMPERATURE.CORRECTED(50, {0.4; 90; 101}, {0; 99.6; 95})",
      "#VALUE! references: they do not rise from the reading 90 to 101. Check for a repeated or swapped point.",
    ],
    [
      "=RETORT.TEMPERATURE.CORRECTED(50, {100; 100}, {99; 100})",
      "#VALUE! references: they do not rise from the reading 100 to 100. Check for a repeated or swapped point.",
    ],
  ],
};
