import { sheetNotInFile } from "../../problems/files/packageProblems";
import { WorkbookProblem } from "../../workbook/Workbook";
import type { FileParts } from "../parts/FileParts";
import { relationshipsOf } from "../parts/relationships";
import { sharedTexts, type SharedText } from "../parts/sharedTexts";
import { addSheetsOf, openStyles } from "./sheets/addSheets";
import { goneBeside, isNameGone } from "./alone/goneWith";
import { standAlone, type TakenAlone } from "./alone/standAlone";
import { orderSheets, renameSheets } from "./sheets/arrangeSheets";
import { dropCalculationChain } from "./cells/calculationChain";
import type { CellChange, FileValue } from "./cells/CellChange";
import { changeCells } from "./cells/changeCells";
import { widthEdits } from "./sheets/columnWidths";
import { EditableParts } from "./parts/EditableParts";
import { takeEntryRules, type EntryRuleInFile } from "./besideCells/entryRules";
import { forgetPeople } from "./forgetting/people";
import { forgetUnusedNames } from "./forgetting/unusedNames";
import { keepSheets, takeNames } from "./sheets/keepSheets";
import { mendBesideCells } from "./besideCells/mendFormulas";
import { forgetOtherSheets } from "./forgetting/otherSheets";
import { forgetPivotCharts } from "./forgetting/pivotCharts";
import { takeQueries } from "./forgetting/queries";
import { forgetOtherWorkbooks } from "./forgetting/otherWorkbooks";
import { outOfView } from "./sheets/outOfView";
import { lineLooksIn, type LineLooks } from "./cells/LineLooks";
import type { OutOfView } from "../../workbook/OutOfView";
import { definedNames, namesOfPrograms, tablesIn } from "./namesAndTables";
import { takePivots } from "./forgetting/pivots";
import { readCells, type CellInFile } from "./cells/readCells";
import { heightEdits } from "./sheets/rowHeights";
import { changeSheetRules, type RuleChange } from "./besideCells/sheetRules";
import { dropSignatures, isSigned } from "./forgetting/signature";
import { showSheet } from "./sheets/showSheet";
import { spillMark } from "./cells/spillMark";
import { changedLook, type LookChange } from "./StylesPart";
import { changeTableFormulas, type ColumnFormula } from "./besideCells/tableFormulas";
import { keepHeadings } from "./cells/tableHeadings";
import { workbookOutline, type ListedSheet } from "./workbookOutline";
import { calculateOnOpening, changeNames, noTemplate, sayWhetherHidden } from "./workbookSettings";
import type { NameReading } from "../../sharing/plain/reading/PlainReading";
import type { TablePlace } from "../../sharing/plain/reading/Surroundings";

/**
 * A workbook file that is changed in place: formulas, values and whole sheets are changed, and every part that none of this concerns is written
 * as the bytes it came as: charts, tables, comments, rules for colouring, hidden sheets, pictures, settings of printers, macros. A file with
 * macros keeps its kind, and so has to keep the ending of its name. A signature goes with the first change, since it would hold no longer.
 */
export class WorkbookPackage {
  private texts: readonly SharedText[] | undefined;

  private constructor(readonly parts: EditableParts) {}

  /** @throws DamagedFile when the content is no zip archive that can be read */
  static async of(content: Uint8Array<ArrayBuffer> | FileParts): Promise<WorkbookPackage> {
    return new WorkbookPackage(await EditableParts.of(content));
  }

  /** Every sheet in its order, those without cells among them. */
  async sheets(): Promise<readonly Pick<ListedSheet, "name" | "kind" | "isHidden">[]> {
    return (await workbookOutline(this.parts)).sheets;
  }

  /** True where the file counts days from 1904. Values are taken and given as the file counts. */
  async countsFrom1904(): Promise<boolean> {
    return (await workbookOutline(this.parts)).from1904;
  }

  /** True for a file with macros, whose name ends in .xlsm. */
  async hasMacros(): Promise<boolean> {
    return (await workbookOutline(this.parts)).hasMacros;
  }

  /** Tells every cell of a sheet, row by row. @throws WorkbookProblem where there is no such sheet of cells */
  async readCells(sheet: string, take: (cell: CellInFile) => void): Promise<void> {
    const { part } = await this.sheetNamed(sheet);
    this.texts ??= await this.sharedTexts();
    await readCells(this.parts, part, { texts: this.texts, names: await this.names() }, take);
  }

  /**
   * Changes cells of a sheet and nothing else of it.
   * @param heights in points, by rows from 0 that do not stand in the sheet yet
   * @throws WorkbookProblem where one of them cannot be changed alone; nothing is changed then
   */
  changeCells(sheet: string, changes: readonly CellChange[], heights: ReadonlyMap<number, number> = new Map()): Promise<void> {
    return this.parts.whole(async () => {
      if (changes.length === 0 && heights.size === 0) return;
      const listed = await this.sheetNamed(sheet);
      const { part } = listed;
      await keepHeadings(this.parts, listed, changes);
      const spills = changes.some(({ content }) => content.kind === "formula" && content.spills === true);
      const mark = spills ? await spillMark(this.parts, await workbookOutline(this.parts)) : undefined;
      const { edits, hasOtherFormulas } = changeCells(part, await this.parts.text(part), changes, {
        sheet,
        names: await this.names(),
        spillMark: mark,
        heights,
      });
      await this.parts.edit(part, edits);
      if (hasOtherFormulas) await dropCalculationChain(this.parts, await workbookOutline(this.parts));
    });
  }

  /** The looks of whole rows and columns of a sheet. */
  async lineLooks(sheet: string): Promise<LineLooks> {
    const { part } = await this.sheetNamed(sheet);
    return lineLooksIn(part, await this.parts.text(part));
  }

  /** Looks that differ from others of the file: for each, the number of the look it comes from and what is another. @returns their numbers */
  async addLooks(wanted: readonly (readonly [base: number, change: LookChange])[]): Promise<readonly number[]> {
    if (wanted.length === 0) return [];
    const { part, styles } = await openStyles(this.parts);
    const looks = wanted.map(([base, change]) => changedLook(styles, base, change));
    await this.parts.edit(part, styles.edits());
    return looks;
  }

  /**
   * Adds the sheets of another workbook file, one of our own making, behind the last one.
   * @throws WorkbookProblem where a name is taken
   */
  addSheetsOf(content: Uint8Array<ArrayBuffer>): Promise<void> {
    return this.parts.whole(() => addSheetsOf(this.parts, content));
  }

  /**
   * Takes every other sheet out of the file, with what belongs to it alone, the texts of its cells and the names that stand for it. Formulas of
   * the sheets that stay keep their values where they read a sheet or name that goes.
   * @returns the cells that now hold values: "Runs!B7"
   * @throws WorkbookProblem where no sheet would stay, or the file has macros
   */
  async keepSheets(names: readonly string[]): Promise<readonly string[]> {
    const frozen = await this.parts.whole(() => keepSheets(this, names));
    this.texts = undefined;
    return frozen;
  }

  /**
   * Makes what stands beside the cells of some sheets do without the others, before those go.
   * @param valuesOf the values of a range that goes, row by row
   * @returns what had to be taken out
   */
  standAlone(kept: readonly string[], valuesOf: (formula: string) => readonly FileValue[] | undefined): Promise<readonly TakenAlone[]> {
    return this.parts.whole(() => standAlone(this.parts, kept, valuesOf));
  }

  /** Tells of a defined name, given with the sheet that alone knows it, whether it goes once these sheets alone are kept. */
  async namesGoing(kept: readonly string[]): Promise<(name: string, sheet: string | undefined) => boolean> {
    const outline = await workbookOutline(this.parts);
    const gone = goneBeside(outline, kept);
    const going = outline.names.filter((one) => isNameGone(outline, one, gone));
    const keyOf = (name: string, sheet: string | undefined): string => `${sheet ?? ""}!${name}`;
    const keys = new Set(going.map(({ name, sheet }) => keyOf(name, sheet === undefined ? undefined : outline.sheets[sheet]?.name)));
    return (name, sheet) => keys.has(keyOf(name, sheet));
  }

  /** Gives sheets other names, also in every formula, link, chart and name of the file. @param names new names by the old ones */
  renameSheets(names: ReadonlyMap<string, string>): Promise<void> {
    return this.parts.whole(() => renameSheets(this.parts, names));
  }

  /** Puts the sheets into another order. @param names every sheet's, those without cells too, in the order wanted */
  orderSheets(names: readonly string[]): Promise<void> {
    return orderSheets(this.parts, names);
  }

  /**
   * Gives columns and rows of a sheet other sizes, by their places from 0.
   * @param widths in characters
   * @param heights in points
   */
  async setSizes(sheet: string, widths: ReadonlyMap<number, number>, heights: ReadonlyMap<number, number>): Promise<void> {
    const { part } = await this.sheetNamed(sheet);
    await this.parts.edit(part, widthEdits(part, await this.parts.text(part), widths));
    await this.parts.edit(part, heightEdits(part, await this.parts.text(part), heights));
  }

  /** What of a sheet of cells nobody sees. */
  async outOfView(sheet: string): Promise<OutOfView> {
    return outOfView(this.parts, (await this.sheetNamed(sheet)).part);
  }

  /** Makes a sheet the one in view when the file is opened, and the only one chosen. */
  async show(sheet: string): Promise<void> {
    await showSheet(this.parts, await this.sheetNamed(sheet));
  }

  /** Takes sheets out of view. */
  hide(sheets: readonly string[]): Promise<void> {
    return sayWhetherHidden(this.parts, sheets, true);
  }

  unhide(sheets: readonly string[]): Promise<void> {
    return sayWhetherHidden(this.parts, sheets, false);
  }

  /** Takes every rule for entries out of a sheet, with its prompts and lists. @returns what they were */
  async takeEntryRules(sheet: string): Promise<readonly EntryRuleInFile[]> {
    return takeEntryRules(this.parts, (await this.sheetNamed(sheet)).part);
  }

  /** Changes the formulas of a sheet's rules for colouring and for entries, or takes rules out. */
  changeRules(sheet: string, change: RuleChange): Promise<void> {
    return this.parts.whole(async () => changeSheetRules(this.parts, (await this.sheetNamed(sheet)).part, change));
  }

  /**
   * Changes the formulas that the tables of a sheet keep for their columns beside those in the cells.
   * @param stillTotals true where cells of totals hold values, which nothing is to work out again
   */
  async changeTableFormulas(sheet: string, column: ColumnFormula, stillTotals = false): Promise<void> {
    return changeTableFormulas(this.parts, (await this.sheetNamed(sheet)).part, { column, stillTotals });
  }

  /** Takes such defined names out, each given with the sheet that alone knows it. */
  takeNames(isTaken: (name: string, sheet: string | undefined) => boolean): Promise<void> {
    return this.parts.whole(() => takeNames(this.parts, isTaken));
  }

  /** Takes out defined names that nothing reads, and who made the file. */
  forgetNamesAndPeople(): Promise<void> {
    return this.parts.whole(async () => {
      await forgetUnusedNames(this.parts);
      await forgetPeople(this.parts);
    });
  }

  /**
   * Takes out whatever else the file keeps that may be of other sheets than those it has, and links to other workbooks that nothing reads: once other
   * sheets were taken out, or to hand on what these show.
   */
  forgetOtherSheets(): Promise<void> {
    return this.parts.whole(async () => {
      await forgetOtherSheets(this.parts);
      await forgetOtherWorkbooks(this.parts);
    });
  }

  /** Makes the data of queries on a sheet data like any others. @returns the areas that they filled */
  async takeQueries(sheet: string): Promise<readonly string[]> {
    const { part } = await this.sheetNamed(sheet);
    return this.parts.whole(() => takeQueries(this.parts, part));
  }

  /** Leaves the values of pivot tables and takes the tables and the data behind them out of the file. */
  takePivots(): Promise<void> {
    return this.parts.whole(async () => {
      await takePivots(this.parts, (await workbookOutline(this.parts)).sheets);
      await forgetPivotCharts(this.parts);
    });
  }

  /** Makes a template the workbook that somebody opens from it, which is what other programs take the ending .xlsx for. */
  noTemplate(): Promise<void> {
    return noTemplate(this.parts);
  }

  definedNames(): Promise<readonly NameReading[]> {
    return definedNames(this.parts);
  }

  /** Names that a program keeps for itself, such as for the printed area. */
  namesOfPrograms(): Promise<readonly NameReading[]> {
    return namesOfPrograms(this.parts);
  }

  tables(): Promise<readonly TablePlace[]> {
    return tablesIn(this.parts);
  }

  /** Puts other formulas behind defined names. */
  changeNames(names: readonly NameReading[]): Promise<void> {
    return changeNames(this.parts, names);
  }

  /**
   * Puts other formulas in place of those that no cell holds, of rules and charts, where they hold a word.
   * @param mend gives the formula of a sheet as it is to be, without "=" as it stands there; charts name the sheet themselves
   */
  async mendBesideCells(word: string, mend: (formula: string, sheet: string) => string): Promise<void> {
    const { sheets } = await workbookOutline(this.parts);
    for (const part of this.parts.names()) {
      const sheet = sheets.find((one) => one.part === part)?.name ?? "";
      await mendBesideCells(this.parts, part, word, (formula) => mend(formula, sheet));
    }
  }

  /** Makes whatever opens the file calculate every formula of it. */
  calculateOnOpening(): Promise<void> {
    return calculateOnOpening(this.parts);
  }

  /** True for a file with a digital signature over its parts. */
  isSigned(): Promise<boolean> {
    return isSigned(this.parts);
  }

  /** The file; a changed one is no longer signed. */
  async bytes(): Promise<Uint8Array<ArrayBuffer>> {
    if (this.parts.isChanged) await dropSignatures(this.parts);
    return this.parts.bytes();
  }

  private async sheetNamed(name: string): Promise<ListedSheet> {
    const found = (await workbookOutline(this.parts)).sheets.find((one) => one.name.toLowerCase() === name.toLowerCase());
    if (found?.kind !== "worksheet") throw new WorkbookProblem(sheetNotInFile(name));
    return found;
  }

  private async names(): Promise<ReadonlySet<string>> {
    return new Set((await workbookOutline(this.parts)).names.map(({ name }) => name.toUpperCase()));
  }

  private async sharedTexts(): Promise<readonly SharedText[]> {
    const { part } = await workbookOutline(this.parts);
    return sharedTexts(this.parts, (await relationshipsOf(this.parts, part)).find(({ type }) => type === "sharedStrings")?.target);
  }
}
