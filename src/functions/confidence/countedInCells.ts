import { result } from "../../inputs/kinds/statistics";
import { rowRefused } from "../../problems/sharing/plainCellProblems";
import { refusal } from "../inCells/problemInCells";
import { isFilledInCells, seriesCell } from "../inCells/seriesInCells";
import type { Workings } from "../inCells/Workings";
import { wordInCells } from "../wordInCells";

/** Each result that counts in a cell of its own, "" for none, an error where one is refused; the reference of them all. */
export function countedInCells(cells: readonly string[], zeros: string, workings: Workings): string {
  const n = cells.length;
  let counted = "";
  workings.block("Replicates: filled from here on, the result that counts", n, 2, (at) => {
    counted = `${at(0, 1)}:${at(n - 1, 1)}`;
    return cells.map((cell, row) => {
      const filled = `${isFilledInCells(cell, false)}+${row + 1 < n ? at(row + 1, 0) : "0"}`;
      const refused = refusal(rowRefused(row + 1));
      const zero = wordInCells(
        zeros,
        [
          ["count", cell],
          ["skip", '""'],
        ],
        refused,
      );
      const read = seriesCell(cell, at(row, 0), result, false, row + 1, `IF(${cell}=0,${zero},${cell})`);
      const isSkipped = wordInCells(zeros, [["skip", `${isFilledInCells(cell, false)}=0`]], "FALSE");
      return [
        `IF(${isFilledInCells(cell, false)}+${row + 1 < n ? at(row + 1, 0) : "0"}>0,${filled},0)`,
        isSkipped === "FALSE" ? read : `IF(${isSkipped},"",${read})`,
      ];
    });
  });
  return counted;
}
