import { element } from "./element";

/** A labelled control with room for one sentence below it. */
export interface Field {
  readonly block: HTMLElement;
  /** Puts a sentence under the control, or takes it away with "". */
  mark(problem: string): void;
}

/** @param hint what a good entry looks like, said with the label by screen readers; "" for none */
export function field(label: string, control: HTMLInputElement | HTMLSelectElement, hint = ""): Field {
  const hintLine = element("span", { id: `${control.id}-hint`, class: "hint" }, hint);
  const problemLine = element("span", { id: `${control.id}-problem`, class: "field-problem" });
  control.setAttribute("aria-describedby", `${hint === "" ? "" : `${hintLine.id} `}${problemLine.id}`);
  const lines = hint === "" ? [problemLine] : [hintLine, problemLine];
  return {
    block: element("div", { class: "field" }, element("label", { for: control.id }, label), control, ...lines),
    mark: (problem) => {
      problemLine.textContent = problem;
      control.setAttribute("aria-invalid", String(problem !== ""));
    },
  };
}

/** A drop-down list of values with their wording. */
export function choiceList(id: string, choices: readonly (readonly [value: string, words: string])[], chosen: string): HTMLSelectElement {
  const list = element("select", { id });
  list.append(...choices.map(([value, words]) => element("option", { value, selected: value === chosen }, words)));
  return list;
}

/** A box to tick, with one line on what it adds. */
export function checkBox(id: string, label: string, hint: string): { block: HTMLElement; control: HTMLInputElement } {
  const control = element("input", { type: "checkbox", id });
  return { block: element("label", { class: "choice", for: id }, control, element("span", {}, label, element("small", {}, hint))), control };
}
