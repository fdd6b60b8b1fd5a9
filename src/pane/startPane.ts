import type { OwnFiles } from "../sharing/shareInFile";
import type { Workbook } from "../workbook/Workbook";
import { element } from "./element";
import { functionsTab } from "./functions/functionsTab";
import { runSheetTab } from "./runSheet/runSheetTab";
import { shareTab } from "./shareTab";
import { tabs } from "./tabs";
import { unfinishedNotice } from "./unfinishedNotice";
import { thisCellTab } from "./thisCell/thisCellTab";

/**
 * Builds the task pane inside `root`, beside the workbook it works on.
 * @param files what makes files of their own, where the host can
 */
export function startPane(workbook: Workbook, root: HTMLElement, files?: OwnFiles): void {
  const runSheet = runSheetTab(workbook);
  const pages = [runSheet, functionsTab(workbook, runSheet.degrees), thisCellTab(workbook), shareTab(workbook, files)];
  const heading = element("header", { class: "masthead" }, element("h1", {}, "Retort"), element("p", {}, "from weights to answers"));
  root.classList.add("retort-pane");
  const parts = tabs("Parts of the pane", pages);
  root.replaceChildren(heading, element("main", {}, unfinishedNotice(workbook, parts), parts));
}
