import { findCalls } from "../../sharing/findCalls";
import { plainFormula } from "../../sharing/plain/plainFormula";
import { plainSheets } from "../../sharing/plain/plainSheets";
import { ReadSheets, namesOf } from "../../sharing/plain/reading/ReadSheets";
import { WorkingsSheet } from "../../sharing/plain/WorkingsSheet";
import type { SheetPlan } from "../../workbook/SheetPlan";
import type { CellReading } from "../../workbook/Workbook";

import { putPlain } from "../../xlsx/handedOn/putPlain";
import { WorkbookPackage } from "../../xlsx/package/WorkbookPackage";
import { newFileOf } from "../../xlsx/planned/addPlanned";

export interface PlainRunSheet {
  readonly content: Uint8Array<ArrayBuffer>;
  /** Functions without a plain form, whose answer is left open. */
  readonly leftOpen: readonly string[];
}

const NO_ANSWER = "NA()";

/**
 * A blank run sheet in built-in functions. A call that has no such form gives #N/A, as the function itself does where no answer follows; the
 * sheet's formulas are made for that. Nothing is fixed, as there is no value yet that could be.
 */
export async function plainRunSheet(plan: SheetPlan, day: string): Promise<PlainRunSheet> {
  const leftOpen = new Set<string>();
  const options = { date: day, areUnfilled: true };
  const first = plainSheets({ sheets: [readingOf(plan)] }, options);
  const fixed = new Set(first.cells.filter(({ kind }) => kind === "fixed").map(({ cell }) => cell));
  const read = new ReadSheets({ sheets: [readingOf(plan)] });
  const isWritten =
    (cell: string) =>
    (formula: string): boolean => {
      const found = read.formulas.find(({ reading }) => reading.cell === cell);
      const workings = new WorkingsSheet("Workings");
      return found !== undefined && plainFormula(formula, read.around(found, namesOf([]), true), options, workings).kind !== "none";
    };
  const mended = {
    ...plan,
    cells: plan.cells.map((cell) =>
      cell.formula === undefined || !fixed.has(cell.cell) ? cell : { ...cell, formula: withoutAnswers(cell.formula, isWritten(cell.cell), leftOpen) },
    ),
  };
  const plain = plainSheets({ sheets: [readingOf(mended)] }, options);
  const file = await WorkbookPackage.of(await newFileOf([mended], { calculateOnOpening: true }));
  await putPlain(file, plain, new Map());
  return { content: await file.bytes(), leftOpen: [...leftOpen] };
}

function withoutAnswers(formula: string, isWritten: (formula: string) => boolean, leftOpen: Set<string>): string {
  const calls = findCalls(formula);
  const outermost = calls.filter(({ start, end }) => !calls.some((other) => other.start < start && other.end >= end));
  return outermost.reduceRight((text, { name, start, end }) => {
    if (isWritten(`=${formula.slice(start, end)}`)) return text;
    leftOpen.add(name);
    return `${text.slice(0, start)}${NO_ANSWER}${text.slice(end)}`;
  }, formula);
}

const readingOf = ({ name, cells }: SheetPlan) => ({
  sheet: name,
  range: "",
  rows: [
    cells.map(({ cell, content, formula = "" }): CellReading => ({
      ...{ cell, formula, value: formula === "" ? (content ?? null) : "", shown: "", error: "", message: "", spill: "" },
    })),
  ],
});
