import type { AstExpression } from "@borgar/fx";
import type { namesOf, ReadFormula, ReadSheets } from "../../sharing/plain/reading/ReadSheets";
import type { Lambda } from "../../sharing/plain/formula/parts";
import { cellsReferred, tableCellsReferred, type Referred } from "../../sharing/plain/formula/reference";
import { areaInRow, relativeFormula } from "../../sharing/plain/formula/RelativeFormula";
import { areaNamed } from "../../workbook/areaNamed";
import type { BlankForm, Cells } from "../formula/Cells";
import { everyPart } from "../formula/everyPart";
import { expressionOf } from "../formula/expressionOf";
import { builtInHere } from "./builtInHere";
import { isFixedName } from "./isFixedName";
import type { SavedCells } from "./SavedCells";
import { isProven } from "./proven/isProven";
import { sureValue, type SureSurroundings } from "./sure/sureValue";
import { valuesItMayGive } from "./valuesItMayGive";

/** The workbook that formulas stand in. */
export interface SavedBook {
  readonly sheets: ReadSheets;
  readonly cells: SavedCells;
  readonly nameOf: ReturnType<typeof namesOf>;
}

// Names that stand for names.
const MOST_NAMES = 8;

interface Asked {
  readonly blankAs: BlankForm;
  /** True where nothing counts but what is the same in every spreadsheet, conditions worked out. */
  readonly isCertain: boolean;
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
      const found = known.get(key) ?? new SavedFormula(book, expressionOf(text), relative !== undefined);
      known.set(key, found);
      return found;
    };
  }

  /** What it may give in a cell, whichever way conditions go that only the spreadsheet can work out; undefined where only that can tell. */
  valuesIn(formula: ReadFormula, blankAs: BlankForm): readonly Cells[] | undefined {
    return this.expression && this.valuesOf(this.expression, formula, { blankAs, isCertain: false, depth: 0 });
  }

  /** What it gives in a cell in every spreadsheet; undefined where that is not certain. */
  certainIn(formula: ReadFormula): Cells | undefined {
    return this.expression && this.valuesOf(this.expression, formula, { blankAs: 0, isCertain: true, depth: 0 })?.[0];
  }

  /**
   * True where what the grid's engine gives in a cell is what every spreadsheet gives, as far as that can be known from its functions, operators and
   * literals and from what its cells hold.
   * @param isOverArrays true for a formula over arrays, as the file says
   */
  isProvenIn(formula: ReadFormula, isOverArrays: boolean): boolean {
    if (this.expression === undefined) return false;
    const around = this.surroundings(this.expression, formula, { blankAs: 0, isCertain: true, depth: 0 });
    return isProven(this.expression, { ...around, lambdaNamed: (name) => this.lambdaNamed(name, formula) }, isOverArrays);
  }

  private lambdaNamed(name: string, { sheet }: ReadFormula): Lambda | undefined {
    const named = this.book.nameOf(name, sheet);
    const meant = named === undefined || !isFixedName(named) ? undefined : expressionOf(named);
    return meant?.type === "LambdaExpression" ? meant : undefined;
  }

  private valuesOf(expression: AstExpression, formula: ReadFormula, asked: Asked): readonly Cells[] | undefined {
    const around = this.surroundings(expression, formula, asked);
    const certain = sureValue(expression, around);
    if (certain !== undefined || asked.isCertain) return certain && [certain];
    return valuesItMayGive(expression, { blankAs: asked.blankAs, builtIn: builtInHere, referred: around.referred });
  }

  private surroundings(expression: AstExpression, formula: ReadFormula, asked: Asked): SureSurroundings {
    const referred = (text: string, isSpill: boolean): Cells | undefined => {
      const cells = this.cellsOf(text, formula);
      if (cells === undefined) return isSpill ? undefined : this.named(text, formula, asked);
      const meant = isSpill ? this.spillOf(text, cells, formula) : cells;
      return meant && this.book.cells.in(meant, this.reach(expression, formula));
    };
    const onSheets = (text: string): Cells | undefined => {
      const meant = cellsReferred(text, formula.sheet);
      // Whole columns would have to be taken as far as any of the sheets is filled.
      return meant?.lastSheet === undefined || meant.isWhole ? undefined : this.book.cells.onSheets(meant, 0);
    };
    return { blankAs: asked.blankAs, referred, onSheets };
  }

  private cellsOf(text: string, formula: ReadFormula): Referred | undefined {
    const { sheet, area } = formula;
    if (!this.isRelative) return cellsReferred(text, sheet) ?? tableCellsReferred(text, this.around(formula));
    const found = this.known.has(text) ? this.known.get(text) : cellsReferred(text, sheet);
    this.known.set(text, found);
    return found && { sheet: found.sheet, area: areaInRow(found.area, area.row + 1), isWhole: found.isWhole };
  }

  private around(formula: ReadFormula): ReturnType<ReadSheets["around"]> {
    const { sheets, nameOf } = this.book;
    return sheets.around(formula, nameOf);
  }

  private spillOf(text: string, anchor: Referred, formula: ReadFormula): Referred | undefined {
    const cell = text.split("!").at(-1)?.replaceAll("$", "").toUpperCase() ?? "";
    const spill = anchor.sheet === undefined ? undefined : this.around(formula).spillOf(anchor.sheet, cell);
    return spill === undefined ? undefined : { ...anchor, area: areaNamed(spill) };
  }

  /** What a defined name stands for, where it is the same in every cell. */
  private named(text: string, formula: ReadFormula, asked: Asked): Cells | undefined {
    const name = this.book.nameOf(text.split("!").at(-1) ?? text, formula.sheet);
    if (name === undefined || asked.depth === MOST_NAMES || !isFixedName(name)) return undefined;
    const key = JSON.stringify([name, asked]);
    if (this.names.has(key)) return this.names.get(key);
    const meant = expressionOf(name);
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
