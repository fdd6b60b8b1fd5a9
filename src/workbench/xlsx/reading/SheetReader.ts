import { BooleanNumber, generateRandomId, type ICellData, type IDataValidationRule, type IRange, type IWorksheetData } from "@univerjs/core";
import { tooManyCells } from "../../../problems/fileProblems";
import { cellArea, columnOf, COLUMNS_OF_A_SHEET, covers, ROWS_OF_A_SHEET, type CellArea } from "../../../workbook/cellArea";
import { pixelsOf } from "../../../workbook/columnPixels";
import type { GridSheet } from "../../../workbook/grid/GridSheet";
import { ROW_HEIGHT, rowPixelsOf } from "../../../workbook/grid/worksheetData";
import { WorkbookProblem } from "../../../workbook/Workbook";
import type { Attributes, XmlReader } from "../parts/readXml";
import { heldAs, movedTo1900, valueInFile, type ValueInFile } from "./cellValue";
import { RuleInFile } from "./entryRules";
import { arrayArea, FormulaReader, type FormulaSurroundings } from "./FormulaReader";
import { showsDate } from "./numberFormats";
import { longer, TextGatherer, type SharedText } from "./sharedTexts";
import type { CellLookInFile } from "./stylesPart";

/** What was calculated by the program that saved the file. */
export interface AnswerInFile extends ValueInFile {
  readonly row: number;
  readonly column: number;
}

/** What all sheets of a file share, and how many cells they may still have. */
export interface SheetSurroundings extends FormulaSurroundings {
  readonly texts: readonly SharedText[];
  readonly looks: readonly CellLookInFile[];
  readonly from1904: boolean;
  readonly cells: { left: number; readonly most: number };
}

/** Room to go on working below and beside what the file holds. */
const SPARE_ROWS = 100;
const COLUMNS = 26;
/** So many blank cells with a look are kept; the looks of further ones are lost, and nothing else. */
const MOST_BLANK_CELLS = 100_000;

/** The engine remembers every merged cell one by one, and runs out of memory over a merged area as large as a sheet. */
const MOST_MERGED_CELLS = 100_000;

interface OpenCell {
  readonly row: number;
  readonly column: number;
  readonly attributes: Attributes;
  formula: { attributes: Attributes; text: string } | undefined;
  value: string;
}

/** Takes one sheet's part from its start to its end. */
export class SheetReader implements XmlReader {
  readonly answers: AnswerInFile[] = [];
  private readonly cells: Record<number, Record<number, ICellData>> = {};
  private readonly rowData: Record<number, { h: number; ia: BooleanNumber }> = {};
  private readonly widths: { from: number; to: number; pixels: number }[] = [];
  private readonly merged: IRange[] = [];
  private readonly rules: RuleInFile[] = [];
  private readonly inline = new TextGatherer();
  private readonly formulas: FormulaReader;
  private frozen = { rows: 0, columns: 0 };
  private gridlines = true;
  private arrays: CellArea[] = [];
  private blankCells = 0;
  private mergedCells = 0;
  private hasHidden = false;
  private end = { row: -1, column: -1 };
  private row = -1;
  private column = -1;
  private cell: OpenCell | undefined;
  private within = "";

  constructor(
    private readonly name: string,
    private readonly around: SheetSurroundings,
  ) {
    this.formulas = new FormulaReader(around);
  }

  readonly open = (element: string, attributes: Attributes): void => {
    this.within = element;
    if (this.cell !== undefined) this.inCell(element, attributes);
    else if (element === "c") this.cell = this.cellAt(attributes);
    else if (element === "row") this.rowBegins(attributes);
    else if (element === "col") this.columnsBegin(attributes);
    else if (element === "mergeCell") this.merge(attributes.ref ?? "");
    else if (element === "sheetView") this.gridlines = attributes.showGridLines !== "0" && attributes.showGridLines !== "false";
    else if (element === "pane" && /^frozen/.test(attributes.state ?? ""))
      this.frozen = { rows: Number(attributes.ySplit ?? 0), columns: Number(attributes.xSplit ?? 0) };
    else if (element === "dataValidation") this.rules.push(new RuleInFile(attributes));
    else if (/^formula[12]$/.test(element)) this.rules.at(-1)?.formulae.push("");
    else this.notShown(element, attributes);
  };

  readonly text = (text: string): void => {
    if (this.cell === undefined) {
      const formulae = /^formula[12]$/.test(this.within) ? this.rules.at(-1)?.formulae : undefined;
      if (formulae !== undefined) formulae[formulae.length - 1] = longer(formulae.at(-1) ?? "", text);
    } else if (this.within === "v") this.cell.value = longer(this.cell.value, text);
    else if (this.within === "f" && this.cell.formula !== undefined) this.cell.formula.text = longer(this.cell.formula.text, text);
    else this.inline.add(text);
  };

  readonly close = (element: string): void => {
    this.within = "";
    this.inline.close(element);
    if (element !== "c" || this.cell === undefined) return;
    this.cellEnds(this.cell);
    this.cell = undefined;
  };

  /** The sheet, when all of it has been read. */
  sheet(): GridSheet {
    const { findings } = this.around;
    if (this.hasHidden) findings.add("hiddenLine", this.name);
    const size = {
      rows: Math.min(ROWS_OF_A_SHEET, this.end.row + 1 + SPARE_ROWS),
      columns: Math.min(COLUMNS_OF_A_SHEET, Math.max(COLUMNS, this.end.column + 1)),
    };
    const { rows, columns } = this.frozen;
    const data: Partial<IWorksheetData> = {
      id: generateRandomId(),
      name: this.name,
      rowCount: size.rows,
      columnCount: size.columns,
      defaultRowHeight: ROW_HEIGHT,
      cellData: this.cells,
      rowData: this.rowData,
      ...(this.gridlines ? {} : { showGridlines: BooleanNumber.FALSE }),
      columnData: Object.fromEntries(
        this.widths.flatMap(({ from, to, pixels }) =>
          Array.from({ length: Math.max(0, Math.min(to, size.columns) - from + 1) }, (_, index) => [from - 1 + index, { w: pixels }]),
        ),
      ),
      mergeData: this.merged,
      ...(rows + columns > 0 && {
        freeze: { xSplit: columns, ySplit: rows, startRow: rows > 0 ? rows : -1, startColumn: columns > 0 ? columns : -1 },
      }),
    };
    for (const rule of this.rules) if (rule.isPromptAlone()) findings.add("entryRule", this.name);
    const rules = this.rules.map((rule) => rule.forGrid(size)).filter((rule): rule is IDataValidationRule => rule !== undefined);
    rules.sort((one, other) => placeOf(one) - placeOf(other));
    return { name: this.name, data, rules };
  }

  private rowBegins({ r, ht, hidden }: Attributes): void {
    this.row = r === undefined ? this.row + 1 : Number(r) - 1;
    this.column = -1;
    this.arrays = this.arrays.filter(({ row, rows }) => row + rows > this.row);
    // A height that the file says is kept, whatever the text would take.
    if (ht !== undefined) this.rowData[this.row] = { h: rowPixelsOf(Number(ht)), ia: BooleanNumber.FALSE };
    this.hasHidden ||= isOn(hidden);
  }

  private columnsBegin({ min, max, width, hidden }: Attributes): void {
    if (width !== undefined) this.widths.push({ from: Number(min), to: Number(max), pixels: pixelsOf(Number(width)) });
    this.hasHidden ||= isOn(hidden);
  }

  private cellAt(attributes: Attributes): OpenCell {
    const named = /^([A-Z]{1,3})(\d+)$/i.exec(attributes.r ?? "");
    this.column = named?.[1] === undefined ? this.column + 1 : columnOf(named[1]);
    return { row: named === null ? this.row : Number(named[2]) - 1, column: this.column, attributes, formula: undefined, value: "" };
  }

  private inCell(element: string, attributes: Attributes): void {
    if (element === "f" && this.cell !== undefined) this.cell.formula = { attributes, text: "" };
    else this.inline.open(element);
  }

  private cellEnds({ row, column, attributes, formula, value }: OpenCell): void {
    const inFile = this.around.looks[Number(attributes.s ?? 0)];
    const inline = this.inline.taken();
    const found = valueInFile(attributes.t ?? "n", value, inline.text, this.around.texts);
    const isDay = this.around.from1904 && showsDate(inFile?.format ?? "");
    const here = isDay ? movedTo1900(found) : found;
    if (inline.isRich || (attributes.t === "s" && this.around.texts[Number(value)]?.isRich === true)) this.around.findings.add("rich", this.name);
    const typed = formula && this.formulas.formula(formula.text, formula.attributes, { sheet: this.name, row, column });
    if (typed !== undefined && here.content !== null) this.answers.push({ row, column, ...here });
    const isSpilled = typed === undefined && this.arrays.some((area) => covers(area, row, column));
    if (isSpilled) this.answers.push({ row, column, ...here });
    const area = typed === undefined || formula === undefined ? undefined : arrayArea(formula.attributes);
    if (area !== undefined) this.arrays.push(area);
    const content = typed === undefined ? (isSpilled ? {} : heldAs(here)) : { f: typed };
    const isBlank = typed === undefined && (isSpilled || here.content === null);
    if (isBlank && (inFile === undefined || inFile.isPlain || ++this.blankCells > MOST_BLANK_CELLS)) return;
    if (!isBlank && --this.around.cells.left < 0) throw new WorkbookProblem(tooManyCells(this.around.cells.most));
    this.end = { row: Math.max(this.end.row, row), column: Math.max(this.end.column, column) };
    (this.cells[row] ??= {})[column] = { ...content, ...(inFile && { s: inFile.look }) };
  }

  private merge(ref: string): void {
    const area = cellArea(ref);
    if (area === undefined || area.rows * area.columns === 1) return;
    this.mergedCells += area.rows * area.columns;
    if (this.mergedCells > MOST_MERGED_CELLS) {
      this.mergedCells -= area.rows * area.columns;
      return this.around.findings.add("merged", this.name);
    }
    const [endRow, endColumn] = [area.row + area.rows - 1, area.column + area.columns - 1];
    this.merged.push({ startRow: area.row, startColumn: area.column, endRow, endColumn });
    this.end = { row: Math.max(this.end.row, endRow), column: Math.max(this.end.column, endColumn) };
  }

  private notShown(element: string, { sheet }: Attributes): void {
    const thing = NOT_SHOWN[element];
    const isInForce = thing !== "protection" || isOn(sheet);
    if (thing !== undefined && isInForce) this.around.findings.add(thing, this.name);
  }
}

/** Programs write rules in any order; from the first column down is one that every program's files can be brought into. */
const placeOf = ({ ranges: [first] }: IDataValidationRule): number =>
  first === undefined ? 0 : first.startColumn * ROWS_OF_A_SHEET + first.startRow;

const NOT_SHOWN: Readonly<Record<string, string>> = {
  conditionalFormatting: "conditional",
  hyperlink: "link",
  sheetProtection: "protection",
  autoFilter: "filter",
  control: "control",
};

const isOn = (value: string | undefined): boolean => value === "1" || value === "true";
