import { reportNotCopied, reportWordsInPane } from "../../problems/sharing/reportProblems";
import { reportHtml } from "../../report/reportHtml";
import { VERSION } from "../../sharing/record/calculationRecord";
import { finalValues } from "../../sharing/finalValues";
import type { Workbook } from "../../workbook/Workbook";
import { today } from "../../workbook/dayOf";
import { button, element } from "../element";
import { Messages } from "../Messages";

const words = reportWordsInPane;
// What file systems refuse in a name.
const NOT_IN_NAMES = /[\\/:*?"<>|\p{Cc}]/gu;

/** Makes a report of the sheet in view and saves it; a link and a copy are there for panes that cannot save. */
export function reportSection(workbook: Workbook): HTMLElement {
  const messages = new Messages();
  const save = element("a", { class: "save-report", hidden: true });
  let last = "";
  const made = async (): Promise<string> => {
    const { sheet } = await workbook.selectedCell();
    last = reportHtml(await finalValues(workbook, sheet), { date: today(), version: VERSION });
    const file = `${sheet.replace(NOT_IN_NAMES, "-")} report.html`;
    if (save.href !== "") URL.revokeObjectURL(save.href);
    save.href = URL.createObjectURL(new Blob([last], { type: "text/html;charset=utf-8" }));
    save.download = file;
    save.textContent = words.save(file);
    save.hidden = copy.hidden = false;
    save.click();
    return words.made(file);
  };
  const copied = async (): Promise<string> => {
    // A pane may have no clipboard, or be refused it.
    await navigator.clipboard.writeText(last).catch(() => {
      throw reportNotCopied();
    });
    return words.copied;
  };
  const make = button(words.make, "secondary", () => void messages.report(make, made));
  const copy = button(words.copy, "secondary", () => void messages.report(copy, copied));
  copy.hidden = true;
  return element(
    "section",
    { class: "report", "aria-labelledby": "report-heading" },
    element("h2", { id: "report-heading" }, words.heading),
    element("p", { class: "hint" }, words.about),
    make,
    element("p", {}, save),
    copy,
    messages.region,
  );
}
