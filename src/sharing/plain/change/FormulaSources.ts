import type { CellArea } from "../../../workbook/cellArea";
import type { Referred } from "../formula/reference";

/** Cells that a formula is calculated from. */
export interface Precedent {
  readonly sheet: string;
  readonly area: CellArea;
}

/** What a formula is calculated from. */
export interface FormulaSources {
  readonly precedents: readonly Precedent[];
  /** True where it calls one of our functions, itself or through a defined name. */
  readonly isOurs: boolean;
  /** True where its text does not show all that it refers to. */
  readonly isUnseen: boolean;
  /** What else it referred to as the workbook was read, where its text does not show it and that can be told. */
  readonly asRead?: readonly Precedent[];
  /** True where it may refer to any sheet, which one cannot be told. */
  readonly isAnywhere: boolean;
  /** True where it gives something else without any cell changing, such as NOW(). */
  readonly isVolatile: boolean;
  /** True where it refers to a sheet that is not shared. */
  readonly isBeyond: boolean;
}

/** What a formula was found to be calculated from so far. */
export class SourcesFound {
  readonly precedents: Precedent[] = [];
  /** What calls of INDIRECT and OFFSET referred to. */
  readonly picked: Precedent[] = [];
  /** The formulas of names that are looked into already: names of names would be again and again. */
  readonly names = new Set<string>();
  isOurs = false;
  isUnseen = false;
  /** True where what its text does not show cannot be told from the cells either. */
  isUntold = false;
  isAnywhere = false;
  isVolatile = false;
  isBeyond = false;

  /**
   * @param sheets that are shared, in their order
   * @param order every sheet of the workbook, for references that go through several
   */
  constructor(
    readonly sheets: readonly string[],
    private readonly order: readonly string[],
  ) {}

  /** Nothing as yet, for one part by itself. */
  apart(): SourcesFound {
    return new SourcesFound(this.sheets, this.order);
  }

  untold(): void {
    this.isUnseen = true;
    this.isUntold = true;
  }

  add({ sheet, lastSheet, area }: Referred): void {
    // Another workbook changes nothing here.
    if (sheet === undefined) return;
    const placeOf = (name: string): number => this.order.findIndex((one) => one.toLowerCase() === name.toLowerCase());
    const [first, last] = [placeOf(sheet), placeOf(lastSheet ?? sheet)];
    const through = first === -1 || last === -1 ? [] : this.order.slice(Math.min(first, last), Math.max(first, last) + 1);
    const shared = through.filter((name) => this.sheets.includes(name));
    if (shared.length === 0 || shared.length < through.length) this.isBeyond = true;
    for (const name of shared) this.precedents.push({ sheet: name, area });
  }

  /** What INDIRECT or OFFSET picked, found apart. */
  addPicked(alone: SourcesFound): void {
    this.picked.push(...alone.precedents, ...alone.picked);
    this.isBeyond ||= alone.isBeyond;
    this.isUntold ||= alone.isUntold;
    this.isAnywhere ||= alone.isAnywhere;
  }

  get all(): FormulaSources {
    const { precedents, picked, isUntold, isOurs, isUnseen, isAnywhere, isVolatile, isBeyond } = this;
    return { precedents, isOurs, isUnseen, isAnywhere, isVolatile, isBeyond, ...(isUnseen && !isUntold && { asRead: picked }) };
  }
}
