import { sampleCells } from "../sampleCells";
import { weighingUncertaintyCell } from "../weighingUncertaintyCell";
import { IN_ORDER, type CheckFormula } from "./Check";

// About 95 % for the change between two weighings (GUM, JCGM 100:2008, 6.3.3).
const COVERAGE = 2;

/** Whether a weigh-in is heavier than the one before it by more than two readings explain, as CHANGE.SIGNIFICANT has it. */
export const gainCheck: CheckFormula = (rows, sample) => {
  const { first, last } = sampleCells(rows, sample).rows;
  const { change } = rows.table.letters;
  const changes = `${change}${first + 1}:${change}${last}`;
  const u = weighingUncertaintyCell(rows);
  const found = `"weigh-in "&(MATCH(MAX(${changes}),${changes},0)+1)&" is heavier than the one before: damp taken up, a draught, or swapped cells"`;
  return `IF(OR(COUNT(${changes})=0,COUNT(${u})=0),"",IF(MAX(${changes})>${COVERAGE}*SQRT(2)*${u},${found},${IN_ORDER}))`;
};
