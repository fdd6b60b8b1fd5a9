import { cellAt } from "../../../workbook/cellArea";
import { AreaIndex } from "./AreaIndex";
import { FilledCells } from "../reading/FilledCells";
import type { ReadFormula, ReadSheets } from "../reading/ReadSheets";
import type { FormulaSources, Precedent } from "./FormulaSources";
import { AS_READ, type Sizes } from "./Sizes";

/** A cell without a formula that a fixed one was calculated from. */
export interface LeafCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Formulas, by number, that are written for what some cells held; the cells. */
export type FormsHeld = ReadonlyMap<number, readonly Precedent[]>;

/** How far the fixed cells, and those whose form holds for a time, reach, both ways. */
export interface Staleness {
  /** Formulas, by number, that a fixed one was calculated from; the fixed ones are not among them unless another one needs them. */
  readonly before: ReadonlySet<number>;
  /** Formulas calculated from a fixed one. */
  readonly after: ReadonlySet<number>;
  /** Cells without formulas that a fixed formula was calculated from, blank ones where they stand alone in a reference. */
  readonly leaves: readonly LeafCell[];
}

/**
 * What the fixed formulas were calculated from and what is calculated from them, at any distance. Takes time in proportion to the formulas,
 * the areas they refer to and the cells there are, each looked at once.
 * @param sources by the number of the formula
 */
export function stalenessOf(
  sheets: ReadSheets,
  sources: readonly FormulaSources[],
  fixed: ReadonlySet<number>,
  held: FormsHeld,
  sizes: Sizes = AS_READ,
): Staleness {
  const first = new Set([...fixed, ...held.keys(), ...sizes.resized.keys()]);
  return { ...backwards(sheets, sources, fixed, held), after: forwards(sheets, sources, first, fixed, sizes) };
}

function forwards(
  sheets: ReadSheets,
  sources: readonly FormulaSources[],
  first: ReadonlySet<number>,
  fixed: ReadonlySet<number>,
  sizes: Sizes,
): Set<number> {
  // What does not show its references may refer to anything.
  const unseen = first.size === 0 ? [] : sources.flatMap(({ isUnseen }, id) => (isUnseen && !fixed.has(id) ? [id] : []));
  const after = calculatedFrom(sheets, sources, first, unseen, sizes);
  for (const id of fixed) after.delete(id);
  return after;
}

/** How far beyond what is filled an answer may come to reach. */
const FURTHER = { rows: 500, columns: 100 } as const;

/**
 * The numbers of all formulas that are calculated from some, at any distance.
 * @param besides others that are taken for calculated from them
 * @param sizes of those whose answer may fill other cells by now
 */
export function calculatedFrom(
  sheets: ReadSheets,
  sources: readonly FormulaSources[],
  first: ReadonlySet<number>,
  besides: readonly number[] = [],
  sizes = AS_READ,
): Set<number> {
  const after = new Set<number>();
  if (first.size === 0) return after;
  const indexOf = (name: string): AreaIndex =>
    new AreaIndex((sheets.sheet(name)?.rows ?? 1) + FURTHER.rows, (sheets.sheet(name)?.columns ?? 1) + FURTHER.columns);
  const indexes = new Map(sheets.names.map((name) => [name, indexOf(name)]));
  sources.forEach(({ precedents }, id) => {
    for (const { sheet, area } of precedents) indexes.get(sheet)?.add(area, id);
  });
  const ahead: ReadFormula[] = sheets.formulas.filter(({ id }) => first.has(id));
  const reach = (id: number): void => {
    if (after.has(id)) return;
    after.add(id);
    if (!first.has(id)) ahead.push(sheets.formulas[id] as ReadFormula);
  };
  besides.forEach(reach);
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    const [{ sheet }, area] = [next, sizes.reachOf(next)];
    for (let down = 0; down < area.rows; down++)
      for (let across = 0; across < area.columns; across++)
        for (const id of indexes.get(sheet)?.take(area.row + down, area.column + across) ?? []) reach(id);
  }
  return after;
}

function backwards(
  sheets: ReadSheets,
  sources: readonly FormulaSources[],
  fixed: ReadonlySet<number>,
  held: FormsHeld,
): Pick<Staleness, "before" | "leaves"> {
  const [before, leaves] = [new Set<number>(), new Map<string, LeafCell>()];
  const cells = new Map(sheets.names.map((name) => [name, new FilledCells(sheets.sheet(name)?.filled ?? new Map())]));
  const ahead = [...[...fixed].map((id) => sources[id]?.precedents ?? []), ...held.values()];
  const leaf = (sheet: string, row: number, column: number): void => void leaves.set(`${sheet}!${cellAt(row, column)}`, { sheet, row, column });
  for (let precedents = ahead.pop(); precedents !== undefined; precedents = ahead.pop()) {
    for (const { sheet, area } of precedents) {
      if (area.rows * area.columns === 1 && sheets.sheet(sheet)?.formulaAt(area.row, area.column) === undefined) leaf(sheet, area.row, area.column);
      cells.get(sheet)?.visit(area, (row, column) => {
        const formula = sheets.sheet(sheet)?.formulaAt(row, column);
        if (formula === undefined) return leaf(sheet, row, column);
        if (before.has(formula.id)) return;
        before.add(formula.id);
        if (!fixed.has(formula.id)) ahead.push(sources[formula.id]?.precedents ?? []);
      });
    }
  }
  return { before, leaves: [...leaves.values()] };
}
