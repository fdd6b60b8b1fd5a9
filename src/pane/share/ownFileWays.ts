import { CellsInError, StaysPending } from "../../problems/sharingProblems";
import { plainFileMade, shareAllTheSame, valuesFileMade } from "../../problems/sharedCopyWords";
import { shareInFile, type FileKind, type OwnFiles } from "../../sharing/shareInFile";
import type { Workbook } from "../../workbook/Workbook";
import { button, element } from "../element";
import { Messages } from "../Messages";
import { today } from "./today";

const AS_VALUES = [
  "A file with this sheet and its calculation record, and nothing else of your workbook. Charts, comments and formats stay.",
  "Each formula gives way to its value; boxes to fill in, prompts and lists go. A line in view says that nothing recalculates.",
];

const AS_PLAIN = [
  "A file that goes on calculating without Retort: each of its functions is written out in built-in ones.",
  "What cannot be written out keeps its value, is marked, and says that it is fixed as soon as an input of it is changed. The record lists both.",
];

/** Sharing in a file of its own: as values, or as plain cells. @param chosen the sheet that is to be shared */
export function ownFileWays(workbook: Workbook, files: OwnFiles, chosen: () => string): { readonly panel: HTMLElement } {
  const messages = new Messages();
  const progress = element("p", { class: "hint", role: "status" });
  const all = element("input", { type: "checkbox", id: "share-all" });
  let isStopped = false;
  const stop = button("Stop", "secondary", () => void (isStopped = true));
  let again: { readonly as: FileKind; readonly asShown: boolean; readonly withErrors: boolean } | undefined;
  const share = async (as: FileKind, { asShown = false, withErrors = false } = {}): Promise<string> => {
    isStopped = false;
    stop.hidden = false;
    goOn.hidden = true;
    try {
      const sheets = all.checked ? await workbook.sheetNames() : [chosen()];
      const told = (step: string): void => void (progress.textContent = step);
      const made = await shareInFile(workbook, files, { as, sheets, date: today(), asShown, withErrors, told, isStopped: () => isStopped });
      return as === "values" ? valuesFileMade(made.fileName, made.cells) : plainFileMade(made.fileName, made.cells, made.fixed);
    } catch (problem) {
      const waits = problem instanceof StaysPending;
      const fails = problem instanceof CellsInError;
      again = { as, asShown: asShown || waits, withErrors: withErrors || fails };
      goOn.textContent = fails ? shareAllTheSame.withErrors : shareAllTheSame.asShown;
      goOn.hidden = !waits && !fails;
      throw problem;
    } finally {
      stop.hidden = true;
      progress.textContent = "";
    }
  };
  const values = button("Make a file with values", "primary", () => void messages.report(values, () => share("values")));
  const plain = button("Make a file of plain cells", "primary", () => void messages.report(plain, () => share("plain")));
  const goOn = button("", "secondary", () => void messages.report(goOn, () => share(again?.as ?? "values", again)));
  stop.hidden = true;
  goOn.hidden = true;
  const way = (id: string, heading: string, points: readonly string[], press: HTMLButtonElement): HTMLElement =>
    element(
      "section",
      { class: "way", "aria-labelledby": id },
      element("h3", { id }, heading),
      element("ul", { class: "points" }, ...points.map((point) => element("li", {}, point))),
      press,
    );
  const panel = element(
    "div",
    {},
    element("p", {}, all, element("label", { for: all.id }, " Every sheet of the workbook, in one file")),
    way("way-values-file", "As values", AS_VALUES, values),
    way("way-plain", "As plain cells", AS_PLAIN, plain),
    progress,
    stop,
    messages.region,
    goOn,
  );
  return { panel };
}
