import type { TableInCells } from "../../../functions/inCells/Workings";
import { areaNamed } from "../../../workbook/areaNamed";
import { rangeOf, type CellArea } from "../../../workbook/cellArea";
import type { WritingTo } from "../call/WritingTo";
import { lastingRows, writtenInside } from "../call/writtenCall";
import { cellsReferred, referenceText } from "../formula/reference";
import { CannotWrite } from "../writing/CannotWrite";
import { within, type Scope } from "../writing/Scope";
import { refersToItsOwnSheet } from "../WorkingsSheet";
import { extentOf, type Asking } from "./extentOf";
import { always, extentOfSize, isAlways, isFixedExtent, type Extent, type Measure } from "./Measure";

/** A table of ours, and what stands before its first cell. */
export interface TableWritten {
  readonly table: TableInCells;
  readonly guard: (first: string) => string;
}

/** What becomes of a formula whose answer may take more or fewer cells than it filled when the workbook was read. */
export interface Grown {
  /** The formula with blanks beyond its answer; left out where it stays. */
  readonly text?: string;
  readonly area?: string;
  readonly resized?: string;
  readonly reach?: CellArea;
}

// As many places as a list in braces tells one by one.
const MOST_PLACES = 500;

/**
 * A formula that takes as many cells as its answer needs goes into all that it may ever need, blank beyond the answer, where those are known and free
 * and nothing that asks them tells an empty text from a blank cell. It else stays as large as it was, and a cell tells when that is not its size any more.
 * @returns undefined where its size cannot change @throws CannotWrite where it would need cells that are not free
 */
export function grownFormula(text: string, scope: Scope, to: WritingTo): Grown | undefined {
  const { place } = scope;
  const { growth } = place;
  if (growth === undefined) return undefined;
  const area = areaNamed(place.area);
  const extent = extentOf(scope.tree.root, scope, asking(to));
  const [rows, columns] = [Math.max(area.rows, extent.rows.most), Math.max(area.columns, extent.columns.most)];
  const isKnown = Number.isFinite(rows) && Number.isFinite(columns);
  const isRoom = isKnown && growth.isFree(rows, columns);
  const whole = { ...area, rows, columns };
  if (isFixedExtent(extent)) {
    if (rows === area.rows && columns === area.columns) return undefined;
    if (!isRoom) throw new CannotWrite("noRoom");
    return { area: rangeOf(whole) };
  }
  const isSeldom = [extent.rows, extent.columns].every((one) => isAlways(one) || one.isSeldom === true);
  const isKept = isSeldom && area.rows * area.columns === 1;
  if (isRoom && !isKept && rows <= MOST_PLACES && columns <= MOST_PLACES && !growth.isAsked(rows, columns))
    return { text: paddedText(text, extent, whole, scope, to), area: rangeOf(whole) };
  return { resized: resizedCell(extent, area, scope, to), ...(isRoom && { reach: whole }) };
}

function asking(to: WritingTo): Asking {
  const write: Asking["write"] = (part, scope) => to.write(part, within(scope, { isQualified: true, isOnEach: false }));
  return {
    write,
    table: (call, name, scope) => {
      const reference = writtenInside(call, name, scope, to);
      const found = cellsReferred(reference, "");
      if (found === undefined) return extentOfSize({ rows: 1, columns: 1 });
      const { rows, columns } = found.area;
      const lasting = to.lasting.get(reference) ?? rows;
      const first = referenceText({ ...found.area, columns: 1 }, found.sheet, undefined).replace(/([A-Z]{1,3})(\d+)/g, "$$$1$$$2");
      // In error each cell of it is.
      const now = `IFERROR(SUMPRODUCT(--(${first}<>"")),${rows})`;
      return { rows: lasting === rows ? always(rows) : { least: lasting, most: rows, now }, columns: always(columns) };
    },
  };
}

/** An array of the largest size, of which what lies beyond the answer is empty. */
function paddedText(text: string, { rows, columns }: Extent, area: CellArea, scope: Scope, to: WritingTo): string {
  const beyond = [
    ...(isAlways(rows) ? [] : [`({${places(area.rows, ";")}}>${step("How many rows it fills", rows, scope, to)})`]),
    ...(isAlways(columns) ? [] : [`({${places(area.columns, ",")}}>${step("How many columns it fills", columns, scope, to)})`]),
  ];
  return `IF(${beyond.join("+")},"",${text})`;
}

const places = (count: number, between: string): string => Array.from({ length: count }, (_, index) => index + 1).join(between);

/** In error the answer is one error. */
const step = (about: string, { now }: Measure, scope: Scope, to: WritingTo): string => onWorkings(about, `IFERROR(${now},1)`, scope, to);

function resizedCell({ rows, columns }: Extent, area: CellArea, scope: Scope, to: WritingTo): string {
  const differs = [
    ...(isAlways(rows) ? [] : [`IF(IFERROR(${rows.now},1)<>${area.rows},1,0)`]),
    ...(isAlways(columns) ? [] : [`IF(IFERROR(${columns.now},1)<>${area.columns},1,0)`]),
  ];
  return onWorkings("Whether it fills other cells", differs.join("+"), scope, to);
}

function onWorkings(about: string, text: string, scope: Scope, to: WritingTo): string {
  if (to.workings === undefined) throw new CannotWrite("unknownSize");
  return to.workings(scope).block(about, 1, 1, () => [[text]]);
}

/**
 * The cells for a table: all of its form where they are free. Where its last rows are filled only now and then, and something asks those cells, it keeps
 * the rows that it had. @throws CannotWrite where it would need cells that are not free
 */
export function tableSize(
  table: TableInCells,
  scope: Scope,
  to: WritingTo,
): { readonly area?: string; readonly resized?: Omit<Grown, "text" | "area"> } {
  const { growth, area: filled } = scope.place;
  const area = areaNamed(filled);
  const [rows, columns] = [Math.max(area.rows, table.length), Math.max(area.columns, table[0]?.length ?? 1)];
  if (growth === undefined) return {};
  const isRoom = growth.isFree(rows, columns);
  const lasting = lastingRows(table);
  const isSteady = lasting === table.length;
  const whole = { ...area, rows, columns };
  if (isSteady || !growth.isAsked(rows, columns)) {
    if (isRoom) return rangeOf(whole) === rangeOf(area) ? {} : { area: rangeOf(whole) };
    if (isSteady) throw new CannotWrite("noRoom");
  }
  if (area.rows < lasting || area.columns < columns) throw new CannotWrite("noRoom");
  const [last = '""', further = '""'] = [table[area.rows - 1]?.[0], table[area.rows]?.[0]];
  if ([last, further].some(refersToItsOwnSheet)) return {};
  const isThere = (text: string): string => `IFERROR(${text},"")<>""`;
  const now = `IF(${isThere(last)},IF(${isThere(further)},1,0),1)`;
  return { resized: { resized: onWorkings("Whether it fills other cells", now, scope, to), ...(isRoom && { reach: whole }) } };
}
