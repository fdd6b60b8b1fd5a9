import { BooleanNumber, BorderStyleTypes, HorizontalAlign, VerticalAlign, WrapStrategy, type IBorderData, type IStyleData } from "@univerjs/core";
import type { Border, Borders, Style } from "exceljs";
import { INDENT } from "../../workbook/grid/writing/worksheetData";
import { USUAL_FONT } from "../../xlsx/planned/plannedStyle";

const SIDES = [
  ["t", "top"],
  ["r", "right"],
  ["b", "bottom"],
  ["l", "left"],
] as const;
const OPAQUE = "FF";
/** A cell's look as the file library has it. Only what our own sheets use is carried over, in both directions. */
export function fileStyle(look: IStyleData): Partial<Style> {
  const colour = look.cl?.rgb;
  const fill = look.bg?.rgb;
  return {
    font: {
      ...USUAL_FONT,
      ...(look.bl === BooleanNumber.TRUE && { bold: true }),
      ...(look.it === BooleanNumber.TRUE && { italic: true }),
      ...(look.fs !== undefined && { size: look.fs }),
      ...(colour && { color: { argb: argbOf(colour) } }),
    },
    ...(fill && { fill: { type: "pattern", pattern: "solid", fgColor: { argb: argbOf(fill) } } }),
    ...(look.bd && { border: fileBorders(look.bd) }),
    alignment: {
      vertical: "middle",
      ...(look.ht === HorizontalAlign.RIGHT && { horizontal: "right" }),
      ...(look.tb === WrapStrategy.WRAP && { wrapText: true }),
      ...((look.pd?.l ?? 0) > 0 && { horizontal: "left" as const, indent: 1 }),
    },
    ...(look.n && { numFmt: look.n.pattern }),
  };
}

/** The reverse of fileStyle. */
export function lookOf({ font, fill, border, alignment, numFmt }: Partial<Style>): IStyleData {
  const colour = font?.color?.argb;
  const ground = fill?.type === "pattern" && fill.pattern === "solid" ? fill.fgColor?.argb : undefined;
  return {
    vt: VerticalAlign.MIDDLE,
    ...(font?.bold === true && { bl: BooleanNumber.TRUE }),
    ...(font?.italic === true && { it: BooleanNumber.TRUE }),
    ...(font?.size !== undefined && font.size !== USUAL_FONT.size && { fs: font.size }),
    ...(colour !== undefined && { cl: { rgb: rgbOf(colour) } }),
    ...(ground !== undefined && { bg: { rgb: rgbOf(ground) } }),
    ...(border && Object.keys(gridBorders(border)).length > 0 && { bd: gridBorders(border) }),
    ...(alignment?.horizontal === "right" && { ht: HorizontalAlign.RIGHT }),
    ...(alignment?.wrapText === true && { tb: WrapStrategy.WRAP }),
    ...((alignment?.indent ?? 0) > 0 && { pd: { l: INDENT } }),
    ...(numFmt !== undefined && numFmt !== "General" && { n: { pattern: numFmt } }),
  };
}

/** The lines that our own sheets use. */
const IN_FILE: Readonly<Partial<Record<BorderStyleTypes, Border["style"]>>> = {
  [BorderStyleTypes.THIN]: "thin",
  [BorderStyleTypes.MEDIUM]: "medium",
  [BorderStyleTypes.DOTTED]: "dotted",
};

const styleOf = (inFile: Border["style"]): BorderStyleTypes =>
  inFile === "medium" ? BorderStyleTypes.MEDIUM : inFile === "dotted" ? BorderStyleTypes.DOTTED : BorderStyleTypes.THIN;

const fileBorders = (lines: IBorderData): Partial<Borders> =>
  Object.fromEntries(
    SIDES.flatMap(([side, inFile]) => {
      const line = lines[side];
      const colour = line?.cl.rgb;
      return line && colour ? [[inFile, { style: IN_FILE[line.s] ?? "thin", color: { argb: argbOf(colour) } }]] : [];
    }),
  );

const gridBorders = (lines: Partial<Borders>): IBorderData =>
  Object.fromEntries(
    SIDES.flatMap(([side, inFile]) => {
      const line: Partial<Border> | undefined = lines[inFile];
      return line?.style === undefined ? [] : [[side, { s: styleOf(line.style), cl: { rgb: rgbOf(line.color?.argb ?? `${OPAQUE}000000`) } }]];
    }),
  );

/** "#1F2328" of "#1f2328" or "rgb(31,35,40)". */
export function hexOf(colour: string): string {
  const parts = /^rgb\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*\)$/.exec(colour)?.slice(1);
  const hex = parts === undefined ? colour.replace("#", "") : parts.map((part) => Number(part).toString(16).padStart(2, "0")).join("");
  return `#${hex.toUpperCase()}`;
}

const argbOf = (colour: string): string => hexOf(colour).replace("#", OPAQUE);

const rgbOf = (argb: string): string => `#${argb.slice(OPAQUE.length)}`;
