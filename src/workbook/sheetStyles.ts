import type { CellStyle, Emphasis } from "./SheetPlan";

/** How a cell looks. Colours are #RRGGBB; no fill means the sheet's own white. */
export interface SheetStyle {
  readonly fill?: string;
  readonly fontColour: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** Colour of a thin line around every cell. Only cells to fill in have one, so that they are known without colour. */
  readonly border?: string;
  /** The sides of a cell that have that line; left out: all. A box over several cells is open between them. */
  readonly sides?: readonly Side[];
  /** Colour of a dotted line below, to write on by hand. */
  readonly foot?: string;
  readonly wrap?: boolean;
  /** True where a text that is too wide for its cell is drawn smaller, since what stands beside it would cut it. */
  readonly shrink?: true;
  /** True where text begins at the top of its row, for lines of several rows that are read side by side. */
  readonly top?: true;
  /** Left out where text stands to the left and numbers to the right, as in any new cell. */
  readonly align?: "right";
  /** Room before the text, in widths of a character, so that it does not touch the number beside it. */
  readonly indent?: 1;
  /** Points; left out for the sheet's own size. */
  readonly size?: number;
}

export type Side = "left" | "right" | "top" | "bottom";
export const SIDES: readonly Side[] = ["left", "right", "top", "bottom"];

// Every font colour stands at least 4.5:1 on its fill (WCAG 2.2, 1.4.3); the border of an input at least 3:1 on white (1.4.11).
const INK = "#1F2328";
const DOTS = "#8A938C";
const BAND = { fill: "#33443B", fontColour: "#FFFFFF", bold: true, size: 10 } as const;
const LIGHT_BAND = { fill: "#DCE5DD", fontColour: INK, bold: true, size: 10 } as const;
const BOX = { fill: "#FFF8DC", fontColour: "#123A75", border: "#6B6B4B", size: 11 } as const;

export const sheetStyles: Readonly<Record<CellStyle, SheetStyle>> = {
  title: { fontColour: INK, bold: true, size: 15 },
  heading: { fill: "#3B4A3F", fontColour: "#FFFFFF", bold: true },
  columnHeading: { fill: "#E3E8E2", fontColour: INK, bold: true, wrap: true },
  label: { fontColour: INK },
  input: { fill: "#FFF8DC", fontColour: "#123A75", border: "#6B6B4B" },
  computed: { fontColour: "#3D444D" },
  recorded: { fontColour: "#3D444D", wrap: true, top: true },
  // A text such as "34.801 % ± 0.013 %" stands below the number it belongs to.
  result: { fill: "#EDF3EE", fontColour: INK, bold: true, align: "right" },
  note: { fontColour: "#4A525B", italic: true },
  noteHeading: { fontColour: "#4A525B", italic: true, wrap: true },
  caution: { fill: "#FBE7DF", fontColour: "#7A1F0B", bold: true },
  // Points: 10 prints at 8.2 where the page is set to 82 %.
  runTitle: { fontColour: INK, bold: true, size: 13 },
  runStrong: { fontColour: INK, bold: true, size: 10 },
  runAnswer: { fontColour: INK, bold: true, size: 11.5 },
  runLine: { fontColour: "#3D444D", size: 10 },
  // What a band says of a whole table runs on over the cells beside it; the heading of one column wraps.
  runBand: BAND,
  runBandWrapped: { ...BAND, wrap: true },
  runLightBand: LIGHT_BAND,
  runLightBandWrapped: { ...LIGHT_BAND, wrap: true },
  runLabel: { fontColour: INK, size: 10 },
  runTotal: { fontColour: INK, bold: true, size: 10 },
  runTotalNumber: { fontColour: INK, bold: true, size: 10, align: "right", foot: DOTS },
  runBox: { ...BOX, shrink: true },
  runBoxStart: { ...BOX, sides: ["left", "top", "bottom"] },
  runBoxMore: { ...BOX, sides: ["top", "bottom"] },
  runBoxEnd: { ...BOX, sides: ["right", "top", "bottom"] },
  runReckoned: { fontColour: "#3D444D", size: 10, align: "right", foot: DOTS },
  runVerdict: { fontColour: INK, size: 10, indent: 1, foot: DOTS },
  runVerdictStrong: { fontColour: INK, bold: true, size: 10, indent: 1, foot: DOTS },
  runMark: { fontColour: INK, bold: true, size: 10 },
  runFinding: { fontColour: "#7A1F0B", bold: true, size: 10 },
  runHelp: { fontColour: "#4A525B", size: 10 },
  runBeside: { fontColour: "#4A525B", size: 10, indent: 1 },
  runCaution: { fontColour: "#7A1F0B", size: 10 },
  runWorking: { fontColour: "#5A626B", size: 9 },
  runWorkingHeading: { fontColour: "#5A626B", italic: true, size: 9 },
};

/** The colour of the heavy line between hand and sheet. */
export const HEAVY_LINE = "#33443B";

/** How cells look while something asks to be looked at; words and marks say the same. */
export const emphasisStyles: Readonly<Record<Emphasis["look"], { readonly fill: string; readonly fontColour: string; readonly bold: true }>> = {
  failed: { fill: "#FBE1D6", fontColour: "#7A1F0B", bold: true },
  next: { fill: "#FFE08A", fontColour: INK, bold: true },
};

/** The fill of a cell that is fixed at its value on a copy of plain cells, in a file and in the workbook itself. */
export const FIXED_FILL = emphasisStyles.failed.fill;
