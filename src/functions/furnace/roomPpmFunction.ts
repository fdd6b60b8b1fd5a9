import { MOLAR_VOLUME, PPM, PPM_OF_LITRES, ppmOfGram, type RoomAir, roomAir } from "../../furnace/roomAir";
import type { Read } from "../../inputs/Input";
import { gasMolarMass } from "../../inputs/kinds/gases";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { airChangesPerHour, CLOSED_ROOM, roomVolume } from "../../inputs/kinds/roomAir";
import { leastMinutes } from "../../inputs/kinds/times";
import { optional } from "../../inputs/optional";
import { EXPOSURE_LIMITS, IDEAL_MIXING, LIMITS_DIFFER } from "../../problems/functions/roomAirWords";
import { closedNeedsMinutes, moreGasThanRoom } from "../../problems/sharing/plainCellProblems";
import { tableFunction } from "../cellFunction";
import { label } from "../inCells/formulaInCells";
import { textInCells } from "../inCells/sentenceInCells";
import { inFigures } from "../inFigures";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { ROOM_AIR } from "./cautions";

const inputs = {
  gramsPerHour: positiveNumber("Gas let into the room [g/h].", "Give grams an hour: 0.5 g a minute is 30.", "a mass an hour", "g/h"),
  molarMass: gasMolarMass("Molar mass of the gas [g/mol]: carbon monoxide 28.010."),
  volume: roomVolume("Volume of the room [m³]."),
  airChanges: {
    ...airChangesPerHour(`Air changes per hour [1/h], or "${CLOSED_ROOM}" for none.`),
    detail: "Closed rooms of houses 0.1 to 1 (common practice, no source); an open flame or a fire draws more.",
  },
  minutes: optional(leastMinutes("Minutes since the gas began to flow [min]."), "the steady state alone"),
};

const airOf = ({ minutes, ...source }: Read<typeof inputs>): RoomAir => roomAir(source, minutes);

const STEADY = "Mean in the room, steady";
const ENDLESS = "none: it rises as long as the gas flows";
const AFTER = "Mean in the room after the minutes given";
const BY_MASS = "By mass, steady or else after the minutes";
const TENTH = "Time to fall to a tenth once the gas has ended";
const CLOSED = "none: the room is closed";

const words = (): readonly (readonly [what: string, said: string])[] => [
  ["Mixing", IDEAL_MIXING],
  ...EXPOSURE_LIMITS.map(([gas, limits]) => [`Limits of ${gas}`, limits] as const),
  ["Rules", LIMITS_DIFFER],
];

// Below it the difference from 1 loses figures, and a few terms of the series are exact.
const FEW_CHANGES = 0.001;

/** As `roomAir` has it. */
function airInCells({ gramsPerHour, molarMass, volume, airChanges, minutes }: Readonly<Record<keyof typeof inputs, string>>) {
  const changes = numberInCells(airChanges, 0);
  const hours = `(${numberInCells(minutes, 0)}/60)`;
  const perHour = `(${operand(gramsPerHour)}*${MOLAR_VOLUME * PPM_OF_LITRES}/${operand(molarMass)}/${operand(volume)})`;
  const steady = `(${perHour}/${changes})`;
  const x = `(${changes}*${hours})`;
  const reached = `IF(${x}<${FEW_CHANGES},${x}*(1-${x}/2*(1-${x}/3*(1-${x}/4))),1-EXP(-${x}))`;
  return { changes, steady, isTimed: isGivenInCells(minutes), after: `(${steady}*${reached})`, closed: `(${perHour}*${hours})` };
}

export const roomPpmFunction = tableFunction({
  name: "ROOM.PPM",
  summary: "Table of what a gas let into a room comes to in its air in the mean, with exposure limits as text; ideal mixing is optimistic.",
  inputs,
  result: { about: "One quantity a row, with its value and unit", unit: "" },
  computeTable: (read) => {
    const of = airOf(read);
    return [
      ["Quantity", "Value", "Unit"],
      [STEADY, of.steady ?? ENDLESS, "ppm"],
      [AFTER, of.after ?? "", "ppm"],
      [BY_MASS, of.milligrams, "mg/m³"],
      [TENTH, of.tenth ?? CLOSED, "min"],
      ...words().map(([what, said]) => [what, said, ""]),
    ];
  },
  refusesInCells: (texts) => {
    const { changes, steady, after, closed, isTimed } = airInCells(texts);
    return [
      { when: `(${changes}=0)*(${isTimed}=0)`, says: closedNeedsMinutes },
      { when: `IF(${changes}=0,${closed},IF(${isTimed},${after},${steady}))>${PPM}`, says: moreGasThanRoom },
    ];
  },
  inManyCells: (texts) => {
    const { changes, steady, after, closed, isTimed } = airInCells(texts);
    const isEndless = `IF(${changes}=0,1,${steady}>${PPM})`;
    const timed = `IF(${isTimed},IF(${changes}=0,${closed},${after}),"")`;
    const reached = `IF(${isEndless},${timed},${steady})`;
    return [
      ["Quantity", "Value", "Unit"].map(label),
      [label(STEADY), `IF(${isEndless},${label(ENDLESS)},${steady})`, label("ppm")],
      [label(AFTER), timed, label("ppm")],
      [label(BY_MASS), `${reached}*${operand(texts.molarMass)}/${MOLAR_VOLUME}`, label("mg/m³")],
      [label(TENTH), `IF(${changes}=0,${label(CLOSED)},60*LN(10)/${changes})`, label("min")],
      ...words().map(([what = "", said = ""]) => [label(what), textInCells(said), '""']),
    ];
  },
  working: (read) => {
    const of = airOf(read);
    const { gramsPerHour, molarMass, volume, airChanges, minutes } = read;
    const perGram = ppmOfGram(read);
    return [
      `one gram = 1000000 x ${MOLAR_VOLUME} / ${inFigures(molarMass)} / (1000 x ${inFigures(volume)}) = ${inFigures(perGram)} ppm`,
      ...(of.steady === undefined
        ? [
            `after ${inFigures(minutes ?? 0)} min = ${inFigures(gramsPerHour)} x ${inFigures(perGram)} x ${inFigures(minutes ?? 0)} / 60 = ${inFigures(of.after ?? 0)} ppm`,
          ]
        : [`steady = ${inFigures(gramsPerHour)} x ${inFigures(perGram)} / ${inFigures(airChanges)} = ${inFigures(of.steady)} ppm`]),
      ...(of.steady === undefined || of.after === undefined
        ? []
        : [`after ${inFigures(minutes ?? 0)} min, steady less e^-(changes x hours) of it: ${inFigures(of.after)} ppm`]),
      IDEAL_MIXING,
      LIMITS_DIFFER,
    ];
  },
  examples: [
    {
      cell: "=RETORT.ROOM.PPM(1, 28.01, 30, 0.5, 60)",
      gives: [
        ["Quantity", "Value", "Unit"],
        ["Mean in the room, steady", 58.23015589670355, "ppm"],
        ["Mean in the room after the minutes given", 22.911781025506453, "ppm"],
        ["By mass, steady or else after the minutes", 66.66666666666667, "mg/m³"],
        ["Time to fall to a tenth once the gas has ended", 276.31021115928553, "min"],
        [
          "Mixing",
          "optimistic: the gas is taken as spread through the whole room at once; beside the source, under the ceiling and in corners there is more, by how much nobody can reckon from this",
          "",
        ],
        [
          "Limits of carbon monoxide",
          "OSHA PEL 50 ppm, NIOSH REL 35 ppm with a ceiling of 200 ppm, ACGIH TLV 25 ppm, each over 8 h but the ceiling; IDLH 1200 ppm (OSHA chemical data, carbon monoxide)",
          "",
        ],
        [
          "Limits of methanol",
          "OSHA PEL 200 ppm, NIOSH REL 200 ppm with a STEL of 250 ppm, taken up through the skin as well; IDLH 6000 ppm (NIOSH, IDLH value of methanol)",
          "",
        ],
        ["Limits of carbon dioxide", "OSHA PEL 5000 ppm, NIOSH STEL 30000 ppm; IDLH 40000 ppm (from memory)", ""],
        [
          "Rules",
          "limits differ by country and change: defer to your local codes and to licensed practice; they are for healthy workers in a working day, and no figure here permits anything",
          "",
        ],
      ],
      about: "1 g of carbon monoxide an hour in a room of 30 m³.",
    },
  ],
  source:
    "Box that is mixed at once, with clean air coming in; ppm at 25 °C and 101 325 Pa, 24.465 L/mol, as exposure limits are converted. Limits as printed beside each.",
  caution: ROOM_AIR,
});
