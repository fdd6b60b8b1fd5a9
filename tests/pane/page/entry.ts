import { startPane } from "../../../src/pane/startPane";
import { SheetInMemory } from "../../explanation/SheetInMemory";
import { inventedRun } from "./inventedRun";

/** The pane beside an invented workbook, for the browser tests: the workbook is `window.workbook`. */
const workbook = new SheetInMemory(inventedRun());
workbook.selected = { sheet: "Kiln 3", cell: "B12" };
workbook.drawsCharts = new URLSearchParams(location.search).has("charts");
Object.assign(window, { workbook });
startPane(workbook, document.getElementById("pane") as HTMLElement);
