import { formulaNamed } from "../../sharing/plain/writing/named";
import { namesOf } from "../../sharing/plain/reading/ReadSheets";
import { cellsReferred } from "../../sharing/plain/formula/reference";
import type { RulesPut, TakenOut } from "../../sharing/plain/plainRules";
import type { PlainOptions } from "../../sharing/plain/reading/Surroundings";
import type { FileValue } from "../package/cells/CellChange";
import type { WorkbookPackage } from "../package/WorkbookPackage";
import type { BookAround } from "./bookAround";
import { putRules } from "./putRules";

// Longer ranges are left to what a chart keeps of them.
const MOST_POINTS = 100_000;

/** Makes the rules of some sheets, and all else beside their cells, do without our functions and without the sheets that are about to go. */
export async function leaveAlone(file: WorkbookPackage, kept: readonly string[], options: PlainOptions, around: BookAround): Promise<RulesPut> {
  const { going } = around;
  const put = await putRules(file, kept, options, going);
  if (going === undefined) return put;
  const taken = await file.standAlone(kept, (formula) => valuesGoing(formula, around));
  return { ...put, others: taken.map(({ what, sheet, cell, why }) => ({ what, where: placeOn(sheet, cell), why })) };
}

/** Makes the data of queries on some sheets data like any others. @returns the same, with what was taken out */
export async function leaveQueries(file: WorkbookPackage, kept: readonly string[], put: RulesPut): Promise<RulesPut> {
  const taken: TakenOut[] = [];
  for (const sheet of kept)
    taken.push(
      ...(await file.takeQueries(sheet)).map((cell) => ({ what: "query" as const, where: placeOn(sheet, cell), why: "connection" as const })),
    );
  return taken.length === 0 ? put : { ...put, others: [...(put.others ?? []), ...taken] };
}

const placeOn = (sheet: string, cell: string): string => (cell === "" ? sheet : `${sheet}!${cell}`);

/** The values of a range on a sheet that goes, row by row, be it told by a name. */
function valuesGoing(formula: string, { names, going }: BookAround): readonly FileValue[] | undefined {
  const named = formulaNamed(formula, { sheet: "", nameOf: namesOf(names) });
  const found = cellsReferred(formula, "") ?? (named === undefined ? undefined : cellsReferred(named.replace(/^=/, ""), ""));
  if (found?.sheet === undefined || found.lastSheet !== undefined || going?.isGone(found.sheet) !== true) return undefined;
  const { sheet, area } = found;
  if (area.rows * area.columns > MOST_POINTS) return undefined;
  return Array.from({ length: area.rows * area.columns }, (_, index) => {
    const held = going.heldAt(sheet, area.row + Math.floor(index / area.columns), area.column + (index % area.columns));
    return held === undefined ? "" : held.error === "" ? (held.value ?? "") : { error: held.error };
  });
}

/** The same of copies under names of their own. @param names of the copies by their sheets */
export function underNames(put: RulesPut, names: ReadonlyMap<string, string>): RulesPut {
  const renamed = (where: string): string => {
    for (const [sheet, copy] of names) {
      if (where === sheet) return copy;
      if (where.startsWith(`${sheet}!`)) return `${copy}${where.slice(sheet.length)}`;
    }
    return where;
  };
  return {
    ...put,
    rules: put.rules.map((rule) => ({ ...rule, sheet: names.get(rule.sheet) ?? rule.sheet })),
    ...(put.others && { others: put.others.map((one) => ({ ...one, where: renamed(one.where) })) }),
  };
}
