import type { FWorksheet } from "@univerjs/sheets/facade";
import { answersDiffer, dayOrChance } from "../../problems/files/fileProblems";
import { plainNumber } from "../../problems/quoted";
import { cellAt } from "../../workbook/cellArea";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { readValue } from "../../workbook/grid/reading/readCell";
import type { CellContent, CellReading } from "../../workbook/Workbook";
import type { AnswerInFile } from "./reading/CellsReader";
import type { ReadSheet } from "./reading/sheetsPart";

/** Programs round the last digits differently, and so do sums taken in another order. */
const ALIKE = 1e-9;
/** The program that saved the file did not know the function; our own are unknown wherever the add-in is not loaded. */
export const UNKNOWN_FUNCTION = "#NAME?";
const DAY_OR_CHANCE = /\b(TODAY|NOW|RAND|RANDBETWEEN|RANDARRAY)\(/i;

/** Compares what the cell formulas of an opened file give here with what was written down beside them. One sentence each on what differs. */
export function answersInFile(engine: GridEngine, sheets: readonly ReadSheet[]): string[] {
  const differing: { cell: string; inFile: string; here: string }[] = [];
  let isVolatile = false;
  for (const { sheet, answers } of sheets) {
    const there = engine.book.getSheetByName(sheet.name);
    if (there === null) continue;
    for (const answer of answersOtherwise(engine, there, answers)) {
      if (answer.content === UNKNOWN_FUNCTION) continue;
      const here = readValue(engine, there, answer.row, answer.column);
      differing.push({ cell: `${sheet.name}!${cellAt(answer.row, answer.column)}`, inFile: shown(answer.content), here: shown(here.value) });
    }
    isVolatile ||= Object.values(sheet.data.cellData ?? {}).some((row) =>
      Object.values((row ?? {}) as Record<number, { f?: string | null }>).some(({ f }) => DAY_OR_CHANCE.test(f ?? "")),
    );
  }
  const [first] = differing;
  if (first === undefined) return [];
  const differs = answersDiffer(differing.length, first.cell, first.inFile, first.here);
  return [isVolatile ? `${differs} ${dayOrChance}` : differs];
}

/** Cells of a sheet that hold something else here than the file has of them. */
export const answersOtherwise = (engine: GridEngine, sheet: FWorksheet, answers: readonly AnswerInFile[]): readonly AnswerInFile[] =>
  answers.filter((answer) => !isSame(answer, readValue(engine, sheet, answer.row, answer.column)));

/** True where a cell holds here what was written down beside its formula. */
function isSame({ content, isError }: AnswerInFile, { value, error }: Pick<CellReading, "value" | "error">): boolean {
  if (isError || error !== "") return isError && error === content;
  if (typeof content === "number" && typeof value === "number")
    return Math.abs(content - value) <= ALIKE * Math.max(Math.abs(content), Math.abs(value));
  return (content ?? "") === (value ?? "");
}

const shown = (value: CellContent): string =>
  typeof value === "number" ? plainNumber(value) : value === null || value === "" ? "blank" : String(value);
