import type { IStyleData } from "@univerjs/core";
import type { Alignment, Border, Borders, Fill, Font, Style } from "exceljs";
import { lookOf } from "../fileStyle";
import type { FileParts } from "../../../xlsx/parts/FileParts";
import { isOn, readXml, type Attributes } from "../../../xlsx/parts/readXml";
import { numberFormatOf } from "./numberFormats";

/** What cells of one look share. */
export interface CellLookInFile {
  readonly look: IStyleData;
  readonly format: string;
  /** True for the look of a cell that nobody has changed. */
  readonly isPlain: boolean;
}

type Parts<T> = { -readonly [K in keyof T]?: T[K] };
const SIDES = ["left", "right", "top", "bottom"] as const;
const isOff = ({ val }: Attributes): boolean => val === "0" || val === "false";

/** The looks that a file's cells name by number (ECMA-376 Part 1, 18.8). */
export async function stylesPart(parts: FileParts, part: string | undefined): Promise<readonly CellLookInFile[]> {
  const formats = new Map<number, string>();
  const fonts: Parts<Font>[] = [];
  const fills: (Fill | undefined)[] = [];
  const borders: Parts<Borders>[] = [];
  const cells: { readonly attributes: Attributes; alignment: Parts<Alignment> }[] = [];
  const within: string[] = [];
  let pattern = "";
  let side: (typeof SIDES)[number] | undefined;
  const open = (element: string, attributes: Attributes): void => {
    const [, group = ""] = within;
    within.push(element);
    if (element === "numFmt" && group === "numFmts") formats.set(Number(attributes.numFmtId), attributes.formatCode ?? "");
    else if (group === "fonts" && element === "font") fonts.push({});
    else if (group === "fonts") fontPart(fonts.at(-1), element, attributes);
    else if (group === "fills" && element === "fill") fills.push(undefined);
    else if (group === "fills" && element === "patternFill") pattern = attributes.patternType ?? "";
    else if (group === "fills" && element === "fgColor" && pattern === "solid" && attributes.rgb !== undefined)
      fills[fills.length - 1] = { type: "pattern", pattern, fgColor: { argb: attributes.rgb } };
    else if (group === "borders" && element === "border") borders.push({});
    else if (group === "borders") side = borderPart(borders.at(-1), { side, element, attributes });
    else if (group === "cellXfs" && element === "xf") cells.push({ attributes, alignment: {} });
    else if (group === "cellXfs" && element === "alignment") alignmentPart(cells.at(-1)?.alignment, attributes);
  };
  if (part !== undefined) await readXml(parts, part, { open, close: () => void within.pop() });
  return cells.map(({ attributes, alignment }): CellLookInFile => {
    const at = (name: string): number => Number(attributes[name] ?? 0);
    const format = numberFormatOf(at("numFmtId"), formats);
    const fill = fills[at("fillId")];
    const style = { font: fonts[at("fontId")] ?? {}, ...(fill && { fill }), border: borders[at("borderId")] ?? {}, alignment, numFmt: format };
    const isPlain = ["numFmtId", "fontId", "fillId", "borderId"].every((name) => at(name) === 0) && Object.keys(alignment).length === 0;
    return { look: lookOf(style as Partial<Style>), format, isPlain };
  });
}

function fontPart(font: Parts<Font> | undefined, element: string, attributes: Attributes): void {
  if (font === undefined) return;
  if (element === "b") font.bold = !isOff(attributes);
  if (element === "i") font.italic = !isOff(attributes);
  if (element === "sz") font.size = Number(attributes.val);
  if (element === "color" && attributes.rgb !== undefined) font.color = { argb: attributes.rgb };
}

function borderPart(
  border: Parts<Borders> | undefined,
  { side, element, attributes }: { side: (typeof SIDES)[number] | undefined; element: string; attributes: Attributes },
): (typeof SIDES)[number] | undefined {
  const own = SIDES.find((name) => name === element);
  if (border === undefined) return undefined;
  if (own !== undefined) {
    if (attributes.style !== undefined && attributes.style !== "none") border[own] = { style: attributes.style } as Border;
    return own;
  }
  const line = side === undefined ? undefined : border[side];
  if (element === "color" && side !== undefined && line?.style !== undefined && attributes.rgb !== undefined)
    border[side] = { style: line.style, color: { argb: attributes.rgb } };
  return side;
}

function alignmentPart(alignment: Parts<Alignment> | undefined, { horizontal, wrapText }: Attributes): void {
  if (alignment === undefined) return;
  if (horizontal === "right") alignment.horizontal = horizontal;
  if (isOn(wrapText)) alignment.wrapText = true;
}
