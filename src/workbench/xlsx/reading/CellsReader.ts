import type { ICellData } from "@univerjs/core";
import { tooManyCells } from "../../../problems/files/fileProblems";
import { covers, rangeOf, type CellArea } from "../../../workbook/cellArea";
import { WorkbookProblem } from "../../../workbook/Workbook";
import { CellPlaces } from "../../../xlsx/parts/CellPlaces";
import type { Attributes } from "../../../xlsx/parts/readXml";
import { movedTo1900, valueInFile, type ValueInFile } from "../../../xlsx/parts/cellValue";
import { arrayArea, FormulaReader, type FormulaSurroundings } from "./FormulaReader";
import { showsDate } from "./numberFormats";
import { longer, TextGatherer, type SharedText } from "../../../xlsx/parts/sharedTexts";
import { PLAIN } from "../../../workbook/grid/reading/lineLook";
import { heldAs } from "./heldAs";
import type { CellLookInFile } from "./stylesPart";

/** What was calculated by the program that saved the file. */
export interface AnswerInFile extends ValueInFile {
  readonly row: number;
  readonly column: number;
}

/** A cell formula of the file that is not calculated here, so that the cell keeps the value beside it. */
export interface KeptFormula {
  readonly row: number;
  readonly column: number;
  /** As typed, with "="; "" where its text does not say what it is calculated from. */
  readonly formula: string;
  /** The cells that it fills, "B2:B9"; "" for one alone. */
  readonly spill: string;
}

/** What all sheets of a file share, and how many cells they may still have. */
export interface SheetSurroundings extends FormulaSurroundings {
  readonly texts: readonly SharedText[];
  readonly looks: readonly CellLookInFile[];
  readonly from1904: boolean;
  readonly cells: { left: number; readonly most: number };
}

/** So many blank cells with a look are kept; the looks of further ones are lost, and nothing else. */
const MOST_BLANK_CELLS = 100_000;

interface OpenCell {
  readonly row: number;
  readonly column: number;
  readonly attributes: Attributes;
  formula: { attributes: Attributes; text: string } | undefined;
  value: string;
}

/** Takes the cells of one sheet, row by row (ECMA-376 Part 1, 18.3.1.4). */
export class CellsReader {
  readonly answers: AnswerInFile[] = [];
  readonly kept: KeptFormula[] = [];
  readonly held: Record<number, Record<number, ICellData>> = {};
  /** The last row and column that hold anything, from 0. */
  end = { row: -1, column: -1 };
  private readonly inline = new TextGatherer();
  private readonly formulas: FormulaReader;
  private arrays: CellArea[] = [];
  private blankCells = 0;
  private readonly places = new CellPlaces();
  private cell: OpenCell | undefined;

  constructor(
    private readonly sheet: string,
    private readonly around: SheetSurroundings,
    /** True where the row or column of a cell has a look, which the engine would give to the cell, too. */
    private readonly isInLine: (row: number, column: number) => boolean,
  ) {
    this.formulas = new FormulaReader(around);
  }

  get isInCell(): boolean {
    return this.cell !== undefined;
  }

  /** The row's place, from 0. */
  rowBegins({ r }: Attributes): number {
    const begun = this.places.rowBegins(r);
    this.arrays = this.arrays.filter(({ row, rows }) => row + rows > begun);
    return begun;
  }

  cellBegins(attributes: Attributes): void {
    this.places.cellBegins(attributes.r);
    const { row, column } = this.places;
    this.cell = { row, column, attributes, formula: undefined, value: "" };
  }

  open(element: string, attributes: Attributes): void {
    if (element === "f" && this.cell !== undefined) this.cell.formula = { attributes, text: "" };
    else this.inline.open(element);
  }

  text(within: string, text: string): void {
    if (this.cell === undefined) return;
    if (within === "v") this.cell.value = longer(this.cell.value, text);
    else if (within === "f" && this.cell.formula !== undefined) this.cell.formula.text = longer(this.cell.formula.text, text);
    else this.inline.add(text);
  }

  close(element: string): void {
    this.inline.close(element);
    if (element !== "c" || this.cell === undefined) return;
    this.cellEnds(this.cell);
    this.cell = undefined;
  }

  private cellEnds({ row, column, attributes, formula, value }: OpenCell): void {
    const inFile = this.around.looks[Number(attributes.s ?? 0)];
    const here = this.valueOf(attributes, value, inFile?.format ?? "");
    const typed = formula && this.formulas.formula(formula.text, formula.attributes, { sheet: this.sheet, row, column });
    if (formula !== undefined && this.formulas.kept !== undefined) {
      const filled = arrayArea(formula.attributes);
      this.kept.push({ row, column, formula: this.formulas.kept, spill: filled === undefined ? "" : rangeOf(filled) });
    }
    const isSpilled = typed === undefined && this.arrays.some((area) => covers(area, row, column));
    if (isSpilled || (typed !== undefined && here.content !== null)) this.answers.push({ row, column, ...here });
    const area = typed === undefined || formula === undefined ? undefined : arrayArea(formula.attributes);
    if (area !== undefined) this.arrays.push(area);
    const content = typed === undefined ? (isSpilled ? {} : heldAs(here)) : { f: typed };
    const isBlank = typed === undefined && (isSpilled || here.content === null);
    const isInLine = this.isInLine(row, column);
    if (isBlank && (inFile === undefined || (inFile.isPlain && !isInLine) || ++this.blankCells > MOST_BLANK_CELLS)) return;
    if (!isBlank && --this.around.cells.left < 0) throw new WorkbookProblem(tooManyCells(this.around.cells.most));
    this.end = { row: Math.max(this.end.row, row), column: Math.max(this.end.column, column) };
    (this.held[row] ??= {})[column] = { ...content, ...(inFile && { s: isInLine ? { ...PLAIN, ...inFile.look } : inFile.look }) };
  }

  private valueOf({ t = "n" }: Attributes, value: string, format: string): ValueInFile {
    const { texts, from1904, findings } = this.around;
    const inline = this.inline.taken();
    if (inline.isRich || (t === "s" && texts[Number(value)]?.isRich === true)) findings.add("rich", this.sheet);
    const found = valueInFile(t, value, inline.text, texts);
    return from1904 && showsDate(format) ? movedTo1900(found) : found;
  }
}
