const FOCUSABLE = "a[href], button, input, select, textarea, summary, [tabindex]";

/**
 * Replaces what stands in `root` without taking the focus from whoever is at work in it: it goes to the new part of the same kind, words
 * and place, in a disclosure open as it was, or, where that is gone, to the tab panel around.
 */
export function replaceKeepingFocus(root: HTMLElement, parts: readonly Node[]): void {
  const had = document.activeElement;
  // A page in a frame remembers its active element while somebody types into the cells: to focus it would take the keys from there.
  if (had === null || !root.contains(had) || !document.hasFocus()) {
    root.replaceChildren(...parts);
    return;
  }
  const alike = (): HTMLElement[] =>
    [...root.querySelectorAll<HTMLElement>(FOCUSABLE)].filter((one) => one.localName === had.localName && one.textContent === had.textContent);
  const place = alike().indexOf(had as HTMLElement);
  const wasOpen = had.closest("details")?.open === true;
  root.replaceChildren(...parts);
  const now = alike()[place];
  now?.closest("details")?.toggleAttribute("open", wasOpen);
  (now ?? root.closest<HTMLElement>('[role="tabpanel"]'))?.focus({ preventScroll: true });
}
