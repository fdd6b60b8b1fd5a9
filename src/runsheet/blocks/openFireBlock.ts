import { cell } from "../expressions/Expression";
import { comparedValue, openFireSays } from "../formulas/burning";
import { CLOCK, LABEL } from "../sheet/Columns";
import { COMPARED, ELEMENTS, type Element } from "../sheet/layout";
import type { Composition, RunSheet } from "../sheet/RunSheet";
import { openFireWords } from "../words/openFireWords";
import { sheetWords } from "../words/sheetWords";
import { band, calculated, ofCells, together, type Block, type BlockCell } from "./Block";
import { ANYTHING, box, boxRule, numbers } from "./entries";

// Percent of a dry sample that can be; a share typed as a fraction lies below the least. Charcoal at the one end, an ash-rich straw
// at the other; own bounds.
const BOUNDS: Readonly<Record<Element, { readonly atLeast: number; readonly atMost: number }>> = {
  carbon: { atLeast: 1, atMost: 100 },
  hydrogen: { atLeast: 0.1, atMost: 26 },
  oxygen: { atLeast: 0, atMost: 90 },
  nitrogen: { atLeast: 0, atMost: 85 },
  sulfur: { atLeast: 0, atMost: 50 },
};
const EXACT = { atLeast: 0, atMost: 5 };
const ABOUT = LABEL + 2;

/** What open burning of the same dry sample would have taken up and sent away, from its analysis or formula. */
export function openFireBlock(sheet: RunSheet, composition: Composition): Block {
  const { rows, columns, samples, formats, options } = sheet;
  const from = rows.openFire;
  if (from === undefined) return ofCells();
  const { boxes, compared: names, grams, exactness, formula } = openFireWords;
  return together(
    ofCells(
      ...band(sheet, from.heading, "runBand", {
        [LABEL]: openFireWords.heading,
        [CLOCK]: openFireWords.ofDry,
        [ABOUT]: openFireWords.about,
        ...Object.fromEntries(samples.map((sample) => [columns.reckoned(1, sample).column, grams(sample)])),
        [columns.verdict]: sheetWords.says,
      }),
      ...COMPARED.flatMap((quantity, index): BlockCell[] => [
        ...samples.map((sample) =>
          calculated(
            columns.reckoned(from.boxes.carbon + index, sample),
            comparedValue(sheet, composition, quantity, sample),
            "runReckoned",
            formats.read,
          ),
        ),
        { at: cell(from.boxes.carbon + index, columns.verdict), content: names[quantity], style: "runVerdict" },
      ]),
      calculated(composition.note, openFireSays(sheet, composition), "runHelp"),
    ),
    ...ELEMENTS.map((element): Block => {
      const { title, prompt, label } = boxes[element];
      const { atLeast, atMost } = BOUNDS[element];
      const words = { title, prompt, refusal: openFireWords.shareRefusal(atLeast, atMost) };
      return labelled(composition[element].row, label, {
        cells: [box(composition[element], { format: "0.0#" })],
        entryRules: [boxRule(composition[element], words, numbers(BOUNDS[element]))],
      });
    }),
    labelled(composition.exactness.row, exactness.label, {
      cells: [box(composition.exactness, { content: 0.5 })],
      entryRules: [boxRule(composition.exactness, exactness, numbers(EXACT))],
    }),
    labelled(composition.formula.row, formula.label, {
      cells: [box(composition.formula, options.formula === undefined ? {} : { content: options.formula })],
      entryRules: [boxRule(composition.formula, formula, ANYTHING)],
    }),
  );
}

const labelled = (row: number, content: string, box: Block): Block => together(ofCells({ at: cell(row, LABEL), content, style: "runLabel" }), box);
