import { partEncoding } from "../../../problems/files/packageProblems";
import { WorkbookProblem } from "../../../workbook/Workbook";

/** A change of a text: what stands from one place up to another gives way. Nothing gives way where both are the same. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The text with every change made; whatever no change names stays as it is. Changes at one place come in the order they are given. */
export function edited(text: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let at = 0;
  for (const { from, to, text: put } of [...edits].sort((one, other) => one.from - other.from || one.to - other.to)) {
    if (from < at) throw new Error(`two changes of one place, at ${from}`);
    pieces.push(text.slice(at, from), put);
    at = to;
  }
  pieces.push(text.slice(at));
  return pieces.join("");
}

type Encoding = "utf-8" | "utf-16le" | "utf-16be";

/** The text of an XML part and how it becomes bytes again. A mark of the byte order stays its first character. */
export interface PartText {
  readonly text: string;
  readonly encoding: Encoding;
}

const DECLARED = /^\uFEFF?<\?xml[^>]*\sencoding\s*=\s*["']([^"']+)["']/;

/** @throws WorkbookProblem for a part that is neither UTF-8 nor UTF-16, the two that the format allows (ECMA-376 Part 2, 8.1.4) */
export function partText(part: string, bytes: Uint8Array): PartText {
  const encoding = encodingOf(bytes);
  try {
    const text = new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes);
    const declared = DECLARED.exec(text)?.[1]?.toLowerCase() ?? encoding;
    if (encoding === "utf-8" ? declared === "utf-8" : declared.startsWith("utf-16")) return { text, encoding };
  } catch {
    // Bytes that are no text of this kind end in the same sentence.
  }
  throw new WorkbookProblem(partEncoding(part));
}

function encodingOf([first, second]: Uint8Array): Encoding {
  const starts = (one: number, other: number): boolean => first === one && second === other;
  if (starts(0xff, 0xfe) || starts(0x3c, 0)) return "utf-16le";
  return starts(0xfe, 0xff) || starts(0, 0x3c) ? "utf-16be" : "utf-8";
}

export function bytesOf({ text, encoding }: PartText): Uint8Array<ArrayBuffer> {
  if (encoding === "utf-8") return new TextEncoder().encode(text);
  const bytes = new DataView(new ArrayBuffer(text.length * 2));
  for (let at = 0; at < text.length; at++) bytes.setUint16(at * 2, text.charCodeAt(at), encoding === "utf-16le");
  return new Uint8Array(bytes.buffer);
}
