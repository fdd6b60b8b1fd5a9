/**
 * What the engine's controls are called to a screen reader, by where they stand in its page; the engine leaves them nameless.
 * The first editor writes into the formula line, the other one into the selected cell.
 */
const NAMES: readonly (readonly [selector: string, name: string])[] = [
  ['[data-u-comp="editor"][id$="FORMULA_BAR"]', "Formula line"],
  ['[data-u-comp="editor"]:not([id$="FORMULA_BAR"])', "Selected cell. F6 leaves the grid."],
  ['[data-u-comp="defined-name"] input', "Go to cell"],
  ['button[data-u-comp="sheet-bar-append-button"]:not([aria-haspopup] > *)', "Add a sheet"],
  ['[aria-haspopup] > button[data-u-comp="sheet-bar-append-button"]', "All sheets"],
  ['[data-u-comp="formula-bar"] button', "More or fewer lines"],
];

/**
 * Names the controls that the engine draws in the container, now and whenever it draws anew, and takes its canvases out of the
 * order of the Tab key, in which they come before everything else in the page and do nothing.
 */
export function nameControls(container: HTMLElement): void {
  const name = (): void => {
    for (const [selector, words] of NAMES) for (const found of container.querySelectorAll(selector)) found.setAttribute("aria-label", words);
    for (const editor of container.querySelectorAll('[data-u-comp="editor"]')) editor.setAttribute("role", "textbox");
    for (const canvas of container.querySelectorAll<HTMLElement>("canvas[tabindex]")) canvas.tabIndex = -1;
  };
  // The engine draws with a library that keeps what it did not write itself.
  new MutationObserver(name).observe(container, { childList: true, subtree: true });
  name();
}
