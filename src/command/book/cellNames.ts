import { quotedSheet } from "../../workbook/quotedSheet";

/** A cell as a message names it, with its sheet. */
export const nameOf = (sheet: string, cell: string): string => (/^[A-Za-z_]\w*$/.test(sheet) ? `${sheet}!${cell}` : `${quotedSheet(sheet)}!${cell}`);
