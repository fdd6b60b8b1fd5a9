import { asGiven } from "../inputs/kinds/words";
import { optional } from "../inputs/optional";
import { RANGE_QUANTITIES } from "../sense/typicalBands";
import { FEEDSTOCKS, rangeEvidence, typicalRange } from "../sense/typicalRange";
import { rangeInCells } from "./rangeInCells";
import { cellFunction, type CellFunction } from "./cellFunction";

const typicalRangeFunction = cellFunction({
  name: "TYPICALRANGE",
  summary: "Whether a result lies where literature reports it for such material, in words with the source: a hint, not a verdict on the run.",
  inputs: {
    quantity: {
      ...asGiven("What was found, one of ten words.", RANGE_QUANTITIES),
      detail: "Shares are dry, moisture is on the wet basis, the heating value is the higher one.",
    },
    value: asGiven("The result: a fraction, or MJ/kg for a heating value. Blank, or 0 where none has 0: not given."),
    feedstock: optional({ ...asGiven("The material, one of the words listed.", FEEDSTOCKS), zero: "nothing" }, "plant matter at large"),
  },
  result: { about: 'Text that begins with "inside" or "outside", or says what is wrong', unit: "" },
  compute: ({ quantity, value, feedstock }) => typicalRange(quantity, value, feedstock),
  working: ({ quantity, value, feedstock }) => [typicalRange(quantity, value, feedstock), ...rangeEvidence(quantity)],
  inManyCells: rangeInCells,
  examples: [
    {
      cell: '=RETORT.TYPICALRANGE("ash", 0.012, "wood")',
      gives: "inside: ash of 0.012, dry, lies in the 0.005 to 0.022 of most woods (MIL-HDBK-1003/6, table 12).",
    },
    {
      cell: '=RETORT.TYPICALRANGE("ash", 0.3)',
      gives:
        "outside: ash of 0.3, dry, is above the 0.001 to 0.25 of untreated plant matter (span of the materials listed, widened; common practice, no source). Check tare, basis and air leak.",
    },
    {
      cell: '=RETORT.TYPICALRANGE("carbon", 0.39, "rice husk")',
      gives:
        "inside: carbon of 0.39, dry, lies in the 0.36 to 0.54 of untreated plant matter (span of the materials listed, widened; common practice, no source); rice husk is printed with 0.389 (Raveendran 1995).",
    },
  ],
  source: "The table or paper named in each answer. Bands without one are common practice: the span of the table, widened.",
});

/** Whether a result is one to be expected. */
export const sense: readonly CellFunction[] = [typicalRangeFunction];
