import { CONSTANCY_CRITERIA } from "../../drying/constantWeight/constancyCriteria";
import { weighingUncertainty } from "../formulas/weighingUncertainty";
import { optionBounds } from "../options/optionBounds";
import type { RunSheetOptions } from "../options/RunSheetOptions";
import { type Detail, DETAILS } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { detailWords } from "../words/detailWords";
import { VESSEL_MATERIALS } from "../words/vesselMaterials";
import { band, type Block, label, ofCells, together } from "./Block";
import { ANYTHING, box, numbers, oneOf } from "./entries";

/** Who, what, when, and the numbers that the verdict on dryness and the uncertainties rest on. */
export function detailsBlock(sheet: RunSheet): Block {
  const { details, options, rows, formats, weighingUncertainty: u } = sheet;
  const contents = prefilled(options);
  return together(
    ofCells(...band(sheet, rows.details.heading, detailWords.heading, "heading")),
    ...DETAILS.map((detail) => {
      const [content, format] = [contents[detail], FORMATS[detail]];
      const look = { ...(content === undefined ? {} : { content }), ...(format === undefined ? {} : { format }) };
      return box(details[detail], detailWords.boxes[detail], ALLOWED[detail], look);
    }),
    ofCells(label(u, detailWords.weighingUncertainty), {
      at: u,
      formula: weighingUncertainty(sheet),
      style: "computed",
      format: formats.uncertainty,
    }),
  );
}

// Twice the sensitivity of the balance, ASTM D4442 method A: the one limit that every balance can decide.
const USUAL_CRITERION: (typeof CONSTANCY_CRITERIA)[number] = "readability";
const USUAL_LIMIT = 2;
// Half a percentage point; common practice, no source.
const USUAL_WANTED = 0.005;

const prefilled = (options: RunSheetOptions): Partial<Record<Detail, string | number>> => ({
  vessel: options.vessel,
  readability: options.readability,
  wanted: USUAL_WANTED,
  interval: options.intervalMinutes,
  ...(options.ovenCelsius === undefined ? {} : { oven: options.ovenCelsius }),
  criterion: USUAL_CRITERION,
  limit: USUAL_LIMIT,
});

const FORMATS: Partial<Record<Detail, string>> = { date: "yyyy-mm-dd", wanted: "0.0##%" };

// Bounds only catch a slip of the hand: grams for milligrams, °F for °C, hours for minutes.
const ALLOWED: Readonly<Record<Detail, ReturnType<typeof numbers>>> = {
  date: ANYTHING,
  operator: ANYTHING,
  sample: ANYTHING,
  vessel: ANYTHING,
  material: oneOf(VESSEL_MATERIALS.map(({ name }) => name)),
  readability: numbers(optionBounds.readability),
  repeatability: numbers({ atLeast: 0.0000001, atMost: 100 }),
  wanted: numbers(optionBounds.wanted),
  interval: numbers(optionBounds.interval),
  oven: numbers(optionBounds.oven),
  criterion: oneOf(CONSTANCY_CRITERIA),
  limit: numbers({ atLeast: 0, atMost: 1000 }),
};
