import type { Guide } from "../../help/guides/Guide";
import { guideFile } from "../../help/guides/guidePage";
import type { Workbook } from "../../workbook/Workbook";
import { button, element } from "../element";
import { Messages } from "../Messages";
import { typedIn } from "../runSheet/field";
import { insertRunSheet } from "../runSheet/insertRunSheet";
import { runSheetFields } from "../runSheet/runSheetFields";
import { readRunSheetForm } from "../runSheet/runSheetForm";
import { guideWords } from "./guideWords";

/** Guides as a list: each a link to its page, with a button that inserts the run sheet for it. */
export function guideLines(workbook: Workbook, guides: readonly Guide[]): HTMLElement {
  const messages = new Messages();
  const line = (guide: Guide): HTMLElement => {
    const insert = button(guideWords.insert, "plain", () => void messages.report(insert, () => insertSheetOf(workbook, guide)));
    insert.setAttribute("aria-label", guideWords.insertOf(guide.title));
    const link = element("a", { href: `help/${guideFile(guide)}`, target: "_blank", rel: "noopener" }, guide.title);
    return element("li", {}, link, " ", insert);
  };
  return element("div", { class: "guide-lines" }, element("ul", {}, ...guides.map(line)), messages.region);
}

/** What the Run sheet form would insert as it first stands, but for what the guide types and chooses. */
async function insertSheetOf(workbook: Workbook, { sheet: { kind, typed } }: Guide): Promise<string> {
  const outcome = readRunSheetForm({ ...typedIn(runSheetFields().controls), ...typed, kind, panZeros: false, temperatures: false });
  if ("problem" in outcome) throw new Error(outcome.problem);
  return `${await insertRunSheet(workbook, outcome.options)} ${guideWords.cautionsFirst}`;
}
