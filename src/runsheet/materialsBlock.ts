import { cellAt } from "../workbook/cellArea";
import type { PlannedCell } from "../workbook/SheetPlan";
import type { Block } from "./Block";
import { band } from "./band";
import { glossary } from "./glossary";
import type { Layout } from "./layout";
import { VESSEL_MATERIALS } from "./vesselMaterials";

const { materials: words } = glossary;

/** What vessels are made of, what that stands, and where the figure comes from. */
export function materialsBlock(rows: Layout): Block {
  const own = rows.materials;
  return {
    cells: [
      ...band(rows, own.heading, words.heading, "heading"),
      ...words.columns.map((content, column): PlannedCell => ({ cell: cellAt(own.columnHeadings - 1, column), content, style: "columnHeading" })),
      ...VESSEL_MATERIALS.flatMap(({ name, standsCelsius, source }, index) =>
        [name, standsCelsius, source].map((content, column): PlannedCell => ({
          cell: cellAt(own.first + index - 1, column),
          content,
          style: "note",
        })),
      ),
      { cell: `A${own.note}`, content: words.note, style: "note" },
    ],
    entryRules: [],
  };
}
