import { BooleanNumber, type IStyleData, type IWorksheetData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { chartOnPaper } from "../../report/chart/plannedChart";
import { notAllPrinted } from "../../problems/workbook/printWords";
import { cellArea, rangeOf, type CellArea } from "../../workbook/cellArea";
import { POINTS_PER_PIXEL } from "../../workbook/columnPixels";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { readCell, spillsOver } from "../../workbook/grid/reading/readCell";
import { usedArea, usedCells } from "../../workbook/grid/reading/usedArea";
import { pointsOf, ROW_HEIGHT } from "../../workbook/grid/writing/worksheetData";
import type { CellReading, RangeReading } from "../../workbook/Workbook";
import { cellCss, isSeen, wraps } from "./cellCss";
import { pageSetting, pageWidth, type PageSetting } from "./pageSetting";
import type { Paper, PaperCell, PaperRow, PaperTable } from "./Paper";

// More would keep the page busy for minutes; 200 pages and more are printed from a spreadsheet.
const MOST_CELLS = 60_000;
// Pixels, of a column that says nothing of its own.
const USUAL_COLUMN = 88;

/** What a sheet of the grid shows, as it goes on paper; undefined for a blank one. */
export function sheetPaper(engine: GridEngine, sheet: FWorksheet): Paper | undefined {
  const data = sheet.getSheet().getConfig();
  const held = new Held(engine, sheet);
  const width = (column: number): number => (isHidden(data.columnData?.[column]) ? 0 : (data.columnData?.[column]?.w ?? data.defaultColumnWidth ?? USUAL_COLUMN) * POINTS_PER_PIXEL); // prettier-ignore
  const widthOf = ({ column, columns }: CellArea): number => Array.from({ length: columns }, (_, index) => width(column + index)).reduce((sum, one) => sum + one, 0); // prettier-ignore
  const setting = pageSetting(data, held.reading(), widthOf);
  if (setting === undefined) return undefined;
  const { area } = setting;
  const rows = Math.min(area.rows, Math.floor(MOST_CELLS / area.columns));
  const printed = { ...setting, area: { ...area, rows } };
  const groups = columnGroups(area, width, pageWidth(setting) / setting.scale);
  return {
    sheet: sheet.getSheetName(),
    landscape: setting.landscape ?? false,
    margins: setting.margins,
    ...(setting.header === undefined ? {} : { header: setting.header }),
    footer: setting.footer,
    tables: groups.flatMap((columns) => tables(held, data, printed, columns, width)),
    remark: rows < area.rows ? notAllPrinted(rows, area.rows) : "",
  };
}

const isHidden = (line: { hd?: BooleanNumber } | undefined): boolean => line?.hd === BooleanNumber.TRUE;

/** What the cells of a sheet hold, read once. */
class Held {
  private readonly readings = new Map<string, CellReading>();
  private readonly spillAt: ReturnType<typeof spillsOver>;

  constructor(
    private readonly engine: GridEngine,
    private readonly sheet: FWorksheet,
  ) {
    this.spillAt = spillsOver(engine, sheet.getSheetId());
  }

  at(row: number, column: number): CellReading {
    const key = `${row},${column}`;
    const known = this.readings.get(key) ?? readCell(this.engine, this.sheet, row, column, this.spillAt);
    this.readings.set(key, known);
    return known;
  }

  text(row: number, column: number): string {
    const { error, shown } = this.at(row, column);
    return error === "" ? shown : error;
  }

  isNumber(row: number, column: number): boolean {
    return typeof this.at(row, column).value === "number";
  }

  number(row: number, column: number): number | undefined {
    const { error, value } = this.at(row, column);
    return error === "" && typeof value === "number" ? value : undefined;
  }

  look(row: number, column: number): IStyleData {
    const style = this.sheet.getSheet().getCellRaw(row, column)?.s;
    return (typeof style === "string" ? this.sheet.getWorkbook().getStyles().get(style) : style) ?? {};
  }

  /** All that is held, by rows. */
  reading(): RangeReading {
    const area = usedArea(this.engine, this.sheet);
    const rows = new Map<number, CellReading[]>();
    for (const { row, column } of usedCells(this.engine, this.sheet)) rows.set(row, [...(rows.get(row) ?? []), this.at(row, column)]);
    const inOrder = [...rows.entries()].sort(([one], [other]) => one - other).map(([, cells]) => cells);
    return { sheet: this.sheet.getSheetName(), range: area === undefined ? "" : rangeOf(area), rows: inOrder };
  }
}

/** Columns side by side as far as a page is wide, at least one. */
function columnGroups({ column, columns }: CellArea, width: (column: number) => number, most: number): readonly Columns[] {
  const groups: { from: number; to: number }[] = [];
  let used = 0;
  for (let at = column; at < column + columns; at++) {
    const last = groups.at(-1);
    if (last !== undefined && used + width(at) <= most) last.to = at;
    else {
      groups.push({ from: at, to: at });
      used = 0;
    }
    used += width(at);
  }
  return groups;
}

interface Columns {
  readonly from: number;
  readonly to: number;
}

/** What stands above the rows that every page repeats, and below it everything else under them. */
function tables(
  held: Held,
  data: Partial<IWorksheetData>,
  setting: PageSetting,
  columns: Columns,
  width: (column: number) => number,
): readonly PaperTable[] {
  const { area, titleRows, titleFrom = 1, scale, breaksBefore, charts } = setting;
  const overs = charts.flatMap((chart) => {
    const over = cellArea(chart.over);
    return over === undefined || over.row + over.rows > area.row + area.rows ? [] : [{ chart, over }];
  });
  const height = (row: number): number => (isHidden(data.rowData?.[row]) ? 0 : pointsOf(data.rowData?.[row]?.h ?? ROW_HEIGHT)) * scale;
  const rowsOf = (from: number, to: number): PaperRow[] => {
    const rows: PaperRow[] = [];
    for (let row = from; row < to; row++) {
      const standing = overs.filter(({ over }) => over.row === row);
      const beginsPage = breaksBefore.includes(row + 1);
      const [first] = standing;
      if (first !== undefined) {
        const high = Array.from({ length: first.over.rows }, (_, index) => height(row + index)).reduce((sum, one) => sum + one, 0);
        const drawn = standing.flatMap(({ chart }) => chartOnPaper(chart, (at) => held.number(at.row - 1, at.column)) ?? []);
        rows.push({ height: high, beginsPage, cells: [], charts: drawn });
        row += first.over.rows - 1;
      } else if (height(row) > 0) rows.push({ height: height(row), beginsPage, cells: cellsOf(held, data, row, columns, area, scale) });
    }
    return rows;
  };
  const headEnd = Math.max(area.row, Math.min(titleRows, area.row + area.rows));
  const headStart = Math.min(headEnd, Math.max(area.row, titleFrom - 1));
  const widths = Array.from({ length: columns.to - columns.from + 1 }, (_, index) => width(columns.from + index) * scale);
  const above = rowsOf(area.row, headStart);
  const under: PaperTable = {
    columns: widths,
    head: rowsOf(headStart, headEnd),
    rows: rowsOf(headEnd, area.row + area.rows),
    goesOn: above.length > 0,
  };
  return [...(above.length === 0 ? [] : [{ columns: widths, head: [], rows: above, goesOn: false }]), under];
}

/** Cells of one look but for their lines are one box or band. */
const groundOf = (look: IStyleData): string => JSON.stringify({ ...look, bd: undefined });

/** A text runs on over blank cells beside it, as in the grid. */
function cellsOf(held: Held, data: Partial<IWorksheetData>, row: number, { from, to }: Columns, area: CellArea, scale: number): PaperCell[] {
  const cells: PaperCell[] = [];
  for (let column = from; column <= to; column++) {
    const merged = (data.mergeData ?? []).find(
      ({ startRow, endRow, startColumn, endColumn }) => row >= startRow && row <= endRow && column >= startColumn && column <= endColumn,
    );
    if (merged !== undefined && (merged.startRow !== row || Math.max(merged.startColumn, from) !== column)) continue;
    const [look, text, isNumber] = [held.look(row, column), held.text(row, column), held.isNumber(row, column)];
    const css = cellCss(look, isNumber, scale);
    if (merged !== undefined) {
      const [across, down] = [Math.min(merged.endColumn, to) - column + 1, Math.min(merged.endRow, area.row + area.rows - 1) - row + 1];
      cells.push({ text, across, down, css });
      continue;
    }
    let across = 1;
    const runsOn = text !== "" && !isNumber && !wraps(look) && !css.includes("text-align");
    const ground = groundOf(look);
    while (runsOn && column + across <= to && held.text(row, column + across) === "") {
      const beside = held.look(row, column + across);
      if (beside.bd?.l || ((look.bg?.rgb || isSeen(beside)) && groundOf(beside) !== ground)) break;
      across++;
    }
    const right = held.look(row, column + across - 1).bd?.r ?? look.bd?.r ?? null;
    cells.push({ text, across, down: 1, css: across === 1 ? css : cellCss({ ...look, bd: { ...look.bd, r: right } }, isNumber, scale) });
    column += across - 1;
  }
  return cells;
}
