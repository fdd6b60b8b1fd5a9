import { node, type Markup } from "../Markup";
import { reportWords } from "../words/reportWords";
import type { Curves, Line, Point } from "./Chart";
import { DASHES, mark, rounded, THIN_DASHES } from "./looks";
import { scaleOf, tickTexts, type Scale } from "./ticks";

// Points of print: one unit of the drawing is one point, so that its text is as large as it says.
const WIDTH = 258;
const HEIGHT = 150;
const LEFT = 46;
const RIGHT = 14;
const TOP = 8;
const BOTTOM = 30;
const TEXT = 8.5;
const X_TICKS = 5;
const Y_TICKS = 5;
const TICK = 4;
const KEY_WIDTH = 34;
const KEY_HEIGHT = 10;
// Half a mark and its line.
const KEY_INSET = 5;
const WEIGHED_WIDTH = 1.2;
const THIN_WIDTH = 0.8;
const GRID = "#cccccc";
const BAND = "#e4e4e4";

/**
 * A chart as a picture with its key, each line told apart by mark and dash.
 * @param id tells its title from those of other charts
 * @param high points of the picture
 */
export function chartFigure(chart: Curves, id: string, high = HEIGHT): Markup {
  const { title, x, y, lines, room } = chart;
  const points = [...lines.flatMap((line) => [...line.points, ...(line.upper ?? [])]), ...(room?.points ?? [])];
  const across = scaleOf(points.map((point) => point.x), X_TICKS); // prettier-ignore
  const up = scaleOf(points.map((point) => point.y), Y_TICKS); // prettier-ignore
  const toX = (value: number): number => LEFT + ((WIDTH - LEFT - RIGHT) * (value - across.from)) / (across.to - across.from);
  const toY = (value: number): number => high - BOTTOM - ((high - TOP - BOTTOM) * (value - up.from)) / (up.to - up.from);
  const place: Place = (point) => ({ x: toX(point.x), y: toY(point.y) });
  const picture = node(
    "svg",
    { width: `${WIDTH}pt`, height: `${high}pt`, viewBox: `0 0 ${WIDTH} ${high}`, role: "img", "aria-labelledby": `${id}-title ${id}-about` },
    node("title", { id: `${id}-title` }, reportWords.chart.about(title, x, y)),
    node("desc", { id: `${id}-about` }, described(lines)),
    ...lines.flatMap(({ points: lower, upper }) =>
      upper === undefined ? [] : [node("polygon", { points: path([...lower, ...[...upper].reverse()], place), fill: BAND })],
    ),
    ...axes(across, up, toX, toY, room?.unforetold ?? []),
    words(LEFT + (WIDTH - LEFT - RIGHT) / 2, high - 3, x, "middle"),
    node(
      "text",
      { x: 0, y: 0, "font-size": TEXT, "text-anchor": "middle", transform: `translate(9 ${rounded(besideAxis(y, high))}) rotate(-90)` },
      y,
    ),
    ...lines.map((line) => drawn(line, place)),
  );
  return node("figure", {}, node("figcaption", {}, title), picture, key(lines));
}

// A letter is half as wide as high, or a little less.
const LETTER = 0.5;

/** The middle of the upright axis, or lower where its title would stand out above a low picture. */
const besideAxis = (title: string, high: number): number => Math.max(TOP + (high - TOP - BOTTOM) / 2, (title.length * TEXT * LETTER) / 2);

type Place = (point: Point) => Point;

const path = (points: readonly Point[], place: Place): string =>
  points.map((point) => `${rounded(place(point).x)},${rounded(place(point).y)}`).join(" ");

function drawn({ points, upper, draws, look, open, isApart }: Line, place: Place): Markup {
  const dash = draws === "weighed" ? DASHES[look % DASHES.length] : THIN_DASHES[draws];
  const width = draws === "weighed" ? WEIGHED_WIDTH : THIN_WIDTH;
  const stroke = isApart === true ? "none" : "black";
  const line = node("polyline", { points: path(points, place), fill: "none", stroke, "stroke-width": width, "stroke-dasharray": dash });
  if (draws !== "weighed") return upper === undefined ? line : node("g", {}, line, drawn({ name: "", points: upper, draws, look }, place));
  const marks = points.map((point) => mark(look, place(point).x, place(point).y, open === true));
  return node("g", {}, line, ...marks);
}

type Along = (value: number) => number;

/** @param unforetold axes whose numbers are left to be written by hand */
function axes(across: Scale, up: Scale, toX: Along, toY: Along, unforetold: readonly ("x" | "y")[]): readonly Markup[] {
  const [bottom, right] = [toY(up.from), toX(across.to)];
  const line = (x1: number, y1: number, x2: number, y2: number, stroke: string): Markup =>
    node("line", { x1: rounded(x1), y1: rounded(y1), x2: rounded(x2), y2: rounded(y2), stroke, "stroke-width": 0.6 });
  const textsOf = (scale: Scale, axis: "x" | "y"): readonly string[] => (unforetold.includes(axis) ? [] : tickTexts(scale));
  const [acrossTexts, upTexts] = [textsOf(across, "x"), textsOf(up, "y")];
  return [
    ...up.ticks.flatMap((tick, index) => [
      line(LEFT, toY(tick), right, toY(tick), GRID),
      line(LEFT - TICK, toY(tick), LEFT, toY(tick), "black"),
      ...textAt(upTexts[index], LEFT - TICK - 2, toY(tick) + TEXT / 3, "end"),
    ]),
    ...across.ticks.flatMap((tick, index) => [
      line(toX(tick), bottom, toX(tick), bottom + TICK, "black"),
      ...textAt(acrossTexts[index], toX(tick), bottom + TICK + TEXT, "middle"),
    ]),
    line(LEFT, bottom, right, bottom, "black"),
    line(LEFT, TOP, LEFT, bottom, "black"),
  ];
}

const textAt = (text: string | undefined, ...[x, y, anchor]: [number, number, "end" | "middle"]): Markup[] =>
  text === undefined ? [] : [words(x, y, text, anchor)];

const words = (x: number, y: number, text: string, anchor: "start" | "middle" | "end"): Markup =>
  node("text", { x: rounded(x), y: rounded(y), "font-size": TEXT, "text-anchor": anchor }, text);

function key(lines: readonly Line[]): Markup {
  // Bands and ends foretold look alike for all samples: one of each says what they are.
  const named = lines.filter(({ name }, index) => lines.findIndex((line) => line.name === name) === index);
  return node(
    "ul",
    { class: "key" },
    named.map((line) => node("li", {}, sample(line), ` ${line.name}`)),
  );
}

function sample(line: Line): Markup {
  const middle = KEY_HEIGHT / 2;
  const ends: Place = ({ x }) => ({ x, y: middle });
  const points = line.draws === "weighed" ? [KEY_INSET, KEY_WIDTH - KEY_INSET] : [1, KEY_WIDTH - 1];
  const { name, draws, look, open, isApart } = line;
  const short = {
    name,
    draws,
    look,
    ...(open === undefined ? {} : { open }),
    ...(isApart === undefined ? {} : { isApart }),
    points: points.map((x) => ({ x, y: 0 })),
  };
  const box = { width: `${KEY_WIDTH}pt`, height: `${KEY_HEIGHT}pt`, viewBox: `0 0 ${KEY_WIDTH} ${KEY_HEIGHT}`, "aria-hidden": "true" };
  const back = line.upper !== undefined ? [node("rect", { x: 0, y: 0, width: KEY_WIDTH, height: KEY_HEIGHT, fill: BAND })] : [];
  return node("svg", box, ...back, drawn(short, ends));
}

/** What the picture shows, in words. */
function described(lines: readonly Line[]): string {
  return lines
    .filter(({ points }) => points.length > 0)
    .map(({ name, points, draws }) => {
      if (draws === "limit") return reportWords.chart.band(name);
      const [first, last] = [points[0], points.at(-1)];
      return reportWords.chart.line(name, plain(first?.y), plain(last?.y), points.length);
    })
    .join(" ");
}

const plain = (value: number | undefined): string => (value === undefined ? "" : rounded(value));
