import type { Cell } from "../../runsheet/expressions/Expression";
import type { BalanceCheck } from "../../runsheet/sheet/balanceRows";
import { has } from "../../runsheet/kinds";
import type { CheckName } from "../../runsheet/sheet/layout";
import { CLOCK, LABEL } from "../../runsheet/sheet/Columns";
import { cellNameWords } from "../../runsheet/words/cellNameWords";
import { balanceNameWords } from "../../runsheet/words/balance/balanceMeanings";
import { balanceWords } from "../../runsheet/words/balance/balanceWords";
import { sheetWords } from "../../runsheet/words/sheetWords";
import { stageWords } from "../../runsheet/words/stageWords";
import { isBox, type SheetCells } from "./RunCells";

/** What a cell is called, in the words that are printed on its sheet. */
export interface CellName {
  /** "lost", "± 95 %", "Left as vapour, of dry": what kind of quantity it is, as printed, without its unit. */
  readonly core: string;
  /** The label of its row where that says more than the core: "Round 3". */
  readonly row: string;
  /** "Sample 2" on a sheet of several, else "". */
  readonly sample: string;
  /** "lost, round 3, sample 2" */
  readonly text: string;
  /** "g", "min", "" */
  readonly unit: string;
  /** The heading of its block. */
  readonly block: string;
}

/** The name of a cell: the title of its box or the heading of its column, the label of its row, and its sample. */
export function nameOf(cells: SheetCells, at: Cell): CellName {
  const { sheet } = cells;
  const head = headName(cells, at);
  if (head !== undefined) return head;
  return at.column > sheet.columns.verdict ? workingName(cells, at) : printedName(cells, at);
}

/** The lines at the top have no labels of their own. */
function headName({ sheet }: SheetCells, { row, column }: Cell): CellName | undefined {
  const name = column > sheet.columns.verdict ? undefined : Object.entries(sheet.rows.head).find(([, own]) => own === row)?.[0];
  const words = { ...cellNameWords.head, openly: lastLineName(sheet), ...(isBalance(sheet) ? balanceNameWords.head : {}) };
  const core = name && words[name as keyof typeof words];
  return core === undefined ? undefined : named(core, "", "", "", "");
}

/** What the last line of the head tells is another thing on each kind of run. */
function lastLineName({ options: { kind } }: SheetCells["sheet"]): string {
  const block = (["openFire", "caught", "stages", "compound"] as const).find((one) => has(kind, one));
  return cellNameWords.lastLine[block ?? "drying"];
}

function printedName(cells: SheetCells, at: Cell): CellName {
  const { row, column } = at;
  const { columns, options } = cells.sheet;
  const planned = cells.planned(row, column);
  const block = blockOf(cells, row);
  const [label, heading] = [labelAt(cells, row), headingOver(cells, row, column)];
  const check = checkAt(cells, at);
  if (check !== undefined) return named(check.isFinding ? cellNameWords.finding : cellNameWords.verdict, label, "", "", block);
  if (column === LABEL) return named(cellNameWords.note, "", "", "", block);
  if (planned?.style === "runBeside") return named(cellNameWords.beside, label, "", "", block);
  // Of a balance check "2 s" is no second sample, and what it finds stands under one heading.
  const numbered = isBalance(cells.sheet) ? null : /^(\d+) (.+)$/.exec(heading);
  const isSample = heading.startsWith(cellNameWords.sample) || (isBalance(cells.sheet) && heading === balanceWords.performance.columns.value);
  const sample = options.replicates === 1 ? "" : numbered ? sheetWords.sample(Number(numbered[1])) : isSample ? heading : "";
  const own = isSample ? "" : (numbered?.[2] ?? heading);
  if (isBox(planned)) {
    const rule = cells.ruleOver(row, column);
    // A box of a table is told from the others of its rule by its row.
    const isOfTable = rule?.over.kind === "range" && rule.over.from.row < rule.over.to.row;
    return named(rule?.promptTitle ?? label, isOfTable ? label : "", sample, unitOfTime(own) ?? (unitIn(own) || unitIn(label)), block);
  }
  // A figure with its words to the right of it, the total of a table, or one of the columns that a table has.
  const beside = column >= columns.reckoned(1, 1).column && column < columns.verdict ? constantAt(cells, row, columns.verdict) : "";
  if (beside !== "") return named(beside, "", sample, own === cellNameWords.grams ? "g" : unitIn(own), block);
  if (planned?.style === "runTotalNumber" || own === "") return named(label, "", sample, unitIn(label), block);
  // On a balance check every column of figures is of grams.
  return named(own, label, sample, unitIn(own) || (isBalance(cells.sheet) ? "g" : ""), block);
}

/** Right of everything printed a label stands once for its row; what counts of weighings, and their minutes, under a heading. */
function workingName(cells: SheetCells, { row, column }: Cell): CellName {
  const { columns, options } = cells.sheet;
  const place = column - columns.workingLabel;
  const [own, label, block] = [textAt(cells, row, columns.workingLabel), textAt(cells, row, LABEL), blockOf(cells, row)];
  // What is told of cells typed over stands beside its label, however far that reaches.
  const watched = own === sheetWords.workings.typedOver ? own.split("; ")[place - 1] : undefined;
  if (watched !== undefined) return named(watched, place === 1 ? "" : label, "", "", block);
  const isAll = column === columns.elapsed;
  if (column > columns.elapsed && own === sheetWords.workings.steadyFiring) return named(sheetWords.workings.proving, "", "", "", block);
  if (column > columns.elapsed) return drawnName(cells, row, column, block);
  if (isAll && isBalance(cells.sheet)) return named(balanceNameWords.number, label, "", "", block);
  const isOfAll = own.includes(cellNameWords.eachAndAll) || own === stageWords.workings.done;
  // The minutes before the first firing stand beside the heading of its table.
  if (isAll && !isOfAll) return named(sheetWords.elapsed, isBand(cells, row) || label === "" ? own : label, "", unitIn(sheetWords.elapsed), block);
  const hasSeveral = options.replicates > 1 && cells.planned(row, columns.working(row, 2).column)?.formula !== undefined;
  const sample = isAll ? cellNameWords.allSamples : hasSeveral && place <= options.replicates ? sheetWords.sample(place) : "";
  if (own === "") return named(sheetWords.workings.corrected, label, sample, "g", block);
  const parts = own.split("; ");
  const part = parts[place - 1] ?? own;
  const ofShare = own === sheetWords.workings.together ? label : "";
  // A share without a format of its own is a fraction all the same.
  const isShare = own === sheetWords.workings.together && place === 1;
  if (parts.length > 1) return named(part, ofShare, "", isShare ? "fraction" : unitIn(part), block);
  return named(own.replace(cellNameWords.eachAndAll, ""), "", sample, unitIn(own), block);
}

/** What a chart alone needs: the ends of its axes, and what counts of a weighing with its minutes. */
function drawnName({ sheet: { columns, options } }: SheetCells, row: number, column: number, block: string): CellName {
  const { frame, drawn, drawnMinutes } = sheetWords.workings;
  const places = Array.from({ length: options.replicates }, (_, index) => index + 1);
  for (const [axis, name] of [
    ["x", drawnMinutes],
    ["y", drawn],
  ] as const) {
    const sample = places.find((place) => columns.drawn(row, place, axis).column === column);
    if (sample !== undefined) return named(name, "", sheetWords.sample(sample), unitIn(name), block);
  }
  return named(frame, "", "", "", block);
}

function named(core: string, row: string, sample: string, unit: string, block: string): CellName {
  const [bare, label] = [withoutUnit(core), withoutUnit(row)];
  const own = label.toLowerCase() === bare.toLowerCase() ? "" : label;
  return { core: bare, row: own, sample, text: joinedName(bare, own, sample), unit, block };
}

export const joinedName = (...parts: readonly string[]): string =>
  parts
    .filter((part) => part !== "")
    .map(uncapitalised)
    .join(", ");

const UNIT = /, (g|min|%|°C|°F)(?=$| with)| \((min|days)\)$/;
const unitIn = (text: string): string => (text === "g" ? "g" : (UNIT.exec(text)?.slice(1).find(Boolean) ?? ""));
/** The unit of a time in a table whose rows are weighings: none of a clock. */
const unitOfTime = (heading: string): string | undefined => (/^minutes$/i.test(heading) ? "min" : /^clock$/i.test(heading) ? "" : undefined);
/** What is printed, without its unit and the number of a check. */
export const withoutUnit = (text: string): string => text.replace(UNIT, "").replace(/^\d+ {2}/, "");

/** "vessel + char", but "CHECKS" stays. */
export const uncapitalised = (text: string): string => (/^[A-Z][^A-Z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text);

const textAt = (cells: SheetCells, row: number, column: number): string => {
  const content = cells.planned(row, column)?.content;
  return typeof content === "string" ? content : "";
};

/** The label of a row; that of a stage in the results is calculated from what the person called it. */
function labelAt(cells: SheetCells, row: number): string {
  const value = cells.planned(row, LABEL)?.style === "runLabel" && textAt(cells, row, LABEL) === "" ? cells.at(row, LABEL) : null;
  return typeof value === "string" ? value : textAt(cells, row, LABEL);
}

const isBalance = ({ options }: SheetCells["sheet"]): boolean => options.kind === "balance";

/** A text that is planned in the verdict's column, where most rows have a formula. */
const constantAt = (cells: SheetCells, row: number, column: number): string =>
  cells.planned(row, column)?.style === "runVerdict" ? textAt(cells, row, column) : "";

const isBand = (cells: SheetCells, row: number): boolean => (cells.planned(row, LABEL)?.style ?? "").includes("Band");

function headingOver(cells: SheetCells, row: number, column: number): string {
  for (let above = row - 1; above > 0; above--) if (isBand(cells, above)) return textAt(cells, above, column);
  return "";
}

function blockOf(cells: SheetCells, row: number): string {
  for (let above = row; above > 0; above--) if (isBand(cells, above)) return textAt(cells, above, LABEL);
  return "";
}

export const isPrinted = ({ sheet }: SheetCells, { column }: Cell): boolean => column <= sheet.columns.verdict;

/** Whether a cell is a verdict or a finding of the checks, and of which. */
export function checkAt({ sheet }: SheetCells, { row, column }: Cell) {
  const lines: readonly { readonly check: CheckName | BalanceCheck; readonly row: number }[] = sheet.rows.checks.lines;
  const line = lines.find((one) => one.row === row);
  if (line === undefined || column > CLOCK + 1 || column < CLOCK) return undefined;
  return { check: line.check, isFinding: column === CLOCK + 1 };
}

/** What a printed label or heading comes to as the core of a name: without its unit, and the number of its sample or check. */
export const coreOf = (printed: string): string => withoutUnit(printed.replace(cellNameWords.eachAndAll, "").replace(/^\d+ +/, ""));
