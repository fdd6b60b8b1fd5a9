import type { CellStyle } from "./SheetPlan";

/** How a cell looks. Colours are #RRGGBB; no fill means the sheet's own white. */
export interface SheetStyle {
  readonly fill?: string;
  readonly fontColour: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** Colour of a thin line around every cell. Only cells to fill in have one, so that they are known without colour. */
  readonly border?: string;
  readonly wrap?: boolean;
  /** Left out where text stands to the left and numbers to the right, as in any new cell. */
  readonly align?: "right";
  /** Points; left out for the sheet's own size. */
  readonly size?: number;
}

// Every font colour stands at least 4.5:1 on its fill (WCAG 2.2, 1.4.3); the border of an input at least 3:1 on white (1.4.11).
const INK = "#1F2328";

export const sheetStyles: Readonly<Record<CellStyle, SheetStyle>> = {
  title: { fontColour: INK, bold: true, size: 15 },
  heading: { fill: "#3B4A3F", fontColour: "#FFFFFF", bold: true },
  columnHeading: { fill: "#E3E8E2", fontColour: INK, bold: true, wrap: true },
  label: { fontColour: INK },
  input: { fill: "#FFF8DC", fontColour: "#123A75", border: "#6B6B4B" },
  computed: { fontColour: "#3D444D" },
  recorded: { fontColour: "#3D444D", wrap: true },
  // A text such as "34.801 % ± 0.013 %" stands below the number it belongs to.
  result: { fill: "#EDF3EE", fontColour: INK, bold: true, align: "right" },
  note: { fontColour: "#4A525B", italic: true },
  noteHeading: { fontColour: "#4A525B", italic: true, wrap: true },
  caution: { fill: "#FBE7DF", fontColour: "#7A1F0B", bold: true },
};
