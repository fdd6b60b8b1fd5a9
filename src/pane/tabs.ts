import { element } from "./element";

/** One page of the pane. */
export interface Tab {
  readonly id: string;
  readonly label: string;
  readonly panel: HTMLElement;
  /** Called each time the tab comes into view. */
  readonly onShow?: () => void;
}

/** A row of tabs and their panels, after the tabs pattern of the ARIA Authoring Practices Guide: arrow keys move and select. */
export function tabs(label: string, pages: readonly Tab[]): HTMLElement {
  const list = element("div", { role: "tablist", "aria-label": label, class: "tabs" });
  const handles = pages.map((page) =>
    element("button", { type: "button", role: "tab", id: `tab-${page.id}`, "aria-controls": `panel-${page.id}`, class: "tab" }, page.label),
  );
  const panels = pages.map((page) =>
    element("div", { role: "tabpanel", id: `panel-${page.id}`, "aria-labelledby": `tab-${page.id}`, tabindex: "0", class: "panel" }, page.panel),
  );

  const show = (chosen: number): void => {
    handles.forEach((handle, index) => {
      handle.setAttribute("aria-selected", String(index === chosen));
      handle.tabIndex = index === chosen ? 0 : -1;
    });
    panels.forEach((panel, index) => (panel.hidden = index !== chosen));
    pages[chosen]?.onShow?.();
  };

  handles.forEach((handle, index) => {
    handle.addEventListener("click", () => show(index));
    handle.addEventListener("keydown", (event) => {
      const next = neighbour(event.key, index, pages.length);
      if (next === undefined) return;
      event.preventDefault();
      show(next);
      handles[next]?.focus();
    });
  });

  list.append(...handles);
  show(0);
  return element("div", { class: "tabbed" }, list, ...panels);
}

/** The tab that a key moves to from the one at `index`, or undefined for any other key. */
export function neighbour(key: string, index: number, count: number): number | undefined {
  if (key === "ArrowRight") return (index + 1) % count;
  if (key === "ArrowLeft") return (index - 1 + count) % count;
  if (key === "Home") return 0;
  return key === "End" ? count - 1 : undefined;
}
