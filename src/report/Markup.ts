/** HTML that is ready as it is: whatever else goes into a report is escaped. */
export class Markup {
  constructor(readonly html: string) {}
}

export type Child = Markup | string | readonly Child[];
export type Attributes = Readonly<Record<string, string | number | undefined>>;

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
// HTML has no place for control characters, and those that turn the direction of writing around could make a text read as another.
const NOT_PRINTED = /[^\P{Cc}\n\t]|[\u202A-\u202E\u2066-\u2069]/gu;

/** A text as HTML shows it, letter by letter. */
export const escaped = (text: string): string => text.replace(NOT_PRINTED, "\uFFFD").replace(/[&<>"']/g, (one) => ESCAPES[one] ?? "");

/** An element; attributes that are undefined are left out. */
export function node(tag: string, attributes: Attributes = {}, ...children: readonly Child[]): Markup {
  return new Markup(`<${tag}${attributesOf(attributes)}>${contents(children)}</${tag}>`);
}

/** An element that has no end tag. */
export const single = (tag: string, attributes: Attributes): Markup => new Markup(`<${tag}${attributesOf(attributes)}>`);

const attributesOf = (attributes: Attributes): string =>
  Object.entries(attributes)
    .map(([name, value]) => (value === undefined ? "" : ` ${name}="${escaped(String(value))}"`))
    .join("");

const contents = (children: readonly Child[]): string =>
  children.map((child) => (child instanceof Markup ? child.html : typeof child === "string" ? escaped(child) : contents(child))).join("");
