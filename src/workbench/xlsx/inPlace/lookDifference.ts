import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  WrapStrategy,
  type IBorderStyleData,
  type IStyleData,
  type Nullable,
} from "@univerjs/core";
import type { LookChange } from "../../../xlsx/package/StylesPart";
import { hexOf } from "../fileStyle";

const INK = "#000000";
const USUAL_SIZE = 11;
const SIDES = [
  ["l", "left"],
  ["r", "right"],
  ["t", "top"],
  ["b", "bottom"],
] as const;

/** What of a look is another one now, of what a file keeps of looks; undefined where nothing is. */
export function lookDifference(before: IStyleData | undefined, now: IStyleData | undefined): LookChange | undefined {
  if (before === now) return undefined;
  const [was, is] = [keptOf(before), keptOf(now)];
  const { border, ...further } = is;
  const changed = Object.entries(further).filter(([name, value]) => was[name as keyof typeof further] !== value);
  const sides = Object.entries(border).filter(([side, line]) => JSON.stringify(was.border[side as keyof typeof border]) !== JSON.stringify(line));
  if (changed.length === 0 && sides.length === 0) return undefined;
  return { ...Object.fromEntries(changed), ...(sides.length === 0 ? {} : { border: Object.fromEntries(sides) }) };
}

function keptOf(look: IStyleData | undefined): Required<LookChange> {
  const align = { [HorizontalAlign.LEFT]: "left", [HorizontalAlign.CENTER]: "center", [HorizontalAlign.RIGHT]: "right" } as const;
  return {
    format: look?.n?.pattern ?? "General",
    bold: look?.bl === BooleanNumber.TRUE,
    italic: look?.it === BooleanNumber.TRUE,
    size: look?.fs ?? USUAL_SIZE,
    colour: colourOf(look?.cl?.rgb) || INK,
    fill: colourOf(look?.bg?.rgb),
    border: Object.fromEntries(SIDES.map(([own, side]) => [side, lineOf(look?.bd?.[own])])),
    align: align[look?.ht as keyof typeof align] ?? "general",
    wrap: look?.tb === WrapStrategy.WRAP,
    indent: (look?.pd?.l ?? 0) > 0 ? 1 : 0,
  };
}

const colourOf = (colour: Nullable<string>): string => (colour ? hexOf(colour) : "");

const LINES: Readonly<Partial<Record<BorderStyleTypes, "medium" | "dotted">>> = {
  [BorderStyleTypes.MEDIUM]: "medium",
  [BorderStyleTypes.DOTTED]: "dotted",
};

const lineOf = (line: Nullable<IBorderStyleData>) => (line && line.cl.rgb ? { style: LINES[line.s] ?? "thin", colour: hexOf(line.cl.rgb) } : null);
