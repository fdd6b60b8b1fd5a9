import { footDays, nothingToPrint } from "../../problems/workbook/printWords";
import { today } from "../../workbook/dayOf";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { enterEdit } from "../grid/cellEditing";
import { paperMarkup } from "./paperMarkup";
import { sheetPaper } from "./sheetPaper";

interface PrintingParts {
  readonly engine: GridEngine;
  /** Stands for the page on paper, and is blank on screen. */
  readonly paper: HTMLElement;
  readonly button: HTMLButtonElement;
}

/**
 * What the browser prints is the sheet in view, made when it is about to: from its menu, by its key, or by the bar's button.
 * @returns what the key and the button do
 */
export function printing({ engine, paper, button }: PrintingParts): () => void {
  window.addEventListener("beforeprint", () => {
    const made = sheetPaper(engine, engine.book.getActiveSheet());
    paper.innerHTML = made === undefined ? "" : paperMarkup(made, footDays.printed(today())).html;
    if (made === undefined) paper.textContent = nothingToPrint;
  });
  window.addEventListener("afterprint", () => paper.replaceChildren());
  const print = (): void => {
    enterEdit(engine);
    void engine.settled().then(() => window.print());
  };
  button.onclick = print;
  return print;
}
