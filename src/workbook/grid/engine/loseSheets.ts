import { unquotedSheet } from "../../quotedSheet";
import type { IMutationInfo, Injector } from "@univerjs/core";
import { IUniverInstanceService, UniverInstanceType, type Workbook } from "@univerjs/core";
import { IDefinedNamesService, SetDefinedNameMutation } from "@univerjs/engine-formula";
import { RemoveSheetCommand, SheetInterceptorService } from "@univerjs/sheets";
import { tokenize, tokenTypes } from "@borgar/fx";

const NO_SUCH_CELL = "#REF!";
const REFERENCES: readonly string[] = [tokenTypes.REF_RANGE, tokenTypes.REF_BEAM, tokenTypes.REF_TERNARY, tokenTypes.REF_NAMED];

/**
 * Mends a defect of engine 0.25.1: of a sheet that is taken away, only names that are a single reference to it become #REF!. In names such as
 * SUM(Kiln!$A:$A) or Tins!$A$1+Kiln!$A$1 the sheet stayed, and what uses them went on with what it had been. Back with the sheet when it is taken back.
 */
export function loseSheets(injector: Injector): void {
  const names = injector.get(IDefinedNamesService);
  const books = injector.get(IUniverInstanceService);
  injector.get(SheetInterceptorService).interceptCommand({
    getMutations: ({ id, params }) => {
      const change: { redos: IMutationInfo[]; undos: IMutationInfo[] } = { redos: [], undos: [] };
      const book = id === RemoveSheetCommand.id ? books.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET) : undefined;
      const { subUnitId } = (params ?? {}) as { readonly subUnitId?: string };
      const sheet = book && (subUnitId === undefined ? book.getActiveSheet() : book.getSheetBySheetId(subUnitId));
      if (!book || !sheet) return change;
      const unitId = book.getUnitId();
      for (const held of Object.values(names.getDefinedNameMap(unitId) ?? {})) {
        const formulaOrRefString = withoutSheet(held.formulaOrRefString, sheet.getName());
        const isWhole = names.getWorksheetByRef(unitId, held.formulaOrRefString)?.getSheetId() === sheet.getSheetId();
        if (isWhole || formulaOrRefString === held.formulaOrRefString) continue;
        change.redos.push({ id: SetDefinedNameMutation.id, params: { ...held, unitId, formulaOrRefString } });
        change.undos.push({ id: SetDefinedNameMutation.id, params: { ...held, unitId } });
      }
      return change;
    },
  });
}

/** The formula with #REF! in the place of every reference to the sheet. */
function withoutSheet(formula: string, sheet: string): string {
  const prefix = formula.startsWith("=") ? "" : "=";
  const written = tokenize(prefix + formula).map(({ type, value }) => (REFERENCES.includes(type) && sheetOf(value) === sheet.toUpperCase() ? NO_SUCH_CELL : value)); // prettier-ignore
  return written.join("").slice(prefix.length);
}

/** The sheet before a "!", in capitals. */
function sheetOf(reference: string): string | undefined {
  const mark = reference.lastIndexOf("!");
  if (mark === -1) return undefined;
  const written = reference.slice(0, mark);
  return unquotedSheet(written).toUpperCase();
}
