import { quotedSheet } from "./quotedSheet";

/** A cell as a message names it, with its sheet. */
export const nameOnSheet = (sheet: string, cell: string): string => `${/^[A-Za-z_]\w*$/.test(sheet) ? sheet : quotedSheet(sheet)}!${cell}`;
