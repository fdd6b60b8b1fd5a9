import type { ExcelHost } from "../../../host/ExcelHost";
import type { SheetState } from "../../../host/SheetState";

interface Typed {
  readonly cell: string;
  readonly value: number;
  readonly sheet: SheetState;
  /** How many requests had come before. */
  readonly before: number;
}

/** A workbook with a sheet of the user's, in which an operation is under way while somebody else is at work. */
export class Scene {
  /** Sheets that are not the operation's own, and what must stay on each. */
  readonly theirs = new Map<string, string>();
  readonly typed: Typed[] = [];
  /** Names that sheets of the operation's had before somebody renamed them. */
  readonly formerNames = new Map<string, string>();
  /** Ids of sheets that somebody removed or unmarked. */
  readonly removed = new Set<string>();
  readonly unmarked = new Set<string>();
  private readonly renamedAt = new Map<string, number>();
  private readonly lastSeen = new Map<string, number>();
  /** How many requests came before the one under way. */
  requestsBefore = 0;
  private count = 0;

  constructor(readonly host: ExcelHost) {
    host.newBook();
    host.calculate = (formula) => (formula.startsWith("=RETORT.VOLATILEFRACTION") ? 0.7 : "");
    host.book.rename(host.book.sheet("Sheet1"), "Mine");
    host.type("Mine", "A1", 25);
    host.type("Mine", "A2", "plum");
    host.type("Mine", "B2", "=RETORT.VOLATILEFRACTION(A1,35,28)");
    this.keep(host.book.sheet("Mine"));
  }

  /** From now on a sheet is somebody's, with all that stands on it. */
  keep(sheet: SheetState): void {
    this.theirs.set(sheet.id, contentsOf(sheet));
  }

  /** A sheet of the operation's, in the order in which they were made. */
  own(index: number): SheetState | undefined {
    return this.ownSheets()[index];
  }

  ownSheets(): SheetState[] {
    return this.host.book.sheets.filter(({ id }) => !this.theirs.has(id));
  }

  /** Somebody types a number that stands nowhere else. */
  type(sheet: SheetState, cell: string): void {
    const value = 65 + ++this.count / 100;
    // What somebody types over what they have typed themselves is not lost.
    const overtyped = this.typed.findIndex((one) => one.sheet === sheet && one.value === sheet.cells.get(cell)?.value);
    if (overtyped >= 0) this.typed.splice(overtyped, 1);
    this.host.type(sheet.id, cell, value);
    this.typed.push({ sheet, cell, value, before: this.requestsBefore });
    if (this.theirs.has(sheet.id)) this.keep(sheet);
  }

  rename(sheet: SheetState, name: string): void {
    if (!this.theirs.has(sheet.id)) {
      this.formerNames.set(sheet.id, sheet.name);
      this.renamedAt.set(sheet.id, this.requestsBefore);
    }
    this.host.book.rename(sheet, name);
    if (this.theirs.has(sheet.id)) this.keep(sheet);
  }

  /** Called before each request. */
  look(requestsBefore: number): void {
    this.requestsBefore = requestsBefore;
    for (const { id, name } of this.host.book.sheets) {
      this.lastSeen.set(id, requestsBefore);
      // What the operation has named again is its own.
      if (!name.startsWith("Theirs")) this.renamedAt.delete(id);
    }
  }

  /**
   * What was typed and stands nowhere any more.
   * @param unanswered a request that was carried out though its answer was lost: what it took the place of cannot be known
   */
  lost(unanswered?: number): { readonly value: number; readonly inTheWindow: boolean }[] {
    const sheets = this.host.book.sheets;
    return this.typed
      .filter(({ cell, value }) => !sheets.some((sheet) => sheet.cells.get(cell)?.value === value))
      .map(({ value, sheet, before }) => ({
        value,
        inTheWindow: before === unanswered || (!sheets.includes(sheet) && this.lastSeen.get(sheet.id) === before),
      }));
  }

  /** True where somebody has renamed a sheet, or something that they typed stands there. */
  isChanged(id: string): boolean {
    return this.formerNames.has(id) || this.typed.some(({ sheet, cell, value }) => sheet.id === id && sheet.cells.get(cell)?.value === value);
  }

  /** What became of sheets that are somebody's, or that somebody renamed or unmarked. */
  harmed(unmarkedStay: boolean): string[] {
    const sheet = (id: string): SheetState | undefined => this.host.book.sheets.find((one) => one.id === id);
    const changed = [...this.theirs].flatMap(([id, contents]) => {
      const found = sheet(id);
      if (found === undefined) return ["somebody's sheet was removed"];
      return contentsOf(found) === contents ? [] : ["somebody's cell was changed"];
    });
    const renamed = [...this.renamedAt].filter(([id, at]) => sheet(id) === undefined && this.lastSeen.get(id) !== at);
    const unmarked = unmarkedStay ? [...this.unmarked].filter((id) => sheet(id) === undefined) : [];
    return [...changed, ...renamed.map(() => "a renamed sheet was removed"), ...unmarked.map(() => "a sheet finished meanwhile was removed")];
  }

  /** True where a sheet was removed in the very request before which somebody renamed it. */
  wentInTheWindow(): boolean {
    return [...this.renamedAt].some(([id, at]) => !this.host.book.sheets.some((sheet) => sheet.id === id) && this.lastSeen.get(id) === at);
  }
}

/** What a sheet of the user's must keep; the cell to be written by one of the operations is looked at apart. */
export const contentsOf = (sheet: SheetState): string => JSON.stringify([sheet.name, [...sheet.cells].filter(([cell]) => cell !== "D4")]);

export const isLive = (sheet: SheetState): boolean => [...sheet.cells.values()].some(({ formula }) => formula !== undefined);
