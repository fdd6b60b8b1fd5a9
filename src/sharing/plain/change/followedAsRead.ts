import { areaNamed } from "../../../workbook/areaNamed";
import { cellAt } from "../../../workbook/cellArea";
import { joinedAreas } from "../../joinedAreas";
import type { ReadSheets } from "../reading/ReadSheets";
import type { FormulaSources, Precedent } from "./FormulaSources";

/**
 * What a formula that keeps its value is followed by: all that it referred to as the workbook was read. What goes with its sheet does not change any
 * more, and as long as nothing else changes, INDIRECT and OFFSET refer to what they did. Where that cannot be told, any input may be one of its own.
 */
export function followedAsRead(source: FormulaSources, everyInput: () => readonly Precedent[]): FormulaSources {
  const besides = source.isUnseen ? (source.asRead ?? everyInput()) : [];
  return { ...source, precedents: [...source.precedents, ...besides], isUnseen: false };
}

/** Every cell of the shared sheets that holds something and no formula, in areas. */
export function inputsOf(sheets: ReadSheets): () => readonly Precedent[] {
  let found: readonly Precedent[] | undefined;
  return () => (found ??= sheets.names.flatMap((name) => areasOn(name, sheets)));
}

function areasOn(name: string, sheets: ReadSheets): Precedent[] {
  const sheet = sheets.sheet(name);
  const cells = [...(sheet?.filled ?? [])].flatMap(([column, rows]) =>
    rows.filter((row) => sheet?.formulaAt(row, column) === undefined).map((row) => ({ range: cellAt(row, column), values: [[null]] })),
  );
  return joinedAreas(cells).map(({ range }) => ({ sheet: name, area: areaNamed(range) }));
}
