import { BooleanNumber, BorderStyleTypes, HorizontalAlign, WrapStrategy, type IBorderStyleData, type IStyleData } from "@univerjs/core";
import { POINTS_PER_PIXEL } from "../../workbook/columnPixels";

/** Points, of a cell that says nothing of its own. */
export const USUAL_SIZE = 11;
// Points, before they are scaled; thinner lines vanish on some printers.
const LINES: Readonly<Partial<Record<BorderStyleTypes, readonly [width: number, style: string]>>> = {
  [BorderStyleTypes.MEDIUM]: [1.6, "solid"],
  [BorderStyleTypes.DOTTED]: [0.8, "dotted"],
};
const THIN = [0.7, "solid"] as const;

/** How a cell looks on paper. @param scale of the sheet's lengths to those of the paper */
export function cellCss(look: IStyleData, isNumber: boolean, scale: number): string {
  const points = (length: number): string => `${Number((length * scale).toFixed(2))}pt`;
  const line = (side: string, given: IBorderStyleData | null | undefined | void): string => {
    if (!given?.cl.rgb) return "";
    const [width, style] = LINES[given.s] ?? THIN;
    return `border-${side}:${points(width)} ${style} ${given.cl.rgb};`;
  };
  const { t, r, b, l } = look.bd ?? {};
  return [
    `font-size:${points(look.fs ?? USUAL_SIZE)};`,
    look.bl === BooleanNumber.TRUE ? "font-weight:bold;" : "",
    look.it === BooleanNumber.TRUE ? "font-style:italic;" : "",
    look.cl?.rgb ? `color:${look.cl.rgb};` : "",
    look.bg?.rgb ? `background:${look.bg.rgb};` : "",
    isNumber || look.ht === HorizontalAlign.RIGHT ? "text-align:right;" : look.ht === HorizontalAlign.CENTER ? "text-align:center;" : "",
    (look.pd?.l ?? 0) > 0 ? `padding-left:${points((look.pd?.l ?? 0) * POINTS_PER_PIXEL)};` : "",
    ...[line("top", t), line("right", r), line("bottom", b), line("left", l)],
  ].join("");
}

export const wraps = (look: IStyleData): boolean => look.tb === WrapStrategy.WRAP;
/** Whether a cell that holds nothing can be seen: a box, a band. */
export const isSeen = ({ bg, bd }: IStyleData): boolean => Boolean(bg?.rgb) || Object.values(bd ?? {}).some((line) => line !== null && line !== undefined); // prettier-ignore
