import { CONSTANCY_CRITERIA } from "../drying/constantWeight/constancyCriteria";
import { anythingRule, numberRule, type Rule } from "./entryRules";
import type { Detail } from "./quantities";
import { VESSEL_MATERIALS } from "./vesselMaterials";
import { optionBounds } from "./optionBounds";

const MATERIALS = VESSEL_MATERIALS.map(({ name }) => name);

/** What may be typed into each box of the run details. Bounds only catch a slip of the hand: grams for milligrams, °F for °C, hours for minutes. */
export const DETAIL_RULES: Readonly<Record<Detail, Rule>> = {
  date: anythingRule("Date", "The day of the first weigh-in."),
  operator: anythingRule("Operator", "Who weighs and heats."),
  sample: anythingRule("Sample", "What it is and where it came from, so that it can be found again."),
  vessel: anythingRule("Vessel", "Mark the vessel, and weigh it with its lid each time or without it each time."),
  material: {
    allow: { kind: "words", words: MATERIALS },
    promptTitle: "Vessel material",
    prompt:
      "What vessel and lid are made of, whichever stands less heat. Held against oven, kiln and furnace; the figures stand at the foot of the sheet. Leave blank if it is none of these.",
    refusal: "Choose a material from the list, or leave the box blank.",
  },
  readability: numberRule(
    "Readability",
    "The smallest step the balance shows, in grams, such as 0.01.",
    optionBounds.readability.atLeast,
    optionBounds.readability.atMost,
    "Type the display step in grams as a number, such as 0.01.",
  ),
  repeatability: numberRule(
    "Repeatability",
    "Standard deviation of ten weighings of one load, put on and taken off each time, in grams. Leave blank if not known: rounding alone is counted then.",
    0.0000001,
    100,
    "Type the standard deviation in grams as a number, such as 0.01, or leave the box blank.",
  ),
  wanted: numberRule(
    "Wanted uncertainty",
    "How closely each share must be known, plus or minus, at about 95 %: 0.5% is half a percentage point (common practice, no source). Blank: not judged.",
    optionBounds.wanted.atLeast,
    optionBounds.wanted.atMost,
    "Type a fraction up to 0.1, such as 0.005 or 0.5%.",
  ),
  interval: numberRule(
    "Planned interval",
    "Minutes between weighings. A weighing is compared with the latest one at least this long before it. 30 min is common practice, no source; standards ask 1 to 6 h.",
    optionBounds.interval.atLeast,
    optionBounds.interval.atMost,
    "Type minutes as a number from 1 to 1440.",
  ),
  oven: numberRule(
    "Oven temperature",
    "Most standards dry at 103 to 105 °C; about 120 °C is common practice, no source. Gypsum, hydrates and sugary samples need less.",
    optionBounds.oven.atLeast,
    optionBounds.oven.atMost,
    "Type degrees Celsius as a number from 20 to 300.",
  ),
  criterion: {
    allow: { kind: "words", words: CONSTANCY_CRITERIA },
    promptTitle: "Drying criterion",
    prompt:
      "What the limit is measured in: absolute (g), of last, of initial or of total loss (fraction, 0.1%), per gram (g per g), per hour (fraction per hour), readability (display steps).",
    refusal: `Choose one of: ${CONSTANCY_CRITERIA.join(", ")}.`,
  },
  limit: numberRule(
    "Drying limit",
    "Largest change that still counts as dry, in the unit of the criterion. Two display steps: ASTM D4442 method A. 0.001 of last: EN 322, EN 13183-1.",
    0,
    1000,
    "Type the limit as a number in the unit of the criterion: 2 display steps, or 0.001 for 0.1 %.",
  ),
};
