import { nothingKeptHere } from "../../problems/files/fileProblems";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import type { Bar } from "../bar/bar";
import type { Doubts } from "../withDoubts";
import { keepCopy } from "./keepCopy";
import { KeptCopies } from "./KeptCopies";
import { offerCopies } from "./offerCopies";
import type { SavedContent } from "./SavedContent";

interface Guarded extends Pick<Bar, "say" | "mayReplace" | "fileOpen" | "openCopy"> {
  readonly engine: GridEngine;
  readonly saved: SavedContent;
  readonly doubts: Doubts;
  /** Says how things stand with what is not saved. */
  readonly state: HTMLElement;
  readonly offer: HTMLElement;
}

/** Nothing typed is lost unasked: leaving the page asks first, a copy is kept in the browser, and what earlier windows left is offered. */
export async function guardUnsaved({ state, offer, ...guarded }: Guarded): Promise<void> {
  window.addEventListener("beforeunload", (event) => {
    if (guarded.saved.isLeftUnsaved()) event.preventDefault();
  });
  const tell = (text: string, isProblem: boolean): void => {
    state.textContent = text;
    state.className = isProblem ? "problem" : "";
  };
  try {
    const copies = await KeptCopies.open();
    const keeper = keepCopy({ ...guarded, copies, tell });
    await offerCopies({ ...guarded, copies, keeper, root: offer });
  } catch {
    tell(nothingKeptHere, true);
  }
}
