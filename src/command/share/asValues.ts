import { valuesBanner } from "../../problems/sharedCopyWords";
import { calculationRecord } from "../../sharing/calculationRecord";
import { filledDownTogether } from "../../sharing/filledDown";
import { everyFormulaCell } from "../../sharing/formulaCells";
import { recordName, valuesName } from "../../sharing/copyNames";
import { areaNamed } from "../../workbook/areaNamed";
import { cellArea, cellsOfArea, covers } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import type { CellChange, FileValue } from "../../xlsx/package/CellChange";
import type { EntryRuleInFile } from "../../xlsx/package/entryRules";
import { addPlanned } from "../../xlsx/planned/addPlanned";
import type { BookSheet } from "../book/Book";
import type { OpenBook } from "../book/openBook";
import { packing, recording } from "../words/refusals";
import { bannerCell } from "./banner";
import { fileValue } from "./fileValue";

/** What was made of one sheet. */
export interface SharedAsValues {
  readonly sheet: string;
  readonly copy: string;
  readonly record: string;
  /** Cells in which a value took the place of a cell formula. */
  readonly formulas: number;
  /** Where the copy says what it is. */
  readonly banner: string;
}

/**
 * Turns the book into copies of some of its sheets in which values stand in place of formulas, each beside its calculation record, and nothing
 * else. The copies say what they are, take no entries and look like it.
 */
export async function asValues(book: OpenBook, shared: readonly BookSheet[], day: string): Promise<readonly SharedAsValues[]> {
  const { file } = book;
  for (const sheet of shared) await freeze(book, sheet);
  await file.keepSheets(shared.map(({ name }) => name));
  const taken: string[] = [];
  const named = shared.map((sheet) => ({ sheet, copy: valuesName(sheet.name, taken), record: recordName(sheet.name, taken) }));
  for (const { sheet } of named) await closeEntries(book, sheet);
  await file.renameSheets(new Map(named.map(({ sheet, copy }) => [sheet.name, copy])));
  const made: SharedAsValues[] = [];
  for (const { sheet, copy, record } of named) {
    const formulaCells = everyFormulaCell(sheet.reading);
    book.progress(recording(formulaCells.length));
    await addPlanned(file, [calculationRecord({ sheet: sheet.name, copy, date: day, formulaCells: filledDownTogether(formulaCells) }, record)]);
    const banner = bannerCell(sheet.cells);
    const [look] = await file.addLooks([[0, { bold: true, fill: BANNER_FILL, colour: BANNER_COLOUR }]]);
    await file.changeCells(copy, [{ cell: banner, content: { kind: "value", value: valuesBanner(day) }, ...(look === undefined ? {} : { look }) }]);
    made.push({ sheet: sheet.name, copy, record, formulas: formulaCells.length, banner });
  }
  await file.orderSheets(made.flatMap(({ copy, record }) => [copy, record]));
  await file.unhide(made.map(({ copy }) => copy));
  if (made[0] !== undefined) await file.show(made[0].copy);
  book.progress(packing);
  return made;
}

const BANNER_FILL = "#FFF2CC";
const BANNER_COLOUR = "#7F6000";

/** A blank that a formula gave is blank. */
const frozen = (reading: CellReading): FileValue => (reading.error === "" && reading.value === "" ? null : fileValue(reading));

async function freeze({ file }: OpenBook, { name, cells, reading }: BookSheet): Promise<void> {
  const readings = new Map(reading.rows.flat().map((one) => [one.cell, one]));
  const changes = new Map<string, CellChange>();
  for (const cell of cells) {
    // The cells of a what-if table are values already, behind a formula of a kind of their own.
    if (cell.formulaKind === "none" || cell.formulaKind === "dataTable") continue;
    for (const filled of cell.formulaKind === "array" ? cellsOfArea(areaNamed(cell.fills)).flat() : [cell.cell]) {
      const found = readings.get(filled);
      changes.set(filled, { cell: filled, content: { kind: "value", value: found === undefined ? null : frozen(found) } });
    }
  }
  await file.changeCells(name, [...changes.values()]);
}

/** Takes prompts, lists and the look of boxes to fill in away. Cells under a rule of their own are calculated ones, and keep their look. */
async function closeEntries({ file }: OpenBook, { name, cells }: BookSheet): Promise<void> {
  const areas = boxes(await file.takeEntryRules(name));
  if (areas.length === 0) return;
  const inBoxes = cells.filter(({ row, column }) => areas.some((area) => covers(area, row, column)));
  const looks = [...new Set(inBoxes.map(({ look }) => look))];
  const without = await file.addLooks(
    looks.map((look) => [look, { fill: "", border: { left: null, right: null, top: null, bottom: null } }] as const),
  );
  const lookOf = new Map(looks.map((look, index) => [look, without[index] ?? look]));
  const changes = inBoxes.map(({ cell, look }): CellChange => ({ cell, content: { kind: "kept" }, look: lookOf.get(look) ?? look }));
  await file.changeCells(name, changes);
}

const boxes = (rules: readonly EntryRuleInFile[]) =>
  rules.filter(({ kind }) => kind !== "custom").flatMap(({ areas }) => areas.flatMap((area) => cellArea(area.replaceAll("$", "")) ?? []));
