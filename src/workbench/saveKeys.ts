const SAVE_KEY = "s";

/** Ctrl+S, or Cmd+S on a Mac, saves the sheets wherever the focus is in the window, and not the page as the browser would. */
export function saveKeys(target: Window, save: () => void): void {
  const onKey = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || event.key.toLowerCase() !== SAVE_KEY) return;
    event.preventDefault();
    event.stopPropagation();
    if (!event.repeat) save();
  };
  // Before the grid, which has keys of its own.
  target.addEventListener("keydown", onKey, { capture: true });
}
