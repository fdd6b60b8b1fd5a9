import fc from "fast-check";
import { calculated, published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { figureBy, law } from "../laws/Law";

const PER_HOUR = "Give grams an hour: 0.5 g a minute is 30.";

export const evidence: FunctionEvidence = {
  name: "ROOM.PPM",
  answer: ["One quantity a row, with its value and unit", ""],
  published: [
    ...calculated("furnace.mjs", "a mixed room followed in short steps; 24.4654 L/mol at 25 degC and 101.325 kPa", [
      ['=RETORT.ROOM.PPM(1, 28.01, 30, "closed", 60)', "29.115", "1 g of CO in a closed room of 30 m3", { at: [2, 1] }],
      ["=RETORT.ROOM.PPM(1, 28.01, 30, 0, 60)", "29.115", "1 g of CO in a closed room of 30 m3", { at: [2, 1] }],
      ["=RETORT.ROOM.PPM(1, 28.01, 30, 0.5, 60)", "22.91178", "1 g/h of CO, half a change an hour, 60 min", { at: [2, 1] }],
    ]),
    // 1.05 g/h, changed once an hour in 30 m3, is 0.035 g/m3.
    ...published("read as printed", "OSHA chemical data for carbon monoxide: 35 ppm is 40 mg/m3", [
      ["=RETORT.ROOM.PPM(1.2, 28.01, 30, 1)", "40", { at: [3, 1] }],
      ["=RETORT.ROOM.PPM(1.2, 28.01, 30, 1)", "35", { at: [1, 1] }],
      ["=RETORT.ROOM.PPM(1, 28.01, 30, 1)", "NIOSH REL 35 ppm with a ceiling of 200 ppm", { at: [6, 1] }],
    ]),
    ...published("read as printed", "NIOSH, IDLH value of methanol: 200 ppm is 262 mg/m3, IDLH 6000 ppm", [
      ["=RETORT.ROOM.PPM(7.86, 32.042, 30, 1)", "200", { at: [1, 1], within: [0.5, "262 mg/m3 is itself rounded"] }],
      ["=RETORT.ROOM.PPM(1, 32.042, 30, 1)", "IDLH 6000 ppm", { at: [7, 1] }],
    ]),
    ...published("worked by hand", "a tenth is left after ln 10 = 2.302585 changes: 138.1551 min at one an hour", [
      ["=RETORT.ROOM.PPM(1, 28.01, 30, 1)", "138.1551", { at: [4, 1] }],
      ["=RETORT.ROOM.PPM(1, 28.01, 30, 1)", "optimistic", { at: [5, 1] }],
    ]),
  ],
  laws: [
    law("ROOM.PPM")("steady, as much leaves as comes in; before, what stays in the room is what came in less what left", (call) => {
      fc.assert(
        fc.property(
          between(0.1, 20),
          between(10, 100),
          between(20, 500),
          between(0.2, 20),
          between(2, 600),
          (grams, molar, volume, changes, minutes) => {
            const figure = (label: string): number => figureBy(call)(label, 1, "ROOM.PPM", grams, molar, volume, changes, minutes);
            const gramsOf = (ppm: number): number => (((ppm / 1e6) * volume * 1000) / 24.4654) * molar;
            const steady = figure("Mean in the room, steady");
            expect((gramsOf(steady) * changes) / grams).toBeCloseTo(1, 9);
            const hours = minutes / 60;
            expect(figure("Mean in the room after") / steady).toBeCloseTo(1 - Math.exp(-changes * hours), 8);
            expect((figure("By mass") * volume) / 1000 / gramsOf(steady)).toBeCloseTo(1, 9);
            expect(Math.exp((-changes * figure("Time to fall")) / 60)).toBeCloseTo(0.1, 9);
          },
        ),
      );
    }),
  ],
  refusals: [
    ["=RETORT.ROOM.PPM(, 28.01, 30, 1)", `#VALUE! gramsPerHour: nothing here (blank or 0). ${PER_HOUR}`],
    ['=RETORT.ROOM.PPM("little", 28.01, 30, 1)', `#VALUE! gramsPerHour: "little" is not a mass an hour. ${PER_HOUR}`],
    [
      "=RETORT.ROOM.PPM(1, 28.01, 30000, 1)",
      "#VALUE! volume: 30000 m³ is above 10000 m³ and looks like litres. Give cubic metres: length x width x height in metres.",
      "volume in another unit",
    ],
    [
      "=RETORT.ROOM.PPM(1, 28.01, 30, 1000)",
      '#VALUE! airChanges: 1000 1/h is above 600 an hour and looks like a flow. Give air changes per hour, such as 0.5, or "closed".',
    ],
    ["=RETORT.ROOM.PPM(1, 28.01, 30)", '#VALUE! airChanges: nothing here (blank). Give air changes per hour, such as 0.5, or "closed".'],
    [
      '=RETORT.ROOM.PPM(1, 28.01, 30, "closed")',
      "#VALUE! minutes: left out, but in a closed room a gas rises without end. Give the minutes the gas flows.",
    ],
    [
      '=RETORT.ROOM.PPM(60000, 28.01, 30, "closed", 60)',
      "#VALUE! gramsPerHour: the gas would come to 1750000 ppm, more than the room holds. Check grams an hour, volume and air changes.",
    ],
  ],
};
