import { isSignedFile } from "../../problems/files/signatureWords";
import {
  datesMoved,
  noSheetsInFile,
  notAWorkbookFile,
  otherFile,
  readingFailed,
  tooManySheets,
  tooMuchInFile,
} from "../../problems/files/fileProblems";
import type { GridName } from "../../workbook/grid/writing/definedNames";
import { WorkbookProblem } from "../../workbook/Workbook";
import { typedFormula } from "../../xlsx/formulas/storedFormula";
import { fileKind } from "./fileKind";
import { damageInWords } from "../../xlsx/parts/damageInWords";
import { DamagedFile, type FileParts } from "../../xlsx/parts/FileParts";
import { isSigned } from "../../xlsx/package/forgetting/signature";
import { Findings } from "./reading/Findings";
import { FormulaReader, type FormulaSurroundings } from "./reading/FormulaReader";
import { engineKnows, type EngineKnows } from "./reading/notCalculated";
import { sharedTexts } from "../../xlsx/parts/sharedTexts";
import { besideCells, readSheet, type ReadSheet } from "./reading/sheetsPart";
import { stylesPart } from "./reading/stylesPart";
import type { Table } from "../../xlsx/parts/tablePart";
import { workbookPart, type NameEntry } from "./reading/workbookPart";

/** Everything of a workbook file that can be shown, and what cannot. */
export interface ReadWorkbook {
  readonly sheets: readonly ReadSheet[];
  readonly names: readonly GridName[];
  readonly findings: Findings;
  /** True where the file itself says that its values may be from before. */
  readonly isStale: boolean;
  /** True where the file counts days from 1904, and the grid from 1900. */
  readonly from1904: boolean;
}

// The grid takes about 4 s for 100,000 cells of which a tenth are formulas, and three times that for three times as many, on two cores.
export const MOST_CELLS = 200_000;
const MOST_SHEETS = 200;
const MOST_BYTES = 100_000_000;

/** How much of a file is read, and how. */
export interface ReadSettings {
  readonly sheets: number;
  readonly cells: number;
  /** The sheets that are read, in small letters; left out: all. */
  readonly only?: ReadonlySet<string>;
  /** Where formulas with other functions are to keep their values; left out, they are read. */
  readonly knowsFunction?: EngineKnows["knowsFunction"];
  /** Cells whose formulas are to keep their values as well. */
  readonly isKept?: FormulaSurroundings["isKept"];
}

export const IN_THE_PAGE: ReadSettings = { sheets: MOST_SHEETS, cells: MOST_CELLS };

/** @throws WorkbookProblem when the content is no .xlsx file, or holds more than can be opened */
export async function readWorkbook(content: Uint8Array<ArrayBuffer>, settings: ReadSettings = IN_THE_PAGE): Promise<ReadWorkbook> {
  if (content.length > MOST_BYTES) throw new WorkbookProblem(tooMuchInFile);
  try {
    const { kind, parts } = await fileKind(content);
    if (parts === undefined) throw new WorkbookProblem(otherFile[kind] ?? notAWorkbookFile);
    return await readParts(parts, settings);
  } catch (problem) {
    if (problem instanceof WorkbookProblem) throw problem;
    if (problem instanceof DamagedFile) throw new WorkbookProblem(damageInWords(problem));
    throw new WorkbookProblem(readingFailed(String(problem)));
  }
}

async function readParts(
  parts: FileParts,
  { sheets: mostSheets, cells: mostCells, only, knowsFunction, isKept }: ReadSettings,
): Promise<ReadWorkbook> {
  const findings = new Findings();
  const workbook = await workbookPart(parts, findings);
  const isRead = (sheet: string | undefined): boolean => sheet === undefined || only === undefined || only.has(sheet.toLowerCase());
  const entries = workbook.sheets.filter(({ name }) => isRead(name));
  const names = workbook.names.filter(({ sheet }) => isRead(sheet));
  const { from1904 } = workbook;
  if (entries.length > mostSheets) throw new WorkbookProblem(tooManySheets(entries.length, mostSheets));
  if (entries.length === 0) throw new WorkbookProblem(noSheetsInFile);
  const tables: Table[] = [];
  for (const entry of entries) tables.push(...(await besideCells(parts, entry, findings)));
  const texts = await sharedTexts(parts, workbook.texts);
  const looks = await stylesPart(parts, workbook.styles);
  const typedNames = names.map((one) => ({ ...one, refersTo: typedFormula(one.refersTo).slice(1) }));
  const around = {
    names: new Set(names.map(({ name }) => name.toUpperCase())),
    tables,
    engine: engineKnows(typedNames, knowsFunction),
    findings,
    isKept,
  };
  const cells = { left: mostCells, most: mostCells };
  const sheets: ReadSheet[] = [];
  for (const entry of entries) sheets.push(await readSheet(parts, entry, { ...around, texts, looks, from1904, cells }));
  if (from1904) findings.note(datesMoved);
  if (await isSigned(parts)) findings.note(isSignedFile);
  return { sheets, names: names.flatMap((name) => nameHeld(name, tables, findings)), findings, isStale: workbook.isStale, from1904 };
}

function nameHeld({ name, refersTo, sheet }: NameEntry, tables: readonly Table[], findings: Findings): GridName[] {
  // A name stands in no cell, so what it says of "this row" cannot be told.
  const reader = new FormulaReader({ names: new Set(), tables, engine: engineKnows([]), findings: new Findings() });
  const typed = reader.formula(refersTo, {}, { sheet: "", row: -1, column: -1 });
  if (typed === undefined) findings.add("name", "");
  return typed === undefined ? [] : [{ name, refersTo: typed.slice(1), sheet }];
}
