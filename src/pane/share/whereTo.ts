import { shareTabWords } from "../../problems/sharing/shareTabWords";
import { element } from "../element";

/** The choice between a file of its own and the workbook. @param changed called at each change */
export function whereTo(changed: () => void): { readonly block: HTMLElement; readonly inFile: () => boolean } {
  const { where } = shareTabWords;
  const choice = (value: string, label: string, about: string, checked: boolean): { radio: HTMLInputElement; line: HTMLElement } => {
    const radio = element("input", { type: "radio", name: "share-where", value, id: `share-where-${value}`, checked });
    radio.addEventListener("change", changed);
    return { radio, line: element("label", { class: "choice", for: radio.id }, radio, element("span", {}, label, element("small", {}, about))) };
  };
  const file = choice("file", where.file, where.fileAbout, true);
  const workbook = choice("workbook", where.workbook, where.workbookAbout, false);
  return {
    block: element("fieldset", {}, element("legend", {}, where.legend), file.line, workbook.line),
    inFile: () => file.radio.checked,
  };
}
