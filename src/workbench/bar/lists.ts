/** A disclosure with a list of texts; out of view where there are none. */
export function list(root: HTMLDetailsElement, texts: readonly string[]): void {
  root.querySelector("ul")?.replaceChildren(...texts.map(listItem));
  root.hidden = texts.length === 0;
  root.open = true;
}

export function listItem(text: string): HTMLLIElement {
  const item = document.createElement("li");
  item.textContent = text;
  return item;
}
