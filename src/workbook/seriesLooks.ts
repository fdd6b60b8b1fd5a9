import type { ChartSeries } from "./SheetPlan";

/** How the line of a series is drawn. Each differs by its dashes and its marker, so that lines are told apart in black and white. */
export interface SeriesLook {
  /** In the words of DrawingML (ECMA-376 Part 1, 20.1.10.48). */
  readonly dash: "solid" | "dash" | "sysDot" | "dashDot" | "lgDash" | "lgDashDotDot" | "sysDash" | "none";
  /** In those of charts (21.2.3.27). */
  readonly marker: "circle" | "square" | "triangle" | "diamond" | "x" | "plus" | "star" | "none";
  /** Its marks are hollow. */
  readonly open?: true;
  /** Points. */
  readonly width: number;
  /** #RRGGBB; each stands at least 4.5:1 on white. */
  readonly colour: string;
}

const MEASURED: readonly Omit<SeriesLook, "width">[] = [
  { dash: "solid", marker: "circle", colour: "#1F2328" },
  { dash: "dash", marker: "square", colour: "#8A3B12" },
  { dash: "sysDot", marker: "triangle", colour: "#123A75" },
  { dash: "dashDot", marker: "diamond", colour: "#3B5B2E" },
  { dash: "lgDash", marker: "x", colour: "#6A2C70" },
  { dash: "lgDashDotDot", marker: "plus", colour: "#5A4A00" },
];
const MEASURED_WIDTH = 1.5;
const BESIDE_WIDTH = 1;

/** The looks of a chart's series, in their order. A limit and what is foretold have the colour of what was weighed for the same sample. */
export function seriesLooks(series: readonly ChartSeries[]): SeriesLook[] {
  return lookNumbers(series).map((number, index) => {
    const { draws, open } = series[index] ?? {};
    const look = MEASURED[number % MEASURED.length] ?? { dash: "solid", marker: "circle", colour: "#1F2328" };
    if (draws === undefined) return { ...look, width: MEASURED_WIDTH, ...(open ? { open } : {}) };
    return { ...look, width: BESIDE_WIDTH, marker: "none", dash: draws === "limit" ? "sysDash" : draws === "foretold" ? "sysDot" : "none" };
  });
}

/** Which look each series has, from 0: its own, or the next of its kind. */
export function lookNumbers(series: readonly ChartSeries[]): number[] {
  const counts = { measured: 0, limit: 0, foretold: 0, frame: 0 };
  return series.map(({ draws, look }) => look ?? counts[draws ?? "measured"]++);
}

/** Whether the key names a series: each that was weighed, and limits and ends foretold of the first sample for all, a band by its lower edge. */
export const isInKey = ({ draws, look = 0, isUpper }: ChartSeries): boolean =>
  draws === undefined || (draws !== "frame" && look === 0 && isUpper === undefined);
