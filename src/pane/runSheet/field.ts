import { element } from "../element";
import type { WrongEntry } from "./WrongEntry";

/** A labelled control with room for one sentence below it. */
export interface Field {
  readonly block: HTMLElement;
  /** Puts a sentence under the control, or takes it away with "". */
  mark(problem: string): void;
  /** Gives it another label. */
  call(label: string): void;
}

/** @param hint what a good entry looks like, said with the label by screen readers; "" for none */
export function field(label: string, control: HTMLInputElement | HTMLSelectElement, hint = ""): Field {
  const hintLine = element("span", { id: `${control.id}-hint`, class: "hint" }, hint);
  const problemLine = element("span", { id: `${control.id}-problem`, class: "field-problem" });
  control.setAttribute("aria-describedby", `${hint === "" ? "" : `${hintLine.id} `}${problemLine.id}`);
  const lines = hint === "" ? [problemLine] : [hintLine, problemLine];
  const name = element("label", { for: control.id }, label);
  return {
    block: element("div", { class: "field" }, name, control, ...lines),
    call: (other) => {
      if (name.textContent !== other) name.textContent = other;
    },
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

/** What is made of each entry of a record, under its name. */
export const underEachName = <N extends string, V, W>(record: Readonly<Record<N, V>>, make: (value: V, name: N) => W): Record<N, W> =>
  // The names that come out are those that went in, which Object.entries and Object.fromEntries do not tell the compiler.
  Object.fromEntries(Object.entries<V>(record).map(([name, value]) => [name, make(value, name as N)])) as Record<N, W>;

/** What stands in each control, by name. */
export const typedIn = <N extends string>(controls: Readonly<Record<N, { readonly value: string }>>): Record<N, string> =>
  underEachName(controls, ({ value }) => value);

/** Puts what is wrong under the box that it belongs to, and clears the others. */
export const markWrong = (fields: Readonly<Record<string, Field>>, wrong: WrongEntry<string> | undefined): void => {
  for (const [name, { mark }] of Object.entries(fields)) mark(wrong?.field === name ? wrong.problem : "");
};
