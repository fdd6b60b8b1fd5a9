import { areaOfRange } from "../../../workbook/grid/areaOfRange";
import type { IRange } from "@univerjs/core";
import type { Worksheet as FileSheet } from "exceljs";
import { rangeOf } from "../../../workbook/cellArea";

/**
 * Merges the cells, each of which keeps what it holds. The library loses what stands in any but the first of merged cells, and it lists the
 * areas from the cells that it has emptied; so it is given the list instead, when everything else of the sheet has been written.
 */
export function writeMerged(areas: readonly IRange[], written: FileSheet): void {
  const mergeCells = areas.map((area) => rangeOf(areaOfRange(area)));
  const model = Object.defineProperty(written.model, "mergeCells", { get: () => mergeCells, set: () => undefined });
  Object.defineProperty(written, "model", { value: model });
}
