import { generateRandomId } from "@univerjs/core";
import { IDefinedNamesService, RemoveDefinedNameMutation, SetDefinedNameMutation, type IDefinedNamesServiceParam } from "@univerjs/engine-formula";
import type { GridEngine } from "../GridEngine";

/** A name for cells, a value or a formula. */
export interface GridName {
  readonly name: string;
  /** Without "=": "'Orchard kiln'!$B$2", "1.5", "SUM(Runs!$A:$A)". */
  readonly refersTo: string;
  /** The one sheet that knows the name; left out where all do. */
  readonly sheet?: string | undefined;
}

/** The engine's word for every sheet. */
const EVERYWHERE = "AllDefaultWorkbook";

/**
 * Puts the names in place of all there are. Straight into the engine: its own command refuses names that other programs give, such as
 * "Tin1", which is also a cell, and "rate", which is also a function; it calculates with both.
 */
export function replaceNames(engine: GridEngine, names: readonly GridName[]): void {
  const unitId = engine.book.getId();
  const change = (command: string, params: object): unknown => engine.api.syncExecuteCommand(command, { unitId, ...params });
  // The page's list of names wants to be told the name besides its id.
  for (const known of namesHeld(engine)) change(RemoveDefinedNameMutation.id, known);
  for (const { name, refersTo, sheet } of names) {
    const localSheetId = sheet === undefined ? EVERYWHERE : engine.book.getSheetByName(sheet)?.getSheetId();
    if (localSheetId === undefined) continue;
    change(SetDefinedNameMutation.id, { id: generateRandomId(), name, formulaOrRefString: refersTo, localSheetId, comment: "" });
  }
}

/** Every name, in the order in which they were given. */
export function namesIn(engine: GridEngine): GridName[] {
  const sheets = new Map(engine.book.getSheets().map((sheet) => [sheet.getSheetId(), sheet.getSheetName()]));
  return namesHeld(engine).map(({ name, formulaOrRefString, localSheetId = EVERYWHERE }) => ({
    name,
    refersTo: formulaOrRefString.replace(/^=/, ""),
    sheet: sheets.get(localSheetId),
  }));
}

const namesHeld = ({ injector, book }: GridEngine): IDefinedNamesServiceParam[] =>
  Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(book.getId()) ?? {});
