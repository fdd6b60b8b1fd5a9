import { download } from "../pane/download";
import { startPane } from "../pane/startPane";
import { excelReady } from "../workbook/excel/excelReady";
import { ExcelWorkbook } from "../workbook/excel/ExcelWorkbook";
import { ownFiles } from "./ownFiles";

/** The pane as Excel opens it: starts once the workbook can be used, or says why it cannot. */
async function start(root: HTMLElement): Promise<void> {
  const problem = await excelReady();
  if (problem === "") return startPane(new ExcelWorkbook(), root, ownFiles(download));
  root.setAttribute("role", "alert");
  root.textContent = problem;
}

void start(document.getElementById("pane") ?? document.body);
