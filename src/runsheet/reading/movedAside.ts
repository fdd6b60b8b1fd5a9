import { areaNamed } from "../../workbook/areaNamed";
import { cellAt } from "../../workbook/cellArea";
import { isSameShape } from "../../workbook/SheetGrowth";
import type { RangeReading } from "../../workbook/Workbook";
import { balanceBlocks } from "../blocks/balance/planBalanceSheet";
import type { BlockCell } from "../blocks/Block";
import { everyBlock } from "../buildRunSheet";
import { formulaText } from "../expressions/formulaText";
import type { CheckedOptions } from "../options/RunSheetOptions";
import { balanceSheet } from "../sheet/BalanceSheet";
import { columns, LABEL } from "../sheet/Columns";
import { runSheet } from "../sheet/RunSheet";
import { saysLabel } from "../words/olderSheets";
import { sheetWords } from "../words/sheetWords";

/** Something of the sheet's own that does not stand in its place. */
export interface Aside {
  /** A heading, or how the record begins; "" for a formula. */
  readonly missing: string;
  /** Where it belongs. */
  readonly cell: string;
  /** Where it stands instead. */
  readonly stands: string;
}

/** Whether the record of a sheet stands elsewhere than where a sheet made with it has it: a column was put in, or taken out, left of it. */
export function recordAside(at: string, options: CheckedOptions): Aside | undefined {
  const cell = cellAt(0, columns(options).elapsed);
  return at === cell ? undefined : { missing: sheetWords.workings.madeWith.trim(), cell, stands: at };
}

/**
 * What stands aside of its place on a sheet whose rows are right and whose record is in its column, as after columns that were put in and
 * taken out, or cells pushed aside. A heading in somebody's own words is none: it stands nowhere else.
 */
export function movedAside(reading: RangeReading, options: CheckedOptions): Aside | undefined {
  const { cells } = options.kind === "balance" ? balanceBlocks(balanceSheet(options)) : everyBlock(runSheet(options));
  const { width } = columns(options);
  const printed = cells.filter(({ at }) => at.column > LABEL && at.column < width);
  return headingAside(reading, printed) ?? formulaAside(reading, printed);
}

/** A heading, where it belongs, and where it was found. Rows and columns count from 0. */
interface Found {
  readonly content: string;
  readonly from: Place;
  readonly to: Place;
}

interface Place {
  readonly row: number;
  readonly column: number;
}

const nameOf = ({ row, column }: Place): string => cellAt(row, column);

function headingAside({ rows }: RangeReading, cells: readonly BlockCell[]): Aside | undefined {
  const held = rows.flat().flatMap(({ cell, value }) => (typeof value === "string" && value !== "" ? [{ ...areaNamed(cell), value }] : []));
  const texts = new Map(held.map((one) => [nameOf(one), one.value]));
  const labels = cells.flatMap(({ at, content, style }) =>
    typeof content === "string" && content !== "" && !style.startsWith("runBox") ? [{ row: at.row - 1, column: at.column, content }] : [],
  );
  const planned = new Map(labels.map((one) => [nameOf(one), one.content]));
  const lost = labels.filter((one) => !saysLabel(texts.get(nameOf(one)), one.content));
  const found = lost.flatMap(({ content, ...from }) =>
    held
      .filter((to) => to.value === content && planned.get(nameOf(to)) !== content && (to.row === from.row || to.column === from.column))
      .map((to): Found => ({ content, from, to })),
  );
  const aside = sideways(found, planned, texts) ?? upOrDown(found);
  return aside && { missing: aside.content, cell: nameOf(aside.from), stands: nameOf(aside.to) };
}

/**
 * One heading over another's column may be a heading in the words of another. Several as far aside, one where none belongs, or one that left
 * its own place blank, were moved.
 */
function sideways(found: readonly Found[], planned: ReadonlyMap<string, string>, texts: ReadonlyMap<string, string>): Found | undefined {
  const beside = found.filter(({ from, to }) => from.row === to.row);
  const distance = ({ from, to }: Found): number => to.column - from.column;
  const inRow = (row: number): Found[] => beside.filter(({ from }) => from.row === row);
  // Headings that were exchanged stand over the same columns as before.
  const areExchanged = (row: number): boolean => {
    const [from, to] = [inRow(row).map((one) => one.from.column), inRow(row).map((one) => one.to.column)];
    return from.every((column) => to.includes(column)) && to.every((column) => from.includes(column));
  };
  return beside.find(
    (one) =>
      !planned.has(nameOf(one.to)) ||
      !texts.has(nameOf(one.from)) ||
      (!areExchanged(one.from.row) && inRow(one.from.row).filter((other) => distance(other) === distance(one)).length > 1) ||
      beside.some(({ from, to }) => from.row !== one.from.row && from.column === one.from.column && to.column === one.to.column),
  );
}

/** Cells pushed up or down take every heading below with them. */
function upOrDown(found: readonly Found[]): Found | undefined {
  const along = found.filter(({ from, to }) => from.column === to.column);
  const distance = ({ from, to }: Found): number => to.row - from.row;
  return along.find((one) =>
    along.some(({ from, to }) => from.column === one.from.column && from.row !== one.from.row && to.row - from.row === distance(one)),
  );
}

/** A formula in a cell of its row where none belongs, and not in its own. A reading without formulas tells nothing. */
function formulaAside({ rows }: RangeReading, cells: readonly BlockCell[]): Aside | undefined {
  const byRow = new Map<number, BlockCell[]>();
  for (const one of cells) if (one.formula !== undefined) byRow.set(one.at.row - 1, [...(byRow.get(one.at.row - 1) ?? []), one]);
  for (const row of rows) {
    const holding = row.flatMap(({ cell, formula }) => (formula === "" ? [] : [{ ...areaNamed(cell), formula }]));
    const own = byRow.get(holding[0]?.row ?? -1) ?? [];
    const held = new Map(holding.map(({ column, formula }) => [column, formula]));
    const without = own.filter(({ at }) => !held.has(at.column));
    const strays = holding.filter(({ column }) => !own.some(({ at }) => at.column === column));
    if (without.length === 0 || strays.length === 0) continue;
    for (const { at, formula = "" } of own) {
      const wanted = formulaText(formula);
      if (isSameShape(held.get(at.column) ?? "", wanted)) continue;
      const stray = strays.find((one) => isSameShape(one.formula, wanted));
      if (stray !== undefined) return { missing: "", cell: cellAt(at.row - 1, at.column), stands: nameOf(stray) };
    }
  }
  return undefined;
}
