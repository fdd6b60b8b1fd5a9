import { ICommandService, IUniverInstanceService, UniverInstanceType, type Injector, type IRange, type Workbook } from "@univerjs/core";
import { DataValidationCacheService, SheetDataValidationModel, SheetsDataValidationValidatorService } from "@univerjs/sheets-data-validation";
import { MOVE_CELLS, sheetsMoved, type Moved } from "./calculateMovedCells";

/** The part of the engine's service that checks cells on their own. */
interface Checks {
  validatorRanges(unitId: string, sheetId: string, ranges: IRange[]): Promise<unknown[]>;
}

/**
 * Mends two defects of engine 0.25.1. What it found out about an entry stays with the place when cells move, so that a cell below a row put in
 * shows as refused what another one holds: forgets it. And it puts off checking sheets that are not in view, and breaks off with an error where such a
 * sheet is gone by then, as when one file is opened soon after another: has nothing to check there.
 */
export function checkEntriesAnew(injector: Injector): void {
  const checks = injector.get(SheetsDataValidationValidatorService) as unknown as Checks;
  const books = injector.get(IUniverInstanceService);
  const check = checks.validatorRanges.bind(checks);
  checks.validatorRanges = async (unitId, sheetId, ranges) => {
    const sheet = books.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)?.getSheetBySheetId(sheetId);
    return sheet ? check(unitId, sheetId, ranges) : [];
  };
  const found = injector.get(DataValidationCacheService);
  const rules = injector.get(SheetDataValidationModel);
  injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
    if (!MOVE_CELLS.includes(id)) return;
    const { unitId } = params as Moved;
    for (const sheetId of sheetsMoved(params as Moved)) {
      found.ensureCache(unitId, sheetId).reset();
      // The rules move with the cells, a step later.
      queueMicrotask(() =>
        found.markRangeDirty(
          unitId,
          sheetId,
          rules.getRules(unitId, sheetId).flatMap(({ ranges }) => ranges),
        ),
      );
    }
  });
}
