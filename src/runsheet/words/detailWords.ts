import { CONSTANCY_CRITERIA } from "../../drying/constantWeight/constancyCriteria";
import { optionBounds } from "../options/optionBounds";
import type { BoxWords } from "./BoxWords";

const { interval, oven, wanted } = optionBounds;

/** Words of the run details: one line of the sheet each, and what is said when its box is selected. */
export const detailWords = {
  heading: "Run details",
  weighingUncertainty: "One weighing, ± (g), k = 1",
  boxes: {
    date: { label: "Date", title: "Date", prompt: "The day of the first weigh-in.", refusal: "" },
    operator: { label: "Operator", title: "Operator", prompt: "Who weighs and heats.", refusal: "" },
    sample: { label: "Sample", title: "Sample", prompt: "What it is and where it came from, so that it can be found again.", refusal: "" },
    vessel: {
      label: "Vessel",
      title: "Vessel",
      prompt: "Mark the vessel, and weigh it with its lid each time or without it each time.",
      refusal: "",
    },
    material: {
      label: "Vessel material",
      title: "Vessel material",
      prompt:
        "What vessel and lid are made of, whichever stands less heat. Held against oven, kiln and furnace; the figures stand at the foot of the sheet. Leave blank if it is none of these.",
      refusal: "Choose a material from the list, or leave the box blank.",
    },
    readability: {
      label: "Balance readability (g)",
      title: "Readability",
      prompt: "The smallest step the balance shows, in grams, such as 0.01.",
      refusal: "Type the display step in grams as a number, such as 0.01.",
    },
    repeatability: {
      label: "Balance repeatability (g)",
      title: "Repeatability",
      prompt:
        "Standard deviation of ten weighings of one load, put on and taken off each time, in grams. Leave blank if not known: rounding alone is counted then.",
      refusal: "Type the standard deviation in grams as a number, such as 0.01, or leave the box blank.",
    },
    wanted: {
      label: "Wanted uncertainty (k = 2)",
      title: "Wanted uncertainty",
      prompt:
        "How closely each share must be known, plus or minus, at about 95 %: 0.5% is half a percentage point (common practice, no source). Blank: not judged.",
      refusal: `Type a fraction up to ${wanted.atMost}, such as 0.005 or 0.5%.`,
    },
    interval: {
      label: "Planned interval (min)",
      title: "Planned interval",
      prompt:
        "Minutes between weighings. A weighing is compared with the latest one at least this long before it. 30 min is common practice, no source; standards ask 1 to 6 h.",
      refusal: `Type minutes as a number from ${interval.atLeast} to ${interval.atMost}.`,
    },
    oven: {
      label: "Oven temperature (°C)",
      title: "Oven temperature",
      prompt: "Most standards dry at 103 to 105 °C; about 120 °C is common practice, no source. Gypsum, hydrates and sugary samples need less.",
      refusal: `Type degrees Celsius as a number from ${oven.atLeast} to ${oven.atMost}.`,
    },
    criterion: {
      label: "Drying criterion",
      title: "Drying criterion",
      prompt:
        "What the limit is measured in: absolute (g), of last, of initial or of total loss (fraction, 0.1%), per gram (g per g), per hour (fraction per hour), readability (display steps).",
      refusal: `Choose one of: ${CONSTANCY_CRITERIA.join(", ")}.`,
    },
    limit: {
      label: "Drying limit",
      title: "Drying limit",
      prompt:
        "Largest change that still counts as dry, in the unit of the criterion. Two display steps: ASTM D4442 method A. 0.001 of last: EN 322, EN 13183-1.",
      refusal: "Type the limit as a number in the unit of the criterion: 2 display steps, or 0.001 for 0.1 %.",
    },
  },
} as const satisfies { readonly heading: string; readonly weighingUncertainty: string; readonly boxes: Readonly<Record<string, BoxWords>> };
