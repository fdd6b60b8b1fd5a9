import { isNews } from "../isNews";
import type { CellLook } from "../Workbook";
import type { GridEngine } from "./GridEngine";

const SELECTS: readonly string[] = ["sheet.operation.set-selections", "sheet.operation.set-worksheet-active"];
const CHANGES_CELLS: readonly string[] = ["sheet.mutation.set-range-values", "formula.mutation.set-formula-calculation-result"];

/**
 * Calls the listener after each change of selection or of what the selected cell holds or shows. Listens to commands: the
 * engine's own selection event is silent for the first seconds after the page has opened.
 * @param look at the selected cell
 * @returns stops the calls
 */
export function selectionWatch(engine: GridEngine, look: () => CellLook, listener: (look: CellLook) => void): () => void {
  const seen = { told: look(), waiting: false };
  const tell = (): void => {
    seen.waiting = false;
    const now = look();
    if (!isNews(seen.told, now)) return;
    seen.told = now;
    listener(now);
  };
  const soon = (): void => {
    if (seen.waiting) return;
    seen.waiting = true;
    setTimeout(tell, 0);
  };
  const commands = engine.api.addEvent(engine.api.Event.CommandExecuted, ({ id }) => {
    if (SELECTS.includes(id) || CHANGES_CELLS.includes(id)) soon();
  });
  return () => commands.dispose();
}
