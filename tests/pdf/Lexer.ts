export class Name {
  constructor(readonly text: string) {}
}
/** An operator of a content stream, or another bare word. */
export class Word {
  constructor(readonly text: string) {}
}
export class Reference {
  constructor(readonly number: number) {}
}
export type PdfDictionary = ReadonlyMap<string, PdfValue>;
export type PdfValue = null | number | string | Name | Word | Reference | PdfDictionary | readonly PdfValue[];

const SPACE = /(?:[\0\t\n\f\r ]+|%[^\r\n]*)*/y;
const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)/y;
const REFERENCE = /(\d+) \d+ R(?![\w])/y;
const BARE = /[^\0\t\n\f\r ()<>[\]{}/%]+/y;
const CLOSES = new Word("]");
const ENDS = new Word(">>");
const ESCAPES: Readonly<Record<string, string>> = { n: "\n", r: "\r", t: "\t", b: "\b", f: "\f" };

/** Reads values one after another (ISO 32000-1, 7.2 and 7.3); strings keep one letter a byte. */
export class Lexer {
  constructor(
    private readonly text: string,
    public at = 0,
  ) {}

  /** Undefined at the end. */
  next(): PdfValue | undefined {
    this.take(SPACE);
    const start = this.text[this.at];
    if (start === undefined) return undefined;
    if (start === "/") return this.name();
    if (start === "(") return this.literal();
    if (this.text.startsWith("<<", this.at)) return this.dictionary();
    if (this.text.startsWith(">>", this.at)) return this.sign(2, ENDS);
    if (start === "<") return this.hex();
    if (start === "[") return this.array();
    if (start === "]") return this.sign(1, CLOSES);
    const reference = this.take(REFERENCE);
    if (reference) return new Reference(Number(reference[1]));
    const number = this.take(NUMBER);
    if (number) return Number(number[0]);
    const word = this.take(BARE)?.[0] ?? this.sign(1, new Word(start)).text;
    return word === "null" ? null : new Word(word);
  }

  private take(pattern: RegExp): RegExpExecArray | undefined {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text) ?? undefined;
    if (found) this.at = pattern.lastIndex;
    return found;
  }

  private sign(length: number, word: Word): Word {
    this.at += length;
    return word;
  }

  private name(): Name {
    this.at++;
    return new Name(this.take(BARE)?.[0] ?? "");
  }

  private array(): PdfValue[] {
    this.at++;
    const values: PdfValue[] = [];
    for (let value = this.next(); value !== undefined && value !== CLOSES; value = this.next()) values.push(value);
    return values;
  }

  private dictionary(): PdfDictionary {
    this.at += 2;
    const entries = new Map<string, PdfValue>();
    for (let key = this.next(); key instanceof Name; key = this.next()) entries.set(key.text, this.next() ?? null);
    return entries;
  }

  private hex(): string {
    const end = this.text.indexOf(">", this.at);
    const digits = this.text.slice(this.at + 1, end).replace(/\s/g, "");
    this.at = end + 1;
    return (digits.padEnd(digits.length + (digits.length % 2), "0").match(/../g) ?? [])
      .map((pair) => String.fromCharCode(parseInt(pair, 16)))
      .join("");
  }

  private literal(): string {
    let text = "";
    let depth = 1;
    for (this.at++; depth > 0 && this.at < this.text.length; this.at++) {
      const letter = this.text[this.at] ?? "";
      if (letter === "\\") text += this.escape();
      else {
        depth += letter === "(" ? 1 : letter === ")" ? -1 : 0;
        if (depth > 0) text += letter;
      }
    }
    return text;
  }

  private escape(): string {
    const octal = /^[0-7]{1,3}/.exec(this.text.slice(this.at + 1, this.at + 4))?.[0];
    if (octal !== undefined) {
      this.at += octal.length;
      return String.fromCharCode(parseInt(octal, 8));
    }
    const letter = this.text[++this.at] ?? "";
    return letter === "\n" || letter === "\r" ? "" : (ESCAPES[letter] ?? letter);
  }
}
