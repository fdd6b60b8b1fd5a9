import { parseA1Ref, stringifyA1Ref, type AstExpression } from "@borgar/fx";
import { everyPart } from "./everyPart";

/** Cells that an expression refers to. */
export interface RangeReference {
  readonly sheet: string;
  /** "B7", "B7:C12", "B:C" or "3:9", no dollar signs. */
  readonly range: string;
  /** True for the spill of the cell: "B7#". */
  readonly spill: boolean;
}

export const referenceKey = ({ sheet, range, spill }: RangeReference): string => `${sheet}!${range}${spill ? "#" : ""}`;

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

/** Every range an expression refers to, as far as the port can read it. */
export function referencesIn(expression: AstExpression | null | undefined, homeSheet: string): RangeReference[] {
  const found: RangeReference[] = [];
  for (const part of everyPart(expression, isSpill)) {
    const spill = isSpill(part);
    const text = spill ? part.arguments[0].value : part.type === "ReferenceIdentifier" ? part.value : undefined;
    const reference = text === undefined ? undefined : parseReference(text, homeSheet);
    if (reference !== undefined) found.push({ ...reference, spill });
  }
  return found;
}

type Spill = AstExpression & { readonly arguments: readonly [{ readonly type: "ReferenceIdentifier"; readonly value: string }] };

const isSpill = (part: AstExpression): part is Spill =>
  part.type === "UnaryExpression" && part.operator === "#" && part.arguments[0]?.type === "ReferenceIdentifier";
