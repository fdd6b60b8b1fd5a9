import {
  type DryShares,
  evaporation,
  LARGEST_SUM,
  moistureAtZero,
  netDry,
  netHeatingValue,
  PER_HYDROGEN,
  PER_MOISTURE,
  PER_OXYGEN_NITROGEN,
} from "../../energy/netHeatingValue";
import type { Read } from "../../inputs/Input";
import { dryHeatingValue } from "../../inputs/kinds/energy";
import { massFraction, presentMassFraction, wetMoisture } from "../../inputs/kinds/shares";
import { optional } from "../../inputs/optional";
import { netRow } from "../../problems/functions/energyProblems";
import { dryFractionsAboveWhole, hydrogenTakesAll } from "../../problems/sharing/plainCellProblems";
import { SIZE_FIGURES } from "../../problems/quoted";
import { tableFunction } from "../cellFunction";
import { filledInCells, significantInCells } from "../inCells/sentenceInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { FUEL_FOR_REAL } from "./cautions";

const inputs = {
  higherDry: dryHeatingValue("Higher heating value of the dry sample [MJ/kg]."),
  hydrogen: presentMassFraction("Hydrogen in the dry sample, without that of moisture [fraction]."),
  oxygen: massFraction("Oxygen in the dry sample, without that of moisture [fraction]."),
  nitrogen: optional(massFraction("Nitrogen in the dry sample [fraction]."), "none"),
  moisture: optional(wetMoisture("Moisture of the sample as it is burnt, wet basis [fraction]."), "the dry sample"),
};

type Asked = Read<typeof inputs>;

const sharesOf = ({ hydrogen, oxygen, nitrogen = 0 }: Asked): DryShares => ({ hydrogen, oxygen, nitrogen });

const netOf = (asked: Asked): number => netHeatingValue(asked.higherDry, sharesOf(asked), asked.moisture ?? 0);

const secondRow = (asked: Asked): string => netRow(asked.moisture ?? 0, moistureAtZero(netDry(asked.higherDry, sharesOf(asked))), netOf(asked) < 0);

// Print as themselves, and stand nowhere else in the sentence.
const MOISTURE = 0.4567;
const AT_ZERO = 0.123;

type Texts = Readonly<Record<"higherDry" | "hydrogen" | "oxygen" | "nitrogen", string>>;

/** As `netDry` has it. */
const dryInCells = ({ higherDry, hydrogen, oxygen, nitrogen }: Texts): string =>
  `(${operand(higherDry)}-(${PER_HYDROGEN}*${operand(hydrogen)}+${PER_OXYGEN_NITROGEN}*(${operand(oxygen)}+${numberInCells(nitrogen, 0)}))/10)`;

export const heatingValueNetFunction = tableFunction({
  name: "HEATINGVALUE.NET",
  summary:
    "Net heating value of the sample with its moisture in MJ/kg, at constant pressure, from the higher one of the dry sample; below it, what it is of in words.",
  inputs,
  result: { about: "Net heating value [MJ/kg], and a row in words", unit: "" },
  computeTable: (asked) => [[netOf(asked)], [secondRow(asked)]],
  refusesInCells: (texts) => [
    { when: `${operand(texts.hydrogen)}+${operand(texts.oxygen)}+${numberInCells(texts.nitrogen, 0)}>${LARGEST_SUM}`, says: dryFractionsAboveWhole },
    { when: `${dryInCells(texts)}<=0`, says: hydrogenTakesAll },
  ],
  inManyCells: (texts) => {
    const [dry, moisture] = [dryInCells(texts), numberInCells(texts.moisture, 0)];
    const net = `${dry}*(1-${moisture})-${evaporation(1)}*${moisture}`;
    const zero = [String(AT_ZERO), significantInCells(`(${dry}/(${dry}+${evaporation(1)}))`, SIZE_FIGURES)] as const;
    const moist = (isBelowZero: boolean): string => filledInCells(netRow(MOISTURE, AT_ZERO, isBelowZero), [[String(MOISTURE), moisture], zero]);
    return [[net], [`IF(${moisture}=0,${filledInCells(netRow(0, AT_ZERO, false), [zero])},IF(${net}<0,${moist(true)},${moist(false)}))`]];
  },
  working: (asked) => {
    const { higherDry, hydrogen, oxygen, nitrogen = 0, moisture = 0 } = asked;
    const dry = netDry(higherDry, sharesOf(asked));
    return [
      `net, dry = ${inFigures(higherDry)} - (${PER_HYDROGEN} x ${inFigures(100 * hydrogen)} + ${PER_OXYGEN_NITROGEN} x (${inFigures(100 * oxygen)} + ${inFigures(100 * nitrogen)})) / 1000 = ${inFigures(dry)} MJ/kg`,
      `evaporation = ${PER_MOISTURE} x ${inFigures(100 * moisture)} / 1000 = ${inFigures(evaporation(moisture))} MJ/kg`,
      `net = ${inFigures(dry)} x (1 - ${inFigures(moisture)}) - ${inFigures(evaporation(moisture))} = ${inFigures(netOf(asked))} MJ/kg`,
      secondRow(asked),
    ];
  },
  examples: [
    {
      cell: "=RETORT.HEATINGVALUE.NET(20, 0.06, 0.43, 0.001, 0.5)",
      gives: [
        [8.124659999999999],
        [
          "Net at constant pressure, as fired with moisture 0.5 (wet basis); ISO 18125 form, from memory, with no range of its own: its error is that of higherDry; 0 at a moisture of 0.884.",
        ],
      ],
      about: "Green wood, half of it water.",
    },
    {
      cell: "=RETORT.HEATINGVALUE.NET(20, 0.06, 0.43)",
      gives: [
        [18.6924],
        [
          "Net at constant pressure, of the dry sample; ISO 18125 form, from memory, with no range of its own: its error is that of higherDry; 0 at a moisture of 0.884.",
        ],
      ],
      about: "The same wood, dry.",
    },
  ],
  source:
    "ISO 18125 (the form of ISO 1928), from memory: (q - 212.2 H - 0.8 (O + N)) (1 - 0.01 M) - 24.43 M in J/g and per cents, H, O and N of the dry sample. Forms that take an as-received gross value or hydrogen are others.",
  caution: FUEL_FOR_REAL,
});
