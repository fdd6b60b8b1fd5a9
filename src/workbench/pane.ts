import { startPane } from "../pane/startPane";
import { inThisFrame } from "./inThisFrame";
import type { WorkbenchWindow } from "./WorkbenchWindow";

/** The task pane in its frame beside the grid. */
const lent = (window.parent as WorkbenchWindow).retortWorkbench;
const root = document.getElementById("pane") ?? document.body;
if (lent === undefined) root.textContent = "This is the pane of the local workbook and cannot be opened alone. Open the page it belongs to.";
else startPane(inThisFrame(lent.workbook), root);
