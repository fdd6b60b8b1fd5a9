import { cell } from "../expressions/Expression";
import { degreesFrom } from "../options/degrees";
import { CLOCK, LABEL } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import { materialWords } from "../words/materialWords";
import { degreesShown, VESSEL_MATERIALS } from "../words/vesselMaterials";
import { band, ofCells, type Block, type BlockCell } from "./Block";

/** What vessels are made of, what that stands, and where the figure comes from. */
export function materialsBlock(sheet: RunSheet): Block {
  const { heading, first, note } = sheet.rows.materials;
  const { degrees } = sheet.options;
  const shown = degreesShown(degrees);
  return ofCells(
    ...band(sheet, heading, "runBand", { [LABEL]: materialWords.heading, [CLOCK]: materialWords.column(degrees), [CLOCK + 1]: materialWords.source }),
    ...VESSEL_MATERIALS.flatMap(({ name, standsCelsius, source }, index) =>
      [name, degreesFrom(standsCelsius, degrees), source(shown)].map((content, column): BlockCell => ({
        at: cell(first + index, column),
        content,
        style: column === 0 ? "runHelp" : "runBeside",
      })),
    ),
    { at: cell(note, LABEL), content: materialWords.note, style: "runHelp" },
  );
}
