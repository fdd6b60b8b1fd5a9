import { macrosNameSheets } from "../../problems/files/packageProblems";
import { plainBanner, plainBannerBeside } from "../../problems/sharing/sharedCopyWords";
import { calculationRecord } from "../../sharing/record/calculationRecord";
import { recordName } from "../../sharing/copyNames";
import { findCalls } from "../../sharing/findCalls";
import { everyFormulaCell } from "../../sharing/formulaCells";
import { namesWritten } from "../../sharing/plain/plainNames";
import { plainSheets, type PlainCell, type PlainSheets } from "../../sharing/plain/plainSheets";
import { takenOut, type RulesPut } from "../../sharing/plain/plainRules";
import type { FileWanted } from "../../sharing/shareInFile";
import type { SheetPlan } from "../../workbook/SheetPlan";
import { areaNamed } from "../../workbook/areaNamed";
import { cellsOfArea } from "../../workbook/cellArea";
import { WorkbookProblem, type CellReading, type RangeReading } from "../../workbook/Workbook";
import { WorkbookPackage } from "../package/WorkbookPackage";
import { addPlanned } from "../planned/addPlanned";
import { bookAround, type BookAround } from "./bookAround";
import { heldCells, type HeldCells } from "./HeldCells";
import { bannerPlaceIn, putBanner } from "./putBanner";
import { leaveAlone } from "./leaveAlone";
import { putPlain } from "./putPlain";
import { putGuards, putRules } from "./putRules";
import type { Handed } from "./valuesFile";

/** A sheet of the file, and what its cells hold there. */
export interface PlainSheet {
  readonly reading: RangeReading;
  readonly held: HeldCells;
}

export interface PlainWanted {
  /** The day of sharing, as it is to be printed. */
  readonly date: string;
  readonly newerFunctions?: boolean;
  /** For a file that has lost sheets since its cells were read: what the formulas may name, and what became of the rules before; left out: as the file is. */
  readonly alone?: { readonly around: BookAround; readonly rules: RulesPut };
  /** The sheets that say what they are and get a record. */
  readonly recorded: readonly string[];
  /** Told before each record is written. */
  readonly recording?: (formulas: number) => void;
  /** Awaited between the stages of the work; throws where the user has stopped. */
  readonly between?: () => Promise<void>;
}

export interface PlainMade {
  readonly plain: PlainSheets;
  readonly records: readonly string[];
  readonly put: RulesPut;
}

/**
 * A workbook file that lives without the add-in: these sheets with every call of ours in built-in functions, the records, and out of view the
 * sheet of workings and those that watch the fixed cells. Everything else on the sheets stays as it was.
 * @throws WorkbookProblem where the file cannot be changed so
 */
export async function plainFile(content: Uint8Array<ArrayBuffer>, { sheets, date, between }: Omit<FileWanted, "as">): Promise<Handed> {
  const file = await WorkbookPackage.of(content);
  // A file of its own is named .xlsx, as which programs open none with macros.
  if (await file.hasMacros()) throw new WorkbookProblem(macrosNameSheets);
  const recorded = sheets.map(({ sheet }) => sheet);
  await between?.();
  const around = await bookAround(file, recorded);
  await between?.();
  const read: PlainSheet[] = [];
  for (const reading of sheets) {
    const held = await heldCells(file, reading.sheet);
    read.push({ reading: asInFile(reading, held), held });
    await between?.();
  }
  const rules = await leaveAlone(file, recorded, {}, around);
  const sheetsBefore = (await file.sheets()).length;
  await between?.();
  await file.keepSheets(recorded);
  await between?.();
  const isAlone = (await file.sheets()).length < sheetsBefore;
  const { plain, put } = await leavePlainCells(file, read, { date, recorded, alone: { around, rules }, ...(between && { between }) });
  await between?.();
  if (isAlone) await file.forgetOtherSheets();
  await file.show(recorded[0] ?? "");
  const count = (wanted: string): number => plain.cells.filter(({ kind }) => kind === wanted).length;
  const wasSigned = await file.isSigned();
  return { content: await file.bytes(), wasSigned, cells: count("plain"), fixed: count("fixed"), takenOut: takenOut(put) };
}

/**
 * Writes every cell formula of an open file that calls one of our functions in built-in ones, in place, and adds the sheets that go with it.
 * @throws WorkbookProblem where the file cannot be changed so
 */
export async function leavePlainCells(
  file: WorkbookPackage,
  sheets: readonly PlainSheet[],
  { date, newerFunctions = false, alone, recorded, recording = () => undefined, between = async () => undefined }: PlainWanted,
): Promise<PlainMade> {
  const around = alone?.around ?? (await bookAround(file));
  const plain = plainSheets({ sheets: sheets.map(({ reading }) => reading), ...around }, { date, newerFunctions });
  await between();
  await putPlain(file, plain, new Map(sheets.map(({ reading, held }) => [reading.sheet, held])), around.names);
  await between();
  for (const sheet of new Set(around.tables.map((table) => table.sheet)))
    if (around.going?.isGone(sheet) !== true) await keepColumnFormulas(file, sheet);
  const withoutGuards = alone?.rules ?? (await rulesPut(file, sheets, plain, around, newerFunctions));
  const put = await putGuards(file, sheets.map(({ reading }) => reading.sheet), plain, withoutGuards); // prettier-ignore
  await file.noTemplate();
  const before = await file.sheets();
  const taken = before.map(({ name }) => name);
  const wanted: SheetPlan[] = [];
  const changed = new Set([...recorded, ...put.rules.map(({ sheet }) => sheet)]);
  const withRecord = sheets.map(({ reading }) => reading).filter(({ sheet }) => changed.has(sheet));
  for (const reading of withRecord) {
    const { sheet } = reading;
    const formulaCells = everyFormulaCell(reading);
    recording(formulaCells.length);
    const shared = { sheet, copy: sheet, date, formulaCells, rows: reading.rows, plainCells: plain.cells, put };
    wanted.push(calculationRecord(shared, recordName(sheet, taken)));
    const fixed = plain.cells.filter((one) => one.kind === "fixed" && one.sheet === sheet).length;
    const sized = plain.cells.filter((one) => one.keepsSize === true && one.sheet === sheet).length;
    const place = await bannerPlaceIn(file, sheet, withReserved(reading, plain.cells), false);
    const title = reading.rows.flat().find(({ cell }) => cell === place)?.value ?? "";
    const words = title === "" ? plainBanner(date, fixed, sized) : plainBannerBeside(String(title), date, fixed, sized);
    await putBanner(file, sheet, place, words, title !== "");
    await between();
  }
  // All at once: each time goes through the looks of the whole file.
  const records = await addPlanned(file, wanted);
  // What is out of view stays so.
  const hidden = new Set(before.filter(({ isHidden }) => isHidden).map(({ name }) => name));
  await file.hide(records.filter((_, place) => hidden.has(withRecord[place]?.sheet ?? "")));
  const besides = [...(plain.workings === undefined ? [] : [plain.workings.name]), ...plain.flags.map(({ name }) => name)];
  const others = (await file.sheets()).map(({ name }) => name).filter((name) => !besides.includes(name));
  await file.orderSheets([...others, ...besides]);
  return { plain, records, put };
}

/** A reading with the blank cells filled that an answer may need. */
function withReserved(reading: RangeReading, cells: readonly PlainCell[]): RangeReading {
  const filled = new Set(reading.rows.flat().filter(({ formula, value }) => formula !== "" || (value ?? "") !== "").map(({ cell }) => cell)); // prettier-ignore
  const reserved = cells
    .filter(({ sheet, area, cell }) => sheet === reading.sheet && area !== cell)
    .flatMap(({ area }) => cellsOfArea(areaNamed(area)))
    .map((row) => row.filter((cell) => !filled.has(cell)).map(reservedCell));
  return { ...reading, rows: [...reading.rows, ...reserved.filter((row) => row.length > 0)] };
}

const reservedCell = (cell: string): CellReading => ({ cell, formula: "", value: " ", shown: " ", error: "", message: "", spill: "" });

async function rulesPut(
  file: WorkbookPackage,
  sheets: readonly PlainSheet[],
  plain: PlainSheets,
  { names }: BookAround,
  newerFunctions: boolean,
): Promise<RulesPut> {
  const beside = await putRules(file, sheets.map(({ reading }) => reading.sheet), { newerFunctions }); // prettier-ignore
  // Names are written with the cells, before the rules that use them.
  return { ...beside, namesWritten: [...namesWritten(names, plain.names), ...beside.namesWritten] };
}

/** What a table fills into a new row of a column is what its cells hold now, where they all hold the same; a call of ours goes in any case. */
async function keepColumnFormulas(file: WorkbookPackage, sheet: string): Promise<void> {
  const isOurs = (formula: string): boolean => findCalls(`=${formula}`).length > 0;
  const formulas = new Map<string, string>();
  await file.readCells(sheet, ({ cell, formula }) => void formulas.set(cell, formula));
  await file.changeTableFormulas(sheet, (formula, cells) => {
    if (!isOurs(formula)) return formula;
    const [now, ...others] = new Set(cells.map((cell) => formulas.get(cell) ?? ""));
    return now === undefined || now === "" || others.length > 0 || isOurs(now) ? undefined : now;
  });
}

/**
 * A reading as the file has it. Numbers: it may count its days from 1904. Formulas entered over several cells at once: a host tells each of these cells
 * to hold the formula, and of none that it fills the others.
 */
function asInFile(reading: RangeReading, held: HeldCells): RangeReading {
  const arrays = [...held].flatMap(([cell, { fills = "" }]) => (fills === "" || fills === cell ? [] : [[cell, fills] as const]));
  const fillsFrom = new Map(arrays);
  const filled = new Set(arrays.flatMap(([cell, fills]) => cellsOfArea(areaNamed(fills)).flat().filter((one) => one !== cell))); // prettier-ignore
  const inFile = (cell: CellReading): CellReading => {
    const value = held.get(cell.cell)?.value;
    const spill = fillsFrom.get(cell.cell);
    const spills = held.get(cell.cell)?.spills === true;
    return {
      ...cell,
      ...(typeof value === "number" && typeof cell.value === "number" ? { value } : {}),
      ...(filled.has(cell.cell) ? { formula: "" } : {}),
      ...(spill === undefined || cell.formula === "" ? {} : { spill }),
      ...(spills && cell.formula !== "" && { spills }),
    };
  };
  return { ...reading, rows: reading.rows.map((row) => row.map(inFile)) };
}
