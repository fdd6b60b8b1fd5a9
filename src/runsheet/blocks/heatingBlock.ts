import { cell, type Cell } from "../expressions/Expression";
import { overheated } from "../formulas/vesselStands";
import { optionBounds } from "../options/optionBounds";
import type { RunSheet } from "../sheet/RunSheet";
import { VALUE, type Ashing, type Charring } from "../sheet/sampleCells";
import type { BoxWords } from "../words/BoxWords";
import { heatingWords } from "../words/heatingWords";
import { ofCells, together, type Block } from "./Block";
import { box, CLOCK, CLOCK_FORMAT, numbers } from "./entries";
import { weighingBox } from "./weighingBox";

/** What is noted while charring, in the order of the work, and the char weighed. */
export const charringBlock = (sheet: RunSheet, { kilnSet, started, smokeStopped, cooled, weighing }: Charring): Block =>
  together(
    temperatureBox(sheet, kilnSet, heatingWords.kilnSet),
    clockBox(started, heatingWords.started),
    clockBox(smokeStopped, heatingWords.smokeStopped),
    clockBox(cooled, heatingWords.cooled),
    weighingBox(sheet, weighing, heatingWords.char(sheet.options.readability), heatingWords.zeros.char),
  );

/** The char burned to ash, and the ash weighed. */
export const ashingBlock = (sheet: RunSheet, { furnaceSet, weighing }: Ashing): Block =>
  together(
    temperatureBox(sheet, furnaceSet, heatingWords.furnaceSet),
    weighingBox(sheet, weighing, heatingWords.ash(sheet.options.readability), heatingWords.zeros.ash),
  );

const clockBox = (at: Cell, words: BoxWords): Block => box(at, words, CLOCK, { format: CLOCK_FORMAT });

/** Beside the box a caution where the vessel does not stand what is set. */
const temperatureBox = (sheet: RunSheet, at: Cell, words: BoxWords): Block =>
  together(
    box(at, words, numbers(optionBounds.kiln), { format: "0" }),
    ofCells({ at: cell(at.row, VALUE + 1), formula: overheated(sheet, at), style: "note" }),
  );
