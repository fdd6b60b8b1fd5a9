import { keptUnsaved, unsavedBefore } from "../problems/workbookProblems";
import type { GridEngine } from "../workbook/grid/GridEngine";
import { typedContent } from "./typedContent";
import { DeviceInputEventType, IEditorBridgeService, SetCellEditVisibleOperation } from "@univerjs/preset-sheets-core";

interface BarElements {
  readonly openFile: HTMLButtonElement;
  readonly file: HTMLInputElement;
  readonly saveFile: HTMLButtonElement;
  readonly dialog: HTMLDialogElement;
  readonly notice: HTMLElement;
}

const FILE_NAME = "retort-workbook.xlsx";

/**
 * The bar above the grid: opens and saves files. The .xlsx library is fetched when it is first needed.
 * @returns saves as the bar's button does
 */
export function bar(engine: GridEngine, { openFile, file, saveFile, dialog, notice }: BarElements): () => void {
  let saved = typedContent(engine);
  const say = (text: string, kind = ""): void => {
    notice.textContent = text;
    notice.className = kind;
  };
  const told = (action: () => Promise<string>): void => {
    action().then(
      (done) => say(done),
      (problem: unknown) => say(problem instanceof Error ? problem.message : String(problem), "problem"),
    );
  };
  const save = async (): Promise<string> => {
    enterEdit(engine);
    const { saveXlsx } = await import(/* webpackChunkName: "xlsx" */ "./xlsx/saveXlsx");
    const content = typedContent(engine);
    download(FILE_NAME, await saveXlsx(engine));
    saved = content;
    return `Saved ${FILE_NAME}.`;
  };
  const open = async (chosen: File): Promise<string> => {
    enterEdit(engine);
    const answer = typedContent(engine) === saved ? "replace" : await askToReplace(dialog, chosen.name);
    if (answer === "keep") return keptUnsaved(chosen.name);
    if (answer === "save") await save();
    const { openXlsx } = await import(/* webpackChunkName: "xlsx" */ "./xlsx/openXlsx");
    await openXlsx(engine, new Uint8Array(await chosen.arrayBuffer()));
    saved = typedContent(engine);
    return `Opened ${chosen.name}.`;
  };
  openFile.onclick = () => file.click();
  file.onchange = () => {
    const chosen = file.files?.[0];
    file.value = "";
    if (chosen !== undefined) told(() => open(chosen));
  };
  saveFile.onclick = () => told(save);
  return () => told(save);
}

const FILE_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands a workbook file to the browser to put where it puts downloads. */
function download(fileName: string, content: Uint8Array<ArrayBuffer>): void {
  const address = URL.createObjectURL(new Blob([content], { type: FILE_TYPE }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  URL.revokeObjectURL(address);
}

const ANSWERS = ["keep", "save", "replace"] as const;
type Answer = (typeof ANSWERS)[number];

/**
 * Asks in the page's dialog what becomes of what is not saved. Each of its buttons has an answer as its value; closing it
 * by the Escape key keeps the sheets.
 */
function askToReplace(dialog: HTMLDialogElement, fileName: string): Promise<Answer> {
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

/** Enters what is being typed into a cell, as a click elsewhere would, and leaves the selection where it is. */
function enterEdit({ api, book, injector }: GridEngine): void {
  if (!injector.get(IEditorBridgeService).isVisible().visible) return;
  api.syncExecuteCommand(SetCellEditVisibleOperation.id, {
    eventType: DeviceInputEventType.PointerDown,
    visible: false,
    unitId: book.getId(),
  });
}
