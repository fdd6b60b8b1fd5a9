import { FileParts } from "../../xlsx/parts/FileParts";

/** What a file is by what it holds, whatever its name says. */
export type FileKind =
  | "workbook"
  | "empty"
  | "locked"
  | "older workbook"
  | "binary workbook"
  | "opendocument"
  | "numbers"
  | "document"
  | "archive"
  | "picture"
  | "pdf"
  | "web page"
  | "text"
  | "unknown";

const STARTS: readonly (readonly [FileKind, ...number[]])[] = [
  ["picture", 0x89, 0x50, 0x4e, 0x47],
  ["picture", 0xff, 0xd8, 0xff],
  ["picture", 0x47, 0x49, 0x46, 0x38],
  ["picture", 0x42, 0x4d],
  ["pdf", 0x25, 0x50, 0x44, 0x46],
  // [MS-XLS] 2.4.21 and the BOF records of the three formats before it, which had no container.
  ["older workbook", 0x09, 0x08],
  ["older workbook", 0x09, 0x04],
  ["older workbook", 0x09, 0x02],
  ["older workbook", 0x09, 0x00],
];
/** [MS-CFB] 2.2: the container of the older Office formats, and of newer files with a password. */
const CONTAINER = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
/** [MS-OFFCRYPTO] 1.3.1: the stream that holds the locked file. */
const LOCKED_STREAM = "EncryptedPackage";
const ZIP = [0x50, 0x4b];

/** What the file is. A workbook's parts come with it, so that they are looked up once. */
export async function fileKind(content: Uint8Array<ArrayBuffer>): Promise<{ kind: FileKind; parts?: FileParts }> {
  if (content.length === 0) return { kind: "empty" };
  if (startsWith(content, CONTAINER)) return { kind: holdsWide(content, LOCKED_STREAM) ? "locked" : "older workbook" };
  if (startsWith(content, ZIP)) return archiveKind(content);
  const [kind] = STARTS.find(([, ...start]) => startsWith(content, start)) ?? [];
  return { kind: kind ?? textKind(content) };
}

async function archiveKind(content: Uint8Array<ArrayBuffer>): Promise<{ kind: FileKind; parts?: FileParts }> {
  const parts = await FileParts.of(content);
  const names = parts.names();
  const has = (start: string): boolean => names.some((name) => name.startsWith(start));
  if (parts.has("[Content_Types].xml") && has("xl/") && !parts.has("xl/workbook.bin")) return { kind: "workbook", parts };
  if (parts.has("xl/workbook.bin")) return { kind: "binary workbook" };
  if (parts.has("content.xml") && parts.has("mimetype")) return { kind: "opendocument" };
  if (has("index/") || parts.has("index.zip")) return { kind: "numbers" };
  if (has("word/") || has("ppt/")) return { kind: "document" };
  // A package may keep its workbook in any folder; its own list of parts tells.
  return parts.has("[Content_Types].xml") ? { kind: "workbook", parts } : { kind: "archive" };
}

const LOOKED_AT = 4096;
const WEB_PAGE = /^\s*(?:<!doctype html|<html|<\?xml|<table)/i;

/** Text has no control characters but those of lines and tabs. */
function textKind(content: Uint8Array): FileKind {
  const start = content.subarray(0, LOOKED_AT);
  const isWide = (start[0] === 0xff && start[1] === 0xfe) || (start[0] === 0xfe && start[1] === 0xff);
  if (isWide) return "text";
  const text = new TextDecoder().decode(start);
  // eslint-disable-next-line no-control-regex
  if (/[\u0000-\u0008\u000e-\u001a\u001c-\u001f]/.test(text)) return "unknown";
  return WEB_PAGE.test(text) ? "web page" : "text";
}

const startsWith = (content: Uint8Array, start: readonly number[]): boolean => start.every((byte, index) => content[index] === byte);

/** True where the text stands in the file in letters of two bytes. */
function holdsWide(content: Uint8Array, text: string): boolean {
  const wide = [...text].flatMap((letter) => [letter.charCodeAt(0), 0]);
  for (let at = content.indexOf(wide[0] ?? 0); at >= 0; at = content.indexOf(wide[0] ?? 0, at + 1))
    if (startsWith(content.subarray(at, at + wide.length), wide)) return true;
  return false;
}
