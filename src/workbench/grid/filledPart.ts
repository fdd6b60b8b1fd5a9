import { areaOfRange } from "../../workbook/grid/areaOfRange";
import type { IRange } from "@univerjs/core";
import { filledNotChanged } from "../../problems/workbook/entryProblems";
import { cellAt, covers, overlap, rangeOf, type CellArea } from "../../workbook/cellArea";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { readValue, spillAreas } from "../../workbook/grid/reading/readCell";

/** What a change does to cells of one sheet. */
export interface CellsTouched {
  readonly sheetId: string;
  /** Cells that get another content. */
  readonly written?: readonly IRange[];
  /** Cells whose content goes elsewhere. */
  readonly moved?: readonly IRange[];
}

/**
 * Why a change must not be made: it would reach a part of what a formula fills, and leave the formula where it is. A formula that something stands in the
 * way of fills nothing, and one that goes along, or is written over itself, loses nothing.
 */
export function whyNotInPart(engine: GridEngine, touched: readonly CellsTouched[]): string | undefined {
  for (const { sheetId, written = [], moved = [] } of touched) {
    const sheet = engine.book.getSheetBySheetId(sheetId);
    const [to, from] = [written, moved].map((ranges) => ranges.map(areaOfRange)) as [CellArea[], CellArea[]];
    for (const filled of sheet ? spillAreas(engine, sheetId) : []) {
      if ([...to, ...from].some((area) => covers(area, filled.row, filled.column))) continue;
      const reached = [...to, ...from].find((area) => overlap(area, filled));
      if (!sheet || reached === undefined || readValue(engine, sheet, filled.row, filled.column).error === "#SPILL!") continue;
      const cell = cellAt(Math.max(reached.row, filled.row), Math.max(reached.column, filled.column));
      return filledNotChanged(cell, cellAt(filled.row, filled.column), rangeOf(filled));
    }
  }
  return undefined;
}
