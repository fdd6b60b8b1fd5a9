import type { Injector } from "@univerjs/core";
import { IFormulaCurrentConfigService, IFormulaDependencyGenerator } from "@univerjs/engine-formula";

/** Formulas by workbook and sheet, as the engine keeps them: those of cells by row and column, those of entry rules by their id. */
type BySheet = Readonly<Record<string, Readonly<Record<string, unknown>> | null | undefined>>;

/** The one step of the engine's generator that is taken over; private there. */
interface Generator {
  _generateTreeList(cells: BySheet, others: BySheet, sheets: unknown): Promise<unknown[]>;
}

/**
 * Mends a cost of engine 0.25.1: at every edit it goes through each formula of the workbook to find what depends on the edit, so twenty
 * sheets make an edit on one of them ten times as slow. Gives it the formulas of the sheets that were touched, and of those that look
 * beyond themselves; no other formula can depend on the edit. Where names changed, it gets all of them.
 */
export function calculateWhatDepends(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator;
  const edit = injector.get(IFormulaCurrentConfigService);
  if (typeof generator._generateTreeList !== "function") throw new Error("the engine has no list of formulas to shorten");
  const original = generator._generateTreeList.bind(generator);
  // As it is before followNames asks for more.
  const changedNames = edit.getDirtyDefinedNameMap.bind(edit);
  // Whether a sheet's formulas look beyond it, as found when it was last touched.
  const looksBeyond = new Map<string, boolean>();
  generator._generateTreeList = (cells, others, sheets) => {
    // Sheets that came, went or were renamed; that had rows put in; whose entry rules or other things beside cells are to be worked out.
    const changed = [
      edit.getDirtyNameMap(),
      edit.getClearDependencyTreeCache(),
      edit.getDirtyUnitOtherFormulaMap(),
      edit.getDirtyUnitFeatureMap(),
    ].flatMap(sheetsIn);
    const touched = new Set([...edit.getDirtyRanges().map(({ sheetId }) => sheetId), ...changed]);
    touched.forEach((sheet) => looksBeyond.delete(sheet));
    if (edit.isForceCalculate() || touched.size === 0 || [changedNames(), edit.getDirtySuperTableMap()].some(holdsAny)) {
      looksBeyond.clear();
      return original(cells, others, sheets);
    }
    const isNeeded = (sheet: string): boolean => {
      if (touched.has(sheet)) return true;
      const known =
        looksBeyond.get(sheet) ?? [cells, others].some((kept) => Object.values(kept).some((of) => formulasIn(of?.[sheet]).some(isOutward)));
      looksBeyond.set(sheet, known);
      return known;
    };
    return original(only(cells, isNeeded), only(others, isNeeded), sheets);
  };
}

const holdsAny = (map: unknown): boolean =>
  typeof map === "object" && map !== null && Object.values(map).some((inner) => inner !== null && inner !== undefined);

/** The sheets of a list by workbook and sheet. */
const sheetsIn = (map: unknown): string[] =>
  Object.values((map ?? {}) as Readonly<Record<string, object | null | undefined>>).flatMap((sheets) => Object.keys(sheets ?? {}));

const only = (kept: BySheet, isNeeded: (sheet: string) => boolean): BySheet =>
  Object.fromEntries(
    Object.entries(kept).map(([book, of]) => [book, of && Object.fromEntries(Object.entries(of).filter(([sheet]) => isNeeded(sheet)))]),
  );

/** Every formula text under a sheet, whichever way it is kept. */
function formulasIn(kept: unknown): string[] {
  if (typeof kept !== "object" || kept === null) return [];
  const { f } = kept as { readonly f?: unknown };
  return typeof f === "string" ? [f] : Object.values(kept).flatMap(formulasIn);
}

const TEXT = /"[^"]*"/g;
/** What is no sheet's own cell, no function but those below, and no TRUE or FALSE. */
const OUTWARD = /[![]|\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY|INDIRECT|OFFSET|CELL|INFO|SHEET|SHEETS|FORMULATEXT)\(/i;
const WORDS = /[\p{L}\d_.\\$]+/gu;
const OWN = /^(?:\$?[A-Z]{1,3}\$?\d{1,7}|\$?[A-Z]{1,3}|TRUE|FALSE)$/i;
/** No name begins like a number or a fixed row. */
const NUMBER = /^[\d.$]*\d/;

/** True where a formula may depend on another sheet, a name, or nothing that was typed: doubtful ones are. */
function isOutward(formula: string): boolean {
  const text = formula.replace(TEXT, "");
  return OUTWARD.test(text) || [...text.matchAll(WORDS)].some((found) => isForeign(found[0], text[found.index + found[0].length]));
}

const isForeign = (word: string, next: string | undefined): boolean => next !== "(" && !OWN.test(word) && !NUMBER.test(word);
