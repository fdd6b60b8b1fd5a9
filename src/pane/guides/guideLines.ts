import type { Guide } from "../../help/guides/Guide";
import { guideFile } from "../../help/guides/guidePage";
import type { Workbook } from "../../workbook/Workbook";
import { button, element } from "../element";
import { Messages } from "../Messages";
import { followDegrees, type Degrees } from "../runSheet/degreesTyped";
import { typedIn } from "../runSheet/field";
import { insertRunSheet } from "../runSheet/insertRunSheet";
import { runSheetFields } from "../runSheet/runSheetFields";
import { readRunSheetForm } from "../runSheet/runSheetForm";
import { guideWords } from "./guideWords";

/**
 * Guides as a list: each a link to its page, with a button that inserts the run sheet for it.
 * @param degrees those that the Run sheet form is set to when the button is pressed
 */
export function guideLines(workbook: Workbook, guides: readonly Guide[], degrees: () => Degrees): HTMLElement {
  const messages = new Messages();
  const line = (guide: Guide): HTMLElement => {
    const insert = button(guideWords.insert, "plain", () => void messages.report(insert, () => insertSheetOf(workbook, guide, degrees())));
    insert.setAttribute("aria-label", guideWords.insertOf(guide.title));
    const link = element("a", { href: `help/${guideFile(guide)}`, target: "_blank", rel: "noopener" }, guide.title);
    return element("li", {}, link, " ", insert);
  };
  return element("div", { class: "guide-lines" }, element("ul", {}, ...guides.map(line)), messages.region);
}

/** What the Run sheet form would insert as it first stands, but for its degrees and what the guide types and chooses, in °C. */
async function insertSheetOf(workbook: Workbook, { sheet: { kind, typed } }: Guide, degrees: Degrees): Promise<string> {
  const form = { ...typedIn(runSheetFields().controls), ...typed };
  const oven = { value: form.ovenCelsius };
  followDegrees([{ control: oven, holds: "temperature" }], "C")(degrees);
  const outcome = readRunSheetForm({ ...form, degrees, ovenCelsius: oven.value, kind, panZeros: false, temperatures: false });
  if ("problem" in outcome) throw new Error(outcome.problem);
  return `${await insertRunSheet(workbook, outcome.options)} ${guideWords.cautionsFirst}`;
}
