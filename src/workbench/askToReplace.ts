import { unsavedBefore } from "../problems/workbookProblems";

const ANSWERS = ["keep", "save", "replace"] as const;
export type Answer = (typeof ANSWERS)[number];

/**
 * Asks in the page's dialog what becomes of what is not saved. Each of its buttons has an answer as its value; closing it
 * by the Escape key keeps the sheets.
 */
export function askToReplace(dialog: HTMLDialogElement, fileName: string): Promise<Answer> {
  const about = dialog.querySelector("p");
  if (about !== null) about.textContent = unsavedBefore(fileName);
  dialog.returnValue = "";
  for (const button of dialog.querySelectorAll("button")) button.onclick = () => dialog.close(button.value);
  // The grid listens for keys in the whole page.
  dialog.onkeydown = (event) => event.stopPropagation();
  dialog.showModal();
  return new Promise((resolve) => {
    dialog.onclose = () => resolve(ANSWERS.find((answer) => answer === dialog.returnValue) ?? "keep");
  });
}
