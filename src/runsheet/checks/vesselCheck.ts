import { all, any, noNumber, unlessError, type Condition } from "../expressions/choices";
import { fn, is, reckon } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { moistCell } from "../formulas/results";
import { heaviestOf, isKilogram, isMilligram, lightestOf } from "../formulas/slips/unitSlip";
import { block, countOf } from "../formulas/weighings";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords, TYPE_GRAMS } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

const words = checkWords.vessel;

// A sample below this share of its vessel, 1 in 100, is more often a slip than a sample; common practice, no source.
const VESSEL_PER_SAMPLE = 100;

/** Whether each vessel was weighed, and its sample stands above it. */
export const vesselCheck = (sheet: RunSheet): Check => ({
  silentWhile: noNumber(block(sheet, sheet.drying)),
  // A box in error is named by the check of the rows; what looks at every box must not stand before it.
  steps: [
    ...sheet.samples.map((sample) => step(unlessError(isUnitSlip(sheet, sample)), words.units(sample, sheet.working.contradiction(sample)))),
    ...sheet.samples.flatMap((sample) => ofSample(sheet, sample)),
    ...sheet.tables.map((table) =>
      step(unlessError(isKilogram(sheet, table)), words.finer(lightestOf(sheet, table), nameOf(sheet.settings.readability))),
    ),
    step(unlessError(isMilligram(sheet)), words.coarser(heaviestOf(sheet), nameOf(sheet.settings.readability))),
  ],
});

/** What contradicts in a sample's weights is about kilograms or milligrams, which explain whatever else there is. */
export const isUnitSlip = ({ working }: RunSheet, sample: number): Condition =>
  is(fn("RIGHT", working.contradiction(sample), TYPE_GRAMS.length), "=", TYPE_GRAMS);

// A sample so many times its vessel is more often a vessel in kilograms; own bound.
const VESSELS_PER_SAMPLE = 1000;

/** Whether anything but its unit is doubted of one sample's vessel. */
export const isVesselDoubted = (sheet: RunSheet, sample: number): Condition => any(...ofSample(sheet, sample).map((one) => one.when));

function ofSample(sheet: RunSheet, sample: number): Step[] {
  const { drying, columns, rows } = sheet;
  const [vessel, moist] = [sheet.vessel(sample), moistCell(sheet, sample)];
  const [vesselName, moistName] = [nameOf(columns.box(rows.drying.vessel, sample)), nameOf(drying.box(drying.rows.first, sample))];
  const both = is(fn("COUNT", vessel, moist), "=", 2);
  const far = all(is(fn("N", vessel), ">", 0), is(fn("N", moist), ">", reckon(VESSELS_PER_SAMPLE, "*", fn("N", vessel))));
  const barely = is(reckon(reckon(fn("N", moist), "-", fn("N", vessel)), "*", VESSEL_PER_SAMPLE), "<", fn("N", vessel));
  return [
    step(all(is(countOf(drying, sample), ">", 0), is(fn("COUNT", vessel), "=", 0)), words.notWeighed(sample, vesselName)),
    step(all(both, is(fn("N", moist), "<=", fn("N", vessel))), words.notAbove(sample, moistName, vesselName)),
    step(all(both, barely), words.barelyAbove(sample, moistName, vesselName)),
    step(all(both, far), words.kilograms(vesselName, sample, moistName)),
  ];
}
