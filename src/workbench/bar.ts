import { CommandType } from "@univerjs/core";
import { savedAsText } from "../problems/entryProblems";
import { keptUnsaved, openedInPart, saveOutOfReach, unsavedBefore } from "../problems/fileProblems";
import { download } from "../pane/download";
import type { GridEngine } from "../workbook/grid/GridEngine";
import { signatureGone } from "../problems/signatureWords";
import { keptFromBefore, notWrittenAnew, writtenAnew } from "../problems/packageProblems";
import { WorkbookProblem } from "../workbook/Workbook";
import type { Doubts } from "./withDoubts";
import type { KeptFormulas } from "./xlsx/kept/KeptFormulas";
import { enterEdit } from "./grid/cellEditing";
import type { OpenedFile } from "./xlsx/inPlace/OpenedFile";
import { typedContent } from "./typedContent";
import { unreadAsText } from "./unreadAsText";
import type { SavedContent } from "./unsaved/SavedContent";

interface BarElements {
  readonly openFile: HTMLButtonElement;
  readonly file: HTMLInputElement;
  readonly saveFile: HTMLButtonElement;
  readonly dialog: HTMLDialogElement;
  /** Asks whether a file is written anew, with a list of what it then lacks. */
  readonly anew: HTMLDialogElement;
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
  /** The workbook as a file would hold it now, with all that the file it came from has where that can be. */
  wholeFile(): Promise<Uint8Array<ArrayBuffer>>;
}

/** What is open. */
interface Open {
  readonly engine: GridEngine;
  readonly saved: SavedContent;
  /** Told of each file that is opened. */
  readonly doubts: Doubts;
}

const FILE_NAME = "retort-workbook.xlsx";

/** The bar above the grid: opens and saves files. */
export function bar({ engine, saved, doubts }: Open, { openFile, file, saveFile, dialog, anew, notice, notShown }: BarElements): Bar {
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
  const watch = watchKept({ engine, doubts }, say);
  /** The file whose sheets are open, under its name. */
  let opened: { readonly file: OpenedFile; readonly name: string } | undefined;
  const save = async (): Promise<string> => {
    enterEdit(engine);
    const { saveXlsx } = await fileCode();
    // A copy from the browser may have come in place of the file's sheets.
    if (opened?.file.isOpen() !== true) opened = undefined;
    const asText = unreadAsText(engine, opened?.file.formulas ?? new Set());
    const saidToo = asText.length === 0 ? "" : savedAsText(asText);
    const content = typedContent(engine);
    const inPlace = await opened?.file.saved();
    if (opened === undefined || inPlace === undefined) {
      download(FILE_NAME, await saveXlsx(engine));
      saved.set(content);
      return `Saved ${FILE_NAME}.${saidToo}`;
    }
    const { file: openedFile, name } = opened;
    const isWhole = "content" in inPlace;
    const lost = [...openedFile.notShown, ...keptInWords(openedFile.kept)];
    if (!isWhole && !(await mayWriteAnew(anew, writtenAnew(name, inPlace.because), lost))) throw new WorkbookProblem(notWrittenAnew(name));
    const bytes = isWhole ? inPlace.content : await saveXlsx(engine, openedFile.formulas);
    download(isWhole ? name : FILE_NAME, bytes);
    doubts.kept = isWhole ? openedFile.kept : undefined;
    // What was taken out and saved so may still be taken back, with all that the opened file has of it.
    if (!isWhole) opened = { file: openedFile.after(bytes, []), name: FILE_NAME };
    saved.set(content);
    return [`Saved ${isWhole ? name : FILE_NAME}.${saidToo}`, ...(isWhole && inPlace.wasSigned ? [signatureGone] : [])].join(" ");
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
    const { openFile: openWhole } = await fileCode();
    const { said: left, opened: openedFile } = await openWhole(engine, new Uint8Array(await chosen.arrayBuffer()));
    opened = { file: openedFile, name: chosen.name };
    doubts.kept = openedFile.kept;
    saved.set(typedContent(engine));
    listNotShown([...left, ...keptInWords(doubts.kept)]);
    watch.begin();
    return left.length === 0 ? `Opened ${chosen.name}.` : openedInPart(chosen.name);
  };
  const wholeFile = async (): Promise<Uint8Array<ArrayBuffer>> => {
    enterEdit(engine);
    const { saveXlsx } = await fileCode();
    const from = opened?.file.isOpen() === true ? opened.file : undefined;
    const inPlace = await from?.saved();
    return inPlace !== undefined && "content" in inPlace ? inPlace.content : saveXlsx(engine, from?.formulas);
  };
  openFile.onclick = () => file.click();
  file.onchange = () => {
    const chosen = file.files?.[0];
    file.value = "";
    if (chosen !== undefined) told(() => open(chosen));
  };
  saveFile.onclick = () => told(save);
  return { save: () => told(save), say, listNotShown, mayReplace, wholeFile };
}

// As many as a line holds.
const NAMED = 5;

/** Which cells hold values from before; none where all hold. */
function keptInWords(kept: KeptFormulas | undefined): readonly string[] {
  const cells = kept?.fromBefore() ?? [];
  return cells.length === 0 ? [] : [keptFromBefore(cells.slice(0, NAMED), Math.max(0, cells.length - NAMED))];
}

// Long enough for the grid to calculate what follows from a change.
const PAUSE_MS = 500;

/** Says which cells hold no longer as soon as something was changed that they are calculated from. */
function watchKept({ engine, doubts }: Pick<Open, "engine" | "doubts">, say: Bar["say"]): { begin(): void } {
  let [told, timer]: [string, number | undefined] = ["", undefined];
  const words = (): string => keptInWords(doubts.kept).join(" ");
  const look = async (): Promise<void> => {
    await engine.settled();
    const now = words();
    if (now !== told && now !== "") say(now, "problem");
    told = now;
  };
  engine.api.addEvent(engine.api.Event.CommandExecuted, ({ type }) => {
    if (type !== CommandType.MUTATION || doubts.kept === undefined) return;
    clearTimeout(timer);
    timer = window.setTimeout(() => void look().catch(() => undefined), PAUSE_MS);
  });
  return { begin: () => void (told = words()) };
}

/** What reads and writes files. Large and not needed at first, so it is fetched when the page stands; from then on no server is needed. */
export async function fileCode(): Promise<FileCode> {
  try {
    const [{ openFile }, { saveXlsx }, { valuesFile }, { plainFile }, { fileLibrary }] = await Promise.all([
      import(/* webpackChunkName: "xlsx" */ "./xlsx/openXlsx"),
      import(/* webpackChunkName: "xlsx" */ "./xlsx/saveXlsx"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/handedOn/valuesFile"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/handedOn/plainFile"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/fileLibrary"),
    ]);
    await fileLibrary();
    return { openFile, saveXlsx, valuesFile, plainFile };
  } catch {
    throw new WorkbookProblem(saveOutOfReach);
  }
}

type FileCode = Pick<typeof import("./xlsx/openXlsx"), "openFile"> &
  Pick<typeof import("./xlsx/saveXlsx"), "saveXlsx"> &
  Pick<typeof import("../xlsx/handedOn/valuesFile"), "valuesFile"> &
  Pick<typeof import("../xlsx/handedOn/plainFile"), "plainFile">;

function list(root: HTMLDetailsElement, texts: readonly string[]): void {
  root.querySelector("ul")?.replaceChildren(...texts.map(listItem));
  root.hidden = texts.length === 0;
  root.open = true;
}

function listItem(text: string): HTMLLIElement {
  const item = document.createElement("li");
  item.textContent = text;
  return item;
}

/** Asks whether the file is written anew without what is listed; closing the dialog says no. Without anything to lose nobody is asked. */
function mayWriteAnew(dialog: HTMLDialogElement, about: string, lost: readonly string[]): Promise<boolean> {
  if (lost.length === 0) return Promise.resolve(true);
  const text = dialog.querySelector("p");
  if (text !== null) text.textContent = about;
  dialog.querySelector("ul")?.replaceChildren(...lost.map(listItem));
  return answerIn(dialog).then((answer) => answer === "anew");
}

/** What was pressed in a dialog, by the value of its button; "" where it was closed. */
function answerIn(dialog: HTMLDialogElement): Promise<string> {
  dialog.returnValue = "";
  for (const button of dialog.querySelectorAll("button")) button.onclick = () => dialog.close(button.value);
  // The grid listens for keys in the whole page.
  dialog.onkeydown = (event) => event.stopPropagation();
  dialog.showModal();
  return new Promise((resolve) => (dialog.onclose = () => resolve(dialog.returnValue)));
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
  return answerIn(dialog).then((given) => ANSWERS.find((answer) => answer === given) ?? "keep");
}
