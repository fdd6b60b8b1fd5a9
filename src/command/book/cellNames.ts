import { findCalls } from "../../sharing/findCalls";
import { quotedSheet } from "../../workbook/quotedSheet";

/** Cheaper than taking every formula apart: a call of ours has the word in its name, typed or stored. */
export const holdsCall = (formula: string): boolean => /retort/i.test(formula) && findCalls(formula).length > 0;

/** A cell as a message names it, with its sheet. */
export const nameOf = (sheet: string, cell: string): string => (/^[A-Za-z_]\w*$/.test(sheet) ? `${sheet}!${cell}` : `${quotedSheet(sheet)}!${cell}`);
