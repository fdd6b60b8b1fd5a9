import { Lexer, Word, type PdfDictionary, type PdfValue } from "./Lexer";
import type { PdfFile } from "./PdfFile";

// Of all fonts but those that draw their letters themselves (ISO 32000-1, 9.2.4 and 9.6.5).
const THOUSANDTH = 0.001;
// Where a font of two bytes a letter names no other (ISO 32000-1, 9.7.4.3).
const USUAL_WIDTH = 1000;

/** What the bytes of a string are in one font: their letters, and how far each moves on. */
export interface PdfFont {
  /** @returns text, and width as a part of the font's size, of each code */
  read(codes: string): readonly { readonly text: string; readonly width: number }[];
}

export function pdfFont(file: PdfFile, about: PdfDictionary): PdfFont {
  const texts = textsIn(file.stream(about.get("ToUnicode")));
  const [inner] = (file.value(about.get("DescendantFonts")) as PdfValue[] | null) ?? [];
  const isWide = inner !== undefined;
  const widths = isWide ? wideWidths(file, file.dictionary(inner)) : plainWidths(file, about);
  const [unit = THOUSANDTH] = file.numbers(about.get("FontMatrix"));
  return {
    read: (codes) =>
      (codes.match(isWide ? /[\s\S]{2}/g : /[\s\S]/g) ?? []).map((code) => {
        const number = numberOf(code);
        return { text: texts.get(number) ?? (isWide ? "" : code), width: widths(number) * unit };
      }),
  };
}

const numberOf = (code: string): number => [...code].reduce((number, letter) => number * 256 + letter.charCodeAt(0), 0);

function plainWidths(file: PdfFile, about: PdfDictionary): (code: number) => number {
  const first = Number(file.value(about.get("FirstChar")));
  const widths = file.numbers(about.get("Widths"));
  return (code) => widths[code - first] ?? 0;
}

/** "[first [w w …] first last w …]" (9.7.4.3). */
function wideWidths(file: PdfFile, about: PdfDictionary): (code: number) => number {
  const usual = about.get("DW");
  const widths = new Map<number, number>();
  const given = (file.value(about.get("W")) as PdfValue[] | null) ?? [];
  for (let index = 0; index < given.length;) {
    const [first, next] = [Number(given[index]), file.value(given[index + 1])];
    if (Array.isArray(next)) next.forEach((width, more) => widths.set(first + more, Number(width)));
    else for (let code = first; code <= Number(next); code++) widths.set(code, Number(given[index + 2]));
    index += Array.isArray(next) ? 2 : 3;
  }
  return (code) => widths.get(code) ?? (typeof usual === "number" ? usual : USUAL_WIDTH);
}

/** Letters by code, from a ToUnicode map (9.10.3). */
function textsIn(map: string): ReadonlyMap<number, string> {
  const texts = new Map<number, string>();
  const lexer = new Lexer(map);
  let given: PdfValue[] = [];
  for (let value = lexer.next(); value !== undefined; value = lexer.next()) {
    if (!(value instanceof Word)) given.push(value);
    else {
      if (value.text === "endbfchar")
        for (let at = 0; at < given.length; at += 2) texts.set(numberOf(String(given[at])), utf16(String(given[at + 1])));
      if (value.text === "endbfrange") for (let at = 0; at < given.length; at += 3) setRange(texts, given.slice(at, at + 3));
      given = [];
    }
  }
  return texts;
}

function setRange(texts: Map<number, string>, [from, to, start]: readonly PdfValue[]): void {
  const first = numberOf(String(from));
  for (let code = first; code <= numberOf(String(to)); code++) {
    const text = Array.isArray(start) ? utf16(String(start[code - first])) : utf16(String(start));
    texts.set(code, Array.isArray(start) ? text : text.slice(0, -1) + String.fromCharCode(text.charCodeAt(text.length - 1) + code - first));
  }
}

const utf16 = (bytes: string): string => (bytes.match(/[\s\S]{2}/g) ?? []).map((pair) => String.fromCharCode(numberOf(pair))).join("");
