import { ICommandService } from "@univerjs/core";
import { CopySheetCommand } from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { copyKeepsNames } from "../../problems/workbook/entryProblems";
import { isUnderWay } from "../../workbook/grid/engine/asOneStep";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { namesIn } from "../../workbook/grid/writing/definedNames";
import { readsGone } from "../../xlsx/package/sheets/namedSheets";

/**
 * Tells of names in the formulas of a sheet that somebody copied which stand for cells of the original. Other spreadsheets give the copy names of its
 * own; the engine knows one meaning of a name for all sheets.
 * @param say tells the person
 */
export function tellCopiedNames(engine: GridEngine, say: (sentence: string) => void): void {
  engine.injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
    // What is copied to be handed on has its formulas written anew.
    if (id !== CopySheetCommand.id || isUnderWay(engine)) return;
    const { subUnitId } = (params ?? {}) as { readonly subUnitId?: string };
    const original = (subUnitId === undefined ? null : engine.book.getSheetBySheetId(subUnitId)) ?? engine.book.getActiveSheet();
    const sheets = engine.book.getSheets();
    const copy = sheets[sheets.findIndex((sheet) => sheet.getSheetId() === original.getSheetId()) + 1];
    const used = copy && namesUsed(engine, original);
    if (used !== undefined && used.length > 0) say(copyKeepsNames(copy?.getSheetName() ?? "", original.getSheetName(), used));
  });
}

/** The names in a sheet's formulas by which they read the sheet itself, in the order in which they were given. */
function namesUsed(engine: GridEngine, sheet: FWorksheet): string[] {
  const all = namesIn(engine);
  const sheets = new Set([sheet.getSheetName().toUpperCase()]);
  const found = new Set<string>();
  for (let before = -1; before < found.size;) {
    before = found.size;
    for (const { name, refersTo } of all) if (readsGone(refersTo, { sheets, names: found })) found.add(name.toUpperCase());
  }
  if (found.size === 0) return [];
  const rows = engine.spills.getFormulaData()[engine.book.getId()]?.[sheet.getSheetId()] ?? {};
  const formulas = new Set(
    Object.values(rows).flatMap((cells) => (Object.values(cells ?? {}) as { readonly f?: string }[]).map((one) => one?.f ?? "")),
  );
  const texts = [...formulas].map((formula) => ({ formula: formula.replace(/^=/, ""), capitals: formula.toUpperCase() }));
  const isUsed = (name: string): boolean =>
    texts.some(({ formula, capitals }) => capitals.includes(name) && readsGone(formula, { sheets: new Set(), names: new Set([name]) }));
  return all.map(({ name }) => name).filter((name) => found.has(name.toUpperCase()) && isUsed(name.toUpperCase()));
}
