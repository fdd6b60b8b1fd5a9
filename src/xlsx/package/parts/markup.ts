import { SaxesParser } from "saxes";
import { DamagedFile } from "../../parts/FileParts";
import type { Edit } from "./partText";

/** A start tag, or that of an empty element, and where it stands in the part's text. */
export interface Tag {
  /** Without its prefix. */
  readonly name: string;
  /** "x:", or "" where the element has none. */
  readonly prefix: string;
  /** As they are written, prefixes and all. */
  readonly attributes: Readonly<Record<string, string>>;
  readonly start: number;
  /** Behind its ">". */
  readonly end: number;
  readonly isEmpty: boolean;
}

export interface MarkupReader {
  /** @param depth how many elements it stands in */
  readonly open?: (tag: Tag, depth: number) => void;
  readonly text?: (text: string) => void;
  /** @param at where the end tag begins and ends; for an empty element, both are the end of its one tag */
  readonly close?: (name: string, at: { readonly start: number; readonly end: number }, depth: number) => void;
}

/** Goes through a part's text and tells where everything stands, so that a place can be changed and the rest stays. */
export function readMarkup(part: string, text: string, reader: MarkupReader): void {
  const parser = new SaxesParser();
  let depth = 0;
  parser.on("error", (problem) => {
    throw new DamagedFile(problem.message, part);
  });
  parser.on("opentag", ({ name, attributes, isSelfClosing }) => {
    const end = parser.position;
    // No "<" may stand in a tag, not even in an attribute's value (XML 1.0, 3.1).
    const start = text.lastIndexOf("<", end - 1);
    const colon = name.indexOf(":") + 1;
    reader.open?.({ name: name.slice(colon), prefix: name.slice(0, colon), attributes, start, end, isEmpty: isSelfClosing }, depth++);
  });
  parser.on("text", (said) => reader.text?.(said));
  parser.on("cdata", (said) => reader.text?.(said));
  parser.on("closetag", ({ name, isSelfClosing }) => {
    const end = parser.position;
    reader.close?.(name.slice(name.indexOf(":") + 1), { start: isSelfClosing ? end : text.lastIndexOf("<", end - 1), end }, --depth);
  });
  parser.write(text).close();
}

/** An element with everything in it. Only for parts that are small beside the sheets. */
export interface Element extends Tag {
  readonly children: Element[];
  /** Its own text, without that of the elements in it. */
  text: string;
  /** Where its end tag begins, and the element ends. */
  close: { start: number; end: number };
}

/** The root element of a part. */
export function elementsOf(part: string, text: string): Element {
  const open: Element[] = [];
  let root: Element | undefined;
  readMarkup(part, text, {
    open: (tag) => {
      const element: Element = { ...tag, children: [], text: "", close: { start: tag.end, end: tag.end } };
      open.at(-1)?.children.push(element);
      open.push(element);
      root ??= element;
    },
    text: (said) => {
      const last = open.at(-1);
      if (last !== undefined) last.text += said;
    },
    close: (_name, at) => {
      const last = open.pop();
      if (last !== undefined) last.close = at;
    },
  });
  if (root === undefined) throw new DamagedFile("it is empty", part);
  return root;
}

export const childNamed = ({ children }: Element, name: string): Element | undefined => children.find((child) => child.name === name);
export const childrenNamed = ({ children }: Element, name: string): Element[] => children.filter((child) => child.name === name);

/** Every element that is so, from this one inwards. */
export const elementsThat = (element: Element, isSo: (element: Element) => boolean): Element[] => [
  ...(isSo(element) ? [element] : []),
  ...element.children.flatMap((child) => elementsThat(child, isSo)),
];

/** The value of an attribute, whatever its prefix. */
export function attributeOf({ attributes }: Pick<Tag, "attributes">, name: string): string | undefined {
  const own = attributes[name];
  if (own !== undefined) return own;
  for (const written in attributes) if (written.endsWith(name) && written.slice(written.indexOf(":") + 1) === name) return attributes[written];
  return undefined;
}

/** Puts markup behind the last thing in an element; an empty element gets an end tag. */
export function append(text: string, tag: Tag, closeStart: number, markup: string): Edit {
  if (!tag.isEmpty) return { from: closeStart, to: closeStart, text: markup };
  const slash = text.lastIndexOf("/", tag.end - 1);
  const name = /^<([^\s/>]+)/.exec(text.slice(tag.start, tag.end))?.[1] ?? "";
  return { from: slash, to: tag.end, text: `>${markup}</${name}>` };
}

export const appendTo = (text: string, element: Element, markup: string): Edit => append(text, element, element.close.start, markup);

export const removal = ({ start, close }: Element): Edit => ({ from: start, to: close.end, text: "" });

/** The value of an attribute, a name, a sign or a space. */
const PIECES = /"[^"]*"|'[^']*'|[^\s"'=]+|[\s"'=]/g;
const isQuoted = (piece: string | undefined): boolean => piece !== undefined && /^["']/.test(piece) && piece.length > 1;

/** A tag in pieces: each attribute one, with the space before it and its name, all else as it is written. */
function attributesIn(tag: string): { readonly text: string; readonly name: string | undefined }[] {
  const pieces: { text: string; name: string | undefined }[] = [];
  let pending: string[] = [];
  for (const [piece] of tag.matchAll(PIECES)) {
    pending.push(piece);
    if (!isQuoted(piece)) continue;
    let name = pending.length - 1;
    while (name > 0 && (isQuoted(pending[name]) || pending[name] === "=" || pending[name]?.trim() === "")) name--;
    let start = name;
    while (start > 0 && pending[start - 1]?.trim() === "") start--;
    if (start > 0) pieces.push({ text: pending.slice(0, start).join(""), name: undefined });
    pieces.push({ text: pending.slice(start).join(""), name: pending[name] });
    pending = [];
  }
  return [...pieces, { text: pending.join(""), name: undefined }];
}

/** A start tag without what closes it. */
export function withoutEnd(tag: string): string {
  const open = tag.endsWith(">") ? tag.slice(0, -1) : tag;
  return (open.endsWith("/") ? open.slice(0, -1) : open).trimEnd();
}

/** A start tag with attributes given anew, one that is undefined taken out; the others stay as they are written. */
export function tagWith(text: string, { start, end }: Pick<Tag, "start" | "end">, given: Readonly<Record<string, string | undefined>>): string {
  const left = new Set(Object.keys(given));
  const written = (name: string): string => (given[name] === undefined ? "" : ` ${name}="${escapedAttribute(given[name])}"`);
  const kept = attributesIn(text.slice(start, end)).map(({ text: whole, name }) => {
    if (name === undefined || !(name in given)) return whole;
    left.delete(name);
    return written(name);
  });
  const tag = kept.join("");
  const open = withoutEnd(tag);
  return open + [...left].map(written).join("") + tag.slice(open.length);
}

export const withAttributes = (text: string, tag: Tag, given: Readonly<Record<string, string | undefined>>): Edit => ({
  from: tag.start,
  to: tag.end,
  text: tagWith(text, tag, given),
});

// What XML 1.0 cannot hold (2.2), halves of surrogate pairs among it; line ends of other systems would be read as one line feed (2.11).
// eslint-disable-next-line no-control-regex
const UNHELD = /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text for the content of an element that takes no numbers of characters: a formula or a name. */
export const escapedText = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/\r/g, "&#13;").replace(UNHELD, "\ufffd"); // prettier-ignore

const WRITTEN: Readonly<Record<string, string>> = { "&lt;": "<", "&gt;": ">", "&quot;": '"', "&apos;": "'", "&#39;": "'", "&amp;": "&" };
/** The text that escaped text stands for, for what no reader of markup reads. */
export const unescapedText = (text: string): string => text.replace(/&(?:lt|gt|quot|apos|#39|amp);/g, (written) => WRITTEN[written] ?? written);

export const escapedAttribute = (text: string): string =>
  escapedText(text).replace(/"/g, "&quot;").replace(/\n/g, "&#10;").replace(/\t/g, "&#9;"); // prettier-ignore

/** Text of a cell: what XML cannot hold stands as its number, and so does what would be read as such (ECMA-376 Part 1, 22.9.2.19). */
export const escapedCellText = (text: string): string =>
  escapedText(
    text
      .replace(/_(?=x[0-9A-F]{4}_)/gi, "_x005F_")
      .replace(UNHELD, (unheld) => `_x${unheld.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`),
  );
