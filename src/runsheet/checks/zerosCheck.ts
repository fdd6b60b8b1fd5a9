import { COLUMNS } from "../columns";
import { sampleCells } from "../sampleCells";
import { IN_ORDER, type CheckFormula } from "./Check";

/** Whether every weighing has both its pan zeros or neither. */
export const zerosCheck: CheckFormula = (rows, sample) => {
  const cells = sampleCells(rows, sample);
  const { zeroBefore = "", zeroAfter = "" } = rows.table.letters;
  const [before, after] = [cells.stretch(zeroBefore), cells.stretch(zeroAfter)];
  const pairs = [...cells.rows.zeros.values()].map((zeros) => `${COLUMNS.value}${zeros.before},${COLUMNS.value}${zeros.after}`);
  const lone = [`SUMPRODUCT(ABS(ISNUMBER(${before})-ISNUMBER(${after})))`, ...pairs.map((pair) => `MOD(COUNT(${pair}),2)`)].join("+");
  return `IF(COUNT(${[before, after, ...pairs].join(",")})=0,"",IF(${lone}>0,"one of the two zeros is missing: that weighing is not corrected",${IN_ORDER}))`;
};
