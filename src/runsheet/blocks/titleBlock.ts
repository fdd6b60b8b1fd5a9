import { cell } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import { LABEL, VALUE } from "../sheet/sampleCells";
import { cautions } from "../words/cautions";
import { sheetWords } from "../words/sheetWords";
import { band, ofCells, type Block } from "./Block";

/** What the sheet is for, how to read its looks, and the cautions for the work. */
export function titleBlock(sheet: RunSheet): Block {
  const { rows, options } = sheet;
  const { title, purpose, legend } = sheetWords;
  return ofCells(
    { at: cell(rows.title, LABEL), content: title[options.kind], style: "title" },
    { at: cell(rows.purpose, LABEL), content: purpose[options.kind], style: "note" },
    { at: cell(rows.legend, LABEL), content: legend.input, style: "input" },
    { at: cell(rows.legend, VALUE), content: legend.computed, style: "computed" },
    ...band(sheet, rows.cautions.heading, sheetWords.cautions, "heading"),
    ...cautions[options.kind].flatMap((line, index) => band(sheet, rows.cautions.first + index, line, "caution")),
  );
}
