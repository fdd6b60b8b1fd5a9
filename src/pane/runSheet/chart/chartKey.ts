import type { Line } from "../../../report/chart/Chart";
import { element } from "../../element";

const swatch = (): HTMLElement => element("span", { class: "swatch", "aria-hidden": "true" });

/** What each line is: those that were weighed one by one, and what was not, which looks alike for all samples, once. */
export function chartKey(lines: readonly Line[]): HTMLElement {
  const once = lines.filter(({ draws, name }, index) => draws === "weighed" || lines.findIndex((one) => one.name === name) === index);
  return element(
    "ul",
    { class: "chart-key" },
    ...once.map(({ draws, look, open, name }) =>
      element("li", { class: draws === "weighed" ? `series-${look + 1}${open ? " open" : ""}` : `beside-${draws}` }, swatch(), name),
    ),
  );
}
