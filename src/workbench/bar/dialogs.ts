import { unsavedBefore } from "../../problems/files/fileProblems";
import { listItem } from "./lists";

/** Asks whether the file is written anew without what is listed; closing the dialog says no. Without anything to lose nobody is asked. */
export function mayWriteAnew(dialog: HTMLDialogElement, about: string, lost: readonly string[]): Promise<boolean> {
  if (lost.length === 0) return Promise.resolve(true);
  const text = dialog.querySelector("p");
  if (text !== null) text.textContent = about;
  dialog.querySelector("ul")?.replaceChildren(...lost.map(listItem));
  return answerIn(dialog).then((answer) => answer === "anew");
}

/** What was pressed in a dialog, by the value of its button; "" where it was closed. */
function answerIn(dialog: HTMLDialogElement): Promise<string> {
  dialog.returnValue = "";
  for (const button of dialog.querySelectorAll("button")) button.onclick = () => dialog.close(button.value);
  // The grid listens for keys in the whole page.
  dialog.onkeydown = (event) => event.stopPropagation();
  dialog.showModal();
  return new Promise((resolve) => (dialog.onclose = () => resolve(dialog.returnValue)));
}

const ANSWERS = ["keep", "save", "replace"] as const;
type Answer = (typeof ANSWERS)[number];

/**
 * Asks in the page's dialog what becomes of what is not saved. Each of its buttons has an answer as its value; closing it
 * by the Escape key keeps the sheets.
 */
export function askToReplace(dialog: HTMLDialogElement, fileName: string): Promise<Answer> {
  const about = dialog.querySelector("p");
  if (about !== null) about.textContent = unsavedBefore(fileName);
  return answerIn(dialog).then((given) => ANSWERS.find((answer) => answer === given) ?? "keep");
}
