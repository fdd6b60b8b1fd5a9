import { inflateSync } from "node:zlib";
import { Lexer, Name, Reference, type PdfDictionary, type PdfValue } from "./Lexer";

/** The objects of a PDF as printers to a file write it: each plainly in the file, streams deflated or plain (ISO 32000-1, 7.3 and 7.5). */
export class PdfFile {
  private readonly text: string;
  private readonly places = new Map<number, number>();

  constructor(private readonly bytes: Buffer) {
    this.text = bytes.toString("latin1");
    for (const { 0: header, 1: number, index } of this.text.matchAll(/(?<![0-9])(\d+) \d+ obj\b/g))
      this.places.set(Number(number), index + header.length);
  }

  /** The value itself, or the object it refers to. */
  value(given: PdfValue | undefined): PdfValue {
    if (!(given instanceof Reference)) return given ?? null;
    const at = this.places.get(given.number);
    return at === undefined ? null : this.value(new Lexer(this.text, at).next());
  }

  dictionary(given: PdfValue | undefined): PdfDictionary {
    const value = this.value(given);
    return value instanceof Map ? value : new Map<string, PdfValue>();
  }

  numbers(given: PdfValue | undefined): number[] {
    const value = this.value(given);
    return Array.isArray(value) ? value.filter((one) => typeof one === "number") : [];
  }

  /** The contents of a stream, or of several as one. */
  stream(given: PdfValue | undefined): string {
    if (Array.isArray(given)) return given.map((one) => this.stream(one)).join("\n");
    const at = given instanceof Reference ? this.places.get(given.number) : undefined;
    if (at === undefined) return "";
    const lexer = new Lexer(this.text, at);
    const about = this.dictionary(lexer.next());
    const start = this.text.indexOf("stream", lexer.at) + "stream".length;
    const from = start + (this.text.startsWith("\r\n", start) ? 2 : 1);
    const content = this.bytes.subarray(from, from + Number(this.value(about.get("Length"))));
    return (nameOf(this.value(about.get("Filter"))) === "FlateDecode" ? inflateSync(content) : content).toString("latin1");
  }

  /** Pages in their order, each with what it inherits (7.7.3.4). */
  pages(): PdfDictionary[] {
    const root = [...this.places.keys()].map((number) => this.dictionary(new Reference(number))).find((one) => nameOf(one.get("Type")) === "Catalog");
    return this.kids(this.dictionary(root?.get("Pages")), new Map());
  }

  private kids(node: PdfDictionary, above: PdfDictionary): PdfDictionary[] {
    const whole = new Map([...above, ...node]);
    const kids = this.value(node.get("Kids"));
    return Array.isArray(kids)
      ? kids.flatMap((kid) => this.kids(this.dictionary(kid), new Map([...whole].filter(([key]) => key !== "Kids"))))
      : [whole];
  }
}

const nameOf = (value: PdfValue | undefined): string => (value instanceof Name ? value.text : Array.isArray(value) ? nameOf(value[0]) : "");
