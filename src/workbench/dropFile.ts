import { oneFileAtATime } from "../problems/files/fileProblems";
import type { Bar } from "./bar/bar";

const hasFiles = ({ dataTransfer }: DragEvent): boolean => dataTransfer?.types.includes("Files") === true;

/**
 * Opens a file that is dropped anywhere in the window as the bar's button would. A browser would leave the page for it, with all that was typed.
 * @param target the page's window, or that of a frame in it
 */
export function dropFile(target: Window, { openFile, say }: Pick<Bar, "openFile" | "say">): void {
  const isAsking = (): boolean => document.querySelector("dialog[open]") !== null;
  target.addEventListener(
    "dragover",
    (event) => {
      if (!hasFiles(event)) return;
      event.preventDefault();
      if (event.dataTransfer) event.dataTransfer.dropEffect = isAsking() ? "none" : "copy";
    },
    { capture: true },
  );
  target.addEventListener(
    "drop",
    (event) => {
      if (!hasFiles(event)) return;
      event.preventDefault();
      // The grid would take it for cells.
      event.stopImmediatePropagation();
      const [file, ...others] = event.dataTransfer?.files ?? [];
      if (isAsking() || file === undefined) return;
      if (others.length > 0) say(oneFileAtATime, "problem");
      else openFile(file);
    },
    { capture: true },
  );
}
