import { namesChanged, rowsMoved, sheetChanged } from "../../../problems/files/packageProblems";
import { areaNamed } from "../../../workbook/areaNamed";
import { charactersOf } from "../../../workbook/columnPixels";
import { namesIn } from "../../../workbook/grid/writing/definedNames";
import type { GridEngine } from "../../../workbook/grid/GridEngine";
import { pointsOf } from "../../../workbook/grid/writing/worksheetData";
import { WorkbookProblem } from "../../../workbook/Workbook";
import { namesForSeveral } from "../../../xlsx/formulas/worksOnRanges";
import { addCharts } from "../../../xlsx/charts/addCharts";
import { withSheetsRenamed } from "../../../xlsx/package/sheets/namedSheets";
import { WorkbookPackage } from "../../../xlsx/package/WorkbookPackage";
import { DamagedFile } from "../../../xlsx/parts/FileParts";
import { chartsOn, sheetsFile } from "../saveXlsx";
import { cellDifferences } from "./cellDifferences";
import type { KeptFormulas } from "../kept/KeptFormulas";
import { MovedSheets } from "./MovedSheets";
import { sheetStates, type SheetState } from "./SheetState";

/** The file saved, or why it cannot be saved so that everything in it stays. */
export type SavedInPlace = { readonly content: Uint8Array<ArrayBuffer>; readonly wasSigned: boolean } | { readonly because: string };

interface Read {
  readonly unknown?: ReadonlyMap<string, ReadonlySet<number>>;
  /** Its formulas that the grid cannot calculate, asked for once the file is open; or the same as before. */
  readonly kept?: ((isMoved: () => boolean) => KeptFormulas) | KeptFormulas;
}

export interface FileOrigins {
  /** What each open sheet is called in the file; null for one that is not from it. */
  readonly sheets: readonly (string | null)[];
  /** What those are called in it on which cells were moved. */
  readonly moved: readonly string[];
}

/** A file that is open in the grid, with everything in it that the grid does not show. */
export class OpenedFile {
  /** Those that came with the file, readable or not. */
  readonly formulas: ReadonlySet<string>;
  private readonly names: string;
  private readonly moved: MovedSheets;

  /** Its formulas that the grid cannot calculate; undefined for a file that was written by the grid. */
  readonly kept: KeptFormulas | undefined;

  private constructor(
    private readonly engine: GridEngine,
    readonly content: Uint8Array<ArrayBuffer>,
    private readonly states: readonly SheetState[],
    /** What of the file is not shown, each in words; a file written anew does not have it. */
    readonly notShown: readonly string[],
    kept: ((isMoved: () => boolean) => KeptFormulas) | KeptFormulas | undefined,
  ) {
    this.formulas = new Set(states.flatMap(({ cells }) => [...cells.values()].map(({ formula }) => formula)));
    this.moved = new MovedSheets(engine);
    const isMoved = (): boolean => this.moved.ids.length > 0;
    this.kept = typeof kept === "function" ? kept(isMoved) : kept?.goOn(isMoved);
    this.names = JSON.stringify(namesIn(engine));
  }

  /**
   * Remembers what the grid holds now as what stands in the file.
   * @param read what was read of it; of that, `unknown` are the cells of which the file holds that their function was not known, by sheet and place:
   * the grid knows better
   */
  static of(engine: GridEngine, content: Uint8Array<ArrayBuffer>, notShown: readonly string[], { unknown = new Map(), kept }: Read = {}): OpenedFile {
    const states = sheetStates(engine).map((state): SheetState => {
      const places = unknown.get(state.name);
      if (places === undefined) return state;
      const asInFile = [...state.cells].map(([place, cell]) => [place, places.has(place) ? { ...cell, value: { error: "#NAME?" } } : cell] as const);
      return { ...state, cells: new Map(asInFile) };
    });
    return new OpenedFile(engine, content, states, notShown, kept);
  }

  /** True while any of the file's sheets is open; others may have come in place of all of them. */
  isOpen(): boolean {
    const ids = this.engine.book.getSheets().map((sheet) => sheet.getSheetId());
    return this.states.some(({ id }) => ids.includes(id));
  }

  /** Which of the open sheets come from the file, for a copy of them that is kept. */
  origins(): FileOrigins {
    const inFile = (id: string): string | null => this.states.find((state) => state.id === id)?.name ?? null;
    return {
      sheets: this.engine.book.getSheets().map((sheet) => inFile(sheet.getSheetId())),
      moved: this.moved.ids.map(inFile).filter((name) => name !== null),
    };
  }

  /** Takes over from a copy on which of the file's sheets cells were moved. */
  sayMoved(names: readonly string[]): void {
    for (const { id, name } of this.states) if (names.includes(name)) this.moved.add(id);
  }

  /** The file with what was changed in the grid, and everything else as it was. */
  async saved(): Promise<SavedInPlace> {
    await this.engine.settled();
    const now = sheetStates(this.engine);
    const because = this.whyNot(now);
    if (because !== undefined) return { because };
    try {
      return await this.changed(now);
    } catch (problem) {
      if (problem instanceof WorkbookProblem) return { because: problem.message };
      if (problem instanceof DamagedFile) return { because: [problem.part, problem.message].filter((one) => one !== undefined).join(": ") };
      throw problem;
    }
  }

  /** The same file after it was saved. */
  after(content: Uint8Array<ArrayBuffer>, notShown = this.notShown): OpenedFile {
    this.moved.stop();
    // What was from before is so still; the file says so itself.
    const kept = notShown.length === 0 ? undefined : this.kept;
    return OpenedFile.of(this.engine, content, notShown, kept && { kept });
  }

  private whyNot(now: readonly SheetState[]): string | undefined {
    for (const { id, name, further } of now) {
      if (this.moved.has(id) && this.states.some((state) => state.id === id)) return rowsMoved(name);
      const before = this.states.find((state) => state.id === id);
      if (before !== undefined && before.further !== further) return sheetChanged(name);
    }
    // A name of its own goes with a sheet, and stands under its new name.
    const isSame = now.length === this.states.length && now.every(({ name }, place) => name === this.states[place]?.name);
    return isSame && JSON.stringify(namesIn(this.engine)) !== this.names ? namesChanged : undefined;
  }

  private async changed(now: readonly SheetState[]): Promise<Extract<SavedInPlace, { readonly content: unknown }>> {
    const file = await WorkbookPackage.of(this.content);
    const renamed = new Map(
      this.states.flatMap(({ id, name }): [string, string][] => {
        const held = now.find((state) => state.id === id);
        return held === undefined || held.name === name ? [] : [[name, held.name]];
      }),
    );
    const removed = new Set(this.states.filter(({ id }) => !now.some((state) => state.id === id)).map(({ name }) => name));
    await file.renameSheets(renamed);
    const byCapitals = new Map([...renamed].map(([old, name]) => [old.toUpperCase(), name]));
    const around = {
      names: namesForSeveral(namesIn(this.engine)),
      fromFile: this.formulas,
      from1904: await file.countsFrom1904(),
      renamed: (formula: string): string => (byCapitals.size === 0 ? formula : `=${withSheetsRenamed(formula.replace(/^=/, ""), byCapitals)}`),
    };
    for (const held of now) {
      const before = this.states.find(({ id }) => id === held.id);
      if (before === undefined) continue;
      await writeCells(file, held.name, cellDifferences(before.cells, held.cells, { ...around, lineLook: before.lineLook }));
      await file.setSizes(held.name, differing(before.widths, held.widths, charactersOf), differing(before.heights, held.heights, pointsOf));
    }
    if (removed.size > 0) await file.keepSheets((await file.sheets()).map(({ name }) => name).filter((name) => !removed.has(name)));
    await this.addSheets(file, now);
    const names = now.map(({ name }) => name);
    const others = (await file.sheets()).map(({ name }) => name).filter((name) => !names.includes(name));
    const isInOrder = (await file.sheets()).filter(({ name }) => names.includes(name)).every(({ name }, place) => name === names[place]);
    // Sheets without cells, which the grid does not show, come behind the others where those were moved.
    if (!isInOrder) await file.orderSheets([...names, ...others]);
    if ((this.kept?.fromBefore() ?? []).length > 0) await file.calculateOnOpening();
    const wasSigned = await file.isSigned();
    const content = await file.bytes();
    return { content, wasSigned: wasSigned && !(await file.isSigned()) };
  }

  private async addSheets(file: WorkbookPackage, now: readonly SheetState[]): Promise<void> {
    const added = now.filter(({ id }) => !this.states.some((state) => state.id === id));
    if (added.length === 0) return;
    await file.addSheetsOf(await sheetsFile(this.engine, this.formulas, new Set(added.map(({ id }) => id))));
    for (const { id, name } of added) await addCharts(file, name, chartsOn(this.engine, id));
  }
}

async function writeCells(file: WorkbookPackage, sheet: string, differences: ReturnType<typeof cellDifferences>): Promise<void> {
  const bases = new Map<string, number>();
  const withLooks = differences.filter(({ look }) => look !== undefined);
  if (withLooks.length > 0) await file.readCells(sheet, ({ cell, look }) => void bases.set(cell, look));
  const lines = withLooks.length > 0 ? await file.lineLooks(sheet) : undefined;
  const baseOf = (cell: string): number => {
    const { row, column } = areaNamed(cell);
    return bases.get(cell) ?? lines?.at(row, column) ?? 0;
  };
  const looks = await file.addLooks(withLooks.map(({ cell, look }) => [baseOf(cell), look ?? {}]));
  const lookOf = new Map(withLooks.map(({ cell }, index) => [cell, looks[index]]));
  await file.changeCells(
    sheet,
    differences.map(({ cell, content }) => {
      const look = lookOf.get(cell);
      return { cell, content, ...(look === undefined ? {} : { look }) };
    }),
  );
}

const differing = (before: ReadonlyMap<number, number>, now: ReadonlyMap<number, number>, inFile: (pixels: number) => number): Map<number, number> =>
  new Map([...now].flatMap(([place, pixels]) => (before.get(place) === pixels ? [] : [[place, inFile(pixels)] as const])));
