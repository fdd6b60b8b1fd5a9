import { formulaNamed } from "./writing/named";
import type { NameReading } from "./reading/PlainReading";
import type { ReadFormula, ReadSheets } from "./reading/ReadSheets";
import { cellsReferred } from "./formula/reference";
import { areaFrom, withSpills } from "./formula/spills";
import type { CellArea } from "../../workbook/cellArea";
import type { Surroundings } from "./reading/Surroundings";

/** A formula of a sheet with the area in place of each spill that is no longer one. */
export type WithAreas = (formula: string, sheet: string) => string;

/**
 * What begins a spill and is written anew becomes single cells or an array of the size that the spill had, which A33# no longer names.
 * @param areaAnew the cells of a formula that is written anew; undefined for any other
 */
export function spillsAnew(sheets: ReadSheets, nameOf: Surroundings["nameOf"], areaAnew: (formula: ReadFormula) => CellArea | undefined): WithAreas {
  const areaOf = (anchor: string, sheet: string, depth = 0): string | undefined => {
    const found = cellsReferred(anchor, sheet);
    if (found === undefined) {
      const named = depth > MOST_NAMES ? undefined : formulaNamed(anchor, { sheet, nameOf });
      return named === undefined ? undefined : areaOf(named.replace(/^=/, ""), sheet, depth + 1);
    }
    const { row, column } = found.area;
    const formula = found.sheet === undefined ? undefined : sheets.sheet(found.sheet)?.formulaAt(row, column);
    const isBegun = formula?.area.row === row && formula.area.column === column;
    const area = formula !== undefined && isBegun ? areaAnew(formula) : undefined;
    return area === undefined ? undefined : areaFrom(anchor, area);
  };
  return (formula, sheet) => withSpills(formula, (anchor) => areaOf(anchor, sheet));
}

const MOST_NAMES = 20;

/** Defined names that refer to spills which are written anew, as they have to be; those that were changed already, changed further. */
export function namesAnew(names: readonly NameReading[], changed: readonly NameReading[], withAreas: WithAreas, first: string): NameReading[] {
  return names.flatMap((one) => {
    const before = changed.find(({ name, sheet }) => name === one.name && sheet === one.sheet);
    const formula = withAreas((before ?? one).formula, one.sheet ?? first);
    return before === undefined && formula === one.formula ? [] : [{ ...one, formula }];
  });
}
