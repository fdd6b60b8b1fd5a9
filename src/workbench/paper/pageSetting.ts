import type { IWorksheetData } from "@univerjs/core";
import { readRunSheet } from "../../runsheet/reading/readRunSheet";
import { buildRunSheet } from "../../runsheet/buildRunSheet";
import { cellArea, type CellArea } from "../../workbook/cellArea";
import type { PlannedChart, PrintPlan } from "../../workbook/SheetPlan";
import type { RangeReading } from "../../workbook/Workbook";
import { plansOf } from "../xlsx/plansOf";

/** What a sheet prints, and how. */
export interface PageSetting extends Omit<PrintPlan, "area" | "scale"> {
  readonly area: CellArea;
  /** Of the sheet's lengths to those of the paper. */
  readonly scale: number;
  readonly charts: readonly PlannedChart[];
}

// Points: the shorter of A4 and Letter either way, less the margins.
const MARGINS = { left: 36, right: 36, top: 36, bottom: 43.2, header: 18, footer: 21.6 } as const;
const UPRIGHT = 595;
const ACROSS = 792;
// Text of the usual 11 points prints at 8 at the least, so that a wider sheet goes on beside its page.
const LEAST_SCALE = 8 / 11;

/** How wide a page is between its margins, points. */
export const pageWidth = ({ landscape, margins: { left, right } }: Pick<PageSetting, "landscape" | "margins">): number =>
  (landscape ? ACROSS : UPRIGHT) - left - right;

/**
 * As planned, where the sheet was: a run sheet that came from a file is planned anew. Any other sheet prints what it holds, upright or across as
 * its width asks, with the rows that stay in view on every page.
 * @param width points of the columns up to the last one used
 */
export function pageSetting(data: Partial<IWorksheetData>, reading: RangeReading, width: (area: CellArea) => number): PageSetting | undefined {
  const { print, charts = [] } = plansOf(data).print === undefined ? planOf(reading) : plansOf(data);
  const planned = print && cellArea(print.area);
  if (planned) return { ...print, area: planned, scale: print.scale / 100, charts };
  const used = cellArea(reading.range);
  if (used === undefined) return undefined;
  const area = { row: 0, column: 0, rows: used.row + used.rows, columns: used.column + used.columns };
  const wide = width(area);
  const isAcross = wide * LEAST_SCALE > pageWidth({ margins: MARGINS });
  const page = { margins: MARGINS, ...(isAcross ? { landscape: true as const } : {}) };
  return {
    ...page,
    area,
    scale: Math.max(LEAST_SCALE, Math.min(1, pageWidth(page) / wide)),
    titleRows: data.freeze?.ySplit ?? 0,
    footer: { left: "&A", centre: "Page &P of &N", right: "&D" },
    breaksBefore: [],
    charts,
  };
}

function planOf(reading: RangeReading): { readonly print?: PrintPlan; readonly charts?: readonly PlannedChart[] } {
  const read = readRunSheet(reading);
  return read.is === "whole" || read.is === "balance" ? buildRunSheet(read.sheet.options) : {};
}
