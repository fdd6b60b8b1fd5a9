/** What is said below the grid of the local workbook when a cell shows an error that no Retort function made, under its code. */
const NOTES: Readonly<Record<string, string>> = {
  "#NAME?": "A name in this formula is not known here. Check its spelling; Retort's functions begin with RETORT. and text stands in double quotes.",
  "#VALUE!": "This formula cannot be worked out as it stands. Check its brackets, its commas and the cells it refers to.",
  "#SPILL!": "The answers need cells that already hold something. Clear those cells or move the formula.",
  "#REF!": "A cell this formula referred to is gone, or the formula needs its own cell. Point it at the right cells.",
  "#CYCLE!": "This formula needs its own cell. Point it at other cells.",
  "#DIV/0!": "Something is divided by 0 or by a blank cell. Fill in the cell, or test for it with IF.",
};

export const gridErrorNote = (code: string): string | undefined => NOTES[code];
