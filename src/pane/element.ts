type Child = Node | string;

/** Attributes as in HTML; true writes an empty attribute, false and undefined leave it out. */
export type Attributes = Readonly<Record<string, string | boolean | undefined>>;

/** A new element with its attributes and children. No inline style: every page of ours forbids it. */
export function element<T extends keyof HTMLElementTagNameMap>(
  tag: T,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[T] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) made.setAttribute(name, value === true ? "" : value);
  }
  made.append(...children);
  return made;
}

const BREAK_AFTER = /(?<=[(,;{])/;

/** A cell formula as typed, free to go to the next line after a bracket or a comma. */
export function typedFormula(text: string): HTMLElement {
  const parts = text.split(BREAK_AFTER).flatMap((part) => [part, element("wbr")]);
  return element("code", { class: "typed" }, ...parts);
}

/** A push button that submits nothing. */
export function button(text: string, className: string, onClick: () => void): HTMLButtonElement {
  const made = element("button", { type: "button", class: className }, text);
  made.addEventListener("click", onClick);
  return made;
}
