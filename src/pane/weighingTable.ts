import type { WeighingSeries } from "../runsheet/reading/readWeighings";
import { element } from "./element";

/** Every weighing of a chart as a table that can be opened below it. */
export function weighingTable(series: readonly WeighingSeries[]): HTMLDetailsElement {
  const minutes = [...new Set(series.flatMap(({ points }) => points.map((point) => point.minutes)))].sort((a, b) => a - b);
  const gramsAt = ({ points }: WeighingSeries, time: number): string => String(points.find((point) => point.minutes === time)?.grams ?? "");
  const heading = element("tr", {}, ...["Minutes", ...series.map(({ name }) => `${name} (g)`)].map((text) => element("th", { scope: "col" }, text)));
  const rows = minutes.map((time) =>
    element("tr", {}, element("th", { scope: "row" }, String(time)), ...series.map((one) => element("td", {}, gramsAt(one, time)))),
  );
  const table = element("table", { class: "numbers" }, element("thead", {}, heading), element("tbody", {}, ...rows));
  return element(
    "details",
    {},
    element("summary", {}, "The weighings as a table"),
    element("div", { class: "wide", tabindex: "0", role: "group", "aria-label": "Weighings" }, table),
  );
}
