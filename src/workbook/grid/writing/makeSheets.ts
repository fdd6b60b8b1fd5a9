import type { ICellData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { nameJustTaken } from "../../../problems/workbook/workbookProblems";
import { areaNamed, areaToFill } from "../../areaNamed";
import { checkSheetPlan } from "../../checkSheetPlan";
import { freeSheetName, unfinishedCopyName } from "../../freeSheetName";
import type { SheetPlan } from "../../SheetPlan";
import { FIXED_FILL, sheetStyles } from "../../sheetStyles";
import type { CellArea } from "../../cellArea";
import { WorkbookProblem, type CopiedFormula, type CopyWithValues, type FrozenArea } from "../../Workbook";
import { cellData } from "./cellData";
import { asNoStep, OneStep } from "../engine/asOneStep";
import { removeRule } from "./entryRules";
import { fitRowHeights } from "./fitRowHeights";
import { changeGridRules } from "../gridCellsBeside";
import type { GridEngine } from "../GridEngine";
import { gridSheet, insertGridSheet } from "./GridSheet";
import { selectInView } from "./selectInView";

export const sheetNames = ({ book }: GridEngine): string[] => book.getSheets().map((sheet) => sheet.getSheetName());

/** Makes the planned sheet, as one step, and shows it. @returns its name, numbered when the wanted one is taken */
export async function addGridSheet(engine: GridEngine, plan: SheetPlan): Promise<string> {
  checkSheetPlan(plan);
  const name = freeSheetName(plan.name, sheetNames(engine));
  await wholeOrNothing(engine, async (made, step) => {
    const sheet = step.piece(() => insertGridSheet(engine, gridSheet(plan, name)));
    made.push(sheet);
    const { row, column } = areaNamed(plan.startAt);
    engine.book.setActiveSheet(sheet);
    sheet.getRange(row, column).activate();
    await engine.settled();
    step.piece(() => fitRowHeights(engine, sheet));
    // Not before the sheet is drawn: the view of one that is not cannot be moved.
    if (engine.book.getActiveSheet().getSheetId() === sheet.getSheetId()) selectInView(engine, sheet, row, column);
  });
  return name;
}

/**
 * Copies a sheet with values in place of cell formulas, and makes the sheet beside it, all as one step.
 * @param check throws, just before the copy, where the sheet must not be copied as it is
 */
export async function copyGridSheet(
  engine: GridEngine,
  original: FWorksheet,
  { name, areas, formulas = [], beside, further = [], keepsRules = false, rules = [], fixed = [], banner, goOn = () => undefined }: CopyWithValues,
  check: () => void,
): Promise<void> {
  const plans = [beside, ...further];
  plans.forEach(checkSheetPlan);
  const names = plans.map((plan) => plan.name);
  const filled = areas.map((one) => ({ area: areaToFill(one), values: one.values }));
  await engine.settled();
  refuseTaken(engine, name, ...names);
  check();
  await wholeOrNothing(engine, async (made, step) => {
    const copy = step.piece(() => engine.book.duplicateSheet(original));
    made.push(copy);
    step.piece(() => copy.setName(unfinishedCopyName(original.getSheetName(), sheetNames(engine))));
    await engine.settled(goOn);
    goOn();
    step.piece(() => {
      if (!keepsRules) for (const { rule } of copy.getDataValidations()) removeRule(engine, copy, rule.uid);
      changeGridRules(engine, copy, rules, [original.getSheetName(), name]);
      setCells(engine, copy, filled, { ...(keepsRules ? {} : withoutBoxes(copy)), ...filledWith(copy, fixed, FIXED_FILL) });
      if (banner !== undefined) copy.getRange(banner).setFontWeight("bold").setFontColor(sheetStyles.caution.fontColour);
    });
    await engine.settled(goOn);
    goOn();
    refuseTaken(engine, name, ...names);
    if (formulas.length > 0) {
      step.piece(() => {
        // What is written names the copy and its sheets as they are called in the end.
        copy.setName(name);
        for (const plan of further) made.push(insertGridSheet(engine, gridSheet(plan, plan.name)));
        setFormulas(engine, copy, formulas);
      });
      await engine.settled(goOn);
      goOn();
    }
    const recorded = step.piece(() => insertGridSheet(engine, gridSheet(beside, beside.name)));
    made.push(recorded);
    await engine.settled(goOn);
    step.piece(() => {
      fitRowHeights(engine, recorded);
      further.forEach((plan, index) => plan.isHidden === true && made[index + 1]?.hideSheet());
    });
    if (formulas.length > 0) return;
    refuseTaken(engine, name);
    step.piece(() => copy.setName(name));
  });
}

const SET_VALUES = "sheet.command.set-range-values";

/** All in one command: each goes through the whole workbook, however few cells it sets. */
function setCells(
  { api, book }: GridEngine,
  sheet: FWorksheet,
  filled: readonly { area: CellArea; values: FrozenArea["values"] }[],
  value: Record<number, Record<number, ICellData>>,
): void {
  for (const { area, values } of filled)
    values.forEach((line, down) =>
      line.forEach((content, across) => {
        const inRow = (value[area.row + down] ??= {});
        inRow[area.column + across] = { ...inRow[area.column + across], ...cellData(content) };
      }),
    );
  if (Object.keys(value).length === 0) return;
  const range = { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 };
  api.syncExecuteCommand(SET_VALUES, { unitId: book.getId(), subUnitId: sheet.getSheetId(), range, value });
}

/** All in one command, too. A formula that fills more than its cell stands in the first, and the grid fills the rest. */
function setFormulas({ api, book }: GridEngine, sheet: FWorksheet, formulas: readonly CopiedFormula[]): void {
  const value: Record<number, Record<number, ICellData>> = {};
  for (const { range, formula } of formulas) {
    const { row, column } = areaNamed(range);
    const texts = typeof formula === "string" ? [[formula]] : formula;
    texts.forEach((line, down) => line.forEach((text, across) => ((value[row + down] ??= {})[column + across] = { f: text, v: null })));
  }
  const range = { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 };
  api.syncExecuteCommand(SET_VALUES, { unitId: book.getId(), subUnitId: sheet.getSheetId(), range, value });
}

const BOX_FILLS: readonly (string | undefined)[] = [sheetStyles.input.fill, sheetStyles.runBox.fill];

/** The looks of cells that were to be filled in, without the box. */
function withoutBoxes(sheet: FWorksheet): Record<number, Record<number, ICellData>> {
  const looks: Record<number, Record<number, ICellData>> = {};
  const styles = sheet.getWorkbook().getStyles();
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column, cell) => {
      const look = typeof cell?.s === "string" ? styles.get(cell.s) : cell?.s;
      if (!BOX_FILLS.includes(look?.bg?.rgb?.toUpperCase())) return;
      (looks[row] ??= {})[column] = { s: { ...look, bg: null, bd: null, cl: { rgb: sheetStyles.label.fontColour } } };
    });
  return looks;
}

/** The looks of cells with another fill. */
function filledWith(sheet: FWorksheet, cells: readonly string[], fill: string): Record<number, Record<number, ICellData>> {
  const looks: Record<number, Record<number, ICellData>> = {};
  const styles = sheet.getWorkbook().getStyles();
  for (const cell of cells) {
    const { row, column } = areaNamed(cell);
    const held = sheet.getSheet().getCellMatrix().getValue(row, column);
    const look = typeof held?.s === "string" ? styles.get(held.s) : held?.s;
    (looks[row] ??= {})[column] = { s: { ...look, bg: { rgb: fill } } };
  }
  return looks;
}

function refuseTaken(engine: GridEngine, ...wanted: readonly string[]): void {
  const taken = sheetNames(engine);
  if (wanted.some((name) => freeSheetName(name, taken) !== name)) throw new WorkbookProblem(nameJustTaken);
}

/** Makes sheets as one step, and takes those made so far away again when the work fails; then there is nothing to be taken back. */
async function wholeOrNothing(engine: GridEngine, work: (made: FWorksheet[], step: OneStep) => Promise<void>): Promise<void> {
  const made: FWorksheet[] = [];
  const step = new OneStep(engine.book.getId());
  try {
    await work(made, step);
  } catch (problem) {
    asNoStep(engine, () => made.forEach((sheet) => engine.book.deleteSheet(sheet)));
    throw problem;
  }
  step.offer();
}
