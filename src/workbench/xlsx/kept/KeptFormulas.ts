import type { FormulaSources } from "../../../sharing/plain/change/FormulaSources";
import { namesOf, ReadSheets, type ReadFormula } from "../../../sharing/plain/reading/ReadSheets";
import type { Surroundings } from "../../../sharing/plain/reading/Surroundings";
import { sourcesOf } from "../../../sharing/plain/change/precedents";
import { calculatedFrom } from "../../../sharing/plain/change/staleness";
import { nameOnSheet } from "../../../workbook/nameOnSheet";
import { cellAt, cellsOfArea, covers, rangeOf, type CellArea } from "../../../workbook/cellArea";
import { areaNamed } from "../../../workbook/areaNamed";
import type { GridEngine } from "../../../workbook/grid/GridEngine";
import { GridWorkbook } from "../../../workbook/grid/GridWorkbook";
import { namesIn } from "../../../workbook/grid/writing/definedNames";
import { readValue, spillsOver } from "../../../workbook/grid/reading/readCell";
import { usedCells } from "../../../workbook/grid/reading/usedArea";
import type { CellReading } from "../../../workbook/Workbook";
import { typedContent } from "../../typedContent";
import { answersOtherwise } from "../answersInFile";
import type { KeptFormula } from "../reading/CellsReader";
import type { ReadSheet } from "../reading/sheetsPart";

interface Kept extends KeptFormula {
  /** The sheet's own id in the grid, and the name that it had in the file. */
  readonly id: string;
  readonly sheet: string;
  /** What it shows, by which it is known again. */
  readonly value: string;
  readonly sources: FormulaSources;
  /** What it is calculated from, as it stood when the file was opened. */
  readonly inputs: string;
  /** True where that was not what the file holds, or where the file says that it is to be calculated. */
  readonly wasFromBefore: boolean;
}

// One look at each cell of a small area, or at each that holds anything.
const SMALL = 10_000;

/**
 * Cell formulas of an opened file that the grid cannot calculate, whose cells keep the values of the file: which of those hold no longer, because
 * something that they are calculated from has changed, and what is calculated from them.
 */
export class KeptFormulas {
  private readonly kept: readonly Kept[];
  private readonly typed: string;

  constructor(
    private readonly engine: GridEngine,
    sheets: readonly ReadSheet[],
    isStale: boolean,
    /** True once cells were put in, taken out or moved. */
    private isMoved: () => boolean,
  ) {
    const names = sheets.map(({ sheet }) => sheet.name);
    const known = new Map<string, readonly Place[]>();
    const othersOn = (name: string): readonly Place[] => {
      const found = known.get(name) ?? sheets.filter(({ sheet }) => sheet.name === name).flatMap((one) => this.othersOn(one));
      known.set(name, found);
      return found;
    };
    const nameOf = namesOf(this.namesNow());
    const spillOf: Surroundings["spillOf"] = (on, cell) => {
      const { row, column } = areaNamed(cell);
      const there = engine.book.getSheetByName(on);
      const spill = there && spillsOver(engine, there.getSheetId())(row, column);
      const held = sheets.find(({ sheet }) => sheet.name === on)?.kept.find((one) => one.row === row && one.column === column)?.spill;
      if (spill || (held ?? "") !== "") return spill ? rangeOf(spill) : held;
      return held === "" || (there?.getSheet().getCellRaw(row, column)?.f ?? "") !== "" ? cell : undefined;
    };
    this.kept = sheets.flatMap(({ sheet: { name }, kept }) =>
      kept.flatMap((one): Kept[] => {
        const id = engine.book.getSheetByName(name)?.getSheetId();
        const sources = sourcesFor(one, name, names, { nameOf, spillOf });
        const value = id === undefined ? undefined : this.valueAt(id, one);
        if (id === undefined || value === undefined) return [];
        const differs = sources.precedents.some((read) => othersOn(read.sheet).some(({ row, column }) => covers(read.area, row, column)));
        return [{ ...one, id, sheet: name, value, sources, inputs: this.inputsOf(sources), wasFromBefore: isStale || differs }];
      }),
    );
    this.typed = this.kept.length === 0 ? "" : typedContent(engine);
  }

  /** Goes on after the file was saved, when somebody else looks whether cells are moved. */
  goOn(isMoved: () => boolean): this {
    this.isMoved = isMoved;
    return this;
  }

  /** Cells of formulas that are kept and hold no longer. */
  fromBefore(): readonly string[] {
    return this.stale().map(({ id, row, column }) => nameOnSheet(this.nameNow(id), cellAt(row, column)));
  }

  /** Cells whose formulas are the file's alone, as the file names them: cells may have been moved since. None that somebody typed over. */
  cellsOfFile(): readonly string[] {
    return this.standing().map(({ sheet, row, column }) => nameOnSheet(sheet, cellAt(row, column)));
  }

  /** Every cell that holds no longer, those that the grid calculates from such ones among them, by sheet. */
  async reached(): Promise<ReadonlyMap<string, ReadonlySet<string>>> {
    const stale = this.stale();
    const found = new Map<string, Set<string>>();
    if (stale.length === 0) return found;
    const read = await this.withKept();
    const nameOf = namesOf(this.namesNow());
    const sources = read.formulas.map((formula) => this.keptAt(formula)?.sources ?? sourcesOf(formula.reading.formula, read.around(formula, nameOf), read.names)); // prettier-ignore
    const first = new Set(stale.flatMap((one) => read.sheet(this.nameNow(one.id))?.formulaAt(one.row, one.column)?.id ?? []));
    const unseen = sources.flatMap(({ isUnseen }, id) => (isUnseen ? [id] : []));
    for (const id of new Set([...first, ...calculatedFrom(read, sources, first, unseen)])) {
      const { sheet, area } = read.formulas[id] as ReadFormula;
      found.set(sheet, new Set([...(found.get(sheet) ?? []), ...cellsOfArea(area).flat()]));
    }
    return found;
  }

  private standing(): readonly Kept[] {
    return this.kept.filter((one) => this.engine.book.getSheetBySheetId(one.id) && (this.isMoved() || this.valueAt(one.id, one) === one.value));
  }

  private stale(): readonly Kept[] {
    const standing = this.standing();
    if (standing.length === 0) return [];
    const anyTyped = typedContent(this.engine) !== this.typed;
    // Where cells were moved, no formula of the file says any longer which ones it means.
    return standing.filter(
      (one) => one.wasFromBefore || (anyTyped && (this.isMoved() || one.sources.isUnseen)) || this.inputsOf(one.sources) !== one.inputs,
    );
  }

  /** The whole workbook with the formulas of the file in the cells that keep their values. */
  private async withKept(): Promise<ReadSheets> {
    const workbook = new GridWorkbook(this.engine);
    const names = await workbook.sheetNames();
    const sheets = [];
    for (const name of names) {
      const reading = await workbook.readUsed(name);
      const kept = new Map(this.kept.filter(({ id }) => this.nameNow(id) === name).map((one) => [cellAt(one.row, one.column), one]));
      const withFormula = (cell: CellReading): CellReading => {
        const found = kept.get(cell.cell);
        return found === undefined ? cell : { ...cell, formula: found.formula === "" ? "=0" : found.formula, spill: found.spill };
      };
      sheets.push(kept.size === 0 ? reading : { ...reading, rows: reading.rows.map((row) => row.map(withFormula)) });
    }
    return new ReadSheets({ sheets, names: this.namesNow() });
  }

  private keptAt({ sheet, reading }: ReadFormula): Kept | undefined {
    const { row, column } = areaNamed(reading.cell);
    return this.kept.find((one) => one.row === row && one.column === column && this.nameNow(one.id) === sheet);
  }

  private readonly nameNow = (id: string): string => this.engine.book.getSheetBySheetId(id)?.getSheetName() ?? "";

  private namesNow(): { name: string; sheet?: string; formula: string }[] {
    return namesIn(this.engine).map(({ name, sheet, refersTo }) => ({ name, formula: `=${refersTo}`, ...(sheet === undefined ? {} : { sheet }) }));
  }

  /** What a cell without a formula shows; undefined for one that holds a formula. */
  private valueAt(id: string, { row, column }: Pick<KeptFormula, "row" | "column">): string | undefined {
    const sheet = this.engine.book.getSheetBySheetId(id);
    const own = sheet?.getSheet().getCellRaw(row, column);
    if (!sheet || (own?.f ?? "") !== "" || (own?.si ?? "") !== "") return undefined;
    return JSON.stringify(readValue(this.engine, sheet, row, column));
  }

  private inputsOf({ precedents }: FormulaSources): string {
    const held = precedents.map(({ sheet, area }) => {
      const found = this.engine.book.getSheetByName(sheet);
      if (!found) return "gone";
      return placesIn(area, () => usedCells(this.engine, found)).map(({ row, column }) => readValue(this.engine, found, row, column));
    });
    return JSON.stringify(held);
  }

  /** Cells that show something else here than the file holds. */
  private othersOn({ sheet, answers }: ReadSheet): readonly Place[] {
    const there = this.engine.book.getSheetByName(sheet.name);
    return there ? answersOtherwise(this.engine, there, answers) : [];
  }
}

interface Place {
  readonly row: number;
  readonly column: number;
}

function placesIn({ row, column, rows, columns }: CellArea, used: () => readonly Place[]): readonly Place[] {
  if (rows * columns > SMALL)
    return used().filter((one) => covers({ row, column, rows, columns }, one.row, one.column)).sort((one, other) => one.row - other.row || one.column - other.column); // prettier-ignore
  return Array.from({ length: rows * columns }, (_, index) => ({ row: row + Math.floor(index / columns), column: column + (index % columns) }));
}

const UNSEEN: FormulaSources = { precedents: [], isOurs: false, isUnseen: true, isVolatile: false, isBeyond: false, isAnywhere: false };

function sourcesFor(
  { formula, row, column }: KeptFormula,
  sheet: string,
  sheets: readonly string[],
  around: Pick<Surroundings, "nameOf" | "spillOf">,
): FormulaSources {
  if (formula === "") return UNSEEN;
  const cell = cellAt(row, column);
  return sourcesOf(formula, { ...around, sheet, cell, area: cell, tableOf: () => undefined }, sheets);
}
