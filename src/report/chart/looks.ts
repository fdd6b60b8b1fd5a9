import { node, type Markup } from "../Markup";

// Lines differ by dash and mark, so that a print in black tells them apart.
export const DASHES: readonly (string | undefined)[] = [undefined, "6 2", "2 2", "7 2 2 2", "10 3", "1 3"];
export const THIN_DASHES = { limit: "1 2", foretold: "4 3" } as const;
const SIZE = 3;

const POLYGONS: readonly (readonly (readonly [number, number])[])[] = [
  [[-1, -1], [1, -1], [1, 1], [-1, 1]], // prettier-ignore
  [[0, -1.3], [1.2, 1], [-1.2, 1]], // prettier-ignore
  [[0, -1.4], [1.4, 0], [0, 1.4], [-1.4, 0]], // prettier-ignore
  [[0, 1.3], [1.2, -1], [-1.2, -1]], // prettier-ignore
];

/** A mark around a point: circle, square, triangle, diamond, triangle upside down, cross. */
export function mark(look: number, x: number, y: number, isOpen: boolean): Markup {
  const paint = { fill: isOpen ? "white" : "black", stroke: "black", "stroke-width": 1 };
  const place = look % (POLYGONS.length + 2);
  if (place === 0) return node("circle", { cx: rounded(x), cy: rounded(y), r: SIZE, ...paint });
  const corners = POLYGONS[place - 1];
  if (corners === undefined) {
    const [left, right, top, bottom] = [x - SIZE, x + SIZE, y - SIZE, y + SIZE].map(rounded);
    return node("path", {
      d: `M${left} ${top}L${right} ${bottom}M${left} ${bottom}L${right} ${top}`,
      stroke: "black",
      "stroke-width": isOpen ? 1 : 2,
    });
  }
  const points = corners.map(([across, down]) => `${rounded(x + SIZE * across)},${rounded(y + SIZE * down)}`).join(" ");
  return node("polygon", { points, ...paint });
}

/** Hundredths of a point are finer than any printer. */
export const rounded = (value: number): string => String(Number(value.toFixed(2)));
