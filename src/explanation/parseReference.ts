import { parseA1Ref, stringifyA1Ref } from "@borgar/fx";
import type { RangeReference } from "./RangeReference";

const SEVERAL_SHEETS = ":";

/**
 * The cells that a reference as typed stands for, or undefined for what the port cannot read: another workbook,
 * several sheets at once, a name.
 * @param text "B7", "$B$7:C12", "'My sheet'!B7", "B:B"
 * @param homeSheet the sheet meant where the reference names none
 */
export function parseReference(text: string, homeSheet: string): RangeReference | undefined {
  const parsed = parseA1Ref(text);
  if (parsed === undefined || !("range" in parsed)) return undefined;
  const scopes = parsed.context ?? [];
  const sheet = scopes[0] ?? homeSheet;
  if (scopes.length > 1 || sheet.includes(SEVERAL_SHEETS)) return undefined;
  const { top, left, bottom, right } = parsed.range;
  return { sheet, range: stringifyA1Ref({ range: { top, left, bottom: bottom ?? null, right: right ?? null } }), spill: false };
}
