import { cell } from "../expressions/Expression";
import { comparisonNote, compared } from "../formulas/burning";
import { COMPARISON, ELEMENTS } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { LABEL } from "../sheet/sampleCells";
import { burningWords } from "../words/burningWords";
import { sheetWords } from "../words/sheetWords";
import { band, headings, label, NO_BLOCK, ofCells, together, type Block, type BlockCell } from "./Block";
import { ANYTHING, box, numbers } from "./entries";

const FRACTION = numbers({ atLeast: 0, atMost: 1 });
const FRACTION_FORMAT = "0.000";

/** What the closed run left and gave off, beside what the same dry sample would take up and give off when burned openly. */
export function burningBlock(sheet: RunSheet): Block {
  const { composition, samples, formats } = sheet;
  const rows = sheet.rows.burning;
  if (composition === undefined || rows === undefined) return NO_BLOCK;
  const charred = samples.flatMap((sample) => (sample.charring === undefined ? [] : [{ sample, charring: sample.charring }]));
  return together(
    ofCells(...band(sheet, rows.heading, burningWords.heading, "heading")),
    box(composition.formula, burningWords.formula, ANYTHING),
    ...ELEMENTS.map((element) => box(composition[element], burningWords.fractions[element], FRACTION, { format: FRACTION_FORMAT })),
    ofCells(
      ...headings(rows.columnHeadings, [burningWords.column, ...samples.map(({ number }) => sheetWords.sample(number))]),
      ...COMPARISON.flatMap((quantity) => [
        label(cell(rows.comparison[quantity], LABEL), burningWords.comparison[quantity]),
        ...charred.map(({ sample, charring }): BlockCell => ({
          at: charring.comparison[quantity],
          formula: compared(composition, sample, charring, quantity),
          style: "computed",
          format: formats.read,
        })),
      ]),
      ...charred.map(({ sample, charring }): BlockCell => ({
        at: charring.note,
        formula: comparisonNote(composition, sample, charring),
        style: "note",
      })),
    ),
  );
}
