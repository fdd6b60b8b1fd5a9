import { weighInWords } from "../../../problems/runsheet/weighInWords";
import { button } from "../../element";

/** The event by which the pane asks the page around it for its whole screen, or gives it back; only a small page listens. */
export const WHOLE_SCREEN = "wholescreen" as const;

declare global {
  interface DocumentEventMap {
    readonly wholescreen: CustomEvent<boolean>;
  }
}

/** Shown by the style sheet where the page around the pane can give it its screen. */
export function wholeScreenButton(): HTMLButtonElement {
  const made = button(weighInWords.wholeScreen, "secondary whole-screen", () => {
    const isWhole = made.getAttribute("aria-pressed") !== "true";
    made.setAttribute("aria-pressed", String(isWhole));
    made.textContent = isWhole ? weighInWords.backToSheet : weighInWords.wholeScreen;
    made.dispatchEvent(new CustomEvent<boolean>(WHOLE_SCREEN, { bubbles: true, detail: isWhole }));
    made.closest("section")?.scrollIntoView({ block: "start" });
  });
  made.setAttribute("aria-pressed", "false");
  return made;
}
