import { askBeforeRemoving, leftUnfinished, unfinishedGone, unfinishedRemoved } from "../problems/paneProblems";
import type { UnfinishedSheet, Workbook } from "../workbook/Workbook";
import { button, element } from "./element";
import { Messages, TASK_FAILED } from "./Messages";
import { replaceKeepingFocus } from "./replaceKeepingFocus";

const MILLISECONDS_BETWEEN_LOOKS = 5000;
// A workbook that has not answered for two minutes is looked at again when the pane opens next.
const MOST_LOOKS = 24;
const MILLISECONDS_UNTIL_OLDER = 60_000;

/**
 * Offers to remove sheets that were begun and never finished: those of an earlier day as the pane opens, and those of a task that
 * has just failed in `region`, as soon as the workbook answers again.
 */
export function unfinishedNotice(workbook: Workbook, region: HTMLElement): HTMLElement {
  const messages = new Messages();
  const list = element("div");
  const notice = element("section", { class: "unfinished", tabindex: "-1", "aria-label": "Unfinished sheets" }, list, messages.region);
  notice.hidden = true;
  let looking = false;
  let later: ReturnType<typeof setTimeout> | undefined;

  const offer = (sheet: UnfinishedSheet): HTMLElement => {
    let asked = false;
    const removed = async (): Promise<string> => {
      const removal = await workbook.removeUnfinished(sheet, asked);
      if (removal === "ask first") {
        asked = true;
        remove.textContent = `Remove "${sheet.name}" with all that is on it`;
        // Only so that the user need not look for it.
        await workbook.select({ sheet: sheet.name, cell: "A1" }).catch(() => undefined);
        return askBeforeRemoving(sheet.name);
      }
      block.remove();
      (list.querySelector("button") ?? notice).focus();
      return removal === "removed" ? unfinishedRemoved(sheet.name) : unfinishedGone(sheet.name);
    };
    const remove = button(`Remove "${sheet.name}"`, "secondary", () => void messages.report(remove, removed));
    const block = element("div", { class: "caution-box" }, element("p", {}, leftUnfinished(sheet.name)), remove);
    return block;
  };

  const look = async (): Promise<void> => {
    if (looking) return;
    looking = true;
    for (let looks = 1; looking && looks <= MOST_LOOKS; looks++) {
      try {
        const sheets = await workbook.unfinishedSheets();
        const offers = sheets.filter(({ mayBeUnderWay }) => !mayBeUnderWay).map(offer);
        replaceKeepingFocus(list, offers);
        // What was said of a sheet just removed stays in view.
        if (offers.length > 0) notice.hidden = false;
        looking = false;
        // What another pane is making is finished soon, or else to be offered.
        clearTimeout(later);
        if (sheets.some(({ mayBeUnderWay }) => mayBeUnderWay)) later = setTimeout(() => void look(), MILLISECONDS_UNTIL_OLDER);
      } catch {
        await new Promise((resolve) => setTimeout(resolve, MILLISECONDS_BETWEEN_LOOKS));
      }
    }
    looking = false;
  };

  region.addEventListener(TASK_FAILED, () => void look());
  void look();
  return notice;
}
