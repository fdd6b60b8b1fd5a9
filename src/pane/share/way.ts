import { element } from "../element";

/** One way of sharing, under a heading of its own. */
export const way = (id: string, heading: string, ...content: readonly Node[]): HTMLElement =>
  element("section", { class: "way", "aria-labelledby": id }, element("h3", { id }, heading), ...content);

export const points = (texts: readonly string[]): HTMLElement => element("ul", { class: "points" }, ...texts.map((text) => element("li", {}, text)));
