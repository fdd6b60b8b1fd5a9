import { findingOf, verdictOf } from "../checks/Check";
import { CHECKS } from "../checks/everyCheck";
import { cell, type Range } from "../expressions/Expression";
import { CLOCK, LABEL } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { band, calculated, ofCells, type Block, type BlockCell } from "./Block";

/** What the sheet can tell about the run itself, a line each: a verdict, and where something is wrong the sentence about it. */
export function checksBlock(sheet: RunSheet, areas: readonly Range[]): Block {
  const { heading, lines } = sheet.rows.checks;
  const { verdict, finding } = checkWords.columns;
  return ofCells(
    ...band(sheet, heading, "runBand", { [LABEL]: checkWords.heading, [CLOCK]: verdict, [CLOCK + 1]: finding }),
    ...lines.flatMap(({ check, row }, index): BlockCell[] => {
      const label: BlockCell = { at: cell(row, LABEL), content: checkWords.numbered(index + 1, checkWords.names[check]), style: "runLabel" };
      const found = CHECKS[check](sheet, areas);
      if (found === undefined) return [label];
      const at = cell(row, CLOCK + 1);
      return [label, calculated(cell(row, CLOCK), verdictOf(found, at), "runLabel"), calculated(at, findingOf(found), "runFinding")];
    }),
  );
}
