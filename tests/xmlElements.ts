import { XMLParser } from "fast-xml-parser";

/** An XML element: its name, its attributes and what it holds, in order. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

const ATTRIBUTES = ":@";
const TEXT = "#text";
type Parsed = Record<string, unknown>;

/** The root element of a document. */
export function rootElement(xml: string): XmlElement {
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: "",
    parseTagValue: false,
    ignoreDeclaration: true,
  });
  const [root] = (parser.parse(xml) as Parsed[]).map(element);
  if (root === undefined) throw new Error("the document has no root element");
  return root;
}

/** All elements below this one, in the order of the document. */
export const descendants = (element: XmlElement): XmlElement[] => element.children.flatMap((child) => [child, ...descendants(child)]);

/** The one child of this name. */
export function onlyChild(parent: XmlElement, name: string): XmlElement {
  const [found, ...more] = parent.children.filter((child) => child.name === name);
  if (found === undefined || more.length > 0) throw new Error(`${parent.name} has ${more.length + (found ? 1 : 0)} elements ${name}`);
  return found;
}

function element(parsed: Parsed): XmlElement {
  const name = Object.keys(parsed).find((key) => key !== ATTRIBUTES) ?? "";
  const content = parsed[name] as Parsed[];
  return {
    name,
    attributes: (parsed[ATTRIBUTES] ?? {}) as Record<string, string>,
    children: content.filter((child) => !(TEXT in child)).map(element),
    text: content.map((child) => child[TEXT] ?? "").join(""),
  };
}
