import type { CellReading } from "../../workbook/Workbook";
import { isSameNumber } from "./isSameNumber";
import { isError, type Plain } from "./Plain";

/** Whether a cell holds what its formula gives; a spreadsheet may write numbers within texts with a decimal comma. */
export function holdsWhatIsWorkedOut(worked: Plain, { value, error }: Pick<CellReading, "value" | "error">): boolean {
  if (isError(worked)) return error === worked.code;
  if (error !== "") return false;
  if (typeof worked === "number" && typeof value === "number") return isSameNumber(worked, value);
  if (typeof worked === "string" && typeof value === "string") return worked.replaceAll(",", ".") === value.replaceAll(",", ".");
  // A formula that gives a blank cell shows 0 in every spreadsheet.
  if (worked === null && value === 0) return true;
  return (worked ?? "") === (value ?? "");
}
