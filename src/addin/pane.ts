import { startPane } from "../pane/startPane";
import { excelReady } from "../workbook/excel/excelReady";
import { ExcelWorkbook } from "../workbook/excel/ExcelWorkbook";

/** The pane as Excel opens it: starts once the workbook can be used, or says why it cannot. */
async function start(root: HTMLElement): Promise<void> {
  const problem = await excelReady();
  if (problem === "") return startPane(new ExcelWorkbook(), root);
  root.setAttribute("role", "alert");
  root.textContent = problem;
}

void start(document.getElementById("pane") ?? document.body);
