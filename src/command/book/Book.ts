import { notAWorkbookFile, otherFile } from "../../problems/files/fileProblems";
import type { Place } from "../../explanation/saved/calculatedFromThese";
import { plainNumber } from "../../problems/quoted";
import type { NameReading } from "../../sharing/plain/reading/PlainReading";
import type { RuleReading } from "../../sharing/plain/reading/RuleReading";
import type { TablePlace } from "../../sharing/plain/reading/Surroundings";
import { fileKind } from "../../workbench/xlsx/fileKind";
import { cellArea } from "../../workbook/cellArea";
import type { CellReading, RangeReading } from "../../workbook/Workbook";
import { typedFormula } from "../../xlsx/formulas/storedFormula";
import { attributeOf, childNamed } from "../../xlsx/package/parts/markup";
import type { CellInFile } from "../../xlsx/package/cells/readCells";
import { WorkbookPackage } from "../../xlsx/package/WorkbookPackage";
import { workbookOutline } from "../../xlsx/package/workbookOutline";
import { isOn } from "../../xlsx/parts/readXml";
import { Refusal } from "../Refusal";
import { callsBeside } from "./callsBeside";
import { noSheets, noSuchSheet } from "../words/refusals";

export interface BookSheet {
  readonly name: string;
  readonly isHidden: boolean;
  /** Every cell with anything in it or a look of its own. */
  readonly cells: readonly CellInFile[];
  /** The cells that hold anything, row by row. Numbers are shown plainly, whatever their format. */
  readonly reading: RangeReading;
  /** True where a rule of it calls us, or a defined name in its formulas or rules does. */
  readonly callsBeside: boolean;
}

/** A workbook file, all of its sheets read as the program that saved it left them. */
export interface Book {
  readonly content: Uint8Array<ArrayBuffer>;
  readonly file: WorkbookPackage;
  readonly sheets: readonly BookSheet[];
  readonly names: readonly NameReading[];
  readonly tables: readonly TablePlace[];
  /** True where the file itself says that its values may be from before. */
  readonly isStale: boolean;
  /** True where the values are not those of the file, but what its formulas come to here. */
  readonly isCalculatedHere: boolean;
  /** Calculated from a call of ours, kept as saved where all else was calculated here, and not shown to be right. */
  readonly uncheckedHere?: readonly Place[];
  /** True where the file says that formulas may go round in a circle until they settle. */
  readonly goesRound: boolean;
  /** True where the file says that numbers are rounded as they are shown before anything is calculated from them. */
  readonly roundsAsShown: boolean;
  /** The formulas of rules for colouring, by sheet, each with the cells that it is for. */
  readonly colouring: readonly RuleReading[];
}

/**
 * @param told of each sheet as soon as it is read
 * @throws Refusal for what is no workbook; WorkbookProblem for one that cannot be read
 */
export async function readBook(content: Uint8Array<ArrayBuffer>, told: (sheet: string, cells: number) => void = () => undefined): Promise<Book> {
  const file = await opened(content);
  const read: (Omit<BookSheet, "callsBeside"> & { readonly rules: readonly string[] })[] = [];
  const colouring: RuleReading[] = [];
  for (const { name, kind, isHidden } of await file.sheets()) {
    if (kind !== "worksheet") continue;
    const cells: CellInFile[] = [];
    await file.readCells(name, (cell) => void cells.push(cell));
    told(name, cells.length);
    const rules: string[] = [];
    // Looked at and left as it is.
    await file.changeRules(name, (rule) => {
      rules.push(...rule.formulas);
      if (rule.kind === "colouring") colouring.push({ ...rule, sheet: name });
      return undefined;
    });
    read.push({ name, isHidden, cells, reading: readingOf(name, cells), rules });
  }
  if (read.length === 0) throw new Refusal(noSheets);
  const names = await file.definedNames();
  const beside = callsBeside(read, names);
  const sheets = read.map(({ name, isHidden, cells, reading }): BookSheet => ({ name, isHidden, cells, reading, callsBeside: beside.has(name) }));
  const outline = await workbookOutline(file.parts);
  const calculation = childNamed(outline.root, "calcPr");
  const says = (name: string): string | undefined => (calculation === undefined ? undefined : attributeOf(calculation, name));
  const isOff = (name: string): boolean => ["0", "false"].includes(says(name) ?? "");
  return {
    content,
    file,
    sheets,
    names,
    tables: await file.tables(),
    // ECMA-376 Part 1, 18.2.2: the program is to calculate everything on opening, had not finished when it saved, or calculates when asked alone.
    isStale: isOn(says("fullCalcOnLoad")) || isOff("calcCompleted") || (says("calcMode") === "manual" && isOff("calcOnSave")),
    isCalculatedHere: false,
    goesRound: isOn(says("iterate")),
    roundsAsShown: isOff("fullPrecision"),
    colouring,
  };
}

async function opened(content: Uint8Array<ArrayBuffer>): Promise<WorkbookPackage> {
  const { kind, parts } = await fileKind(content);
  if (parts === undefined) throw new Refusal(otherFile[kind] ?? notAWorkbookFile);
  return WorkbookPackage.of(parts);
}

/** Reading a formula token by token takes most of the time of long books, and most formulas hold no stored name. */
const typed = (inFile: string): string => (/_xl|retort/i.test(inFile) ? typedFormula(inFile) : `=${inFile}`);

function readingOf(sheet: string, cells: readonly CellInFile[]): RangeReading {
  const rows: CellReading[][] = [];
  let last = -1;
  for (const cell of cells) {
    const reading = cellReading(cell);
    if (reading.formula === "" && reading.value === null) continue;
    if (cell.row !== last) rows.push([]);
    last = cell.row;
    rows.at(-1)?.push(reading);
  }
  return { sheet, range: "", rows };
}

function cellReading({ cell, formula, formulaKind, fills, spills, value }: CellInFile): CellReading {
  const error = typeof value === "object" && value !== null ? value.error : "";
  const held = error !== "" ? error : (value as Exclude<typeof value, { error: string }>);
  const area = formulaKind === "array" ? cellArea(fills) : undefined;
  return {
    cell,
    // The cells of a what-if table have no formula that anybody typed.
    formula: formulaKind === "none" || formulaKind === "dataTable" || formula === "" ? "" : typed(formula),
    value: held,
    shown: typeof held === "number" ? plainNumber(held) : typeof held === "boolean" ? String(held).toUpperCase() : (held ?? ""),
    error,
    message: "",
    spill: area !== undefined && area.rows * area.columns > 1 ? fills.replaceAll("$", "") : "",
    ...(spills && { spills }),
  };
}

/** The sheets of a workbook file, whose cells are not looked at. @throws Refusal as readBook does */
export const sheetsOf = async (content: Uint8Array<ArrayBuffer>): Promise<readonly Pick<BookSheet, "name">[]> =>
  (await (await opened(content)).sheets()).filter(({ kind }) => kind === "worksheet");

/** @throws Refusal naming the sheets that there are */
export function sheetCalled<S extends Pick<BookSheet, "name">>(book: { readonly sheets: readonly S[] }, name: string): S {
  const found = book.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  if (found !== undefined) return found;
  throw new Refusal(noSuchSheet(name, book.sheets.map((sheet) => sheet.name))); // prettier-ignore
}
