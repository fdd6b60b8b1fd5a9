import { cell } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import { LABEL } from "../sheet/sampleCells";
import { materialWords } from "../words/materialWords";
import { VESSEL_MATERIALS } from "../words/vesselMaterials";
import { band, headings, ofCells, type Block, type BlockCell } from "./Block";

/** What vessels are made of, what that stands, and where the figure comes from. */
export function materialsBlock(sheet: RunSheet): Block {
  const { heading, columnHeadings, first, note } = sheet.rows.materials;
  return ofCells(
    ...band(sheet, heading, materialWords.heading, "heading"),
    ...headings(columnHeadings, materialWords.columns),
    ...VESSEL_MATERIALS.flatMap(({ name, standsCelsius, source }, index) =>
      [name, standsCelsius, source].map((content, column): BlockCell => ({ at: cell(first + index, column), content, style: "note" })),
    ),
    { at: cell(note, LABEL), content: materialWords.note, style: "note" },
  );
}
