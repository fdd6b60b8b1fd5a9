import { textOfFileTooLong, tooMuchInFile } from "../../problems/files/fileProblems";
import { WorkbookProblem } from "../../workbook/Workbook";
import type { PartSource } from "./FileParts";
import { readXml } from "./readXml";

/** A text that cells share; rich when parts of it look different. */
export interface SharedText {
  readonly text: string;
  readonly isRich: boolean;
}

// Excel specifications and limits, "Total number of characters that a cell can contain".
const LONGEST_TEXT = 32_767;

/** @throws WorkbookProblem for a text that no cell can hold */
export function textHeld(text: string): string {
  if (text.length > LONGEST_TEXT) throw new WorkbookProblem(textOfFileTooLong("text", text.length, LONGEST_TEXT));
  // A character that XML cannot hold stands as its number (ECMA-376 Part 1, 22.9.2.19).
  return text.replace(/_x([0-9A-F]{4})_/gi, (_all, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

/** Every character may stand as its number, which takes seven. */
const LONGEST_WRITTEN = LONGEST_TEXT * "_x0000_".length;

/** A text with more behind it. @throws WorkbookProblem while it is being gathered, so that no file makes it longer than memory */
export function longer(text: string, more: string): string {
  if (text.length + more.length > LONGEST_WRITTEN) throw new WorkbookProblem(tooMuchInFile);
  return text + more;
}

/** Gathers one text out of the elements it is made of: runs, each with a text; how it is pronounced is left out. */
export class TextGatherer {
  private text = "";
  private runs = 0;
  private isText = false;
  private isPronunciation = false;

  open(element: string): void {
    if (element === "r") this.runs++;
    if (element === "rPh") this.isPronunciation = true;
    if (element === "t") this.isText = !this.isPronunciation;
  }

  add(text: string): void {
    if (this.isText) this.text = longer(this.text, text);
  }

  close(element: string): void {
    if (element === "t") this.isText = false;
    if (element === "rPh") this.isPronunciation = false;
  }

  /** The text so far; the next one starts afresh. */
  taken(): SharedText {
    const taken = { text: textHeld(this.text), isRich: this.runs > 1 };
    this.text = "";
    this.runs = 0;
    return taken;
  }
}

export async function sharedTexts(parts: PartSource, part: string | undefined): Promise<readonly SharedText[]> {
  const texts: SharedText[] = [];
  if (part === undefined) return texts;
  const gatherer = new TextGatherer();
  await readXml(parts, part, {
    open: (element) => gatherer.open(element),
    text: (text) => gatherer.add(text),
    close: (element) => {
      gatherer.close(element);
      if (element === "si") texts.push(gatherer.taken());
    },
  });
  return texts;
}
