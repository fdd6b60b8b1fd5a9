import { keptUnsaved } from "../problems/workbookProblems";
import type { GridEngine } from "../workbook/grid/GridEngine";
import { askToReplace } from "./askToReplace";
import { download } from "./download";
import { enterEdit } from "./enterEdit";
import { typedContent } from "./typedContent";

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
