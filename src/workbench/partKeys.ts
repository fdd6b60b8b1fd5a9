import type { GridEngine } from "../workbook/grid/GridEngine";
import { enterEdit, focusCells } from "./grid/cellEditing";

const PARTS = ["bar", "grid", "pane"] as const;
type Part = (typeof PARTS)[number];

interface PartsOfPage {
  readonly engine: GridEngine;
  readonly bar: HTMLElement;
  /** A frame, whose keys never reach the page around it. */
  readonly pane: HTMLIFrameElement;
}

/** What moves the keys between the parts of the page. */
export interface PartKeys {
  /** Listens in the frame's document, which has loaded. */
  listenInPane(): void;
}

/**
 * F6 goes on from bar to grid to pane and round again, Shift+F6 back, each time to where one was in that part; the grid takes Tab for
 * its cells, so this is the way out of it. Escape in bar or pane goes back to the part one came from, and from there to the grid.
 */
export function partKeys({ engine, bar, pane }: PartsOfPage): PartKeys {
  const last: { bar?: HTMLElement; pane?: HTMLElement } = {};
  let before: Part = "grid";
  bar.addEventListener("focusin", ({ target }) => (last.bar = target as HTMLElement));

  const enter: Readonly<Record<Part, () => void>> = {
    bar: () => (visible(last.bar) ?? firstButton(bar))?.focus(),
    grid: () => focusCells(engine),
    pane: () => {
      pane.scrollIntoView({ block: "nearest" });
      pane.contentWindow?.focus();
      (visible(last.pane) ?? pane.contentDocument?.querySelector<HTMLElement>('[role="tab"][aria-selected="true"]'))?.focus();
    },
  };
  const go = (from: Part, to: Part): void => {
    if (from === "grid") enterEdit(engine);
    enter[to]();
  };
  const partOfPage = (): Part => (bar.contains(document.activeElement) ? "bar" : "grid");

  const onF6 = (event: KeyboardEvent, here: Part): void => {
    if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey || isAsking()) return;
    event.preventDefault();
    event.stopPropagation();
    const open = PARTS.filter((part) => part !== "pane" || !pane.hidden);
    const next = open[(open.indexOf(here) + (event.shiftKey ? open.length - 1 : 1)) % open.length] ?? "grid";
    go(here, next);
    before = here;
  };
  const onEscape = (event: KeyboardEvent, here: Part): void => {
    if (event.key !== "Escape" || event.defaultPrevented || event.isComposing || isAsking() || clearsSearch(event.target)) return;
    go(here, before === here || (before === "pane" && pane.hidden) ? "grid" : before);
    before = "grid";
  };

  // Before the grid, which has keys of its own.
  window.addEventListener("keydown", (event) => onF6(event, partOfPage()), { capture: true });
  // In the grid, Escape drops what is being typed.
  bar.addEventListener("keydown", (event) => onEscape(event, "bar"));
  return {
    listenInPane: () => {
      pane.contentWindow?.addEventListener("focusin", ({ target }) => (last.pane = target as HTMLElement));
      pane.contentWindow?.addEventListener("keydown", (event) => onF6(event, "pane"), { capture: true });
      pane.contentWindow?.addEventListener("keydown", (event) => onEscape(event, "pane"));
    },
  };
}

const visible = (one: HTMLElement | undefined): HTMLElement | undefined => (one?.isConnected && one.getClientRects().length > 0 ? one : undefined);

const firstButton = (bar: HTMLElement): HTMLElement | undefined => [...bar.querySelectorAll("button")].find(visible);

const isAsking = (): boolean => document.querySelector("dialog[open]") !== null;

/** Escape empties a search box that holds something. A frame has classes of its own, so the element is told by its name. */
function clearsSearch(target: EventTarget | null): boolean {
  const { localName, type, value } = target as HTMLInputElement;
  return localName === "input" && type === "search" && value !== "";
}
