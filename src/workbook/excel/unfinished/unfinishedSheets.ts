import type { CellArea } from "../../cellArea";
import type { Removal, UnfinishedSheet } from "../../Workbook";
import { begunHere, idOf, isUnderWayHere, type SheetUnderWay } from "./Attempt";
import { excelCode, excelProblem } from "../excelProblem";
import { askForExtent, readHeld } from "../reading/heldCells";
import { inExcel } from "../inExcel";
import { askForMarks, begunAt, holdToMark, sheetsThere } from "./sheetMark";

// Making a sheet takes seconds, but waits for as long as a cell is being edited. Common practice, no source.
const MAY_TAKE_MINUTES = 10;
const MILLISECONDS_A_MINUTE = 60_000;

/** Sheets that carry a mark, but for those that this pane is making now and for duplicates of what it has begun. */
export async function unfinishedSheets(context: Excel.RequestContext): Promise<readonly UnfinishedSheet[]> {
  const sheets = await sheetsThere(context);
  const marks = sheets.map(({ id }) => askForMarks(context.workbook.worksheets.getItem(id)));
  await context.sync();
  return sheets.flatMap(({ id, name }, index) => {
    const found = marks[index]?.() ?? [];
    const mark = found.find(begunHere) ?? found[0];
    if (mark === undefined || found.some(isUnderWayHere)) return [];
    const begun = begunHere(mark);
    if (begun !== undefined && (idOf(begun) ?? id) !== id) return [];
    return [{ id, name, mark, mayBeUnderWay: begun === undefined && isYoung(mark) }];
  });
}

/** Clocks differ, so a little in the future is as good as now. */
function isYoung(mark: string): boolean {
  const began = begunAt(mark);
  return began !== undefined && Math.abs(Date.now() - began) < MAY_TAKE_MINUTES * MILLISECONDS_A_MINUTE;
}

/** Looks at the sheet, and then removes it in a request that Excel breaks off where the mark is gone by then. */
export async function removeUnfinished({ id, mark }: UnfinishedSheet, asked: boolean): Promise<Removal> {
  if (isUnderWayHere(mark)) return "gone";
  try {
    return await inExcel(async (context) => {
      const worksheet = context.workbook.worksheets.getItem(id);
      holdToMark(worksheet, mark);
      const extent = askForExtent(worksheet);
      await context.sync();
      if (!asked && !(await isUntouched(context, worksheet, extent(), begunHere(mark)))) return "ask first";
      holdToMark(worksheet, mark);
      worksheet.delete();
      await context.sync();
      return "removed";
    });
  } catch (thrown) {
    if (excelCode(excelProblem(thrown)) === "ItemNotFound") return "gone";
    throw thrown;
  }
}

/** Only of a sheet that this pane has begun is it known what was put there; what a spill fills is taken for somebody's. */
async function isUntouched(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  extent: CellArea | undefined,
  begun: SheetUnderWay | undefined,
): Promise<boolean> {
  if (begun === undefined) return false;
  worksheet.load("name");
  const held = await readHeld(context, worksheet, extent);
  return begun.names.includes(worksheet.name) && begun.isOurs(held, new Set(begun.anchors));
}
