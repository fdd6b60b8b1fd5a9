import { startPane } from "../pane/startPane";
import type { OwnFiles } from "../sharing/shareInFile";
import { WorkbookProblem, type Workbook } from "../workbook/Workbook";
import type { WorkbenchWindow } from "./WorkbenchWindow";

// As in workbench.css.
const SMALL_PAGE = "(max-width: 900px)";

/** The task pane in its frame beside the grid. */
const lent = (window.parent as WorkbenchWindow).retortWorkbench;
const root = document.getElementById("pane") ?? document.body;
if (lent === undefined) root.textContent = "This is the pane of the local workbook and cannot be opened alone. Open the page it belongs to.";
else {
  followSize(window.parent.matchMedia(SMALL_PAGE), root);
  startPane(inThisFrame(lent.workbook), root, lent.files && filesInThisFrame(lent.files));
}

/** On a small page the pane stands below the grid and can be given all of the screen. */
function followSize(small: MediaQueryList, pane: HTMLElement): void {
  const show = (): void => void pane.classList.toggle("on-small-page", small.matches);
  small.addEventListener("change", show);
  show();
}

/**
 * The page's workbook for use in a frame. A frame has classes of its own, so a problem raised in the page is no
 * WorkbookProblem to the pane until it is made again here.
 */
function inThisFrame(workbook: Workbook): Workbook {
  return {
    name: workbook.name,
    drawsCharts: workbook.drawsCharts,
    sheetNames: () => here(workbook.sheetNames()),
    selectedCell: () => here(workbook.selectedCell()),
    select: (address) => here(workbook.select(address)),
    onSelection: (listener, isWanted) => here(workbook.onSelection(listener, isWanted)),
    calculation: () => here(workbook.calculation()),
    look: (address) => here(workbook.look(address)),
    readInputs: (address, wanted) => here(workbook.readInputs(address, wanted)),
    holdsText: (sheet, text) => here(workbook.holdsText(sheet, text)),
    read: (sheet, range) => here(workbook.read(sheet, range)),
    readUsed: (sheet) => here(workbook.readUsed(sheet)),
    firstScreen: (sheet) => here(workbook.firstScreen(sheet)),
    cellsBeside: (sheet) => here(workbook.cellsBeside(sheet)),
    readSettled: (sheet, asShown) => here(workbook.readSettled(sheet, asShown)),
    writeFormula: (address, formula) => here(workbook.writeFormula(address, formula)),
    replaceValue: (address, held, content) => here(workbook.replaceValue(address, held, content)),
    reenter: (sheet, cells) => here(workbook.reenter(sheet, cells)),
    addSheet: (plan) => here(workbook.addSheet(plan)),
    copyWithValues: (sheet, wanted) => here(workbook.copyWithValues(sheet, wanted)),
    growSheet: (sheet, growth) => here(workbook.growSheet(sheet, growth)),
    unfinishedSheets: () => here(workbook.unfinishedSheets()),
    removeUnfinished: (sheet, asked) => here(workbook.removeUnfinished(sheet, asked)),
  };
}

/** What makes files, likewise. */
function filesInThisFrame({ make, handOut }: OwnFiles): OwnFiles {
  return { make: (wanted) => here(make(wanted)), handOut: (made) => here(handOut(made)) };
}

async function here<R>(answer: Promise<R>): Promise<R> {
  try {
    return await answer;
  } catch (thrown) {
    const { name, message } = thrown as Error;
    throw name === "WorkbookProblem" ? new WorkbookProblem(message) : thrown;
  }
}
