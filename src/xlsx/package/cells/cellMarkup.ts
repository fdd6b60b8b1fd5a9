import { textTooLong } from "../../../problems/workbook/workbookProblems";
import { WorkbookProblem } from "../../../workbook/Workbook";
import type { FileValue, NewContent } from "./CellChange";
import { escapedAttribute, escapedCellText, escapedText, tagWith, withoutEnd, type Tag } from "../parts/markup";
import type { Edit } from "../parts/partText";

// Excel specifications and limits, "Total number of characters that a cell can contain" and "Length of formula contents".
const LONGEST_TEXT = 32_767;
const LONGEST_FORMULA = 8192;

// ECMA-376 Part 1, 18.18.11. Newer codes stand beside marks of their own, and those of one program mean nothing to another.
const KNOWN_ERRORS: readonly string[] = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A", "#GETTING_DATA"];
const OTHER_ERROR = "#VALUE!";

/** A cell as it stands in the part. */
export interface StandingCell {
  readonly tag: Tag;
  readonly end: number;
  readonly formula: Place | undefined;
  /** Its value, or the text that stands in it. */
  readonly value: Place | undefined;
  /** Elements of later versions of the format. */
  readonly further: readonly Place[];
}

interface Place {
  readonly start: number;
  readonly end: number;
}

interface Put {
  readonly prefix: string;
  readonly content: NewContent;
  readonly look: number | undefined;
  /** The number of the mark of spilling formulas in the file's metadata. */
  readonly spillMark: number | undefined;
}

/** A cell that does not stand in the part yet. */
export function newCell({ prefix, cell, content, look, spillMark }: Put & { readonly cell: string }): string {
  const { type, inner } = valueMarkup(prefix, content.kind === "kept" ? null : content.value, content.kind === "formula");
  const given = { s: look === undefined ? undefined : String(look), t: type, cm: markOf(content, spillMark) };
  const attributes = Object.entries(given).flatMap(([name, value]) => (value === undefined ? [] : [` ${name}="${value}"`]));
  const inside = formulaMarkup(prefix, content) + inner;
  const tag = `<${prefix}c r="${cell}"${attributes.join("")}`;
  return inside === "" ? `${tag}/>` : `${tag}>${inside}</${prefix}c>`;
}

/** A cell with its new content. What is not of the content stays as it is written: its look, and whether it says where it stands. */
export function changedCell(text: string, standing: StandingCell, { prefix, content, look, spillMark }: Put): Edit[] {
  const { tag, end, formula, value, further } = standing;
  const lookGiven = look === undefined ? {} : { s: String(look) };
  if (content.kind === "kept") return [{ from: tag.start, to: tag.end, text: tagWith(text, tag, lookGiven) }];
  const keepsFormula = content.kind === "recalculated" && formula !== undefined;
  const { type, inner } = valueMarkup(prefix, content.value, content.kind === "formula" || keepsFormula);
  // Beside a value of a kind of its own, such as a picture in the cell, the mark would stand for what is no longer there.
  const given: Record<string, string | undefined> = { t: type, vm: undefined, ...lookGiven };
  if (!keepsFormula) given.cm = markOf(content, spillMark);
  const open = tagWith(text, tag, given);
  if (keepsFormula) {
    const at = value ?? { start: formula.end, end: formula.end };
    return [
      { from: tag.start, to: tag.end, text: open },
      { from: at.start, to: at.end, text: inner },
    ];
  }
  const inside = formulaMarkup(prefix, content) + inner + further.map(({ start, end: last }) => text.slice(start, last)).join("");
  const alone = withoutEnd(open);
  return [{ from: tag.start, to: end, text: inside === "" ? `${alone}/>` : `${alone}>${inside}</${prefix}c>` }];
}

const markOf = (content: NewContent, spillMark: number | undefined): string | undefined =>
  content.kind === "formula" && content.spills === true && spillMark !== undefined ? String(spillMark) : undefined;

/** The value beside its type (ECMA-376 Part 1, 18.18.11). Text stands in the cell itself, so that the list of shared texts stays as it is. */
function valueMarkup(prefix: string, value: FileValue, hasFormula: boolean): { readonly type: string | undefined; readonly inner: string } {
  const held = (type: string | undefined, text: string) => ({ type, inner: `<${prefix}v>${text}</${prefix}v>` });
  if (value === null) return { type: undefined, inner: "" };
  if (typeof value === "object") return held("e", escapedText(KNOWN_ERRORS.includes(value.error) ? value.error : OTHER_ERROR));
  if (typeof value === "boolean") return held("b", value ? "1" : "0");
  if (typeof value === "number") return Number.isFinite(value) ? held(undefined, String(value)) : held("e", "#NUM!");
  if (value.length > LONGEST_TEXT) throw new WorkbookProblem(textTooLong("text of a cell", value.length, LONGEST_TEXT));
  if (hasFormula || value === "") return held("str", escapedCellText(value));
  return { type: "inlineStr", inner: inlineText(prefix, value) };
}

/** A text that stands in its cell. Spaces at its ends are marked, as spreadsheets mark them, though the published schema has no such mark. */
export function inlineText(prefix: string, text: string): string {
  const space = /^\s|\s$|\n/.test(text) ? ' xml:space="preserve"' : "";
  return `<${prefix}is><${prefix}t${space}>${escapedCellText(text)}</${prefix}t></${prefix}is>`;
}

function formulaMarkup(prefix: string, content: NewContent): string {
  if (content.kind !== "formula") return "";
  const { formula, array } = content;
  if (formula.length > LONGEST_FORMULA) throw new WorkbookProblem(textTooLong("cell formula", formula.length, LONGEST_FORMULA));
  const attributes = array === undefined ? "" : ` t="array" ref="${escapedAttribute(array)}"`;
  return `<${prefix}f${attributes}>${escapedText(formula)}</${prefix}f>`;
}
