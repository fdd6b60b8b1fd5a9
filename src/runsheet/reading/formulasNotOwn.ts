import { isSameFormula } from "../../workbook/SheetGrowth";
import type { SheetPlan } from "../../workbook/SheetPlan";
import type { RangeReading } from "../../workbook/Workbook";
import { buildRunSheet } from "../buildRunSheet";
import { recorded, underWay } from "../growing/record";
import { sheetWords } from "../words/sheetWords";

// A program that writes formulas its own way changes most of them, a person few; own bound, no source.
const ONE_IN = 4;

/**
 * Calculated cells of a run sheet that hold another formula than the sheet's own. A cell without any formula is told by the sheet itself. Nothing is
 * said of a sheet that another version made, whose formulas bear another mark, of one with rows put in by hand, or one whose growth is under way.
 */
export function formulasNotOwn(reading: RangeReading): readonly string[] {
  const options = underWay(reading) === undefined ? recorded(reading) : undefined;
  if (options === undefined) return [];
  const held = new Map(reading.rows.flat().map((one) => [one.cell, one]));
  const plan = buildRunSheet(options);
  if (!isMarkedAlike(plan, held)) return [];
  const formulas = plan.cells.filter(({ formula }) => formula !== undefined);
  const others = formulas.filter(({ cell, formula = "" }) => {
    const there = held.get(cell)?.formula ?? "";
    return there !== "" && !isSameFormula(asWritten(there), asWritten(formula));
  });
  return others.length * ONE_IN > formulas.length ? [] : others.map(({ cell }) => cell);
}

/** Calculated cells of a run sheet that hold the sheet's own formula; none on any other sheet. */
export function ownFormulas(reading: RangeReading): readonly string[] {
  const options = recorded(reading);
  if (options === undefined) return [];
  const held = new Map(reading.rows.flat().map((one) => [one.cell, one.formula]));
  const isOwn = ({ cell, formula }: SheetPlan["cells"][number]): boolean =>
    formula !== undefined && isSameFormula(asWritten(held.get(cell) ?? ""), asWritten(formula));
  return buildRunSheet(options)
    .cells.filter(isOwn)
    .map(({ cell }) => cell);
}

/** The mark, and each heading in the first column, stand where they were put. */
function isMarkedAlike({ cells }: SheetPlan, held: ReadonlyMap<string, { readonly value: unknown }>): boolean {
  const isMark = (content: unknown): boolean => typeof content === "string" && content.startsWith(sheetWords.workings.formulas);
  const mark = cells.find(({ content }) => isMark(content));
  const bands = cells.filter(({ cell, content, style }) => /^A\d/.test(cell) && typeof content === "string" && style === "runBand");
  return mark !== undefined && [mark, ...bands].every(({ cell, content }) => held.get(cell)?.value === content);
}

/** TRUE() for TRUE, and our functions under the names that files give them, are the same formula. */
const asWritten = (formula: string): string =>
  formula
    .replace(/\b(TRUE|FALSE)\(\)/gi, "$1")
    .replace(/(?:'[^']*'!|\[\d+\]!|_xldudf_|_xlfn\.)?RETORT[._](?=[A-Z])/gi, "RETORT.")
    .replace(/RETORT\.[A-Z0-9._]{1,40}(?=\()/gi, (name) => name.replaceAll("_", "."));
