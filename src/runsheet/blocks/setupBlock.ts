import { firstOf, isNumber, orNothing, when } from "../expressions/choices";
import { is, range } from "../expressions/Expression";
import { startOfClock } from "../formulas/clock";
import { contradictionOf } from "../formulas/slips/contradiction";
import { crosswiseIn } from "../formulas/crosswise";
import { yetToDry } from "../formulas/yetToDry";
import { SAMPLES_ARE } from "../options/RunSheetOptions";
import { LABEL } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import { setupWords } from "../words/setupWords";
import { sheetWords } from "../words/sheetWords";
import { band, calculated, ofCells, together, working, workingLabel, type Block } from "./Block";
import { ANYTHING, box, boxRule, dateAt, oneOf, wideBox } from "./entries";
import { cell } from "../expressions/Expression";

/** Who, what, when, and whether the samples are one material. */
export function setupBlock(sheet: RunSheet): Block {
  const { rows, columns, setup, options, settings, samples, drying, fired, working: own } = sheet;
  const { heading, date, material, samples: samplesRow } = rows.setup;
  const [lastBox, beside] = [columns.box(1, columns.slots).column, columns.reckoned(1, 1).column];
  const { labels, beside: says } = setupWords;
  const oven = when(isNumber(settings.oven), says.oven(settings.oven, options.degrees, settings.interval), says.noOven(settings.interval));
  const isSeveral = options.replicates > 1;
  const which = firstOf(
    [
      [is(setup.samplesAre, "=", "repeats"), says.repeats(options.replicates)],
      [is(setup.samplesAre, "=", "different"), says.different],
    ],
    says.sayWhich,
  );
  const names = range(setup.name(1), setup.name(options.replicates));
  return together(
    ofCells(
      ...band(sheet, heading, "runBand", {
        [LABEL]: setupWords.heading,
        ...Object.fromEntries(samples.map((sample) => [columns.box(1, sample).column, sheetWords.sample(sample)])),
        [beside]: setupWords.legend,
      }),
      { at: cell(date, LABEL), content: labels.date, style: "runLabel" },
      { at: cell(material, LABEL), content: labels.material, style: "runLabel" },
      { at: cell(samplesRow, LABEL), content: isSeveral ? labels.samples : labels.oneSample, style: "runLabel" },
      { at: cell(date, beside), content: says.doneBy, style: "runBeside" },
      calculated(cell(material, beside), oven, "runBeside"),
      isSeveral ? calculated(cell(samplesRow, beside), which, "runBeside") : { at: cell(samplesRow, beside), content: says.one, style: "runBeside" },
      workingLabel(sheet, date, sheetWords.workings.start),
      working(own.start, startOfClock(sheet), "0.0000"),
      ...(isSeveral ? [working(own.crosswise, crosswiseIn(sheet, drying), "0")] : []),
      ...(isSeveral && fired[0] !== undefined ? [working(own.crosswiseFired, crosswiseIn(sheet, fired[0]), "0")] : []),
      workingLabel(sheet, material, sheetWords.workings.yetToDry),
      ...samples.map((sample) => working(own.yetToDry(sample), yetToDry(sheet, sample), sheet.formats.reckoned)),
      workingLabel(sheet, samplesRow, sheetWords.workings.contradiction),
      ...samples.map((sample) => working(own.contradiction(sample), orNothing(contradictionOf(sheet, sample)))),
    ),
    { cells: [box(setup.date, { format: "yyyy-mm-dd" })], entryRules: [boxRule(setup.date, setupWords.date, dateAt(cell(date, setup.date.column)))] },
    wideBox(setup.operator, lastBox, setupWords.operator, ANYTHING),
    wideBox(setup.material, lastBox, setupWords.material, ANYTHING),
    isSeveral
      ? {
          cells: [box(setup.samplesAre, { content: options.samplesAre })],
          entryRules: [boxRule(setup.samplesAre, setupWords.samplesAre, oneOf(SAMPLES_ARE))],
        }
      : ofCells(),
    { cells: samples.map((sample) => box(setup.name(sample))), entryRules: [boxRule(names, setupWords.name, ANYTHING)] },
  );
}
