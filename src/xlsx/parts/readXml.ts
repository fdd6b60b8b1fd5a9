import { SaxesParser } from "saxes";
import { DamagedFile, type PartSource } from "./FileParts";

export type Attributes = Readonly<Record<string, string>>;

/** True for an attribute that says yes; left out, it says no (XML Schema Part 2, 3.2.2). */
export const isOn = (attribute: string | undefined): boolean => attribute === "1" || attribute === "true";

/** What is done on the way through a part. Names of elements and attributes come without their prefix. */
export interface XmlReader {
  readonly open?: (name: string, attributes: Attributes) => void;
  readonly text?: (text: string) => void;
  readonly close?: (name: string) => void;
}

/** Where later versions of the format put what earlier ones do not know. */
const EXTENSIONS = "extLst";

/**
 * Goes through one XML part from its start to its end, without holding it whole. Nothing happens where there is no such part.
 * What stands in extension lists is told by `extension` alone.
 */
export async function readXml(parts: PartSource, part: string, reader: XmlReader, extension?: (name: string) => void): Promise<void> {
  const parser = new SaxesParser();
  let extensions = 0;
  parser.on("error", (problem) => {
    throw new DamagedFile(problem.message, part);
  });
  parser.on("opentag", ({ name, attributes }) => {
    const own = withoutPrefix(name);
    if (own === EXTENSIONS) extensions++;
    if (extensions > 0) extension?.(own);
    else reader.open?.(own, named(attributes));
  });
  parser.on("text", (text) => extensions === 0 && reader.text?.(text));
  parser.on("cdata", (text) => extensions === 0 && reader.text?.(text));
  parser.on("closetag", ({ name }) => {
    const own = withoutPrefix(name);
    if (extensions === 0) reader.close?.(own);
    else if (own === EXTENSIONS) extensions--;
  });
  // What a reader finds wrong, it finds in this part.
  const told = (step: () => void): void => {
    try {
      step();
    } catch (problem) {
      throw DamagedFile.in(part, problem);
    }
  };
  let decoder: TextDecoder | undefined;
  for await (const piece of parts.pieces(part)) {
    decoder ??= new TextDecoder(isWide(piece) ? "utf-16le" : "utf-8");
    const text = decoder.decode(piece, { stream: true });
    told(() => parser.write(text));
  }
  const rest = decoder?.decode();
  if (rest !== undefined) told(() => parser.write(rest).close());
}

/** True for text of two bytes a character, which is marked at its start. */
const isWide = ([first, second]: Uint8Array): boolean => first === 0xff && second === 0xfe;

const withoutPrefix = (name: string): string => name.slice(name.indexOf(":") + 1);

function named(attributes: Attributes): Attributes {
  for (const name in attributes)
    if (name.includes(":")) return Object.fromEntries(Object.entries(attributes).map(([written, value]) => [withoutPrefix(written), value]));
  return attributes;
}
