import type { CellContent } from "../../workbook/Workbook";
import { DamagedFile } from "./FileParts";
import { textHeld, type SharedText } from "./sharedTexts";

/** What a cell of a file holds as its value, or the error it shows. */
export interface ValueInFile {
  readonly content: CellContent;
  readonly isError: boolean;
}

/** Day 0 of 1904 in the count from 1900 (ECMA-376 Part 1, 18.17.4.1). */
export const DAYS_TO_1904 = 1462;
const DAY_OF_1970 = 25_569;
const MILLISECONDS_A_DAY = 86_400_000;

/**
 * The value beside a cell's type (ECMA-376 Part 1, 18.18.11); blank where there is none.
 * @param inline the text that stands in the cell itself
 */
export function valueInFile(type: string, text: string, inline: string, texts: readonly SharedText[]): ValueInFile {
  const plain = (content: CellContent): ValueInFile => ({ content, isError: false });
  if (type === "inlineStr") return plain(inline === "" ? null : inline);
  if (text === "") return plain(type === "str" ? "" : null);
  switch (type) {
    case "s":
      return plain(sharedText(text, texts));
    case "str":
      return plain(textHeld(text));
    case "b":
      return plain(text === "1" || text.toLowerCase() === "true");
    case "e":
      return { content: text, isError: true };
    case "d":
      return plain(serialOf(text));
    default:
      return plain(numberOf(text));
  }
}

/** The same with a day counted from 1904 counted from 1900. */
export const movedTo1900 = (value: ValueInFile): ValueInFile =>
  typeof value.content === "number" ? { ...value, content: value.content + DAYS_TO_1904 } : value;

function sharedText(index: string, texts: readonly SharedText[]): string {
  const found = texts[Number(index)];
  if (found === undefined) throw new DamagedFile(`no shared text ${index}`);
  return found.text;
}

function numberOf(text: string): number {
  const number = Number(text);
  if (!Number.isFinite(number)) throw new DamagedFile(`${text} is no number`);
  return number;
}

/** "2026-01-15T10:30:00", "2026-01-15" or "10:30:00" as days. */
function serialOf(text: string): number {
  const isTimeAlone = !text.includes("-");
  const milliseconds = Date.parse(`${isTimeAlone ? `1970-01-01T${text}` : text}${/T|:/.test(text) && !/Z$/i.test(text) ? "Z" : ""}`);
  if (Number.isNaN(milliseconds)) throw new DamagedFile(`${text} is no date`);
  return milliseconds / MILLISECONDS_A_DAY + (isTimeAlone ? 0 : DAY_OF_1970);
}
