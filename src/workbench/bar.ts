import { keptUnsaved, openedInPart, saveOutOfReach, unsavedBefore } from "../problems/fileProblems";
import type { GridEngine } from "../workbook/grid/GridEngine";
import { WorkbookProblem } from "../workbook/Workbook";
import { enterEdit } from "./grid/cellEditing";
import { typedContent } from "./typedContent";
import type { SavedContent } from "./unsaved/SavedContent";

interface BarElements {
  readonly openFile: HTMLButtonElement;
  readonly file: HTMLInputElement;
  readonly saveFile: HTMLButtonElement;
  readonly dialog: HTMLDialogElement;
  readonly notice: HTMLElement;
  /** A disclosure with a list of what an opened file has that is not shown. */
  readonly notShown: HTMLDetailsElement;
}

/** What the bar does for the rest of the page. */
export interface Bar {
  /** Saves as the bar's button does. */
  save(): void;
  say(text: string, kind?: string): void;
  /** Lists what of the opened sheets is not shown; nothing hides the list. */
  listNotShown(texts: readonly string[]): void;
  /** Asks what becomes of unsaved sheets before what is named comes in their place; false where they stay. */
  mayReplace(by: string): Promise<boolean>;
}

const FILE_NAME = "retort-workbook.xlsx";

/** The bar above the grid: opens and saves files. */
export function bar(engine: GridEngine, saved: SavedContent, { openFile, file, saveFile, dialog, notice, notShown }: BarElements): Bar {
  const say = (text: string, kind = ""): void => {
    notice.textContent = text;
    notice.className = kind;
  };
  const listNotShown = (texts: readonly string[]): void => list(notShown, texts);
  const told = (action: () => Promise<string>): void => {
    action().then(
      (done) => say(done),
      (problem: unknown) => {
        say(problem instanceof Error ? problem.message : String(problem), "problem");
        // What has no sentence of its own is a defect, and its place is worth knowing.
        if (!(problem instanceof WorkbookProblem)) console.error(problem);
      },
    );
  };
  const save = async (): Promise<string> => {
    enterEdit(engine);
    const { saveXlsx } = await fileCode();
    const content = typedContent(engine);
    download(FILE_NAME, await saveXlsx(engine));
    saved.set(content);
    return `Saved ${FILE_NAME}.`;
  };
  const mayReplace = async (by: string): Promise<boolean> => {
    enterEdit(engine);
    const answer = saved.isAll() ? "replace" : await askToReplace(dialog, by);
    if (answer === "save") await save();
    if (answer === "keep") say(keptUnsaved(by));
    return answer !== "keep";
  };
  const open = async (chosen: File): Promise<string> => {
    if (!(await mayReplace(chosen.name))) return keptUnsaved(chosen.name);
    const { openXlsx } = await fileCode();
    const left = await openXlsx(engine, new Uint8Array(await chosen.arrayBuffer()));
    saved.set(typedContent(engine));
    listNotShown(left);
    return left.length === 0 ? `Opened ${chosen.name}.` : openedInPart(chosen.name);
  };
  openFile.onclick = () => file.click();
  file.onchange = () => {
    const chosen = file.files?.[0];
    file.value = "";
    if (chosen !== undefined) told(() => open(chosen));
  };
  saveFile.onclick = () => told(save);
  return { save: () => told(save), say, listNotShown, mayReplace };
}

/** What reads and writes files. Large and not needed at first, so it is fetched when the page stands; from then on no server is needed. */
export async function fileCode(): Promise<Pick<typeof import("./xlsx/openXlsx"), "openXlsx"> & Pick<typeof import("./xlsx/saveXlsx"), "saveXlsx">> {
  try {
    const [{ openXlsx }, { saveXlsx }, { fileLibrary }] = await Promise.all([
      import(/* webpackChunkName: "xlsx" */ "./xlsx/openXlsx"),
      import(/* webpackChunkName: "xlsx" */ "./xlsx/saveXlsx"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/fileLibrary"),
    ]);
    await fileLibrary();
    return { openXlsx, saveXlsx };
  } catch {
    throw new WorkbookProblem(saveOutOfReach);
  }
}

function list(root: HTMLDetailsElement, texts: readonly string[]): void {
  const items = texts.map((text) => {
    const item = document.createElement("li");
    item.textContent = text;
    return item;
  });
  root.querySelector("ul")?.replaceChildren(...items);
  root.hidden = texts.length === 0;
  root.open = true;
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
