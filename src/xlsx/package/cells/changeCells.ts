import { cellsOutOfOrder } from "../../../problems/files/packageProblems";
import { cellAt, columnOf } from "../../../workbook/cellArea";
import { WorkbookProblem } from "../../../workbook/Workbook";
import { append, attributeOf, readMarkup, withAttributes, withoutEnd, type Tag } from "../parts/markup";
import type { Edit } from "../parts/partText";
import type { CellChange } from "./CellChange";
import { changedCell, newCell } from "./cellMarkup";
import { FilledAreas } from "./FilledAreas";
import { LineLooks } from "./LineLooks";
import { areaFilled, SharedFormulas } from "./SharedFormulas";
import { grown, spanFor } from "./statedExtent";
import { inOrder, isBlank, keepsFormula, type WantedCell } from "./WantedCell";

export interface ChangedSheet {
  readonly edits: readonly Edit[];
  /** True where a cell gained or lost a formula, or has another one. */
  readonly hasOtherFormulas: boolean;
}

interface Around {
  readonly sheet: string;
  /** The workbook's defined names in capitals. */
  readonly names: ReadonlySet<string>;
  readonly spillMark: number | undefined;
  /** In points, by rows from 0 that do not stand in the part yet. */
  readonly heights: ReadonlyMap<number, number>;
}

const MOST_PIECES = 1000;

interface OpenRow {
  readonly tag: Tag;
  /** What is still to be put into it, by column. */
  readonly left: WantedCell[];
  /** How far it has to say that it reaches, where it says too little. */
  readonly span: string | undefined;
}

type Places = { readonly start: number; end: number }[];

interface OpenCell {
  readonly row: number;
  readonly column: number;
  readonly tag: Tag;
  readonly wanted: WantedCell | undefined;
  formula: { readonly tag: Tag; end: number; text: string } | undefined;
  value: { readonly start: number; end: number } | undefined;
  readonly further: Places;
  within: "f" | "value" | "further" | "";
}

/**
 * The changes of a sheet's part that change these cells and nothing else, in one pass over it. One other cell changes where it takes over a
 * formula that the changed one held for both; a row grows its span and the sheet its extent where they say too little.
 * @throws WorkbookProblem for a part of an array formula or of a what-if table
 */
export function changeCells(part: string, text: string, changes: readonly CellChange[], around: Around): ChangedSheet {
  const change = new SheetChange(text, inOrder(changes, around.sheet), around);
  readMarkup(part, text, change);
  return change.done();
}

class SheetChange {
  private readonly edits: Edit[] = [];
  private readonly shared: SharedFormulas;
  private readonly areas = new FilledAreas();
  private readonly path: string[] = [];
  private readonly lines = new LineLooks();
  private prefix = "";
  private sheetData: Tag | undefined;
  private dimension: Tag | undefined;
  private next = 0;
  private nextHeight = 0;
  private rowBefore = -1;
  private columnBefore = -1;
  private row: OpenRow | undefined;
  private cell: OpenCell | undefined;
  private hasOtherFormulas = false;
  private readonly heights: readonly (readonly [row: number, height: number])[];

  constructor(
    private readonly source: string,
    private readonly wanted: readonly WantedCell[],
    private readonly around: Around,
  ) {
    this.shared = new SharedFormulas(around.names);
    this.heights = [...around.heights].sort(([one], [other]) => one - other);
  }

  readonly open = (tag: Tag, depth: number): void => {
    this.path[depth] = tag.name;
    if (depth === 1 && tag.name === "dimension") this.dimension = tag;
    if (depth === 2 && tag.name === "col") this.lines.column(tag);
    if (this.path[1] !== "sheetData") return;
    if (depth === 1) {
      this.sheetData = tag;
      this.prefix = tag.prefix;
    } else if (depth === 2 && tag.name === "row") this.rowBegins(tag);
    else if (depth === 3 && tag.name === "c") this.cellBegins(tag);
    else if (depth === 4 && this.cell !== undefined) this.partOfCellBegins(this.cell, tag);
  };

  readonly text = (said: string): void => {
    if (this.cell?.within === "f" && this.cell.formula !== undefined) this.cell.formula.text += said;
  };

  readonly close = (name: string, { start, end }: { readonly start: number; readonly end: number }, depth: number): void => {
    if (this.path[1] !== "sheetData") return;
    if (depth === 4 && this.cell !== undefined) partOfCellEnds(this.cell, end);
    else if (depth === 3 && this.cell !== undefined) this.cellEnds(this.cell, end);
    else if (depth === 2 && this.row !== undefined) this.rowEnds(this.row, start);
    else if (depth === 1 && name === "sheetData" && this.sheetData !== undefined) {
      const rows = this.rowsBefore(Infinity);
      if (rows !== "") this.edits.push(append(this.source, this.sheetData, start, rows));
      this.path.length = 1;
    }
  };

  done(): ChangedSheet {
    this.areas.refuseParts(this.around.sheet, this.wanted);
    const dimension = this.dimension === undefined ? [] : grown(this.source, this.dimension, this.wanted);
    return { edits: [...this.edits, ...this.shared.edits(this.source), ...dimension], hasOtherFormulas: this.hasOtherFormulas };
  }

  private rowBegins(tag: Tag): void {
    const row = tag.attributes.r === undefined ? this.rowBefore + 1 : Number(tag.attributes.r) - 1;
    if (!(row > this.rowBefore)) throw new WorkbookProblem(cellsOutOfOrder(this.around.sheet, `row ${row + 1}`));
    this.rowBefore = row;
    this.columnBefore = -1;
    this.lines.row(row, tag);
    const rows = this.rowsBefore(row);
    if (rows !== "") this.edits.push({ from: tag.start, to: tag.start, text: rows });
    if (this.heights[this.nextHeight]?.[0] === row) this.nextHeight++;
    const from = this.next;
    while (this.wanted[this.next]?.row === row) this.next++;
    const left = this.wanted.slice(from, this.next);
    this.row = { tag, left: [...left].reverse(), span: spanFor(tag, left) };
  }

  /** Rows that do not stand in the part, of what is to be put before this one. */
  private rowsBefore(row: number): string {
    const [rows, whole]: [string[], string[]] = [[], []];
    for (let first = this.nextRow(); first < row; first = this.nextRow()) {
      let inside = "";
      for (let one = this.wanted[this.next]; one?.row === first; one = this.wanted[++this.next]) inside += this.put(one);
      const height = this.heights[this.nextHeight]?.[0] === first ? this.heights[this.nextHeight++]?.[1] : undefined;
      const said = height === undefined ? "" : ` ht="${height}" customHeight="1"`;
      if (inside !== "") rows.push(`<${this.prefix}row r="${first + 1}"${said}>${inside}</${this.prefix}row>`);
      else if (height !== undefined) rows.push(`<${this.prefix}row r="${first + 1}"${said}/>`);
      // Joined now and then, because pieces of a text take many times the room that the text does.
      if (rows.length > MOST_PIECES) whole.push(rows.splice(0).join(""));
    }
    return [...whole, ...rows].join("");
  }

  /** The next row with anything to be put into it or said of it. */
  private nextRow(): number {
    return Math.min(this.wanted[this.next]?.row ?? Infinity, this.heights[this.nextHeight]?.[0] ?? Infinity);
  }

  private cellBegins(tag: Tag): void {
    const letters = /^([A-Z]{1,3})\d+$/i.exec(tag.attributes.r ?? "")?.[1];
    const column = letters === undefined ? this.columnBefore + 1 : columnOf(letters);
    const row = this.rowBefore;
    if (column <= this.columnBefore) throw new WorkbookProblem(cellsOutOfOrder(this.around.sheet, cellAt(row, column)));
    this.columnBefore = column;
    const cells = this.cellsBefore(column);
    if (cells !== "") this.edits.push({ from: tag.start, to: tag.start, text: cells });
    const wanted = this.row?.left.at(-1)?.column === column ? this.row.left.pop() : undefined;
    this.cell = { row, column, tag, wanted, formula: undefined, value: undefined, further: [], within: "" };
  }

  private cellsBefore(column: number): string {
    const cells: string[] = [];
    const left = this.row?.left ?? [];
    for (let one = left.at(-1); one !== undefined && one.column < column; one = left.at(-1)) {
      cells.push(this.put(one));
      left.pop();
    }
    return cells.join("");
  }

  /** A cell that does not stand in the part, with the look of its row or column where it is given none; nothing for a blank one without a look. */
  private put({ cell, row, column, content, look }: WantedCell): string {
    this.hasOtherFormulas ||= content.kind === "formula";
    if (isBlank(content) && look === undefined) return "";
    return newCell({
      prefix: this.prefix,
      cell: cell.replaceAll("$", ""),
      content,
      look: look ?? this.lines.at(row, column),
      spillMark: this.around.spillMark,
    });
  }

  private partOfCellBegins(cell: OpenCell, tag: Tag): void {
    cell.within = tag.name === "f" ? "f" : tag.name === "v" || tag.name === "is" ? "value" : "further";
    if (cell.within === "f") cell.formula = { tag, end: tag.end, text: "" };
    // A value and a text in the cell stand one behind the other, if ever both do.
    else if (cell.within === "value") cell.value ??= { start: tag.start, end: tag.end };
    else cell.further.push({ start: tag.start, end: tag.end });
  }

  private cellEnds(cell: OpenCell, end: number): void {
    this.cell = undefined;
    const { row, column, tag, wanted, formula } = cell;
    const keeps = wanted === undefined || keepsFormula(wanted.content);
    if (formula !== undefined) {
      if (attributeOf(formula.tag, "t") === "shared") this.shared.add({ row, column, ...formula, isKept: keeps });
      const filled = areaFilled(formula.tag);
      const endsTable = wanted?.content.kind === "value" && wanted.content.endsTable === true;
      if (filled !== undefined && (filled.isTable ? !endsTable : keeps)) this.areas.add(filled);
    }
    if (wanted === undefined) return;
    this.hasOtherFormulas ||= wanted.content.kind === "formula" || (!keeps && formula !== undefined);
    const standing = { tag, end, formula: formula && { start: formula.tag.start, end: formula.end }, value: cell.value, further: cell.further };
    const { content, look } = wanted;
    this.edits.push(...changedCell(this.source, standing, { prefix: tag.prefix, content, look, spillMark: this.around.spillMark }));
  }

  private rowEnds({ tag, span }: OpenRow, closeStart: number): void {
    const cells = this.cellsBefore(Infinity);
    this.row = undefined;
    if (span === undefined) {
      if (cells !== "") this.edits.push(append(this.source, tag, closeStart, cells));
      return;
    }
    const open = withAttributes(this.source, tag, { spans: span });
    if (!tag.isEmpty) this.edits.push(open, { from: closeStart, to: closeStart, text: cells });
    else this.edits.push({ ...open, text: `${withoutEnd(open.text)}>${cells}</${tag.prefix}row>` });
  }
}

function partOfCellEnds(cell: OpenCell, end: number): void {
  if (cell.within === "f" && cell.formula !== undefined) cell.formula.end = end;
  else if (cell.within === "value" && cell.value !== undefined) cell.value.end = end;
  else if (cell.within === "further") (cell.further.at(-1) ?? { end }).end = end;
  cell.within = "";
}
