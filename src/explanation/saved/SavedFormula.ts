import type { AstExpression } from "@borgar/fx";
import type { namesOf, ReadFormula, ReadSheets } from "../../sharing/plain/reading/ReadSheets";
import { nameCalled, type Lambda } from "../../sharing/plain/formula/parts";
import { cellsReferred, tableCellsReferred, type Referred } from "../../sharing/plain/formula/reference";
import { formulaNamed } from "../../sharing/plain/writing/named";
import { areaInRow, relativeFormula } from "../../sharing/plain/formula/RelativeFormula";
import type { CellValue } from "../../inputs/CellValue";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, covers } from "../../workbook/cellArea";
import type { BlankForm, Cells } from "../formula/Cells";
import { everyPart } from "../formula/everyPart";
import { builtInHere } from "./builtInHere";
import { isFixedName } from "./isFixedName";
import { savedExpression } from "./savedExpression";
import type { SavedCells } from "./SavedCells";
import { isProven, type ProvenSurroundings } from "./proven/isProven";
import { sureValue } from "./sure/sureValue";
import { valuesItMayGive } from "./valuesItMayGive";

/** The workbook that formulas stand in. */
export interface SavedBook {
  readonly sheets: ReadSheets;
  readonly cells: SavedCells;
  readonly nameOf: ReturnType<typeof namesOf>;
  /** True for a row, from 0, that is not shown; left out where that is not known. */
  readonly isHidden?: ((sheet: string, row: number) => boolean) | undefined;
}

/** Rows that are not shown and that a filter may have hidden, or a person: SUBTOTAL counts the second. */
type HiddenRows = "counted" | "left out";

// Names that stand for names.
const MOST_NAMES = 8;

const IS_SUBTOTAL = /\b(?:SUBTOTAL|AGGREGATE)\(/i;

interface Asked {
  readonly blankAs: BlankForm;
  /** True where nothing counts but what is the same in every spreadsheet, conditions worked out. */
  readonly isCertain: boolean;
  /** True for a formula over arrays, as the file says. */
  readonly isOverArrays: boolean;
  readonly hiddenRows?: HiddenRows | undefined;
  /** Names that stand around this one. */
  readonly depth: number;
}

/** A cell formula taken apart once, for every cell of a column that it is filled down to: taking apart takes most of the time. */
export class SavedFormula {
  private readonly known = new Map<string, Referred | undefined>();
  /** What names gave: names of names would be asked again and again. */
  private readonly names = new Map<string, Cells | undefined>();
  /** How far whole columns reach that the formula refers to. */
  private longest: number | undefined;

  constructor(
    private readonly book: SavedBook,
    private readonly expression: AstExpression | undefined,
    private readonly isRelative: boolean,
  ) {}

  /** Formulas of a workbook, equal ones and filled-down ones once. */
  static in(book: SavedBook): (formula: ReadFormula) => SavedFormula {
    const known = new Map<string, SavedFormula>();
    return ({ sheet, reading, area }) => {
      const relative = area.rows * area.columns > 1 ? undefined : relativeFormula(reading.formula, area.row + 1);
      const text = relative?.formula ?? reading.formula;
      const key = `${sheet}!${text}`;
      const found = known.get(key) ?? new SavedFormula(book, savedExpression(text), relative !== undefined);
      known.set(key, found);
      return found;
    };
  }

  /** What it may give in a cell, whichever way conditions go that only the spreadsheet can work out; undefined where only that can tell. */
  valuesIn(formula: ReadFormula, blankAs: BlankForm, isOverArrays = false): readonly Cells[] | undefined {
    return this.expression && this.valuesOf(this.expression, formula, { blankAs, isCertain: false, isOverArrays, depth: 0 });
  }

  /** What it gives in a cell in every spreadsheet; undefined where that is not certain. */
  certainIn(formula: ReadFormula, isOverArrays = false, hiddenRows?: HiddenRows): Cells | undefined {
    return this.expression && this.valuesOf(this.expression, formula, { blankAs: 0, isCertain: true, isOverArrays, hiddenRows, depth: 0 })?.[0];
  }

  /**
   * True where what the grid's engine gives in a cell is what every spreadsheet gives, as far as that can be known from its functions, operators and
   * literals and from what its cells hold.
   * @param isOverArrays true for a formula over arrays, as the file says
   */
  isProvenIn(formula: ReadFormula, isOverArrays: boolean): boolean {
    if (this.expression === undefined) return false;
    const around = this.surroundings(this.expression, formula, { blankAs: 0, isCertain: true, isOverArrays, depth: 0 });
    return isProven(this.expression, around, isOverArrays);
  }

  private lambdaNamed(name: string, { sheet }: ReadFormula): Lambda | undefined {
    const named = this.book.nameOf(name, sheet);
    const meant = named === undefined || !isFixedName(named) ? undefined : savedExpression(named);
    return meant?.type === "LambdaExpression" ? meant : undefined;
  }

  private valuesOf(expression: AstExpression, formula: ReadFormula, asked: Asked): readonly Cells[] | undefined {
    const around = this.surroundings(expression, formula, asked);
    const certain = sureValue(expression, around);
    if (certain !== undefined || asked.isCertain) return certain && [certain];
    return valuesItMayGive(expression, { blankAs: asked.blankAs, builtIn: builtInHere, referred: around.referred });
  }

  private surroundings(expression: AstExpression, formula: ReadFormula, asked: Asked): ProvenSurroundings {
    const referred = (text: string, isSpill: boolean): Cells | undefined => {
      const meant = this.meantBy(text, isSpill, formula);
      if (meant === undefined) return isSpill ? undefined : this.named(text, formula, asked);
      return this.book.cells.in(meant, this.reach(expression, formula));
    };
    const intersected = (text: string, isSpill: boolean): CellValue | undefined => {
      const meant = this.meantBy(text, isSpill, formula) ?? (isSpill ? undefined : this.cellsNamed(text, formula));
      const one = meant && ownCell(meant, formula);
      return one && this.book.cells.in(one, 0)?.[0]?.[0];
    };
    const onSheets = (text: string): Cells | undefined => {
      const meant = cellsReferred(text, formula.sheet);
      // Whole columns would have to be taken as far as any of the sheets is filled.
      return meant?.lastSheet === undefined || meant.isWhole ? undefined : this.book.cells.onSheets(meant, 0);
    };
    const counted = (text: string, isSpill: boolean, areHiddenLeft: boolean): Cells | undefined => {
      const meant = this.meantBy(text, isSpill, formula) ?? (isSpill ? undefined : this.cellsNamed(text, formula));
      return meant && this.countedIn(meant, areHiddenLeft, this.reach(expression, formula), asked.hiddenRows);
    };
    const lambdaNamed = (name: string): Lambda | undefined => this.lambdaNamed(name, formula);
    return { blankAs: asked.blankAs, isOverArrays: asked.isOverArrays, referred, onSheets, intersected, counted, lambdaNamed };
  }

  private countedIn(meant: Referred, areHiddenLeft: boolean, longest: number, hiddenRows: HiddenRows | undefined): Cells | undefined {
    const { sheets, cells, isHidden } = this.book;
    const read = meant.sheet === undefined ? undefined : sheets.sheet(meant.sheet);
    const held = cells.in(meant, longest);
    if (read === undefined || held === undefined || isHidden === undefined) return undefined;
    const { row, column } = meant.area;
    const isShown = held.map((_, down) => !isHidden(read.name, row + down));
    if (!areHiddenLeft && isShown.includes(false) && hiddenRows === undefined) return undefined;
    const isLeft = (down: number): boolean => isShown[down] === false && (areHiddenLeft || hiddenRows === "left out");
    return held.flatMap((line, down): CellValue[][] =>
      isLeft(down)
        ? []
        : line.flatMap((value, across): CellValue[][] => (IS_SUBTOTAL.test(read.at(row + down, column + across)?.formula ?? "") ? [] : [[value]])),
    );
  }

  private cellsOf(text: string, formula: ReadFormula): Referred | undefined {
    const { sheet, area } = formula;
    if (!this.isRelative) return cellsReferred(text, sheet) ?? tableCellsReferred(text, this.around(formula));
    const found = this.known.has(text) ? this.known.get(text) : cellsReferred(text, sheet);
    this.known.set(text, found);
    return found && { sheet: found.sheet, area: areaInRow(found.area, area.row + 1), isWhole: found.isWhole };
  }

  /** The cells that a reference stands for; undefined for names, but that of a cell before #. */
  private meantBy(text: string, isSpill: boolean, formula: ReadFormula): Referred | undefined {
    const cells = this.cellsOf(text, formula);
    if (!isSpill) return cells;
    if (cells !== undefined) return this.spillOf(cells, formula);
    const anchor = this.referenceNamed(text, formula);
    const named = anchor === undefined ? undefined : cellsReferred(anchor, formula.sheet);
    return named !== undefined ? this.spillOf(named, formula) : undefined;
  }

  /** The cells, or the spill, that a defined name stands for. */
  private cellsNamed(text: string, formula: ReadFormula): Referred | undefined {
    const name = formulaNamed(text, { sheet: formula.sheet, nameOf: this.book.nameOf });
    const meant = name === undefined || !isFixedName(name) ? undefined : savedExpression(name);
    if (meant?.type === "ReferenceIdentifier") return cellsReferred(meant.value, formula.sheet);
    const isSpill = meant?.type === "UnaryExpression" && meant.operator === "#";
    const [anchor] = isSpill || (meant?.type === "CallExpression" && nameCalled(meant) === "ANCHORARRAY") ? meant.arguments : [];
    return anchor?.type === "ReferenceIdentifier" ? this.meantBy(anchor.value, true, formula) : undefined;
  }

  private referenceNamed(text: string, formula: ReadFormula): string | undefined {
    const name = formulaNamed(text, { sheet: formula.sheet, nameOf: this.book.nameOf });
    const meant = name === undefined || !isFixedName(name) ? undefined : savedExpression(name);
    return meant?.type === "ReferenceIdentifier" ? meant.value : undefined;
  }

  private around(formula: ReadFormula): ReturnType<ReadSheets["around"]> {
    const { sheets, nameOf } = this.book;
    return sheets.around(formula, nameOf);
  }

  private spillOf(anchor: Referred, formula: ReadFormula): Referred | undefined {
    const { sheet, area } = anchor;
    if (sheet === undefined || area.rows * area.columns > 1) return undefined;
    const spill = this.around(formula).spillOf(sheet, cellAt(area.row, area.column));
    return spill === undefined ? undefined : { ...anchor, area: areaNamed(spill) };
  }

  /** What a defined name stands for, where it is the same in every cell. */
  private named(text: string, formula: ReadFormula, asked: Asked): Cells | undefined {
    const name = formulaNamed(text, { sheet: formula.sheet, nameOf: this.book.nameOf });
    if (name === undefined || asked.depth === MOST_NAMES || !isFixedName(name)) return undefined;
    const key = JSON.stringify([name, asked]);
    if (this.names.has(key)) return this.names.get(key);
    const meant = savedExpression(name);
    const values = meant && this.valuesOf(meant, formula, { ...asked, depth: asked.depth + 1 });
    const value = values?.length === 1 ? values[0] : undefined;
    this.names.set(key, value);
    return value;
  }

  /** Whole columns belong to each other row by row, so they are taken as far as any of them is filled. */
  private reach(expression: AstExpression, formula: ReadFormula): number {
    if (this.longest !== undefined) return this.longest;
    let longest = 0;
    for (const part of everyPart(expression)) {
      const cells = part.type === "ReferenceIdentifier" && !/\d/.test(part.value) ? this.cellsOf(part.value, formula) : undefined;
      if (cells !== undefined) longest = Math.max(longest, this.book.cells.filledRows(cells));
    }
    return (this.longest = longest);
  }
}

/** The cell of a range in the row or column of a formula. */
function ownCell({ sheet, lastSheet, area, isWhole }: Referred, { area: own }: ReadFormula): Referred | undefined {
  if (lastSheet !== undefined || (area.rows > 1 && area.columns > 1)) return undefined;
  const row = area.rows === 1 ? area.row : own.row;
  const column = area.columns === 1 ? area.column : own.column;
  if (!covers(area, row, column)) return undefined;
  return { sheet, area: { row, column, rows: 1, columns: 1 }, isWhole };
}
