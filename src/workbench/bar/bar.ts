import { savedAsText } from "../../problems/workbook/entryProblems";
import { keptUnsaved, openedInPart } from "../../problems/files/fileProblems";
import { download } from "../../pane/download";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { replaceSheets } from "../../workbook/grid/writing/GridSheet";
import { signatureGone } from "../../problems/files/signatureWords";
import { notWrittenAnew, writtenAnew } from "../../problems/files/packageProblems";
import { WorkbookProblem } from "../../workbook/Workbook";
import { lackingIn, type Doubts } from "../withDoubts";
import { enterEdit } from "../grid/cellEditing";
import type { OpenedFile } from "../xlsx/inPlace/OpenedFile";
import { typedContent } from "../typedContent";
import { unreadAsText } from "../unreadAsText";
import type { FileOfCopy, KeptCopy } from "../unsaved/KeptCopies";
import type { FileContent } from "../unsaved/KeptFiles";
import type { SavedContent } from "../unsaved/SavedContent";
import { fileCode } from "../fileCode";
import { askToReplace, mayWriteAnew } from "./dialogs";
import { list } from "./lists";
import { keptInWords, lackingInWords, watchKept } from "./watchKept";

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
  /** Opens a file as the bar's button does, after asking what becomes of unsaved sheets. */
  openFile(chosen: File): void;
  /** The file whose sheets are open; none where others came in place of all of them. */
  fileOpen(): (FileOfCopy & { readonly content: FileContent }) | undefined;
  /**
   * Puts a copy of unsaved sheets in place of the open ones, as changes of the file that they come from where that is given.
   * @returns false where the file is not given or does not open again, so that what it holds besides is gone; that is listed
   */
  openCopy(copy: KeptCopy, content: FileContent | undefined): Promise<boolean>;
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
    const lacking = lackingIn(doubts);
    const lost = lostAnew(openedFile);
    if (!isWhole && !(await mayWriteAnew(anew, writtenAnew(name, inPlace.because), lost))) throw new WorkbookProblem(notWrittenAnew(name));
    const bytes = isWhole ? inPlace.content : await saveXlsx(engine, openedFile.formulas);
    download(isWhole ? name : FILE_NAME, bytes);
    doubts.kept = isWhole ? openedFile.kept : undefined;
    if (!isWhole) {
      doubts.lacking = lacking;
      listNotShown(lackingInWords(lacking));
      // What was taken out and saved so may still be taken back, with all that the opened file has of it.
      opened = { file: openedFile.after(bytes, []), name: FILE_NAME };
    }
    saved.set(content);
    return [`Saved ${isWhole ? name : FILE_NAME}.${saidToo}`, ...(isWhole && inPlace.wasSigned ? [signatureGone] : [])].join(" ");
  };
  /** What of a file is not there in its sheets alone, each in words. */
  const lostAnew = ({ notShown, kept }: OpenedFile): readonly string[] => [...notShown, ...keptInWords(kept), ...lackingInWords(lackingIn(doubts))];
  const fileOpen = (): ReturnType<Bar["fileOpen"]> => {
    if (opened?.file.isOpen() !== true) return undefined;
    const { file: openedFile, name } = opened;
    return { name, content: openedFile.content, origins: openedFile.origins(), lacks: lostAnew(openedFile) };
  };
  const show = (openedFile: OpenedFile, name: string, said: readonly string[]): void => {
    opened = { file: openedFile, name };
    Object.assign(doubts, { kept: openedFile.kept, lacking: [] } satisfies Doubts);
    listNotShown([...said, ...keptInWords(doubts.kept)]);
    watch.begin();
  };
  const openCopy: Bar["openCopy"] = async ({ sheets, names, lacking = [], file: from }, content) => {
    if (from !== undefined && content !== undefined) {
      const { openCopy: openWhole } = await fileCode();
      const whole = await openWhole(engine, content, { sheets, names, origins: from.origins }).catch(() => undefined);
      if (whole !== undefined) {
        show(whole.opened, from.name, whole.said);
        return true;
      }
    }
    await replaceSheets(engine, sheets, names);
    opened = undefined;
    Object.assign(doubts, { kept: undefined, lacking } satisfies Doubts);
    listNotShown(from?.lacks ?? lackingInWords(lacking));
    return false;
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
    show(openedFile, chosen.name, left);
    saved.set(typedContent(engine));
    return left.length === 0 ? `Opened ${chosen.name}.` : openedInPart(chosen.name);
  };
  const wholeFile = async (): Promise<Uint8Array<ArrayBuffer>> => {
    enterEdit(engine);
    const { saveXlsx } = await fileCode();
    const from = opened?.file.isOpen() === true ? opened.file : undefined;
    const inPlace = await from?.saved();
    return inPlace !== undefined && "content" in inPlace ? inPlace.content : saveXlsx(engine, from?.formulas);
  };
  const openChosen = (chosen: File): void => told(() => open(chosen));
  openFile.onclick = () => file.click();
  file.onchange = () => {
    const chosen = file.files?.[0];
    file.value = "";
    if (chosen !== undefined) openChosen(chosen);
  };
  saveFile.onclick = () => told(save);
  return { save: () => told(save), say, openFile: openChosen, fileOpen, openCopy, mayReplace, wholeFile };
}
