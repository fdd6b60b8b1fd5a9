import type { RangeReading } from "../../workbook/Workbook";

// The next step stands beside the title; the other lines begin their rows.
const NEXT = 3;

/** The head of a run sheet, A1 to D5, in its own words: the next step, the answer, the checks, what the ± covers, open burning. */
export function readHead({ rows }: RangeReading): readonly string[] {
  const [title, ...others] = rows;
  return [title?.[NEXT], ...others.map((row) => row[0])].flatMap((cell) => (cell === undefined || cell.shown === "" ? [] : [cell.shown]));
}
