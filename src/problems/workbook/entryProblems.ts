import { plainNumber, quoted } from "../quoted";

const STAYS = "The cell stays as it was.";

export const formulaCharactersBeyond = (characters: number, most: number): string =>
  `Not entered: this formula has ${plainNumber(characters)} characters; a cell takes ${plainNumber(most)} at most. Write it in several cells. ${STAYS}`;

export const formulaNestedBeyond = (levels: number, most: number): string =>
  `Not entered: this formula has ${plainNumber(levels)} levels of brackets within one another; ${plainNumber(most)} is the most. Work the inner ones out in cells of their own. ${STAYS}`;

export const formulaArgumentsBeyond = (given: number, most: number): string =>
  `Not entered: a function in this formula has ${plainNumber(given)} arguments; it takes ${plainNumber(most)} at most. Give it a range of cells. ${STAYS}`;

export const formulaTextBeyond = (characters: number, most: number): string =>
  `Not entered: a text in this formula has ${plainNumber(characters)} characters; ${plainNumber(most)} is the most. Put the text into a cell and refer to it. ${STAYS}`;

export const formulaOperatorsBeyond = (operators: number, most: number): string =>
  `Not entered: this formula has ${plainNumber(operators)} operators; this page takes ${plainNumber(most)} at most. Use SUM over a range, or several cells. ${STAYS}`;

export const textBeyondCell = (characters: number, most: number): string =>
  `Not entered: this text has ${plainNumber(characters)} characters; a cell takes ${plainNumber(most)} at most. Divide it over several cells. ${STAYS}`;

export const wordBeyondCell = (characters: number, most: number): string =>
  `Not entered: this text has ${plainNumber(characters)} characters without a space between; this page takes ${plainNumber(most)} at most. ${STAYS}`;

/** @param by the cell with the formula @param area the cells that it fills, "D1:D3" */
export const filledByFormula = (cell: string, by: string, area: string): string =>
  `Not entered: the formula in ${by} fills ${area}, and no part of that can be changed alone. Change the formula in ${by}, or type beside ${area}. ${cell} stays as it was.`;

/** The same for what is pasted, dragged, filled or shifted there. */
export const filledNotChanged = (cell: string, by: string, area: string): string =>
  `Nothing was changed: the formula in ${by} fills ${area}, and no part of that can be changed or moved alone. Choose cells beside ${area}, or all of ${area}. ${cell} stays as it was.`;

/** Said after a sheet was copied: a name has one meaning here, where other spreadsheets give the copy names of its own. */
export const copyKeepsNames = (copy: string, original: string, names: readonly string[]): string =>
  `Formulas on ${quoted(copy)} go on reading cells of ${quoted(original)} through ${names.length === 1 ? "the name" : "the names"} ${names.join(", ")}: a copied sheet gets no names of its own here. Name the cells themselves in those formulas, such as B2 in place of ${names[0] ?? ""}, where the copy's own are meant.`;

/** Nothing of what was copied goes in, so that no cell holds half of it. */
export const nothingPasted = (why: string): string => `Nothing was pasted. ${why.replace(/^Not entered: t/, "T").replace(/^Not entered: a/, "A")}`;

/** @param instead what to type, where that can be told */
export const formulaUnread = (formula: string, instead: string | undefined): string =>
  `${quoted(formula)} cannot be read as a formula. ${
    instead === undefined
      ? "Check its brackets, operators, commas, quotation marks and cell names, and type it again."
      : `Type ${instead} instead: decimals take a point here, arguments a comma between them, texts straight quotation marks.`
  }`;

export const tableUnread = (formula: string): string =>
  `${quoted(formula)} names a column of a table, and this page knows no tables. Name the cells instead, as B2:B9.`;

/** @param cell "B7" @param why as above */
export const unreadInCell = (cell: string, why: string): string => `${cell}: ${why} It would be saved as text.`;

/** Said after a file is saved. @param cells "Sheet1!B7" */
export const savedAsText = (cells: readonly string[]): string =>
  ` What cannot be read as a formula was saved as text: ${cells.join(", ")}. Look there, and type it again.`;
