import { MOST_OFF } from "../../furnace/calibration";
import { calibrated } from "../../inputs/kinds/series";
import { calibrationFarOff, calibrationIncomplete, outsideThePoints } from "../../problems/sharing/plainCellProblems";
import { columnInCells } from "../inCells/columnInCells";
import { refusal } from "../inCells/problemInCells";
import type { Workings } from "../inCells/Workings";
import { operand } from "../operand";

// The columns of the block.
const COLUMNS = ["filledReadings", "reading", "filledReferences", "reference", "isPair", "wrong", "x", "y"] as const;
type Column = (typeof COLUMNS)[number];

/**
 * TEMPERATURE.CORRECTED in cells, as `spanOf` finds the two points: the k points below the reading, and of readings and references, which rise
 * together, the k-th and the next smallest. Undefined where a column is not one of a known size.
 */
export function calibrationInCells(texts: Readonly<Record<"reading" | "readings" | "references", string>>, workings: Workings): string | undefined {
  const [readings, references] = [workings.cellsOf(texts.readings), workings.cellsOf(texts.references)];
  if (readings === undefined || references === undefined) return undefined;
  const [n, asked] = [Math.max(readings.length, references.length), operand(texts.reading)];
  let answer = "";
  workings.block(`Calibration points: ${COLUMNS.join(", ")}`, n, COLUMNS.length, (at) => {
    const cell = (column: Column, row: number): string => at(row, COLUMNS.indexOf(column));
    const whole = (column: Column): string => `${cell(column, 0)}:${cell(column, n - 1)}`;
    const rules = { rule: calibrated, isZeroBlank: () => false };
    const left = columnInCells(readings, n, (row) => cell("filledReadings", row), rules);
    const right = columnInCells(references, n, (row) => cell("filledReferences", row), rules);
    const [pairs, wrong, [x, y]] = [`SUM(${whole("isPair")})`, `SUM(${whole("wrong")})`, [whole("x"), whole("y")]];
    const below = `SUMPRODUCT((${whole("isPair")}=1)*(${x}<${asked}))`;
    const rank = `IF(${below}=0,1,${below})`;
    const [x1, x2, y1, y2] = [x, x, y, y].map((column, index) => `SMALL(${column},${rank}+${index % 2})`) as [string, string, string, string];
    const line = `${y1}+(${asked}-${x1})*(${y2}-${y1})/(${x2}-${x1})`;
    const inside = `IF((${asked}<MIN(${x}))+(${asked}>MAX(${x})),${refusal(outsideThePoints)},${line})`;
    const columns = `SUM(${whole("reading")})+SUM(${whole("reference")})`;
    const isShort = `(${cell("filledReadings", 0)}=0)+(${cell("filledReferences", 0)}=0)+(${pairs}<2)+(COUNT(${x})<>${pairs})+(COUNT(${y})<>${pairs})`;
    answer = `IF(ISERROR(${columns}),${columns},IF(${isShort},${refusal(calibrationIncomplete)},IF(${wrong}>0,${refusal(calibrationFarOff)},${inside})))`;
    return Array.from({ length: n }, (_, row) => {
      const [reading, reference, isPair] = [cell("reading", row), cell("reference", row), cell("isPair", row)];
      const isThere = (text: string): string => `IF(ISNUMBER(${text}),IF(${text}=0,0,1),IF(${text}="",0,1))`;
      const later = row + 1 < n ? cell("isPair", row + 1) : "0";
      const [mine, other] = [cell("x", row), cell("y", row)];
      const others = `SUMPRODUCT((${whole("isPair")}=1)*((${x}=${mine})+(${x}<${mine})*(${y}>=${other})))`;
      return [
        ...[left.filled[row] ?? "", left.values[row] ?? "", right.filled[row] ?? "", right.values[row] ?? ""],
        // Rows of 0 and 0 at the end are what blank rows look like; one row there is always.
        row === 0 ? "1" : `IF(${isThere(reading)}+${isThere(reference)}+${later}>0,1,0)`,
        `IF(${isPair}=0,0,IF(ABS(${mine}-${other})>${MOST_OFF},1,IF(${others}>1,1,0)))`,
        `IF(${isPair}=0,"",${reading})`,
        `IF(${isPair}=0,"",${reference})`,
      ];
    });
  });
  return answer;
}
