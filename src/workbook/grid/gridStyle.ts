import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderStyleData,
  type IStyleData,
} from "@univerjs/core";
import { sheetStyles } from "../sheetStyles";
import type { CellStyle } from "../SheetPlan";

/** A planned look and number format in the engine's own terms. */
export function gridStyle(style: CellStyle | undefined, format: string | undefined): IStyleData {
  const look = style === undefined ? undefined : sheetStyles[style];
  return {
    vt: VerticalAlign.MIDDLE,
    ...(look?.align === "right" && { ht: HorizontalAlign.RIGHT }),
    ...(look && { cl: { rgb: look.fontColour } }),
    ...(look?.fill !== undefined && { bg: { rgb: look.fill } }),
    ...(look?.bold === true && { bl: BooleanNumber.TRUE }),
    ...(look?.italic === true && { it: BooleanNumber.TRUE }),
    ...(look?.wrap === true && { tb: WrapStrategy.WRAP }),
    ...(look?.size !== undefined && { fs: look.size }),
    ...(look?.border !== undefined && { bd: thinLines(look.border) }),
    ...(format !== undefined && { n: { pattern: format } }),
  };
}

function thinLines(colour: string): IStyleData["bd"] {
  const line: IBorderStyleData = { s: BorderStyleTypes.THIN, cl: { rgb: colour } };
  return { t: line, r: line, b: line, l: line };
}
