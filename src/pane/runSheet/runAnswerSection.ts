import { headElsewhere } from "../../problems/runsheet/growingProblems";
import { readHead } from "../../runsheet/reading/readHead";
import { olderSheets } from "../../runsheet/words/olderSheets";
import { setupWords } from "../../runsheet/words/setupWords";
import type { CellLook, Workbook } from "../../workbook/Workbook";
import { element } from "../element";
import { Messages } from "../Messages";
import { settled } from "../settled";
import { weighInSection } from "./weighIn/weighInSection";
import { growBlock } from "./growBlock";

/**
 * The answer of the selected run sheet in the sheet's own words: what is next, the answer, the checks and what they rest on.
 * @param changed called after the pane itself put something into the sheet, which changes neither the selection nor the selected cell
 */
export function runAnswerSection(workbook: Workbook, changed: () => void): { section: HTMLElement; refresh: () => void } {
  const messages = new Messages();
  const lines = element("div", { role: "status" });
  const anew = (): void => {
    refresh();
    changed();
  };
  const weighIn = weighInSection(workbook, anew);
  const grow = growBlock(workbook, anew);
  const section = element(
    "section",
    { class: "run-answer", "aria-labelledby": "run-answer-heading", hidden: true },
    element("h2", { id: "run-answer-heading" }, "This run"),
    lines,
    weighIn.section,
    grow.block,
    messages.region,
  );
  let shown = "";
  // The section is hidden itself on any other sheet, so its panel says whether it is in view.
  const isShown = (): boolean => section.parentElement !== null && section.parentElement.closest("[hidden]") === null;
  // What the selection told of the cell, so that nothing has to be asked for it.
  let told: CellLook | undefined;
  const redraw = settled(async (isLatest) => {
    if (!isShown()) return;
    try {
      const { sheet } = told?.address ?? (await workbook.selectedCell());
      const head = await headOf(workbook, sheet);
      if (!isLatest()) return;
      messages.tell("");
      section.hidden = head.length === 0;
      await weighIn.show(head.length === 0 ? undefined : sheet);
      // Another sheet may have come into view meanwhile.
      if (!isLatest()) return;
      await grow.follow(head.length > 0 ? sheet : "");
      // A live region is written only when its words change, so that nothing is announced twice.
      if (shown === head.join("\n")) return;
      shown = head.join("\n");
      lines.replaceChildren(...head.map((line, index) => element("p", index === ANSWER ? { class: "answer" } : {}, line)));
    } catch (problem) {
      messages.complain(problem);
    }
  });
  const follow = (look: CellLook): void => {
    told = look;
    redraw();
  };
  workbook.onSelection(follow, isShown).catch((problem: unknown) => messages.complain(problem));
  const refresh = (): void => {
    told = undefined;
    redraw();
  };
  return { section, refresh };
}

// What is next stands first, the answer second.
const ANSWER = 1;

/** Only a sheet that holds the one text of every run sheet is read, and of it five rows. */
async function headOf(workbook: Workbook, sheet: string): Promise<readonly string[]> {
  if (!(await workbook.holdsText(sheet, setupWords.legend)) && !(await workbook.holdsText(sheet, olderSheets.legend))) return [];
  const lines = readHead(await workbook.read(sheet, "A1:D5"));
  return lines.length > 0 ? lines : [headElsewhere];
}
