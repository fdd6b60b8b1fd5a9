// Sentences about workbook files.

export const notAWorkbookFile = "This file is not an .xlsx workbook or is damaged, so nothing was changed. Choose a file saved as .xlsx.";

export const unsavedBefore = (fileName: string): string =>
  `Something was typed since the last save. Opening ${fileName} puts its sheets in place of all that are open here.`;

export const keptUnsaved = (fileName: string): string => `${fileName} was not opened; the sheets stay as they are.`;
