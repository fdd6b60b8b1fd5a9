import { cautions } from "./cautions";
import type { Block } from "./Block";
import { band } from "./band";
import { glossary } from "./glossary";
import type { Layout } from "./layout";
import type { RunSheetOptions } from "./RunSheetOptions";

/** What the sheet is for, how to read its looks, and the cautions for the work. */
export function titleBlock({ kind }: RunSheetOptions, rows: Layout): Block {
  return {
    cells: [
      { cell: `A${rows.title}`, content: glossary.title[kind], style: "title" },
      { cell: `A${rows.purpose}`, content: glossary.purpose[kind], style: "note" },
      { cell: `A${rows.legend}`, content: glossary.legend.input, style: "input" },
      { cell: `B${rows.legend}`, content: glossary.legend.computed, style: "computed" },
      ...band(rows, rows.cautionsHeading, glossary.cautions, "heading"),
      ...cautions[kind].flatMap((line, index) => band(rows, rows.firstCaution + index, line, "caution")),
    ],
    entryRules: [],
  };
}
