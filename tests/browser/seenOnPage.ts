/** What a browser test measures of a page as drawn; each function runs in the page and names nothing outside itself. The grid is the engine's. */

export interface SeenText {
  readonly text: string;
  /** As computed: "rgb(31, 35, 40)". */
  readonly colour: string;
  readonly behind: string;
}

/** Every text in sight with its colour and that of what lies behind it. */
export function textsInSight(): SeenText[] {
  const behind = (of: Element): string => {
    for (let one: Element | null = of; one !== null; one = one.parentElement) {
      const { backgroundColor } = getComputedStyle(one);
      if (!/^rgba\(.*, 0\)$/.test(backgroundColor)) return backgroundColor;
    }
    return "rgb(255, 255, 255)";
  };
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const seen: SeenText[] = [];
  for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
    const holder = node.parentElement;
    const text = node.textContent?.trim() ?? "";
    if (holder === null || text === "" || holder.closest("#grid") !== null || !holder.checkVisibility({ visibilityProperty: true })) continue;
    seen.push({ text, colour: getComputedStyle(holder).color, behind: behind(holder) });
  }
  return seen;
}

/** Controls in sight that a finger of 24 px would miss (WCAG 2.2, 2.5.8; links within a sentence are excepted there). */
export function smallTargets(): string[] {
  const LEAST = 24;
  const controls = document.querySelectorAll(
    'button, [role="tab"], summary, select, input:not([type="radio"], [type="checkbox"]), label:has(> input)',
  );
  return [...controls]
    .filter((one) => one.closest("#grid") === null && one.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
    .map((one) => ({ one, box: one.getBoundingClientRect() }))
    .filter(({ box }) => box.width < LEAST || box.height < LEAST)
    .map(({ one, box }) => `${one.outerHTML.slice(0, 80)}: ${box.width} x ${box.height}`);
}

/** Texts in sight that run out of the page sideways or out of their button. */
export function cutOff(): string[] {
  const holders = document.querySelectorAll("p, button, summary, label, h1, h2, h3, h4, li, dt, dd");
  return [...holders]
    .filter(
      (one) =>
        one.closest("#grid, .wide") === null &&
        one.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
        getComputedStyle(one).clipPath === "none",
    )
    .filter((one) => {
      const { left, right } = one.getBoundingClientRect();
      return left < -0.5 || right > innerWidth + 0.5 || (one.localName === "button" && one.scrollWidth > one.clientWidth);
    })
    .map((one) => one.outerHTML.slice(0, 80));
}

/** True where something of the page lies outside its window, so that it has a scroll bar, or where it has one always. */
export function scrolls(): { sideways: boolean; down: boolean; always: boolean } {
  const { scrollWidth, scrollHeight, clientWidth, clientHeight } = document.documentElement;
  const always = [document.documentElement, document.body].some((one) => getComputedStyle(one).overflowY === "scroll");
  return { sideways: scrollWidth > clientWidth, down: scrollHeight > clientHeight, always };
}

/** Where the keys go: the element's id or its name, in the pane's frame with "pane: " before it. */
export function focused(): string {
  const told = (one: Element | null | undefined): string => one?.id || one?.getAttribute("aria-label") || one?.textContent?.trim() || "nothing";
  const here = document.activeElement;
  if (here instanceof HTMLIFrameElement) return `pane: ${told(here.contentDocument?.activeElement)}`;
  return here?.matches('[data-u-comp="editor"]') ? "cells" : told(here);
}
