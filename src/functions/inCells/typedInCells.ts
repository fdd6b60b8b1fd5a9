import { numberText } from "../../inputs/numberText";

/** True for the text of an argument that is one text in quotation marks; `"dr"&"y"` is none, and is asked of the cell. */
export const isTypedText = (text: string): boolean => /^"(?:[^"]|"")*"$/.test(text);

/** What stands between the quotation marks of a typed text. */
export const typedTextOf = (text: string): string => text.slice(1, -1).split('""').join('"');

/** True for a number as typed, without an operator. */
export const isTypedNumber = (text: string): boolean => text.trim() !== "" && Number.isFinite(Number(text));

/** A constant in a cell formula, in brackets: a spreadsheet binds a leading minus tighter than a power. */
export const put = (constant: number): string => `(${numberText(constant)})`;
