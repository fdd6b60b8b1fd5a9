import type { Border, Borders, Style } from "exceljs";
import type { PlannedCell } from "../../workbook/SheetPlan";
import { HEAVY_LINE, SIDES, sheetStyles, type SheetStyle } from "../../workbook/sheetStyles";

// A font without a name is drawn in any the reader chooses, often one with serifs; 2 is the family of those without (ECMA-376 Part 1, 18.8.18).
export const USUAL_FONT = { name: "Calibri", family: 2, size: 11 };

const argbOf = (colour: string): string => colour.toUpperCase().replace("#", "FF");

/** A planned look and number format as the file library has them. */
export function plannedStyle({ style, format, heavyLeft }: PlannedCell): Partial<Style> {
  const look: SheetStyle | undefined = style === undefined ? undefined : sheetStyles[style];
  const heavy: Partial<Borders> = heavyLeft === true ? { left: line("medium", HEAVY_LINE) } : {};
  const border = { ...linesOf(look), ...heavy };
  return {
    font: {
      ...USUAL_FONT,
      ...(look?.bold === true && { bold: true }),
      ...(look?.italic === true && { italic: true }),
      ...(look?.size !== undefined && { size: look.size }),
      ...(look && { color: { argb: argbOf(look.fontColour) } }),
    },
    ...(look?.fill !== undefined && { fill: { type: "pattern", pattern: "solid", fgColor: { argb: argbOf(look.fill) } } }),
    ...(Object.keys(border).length > 0 && { border }),
    alignment: {
      vertical: look?.top === true ? "top" : "middle",
      ...(look?.align === "right" && { horizontal: "right" }),
      ...(look?.wrap === true && { wrapText: true }),
      ...(look?.shrink === true && { shrinkToFit: true }),
      ...(look?.indent !== undefined && { horizontal: "left" as const, indent: look.indent }),
    },
    ...(format !== undefined && { numFmt: format }),
  };
}

const line = (style: "thin" | "medium" | "dotted", colour: string): Border => ({ style, color: { argb: argbOf(colour) } });

function linesOf(look: SheetStyle | undefined): Partial<Borders> {
  if (look?.foot !== undefined) return { bottom: line("dotted", look.foot) };
  const { border } = look ?? {};
  return border === undefined ? {} : Object.fromEntries((look?.sides ?? SIDES).map((side) => [side, line("thin", border)]));
}
