import { cell } from "../expressions/Expression";
import { dryWeighing } from "../formulas/constantWeight";
import { predictionInWords, weighingsLeft } from "../formulas/prediction";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { massWords } from "../words/BoxWords";
import { sheetWords } from "../words/sheetWords";
import { weighInWords } from "../words/weighInWords";
import { band, label, NO_BLOCK, ofCells, together, type Block } from "./Block";
import { ashingBlock, charringBlock } from "./heatingBlock";
import { weighingBox } from "./weighingBox";
import { weighInTable } from "./weighInTable";

/** One sample from its empty vessel to its last weighing, in the order of the work. */
export function sampleBlock(sheet: RunSheet, sample: SampleCells): Block {
  const { emptyVessel, charring, ashing, rows, number } = sample;
  const { label: vessel, title, about } = weighInWords.emptyVessel;
  const heading = { at: cell(rows.heading, sheet.columns.width), content: sheetWords.workings.weighIns, style: "note" } as const;
  return together(
    ofCells(...band(sheet, rows.heading, sheetWords.sample(number), "heading"), heading),
    weighingBox(sheet, emptyVessel, massWords(vessel, title, about, sheet.options.readability), weighInWords.emptyVessel.zeros),
    weighInTable(sheet, sample),
    drynessBlock(sheet, sample),
    charring === undefined ? NO_BLOCK : charringBlock(sheet, charring),
    ashing === undefined ? NO_BLOCK : ashingBlock(sheet, ashing),
  );
}

/** What follows from the weigh-ins: how many are still to come, and the dry weighing. */
function drynessBlock(sheet: RunSheet, sample: SampleCells): Block {
  const { prediction, weighingsLeft: count, dry } = sample;
  return ofCells(
    label(prediction, weighInWords.prediction),
    { at: prediction, formula: predictionInWords(count), style: "note" },
    { at: count, formula: weighingsLeft(sheet, sample), style: "note" },
    label(dry, weighInWords.dry),
    { at: dry, formula: dryWeighing(sheet, sample), style: "computed", format: sheet.formats.reckoned },
  );
}
