import type { Chart, Line } from "../../../report/chart/Chart";
import { element } from "../../element";

interface Row {
  readonly x: number;
  /** How many points of one line stand at the same place before it. */
  readonly again: number;
}

/** Every point that was weighed as a table that can be opened below its chart. */
export function pointsTable({ title, x, unit, lines }: Chart): HTMLDetailsElement {
  const weighed = lines.filter(({ draws }) => draws === "weighed");
  const heading = element(
    "tr",
    {},
    ...[capital(x), ...weighed.map(({ name }) => `${name} (${unit})`)].map((text) => element("th", { scope: "col" }, text)),
  );
  const rows = rowsOf(weighed).map((row) =>
    element("tr", {}, element("th", { scope: "row" }, figures(row.x)), ...weighed.map((line) => element("td", {}, pointAt(line, row)))),
  );
  const table = element("table", { class: "numbers" }, element("thead", {}, heading), element("tbody", {}, ...rows));
  return element(
    "details",
    {},
    element("summary", {}, `${title} as a table`),
    element("div", { class: "wide", tabindex: "0", role: "group", "aria-label": title }, table),
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

// Subtracting a vessel leaves residue of binary rounding beyond any balance.
const FIGURES = 10;
const figures = (value: number): string => String(Number(value.toPrecision(FIGURES)));

function rowsOf(lines: readonly Line[]): Row[] {
  const found = new Map<string, Row>();
  for (const { points } of lines)
    for (const [index, { x }] of points.entries()) {
      const again = points.slice(0, index).filter((one) => one.x === x).length;
      found.set(`${x} ${again}`, { x, again });
    }
  return [...found.values()].sort((one, other) => one.x - other.x || one.again - other.again);
}

function pointAt({ points }: Line, { x, again }: Row): string {
  const point = points.filter((one) => one.x === x)[again];
  return point === undefined ? "" : figures(point.y);
}
