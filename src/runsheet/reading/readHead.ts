import { headWords } from "../words/headWords";
import type { RangeReading } from "../../workbook/Workbook";

// The next step stands beside the title; the other lines begin their rows.
const NEXT = 3;

/** Row of the checks among those below the title. */
const CHECKS = 1;

/**
 * The head of a run sheet, A1 to D5, in its own words: the next step, the answer, the checks, what the ± covers, open burning; what is next
 * as it reads beside the sheet.
 */
export function readHead({ rows }: RangeReading): readonly string[] {
  const [title, ...others] = rows;
  const below = others.map((row) => row[0]?.shown ?? "");
  return [nextAsTold(title?.[NEXT]?.shown ?? "", below[CHECKS] ?? ""), ...below].filter((line) => line !== "");
}

const FAILED = /^[▲?] \d+ of \d+ checks: (.+)$/s;

/**
 * What is next, to be read where no third line of the sheet stands: in place of pointing at it, what it names.
 * @param checks the line of the checks
 */
export function nextAsTold(next: string, checks: string): string {
  const [, finding] = next === headWords.next.mend ? (FAILED.exec(checks) ?? []) : [];
  return finding === undefined ? next : headWords.next.mendThis(finding);
}
