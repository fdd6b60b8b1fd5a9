import { CONSTANCY_CRITERIA } from "../../drying/constantWeight/constancyCriteria";
import { optionBounds } from "../options/optionBounds";

const { interval, wanted, coolingHours } = optionBounds;
const MINUTES_PER_HOUR = 60;

interface SettingWords {
  readonly label: string;
  readonly title: string;
  readonly prompt: string;
  readonly refusal: string;
  /** Right of the box. */
  readonly help: string;
}

/** Words of the settings: what the verdicts and the ± rest on. */
export const settingWords = {
  heading: "SETTINGS",
  about: "Set from the plan; change only before the first weighing",
  /** Beside the oven's box where it is asked for in °F: 105 typed there would be 41 °C, which ovens are set to as well. */
  ovenFahrenheit: (usual: number): string => `what the oven is set to; most standards ask up to ${usual} °F`,
  boxes: {
    readability: {
      label: "Balance step, g",
      title: "Balance step",
      prompt: "The smallest step the balance shows, in grams, such as 0.01.",
      refusal: "Type the display step in grams as a number, such as 0.01.",
      help: "smallest step of the display",
    },
    repeatability: {
      label: "Repeatability, g",
      title: "Repeatability",
      prompt:
        "Standard deviation of ten weighings of one load, put on and taken off each time, in grams. Blank: rounding alone is counted, and the sheet says so.",
      refusal: "Type the standard deviation in grams as a number, such as 0.01, or leave the box blank.",
      help: "scatter of one weight put on ten times; blank: the ± is rounding only",
    },
    wanted: {
      label: "Wanted ±, 95 %",
      title: "Wanted ±",
      prompt: "How closely the share that left must be known at 95 %: 1% is one percentage point (common practice, no source). Blank: not judged.",
      refusal: `Type a fraction up to ${wanted.atMost}, such as 0.01 or 1%.`,
      help: "of the share that left; weighing and scatter are held against it",
    },
    interval: {
      label: "Rounds apart, min",
      title: "Rounds apart",
      prompt:
        "Minutes between rounds. A weighing is compared with the latest one at least this long before it. 30 min is common practice, no source; standards ask 1 to 6 h.",
      refusal: `Type minutes as a number from ${interval.atLeast} to ${interval.atMost}.`,
      help: "as planned; a round far off it is questioned",
    },
    criterion: {
      label: "Criterion",
      title: "Criterion",
      prompt:
        "What the limit is measured in: absolute (g), of last, of initial or of total loss (fraction, 0.1%), per gram (g per g), per hour (fraction per hour), readability (steps).",
      refusal: `Choose one of: ${CONSTANCY_CRITERIA.join(", ")}.`,
      help: "what dry, and fired to the end, are judged by",
    },
    limit: {
      label: "Limit",
      title: "Limit",
      prompt:
        "Largest change that still counts as none, in the unit of the criterion. Two display steps: ASTM D4442 method A. 0.001 of last: EN 322, EN 13183-1.",
      refusal: "Type the limit as a number in the unit of the criterion: 2 display steps, or 0.001 for 0.1 %.",
      help: "made with 2 display steps; largest change that counts as none",
    },
    oven: {
      label: "Oven",
      title: "Oven",
      prompt:
        "Most standards dry at 103 to 105 °C (217 to 221 °F); about 120 °C is common practice, no source. Gypsum, hydrates and sugary samples need less.",
      refusal: "",
      help: "what the oven is set to",
    },
    vessel: {
      label: "Vessel",
      title: "Vessel",
      prompt: "Mark the vessels, and weigh each with its lid each time or without it each time.",
      refusal: "",
      help: "",
    },
    material: {
      label: "Vessel made of",
      title: "Vessel made of",
      prompt:
        "What vessel and lid are made of, whichever stands less heat. Held against oven, kiln and furnace; the figures stand at the foot of the sheet. If it is none of them, choose none of these.",
      refusal: "Choose a material from the list, or its last, none of these.",
      help: "held against the temperatures; list at the foot of the sheet",
    },
    closed: {
      label: "Closed after quiet, min",
      title: "Closed after the vent went quiet",
      prompt: "Shortest time that the vessel stays closed after the vent went quiet, in minutes, so that it is cold. Local practice, no source.",
      refusal: `Type minutes as a number from 0 to ${coolingHours.atMost * MINUTES_PER_HOUR}.`,
      help: "shortest time closed after the vent went quiet; local practice",
    },
    methodScatter: {
      label: "Method's own s",
      title: "Method's own s",
      prompt:
        "Standard deviation of the share that left between repeats, from earlier work: 0.3% or 0.003. Blank: repeats are held against the wanted ± alone.",
      refusal: "Type a fraction such as 0.003 or 0.3%, or leave the box blank.",
      help: "scatter of repeats in earlier work; blank if not known",
    },
    planned: {
      label: "Planned moist, g",
      title: "Planned moist sample",
      prompt: "Moist sample that the plan puts into each vessel, in grams. Less weighed in round 1 is questioned. Blank: nothing was planned.",
      refusal: "Type grams as a plain number, or leave the box blank.",
      help: "in each vessel, without it; less is questioned",
    },
  },
} as const satisfies {
  readonly heading: string;
  readonly about: string;
  readonly ovenFahrenheit: (usual: number) => string;
  readonly boxes: Readonly<Record<string, SettingWords>>;
};
