import { BooleanNumber, CellValueType, type ICellData } from "@univerjs/core";
import type { CellContent } from "../../Workbook";

const LOOKS_LIKE_SOMETHING_ELSE = /^\s*[=+\-@#]|^\s*[\d.]|^\s*(true|false)\s*$/i;

/** A value in the engine's own terms. Text that could be taken for a formula, a number or an error is held as text. */
export function cellData(content: CellContent): ICellData {
  if (content === null) return { v: null, t: null, f: null, si: null, p: null };
  const rest = { f: null, si: null, p: null };
  if (typeof content === "number") return { v: content, t: CellValueType.NUMBER, ...rest };
  if (typeof content === "boolean") return { v: content ? BooleanNumber.TRUE : BooleanNumber.FALSE, t: CellValueType.BOOLEAN, ...rest };
  return { v: content, t: LOOKS_LIKE_SOMETHING_ELSE.test(content) ? CellValueType.FORCE_STRING : CellValueType.STRING, ...rest };
}
