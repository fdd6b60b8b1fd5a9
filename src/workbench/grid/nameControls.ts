/** What the engine's controls are called to a screen reader, by where they stand in its page; the engine leaves them nameless. */
const NAMES: readonly (readonly [selector: string, name: string])[] = [
  ['[data-u-comp="editor"]', "Selected cell. F6 leaves the grid."],
  ['[data-u-comp="editor"][id$="FORMULA_BAR"]', "Formula line. F6 leaves the grid."],
  ['[data-u-comp="defined-name"] input', "Go to cell"],
  ['[data-u-comp="defined-name"] [data-slot="popover-trigger"]', "Names"],
  ['[data-u-comp="formula-bar"] button', "More or fewer lines"],
  ["footer button", "Add a sheet"],
  ["footer [aria-haspopup] > button", "All sheets"],
  ["footer button:has(.univer-rotate-180)", "Earlier sheets"],
  ["footer button:has(.univer-rotate-180) + button", "Later sheets"],
];

const ROLES: readonly (readonly [selector: string, role: string])[] = [
  ['[data-u-comp="editor"]', "textbox"],
  ['[data-slot="popover-trigger"]', "button"],
];

/**
 * Makes the controls that the engine draws in the container known to screen readers and open to the Tab key, now and whenever it draws anew.
 * @param toCells gives the keys to the selected cell
 */
export function nameControls(container: HTMLElement, toCells: () => void): void {
  const each = <E extends HTMLElement>(selector: string, change: (one: E) => void): void => container.querySelectorAll<E>(selector).forEach(change);
  const name = (): void => {
    for (const [selector, words] of NAMES) each(selector, (one) => one.setAttribute("aria-label", words));
    for (const [selector, role] of ROLES) each(selector, (one) => one.setAttribute("role", role));
    // Canvases with a place of their own in the order of the Tab key would come before everything else in the page, and do nothing.
    each("canvas[tabindex]", (one) => (one.tabIndex = -1));
    // By this mark the engine hands the focus on to the cells as it comes, so that Tab would never come to the sheets' tabs behind.
    each("footer button[data-u-comp]", (one) => one.removeAttribute("data-u-comp"));
  };
  // The engine draws with a library that keeps what it did not write itself.
  new MutationObserver(name).observe(container, { childList: true, subtree: true });
  name();
  // Once a button is pressed, what is typed next is meant for the cells.
  container.addEventListener("click", ({ target }) => {
    if ((target as Element).closest("footer button:not([aria-haspopup] > *)") !== null) toCells();
  });
}
