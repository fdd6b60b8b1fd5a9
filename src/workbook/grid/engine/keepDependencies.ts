import type { Injector } from "@univerjs/core";
import { IDependencyManagerService } from "@univerjs/engine-formula";

interface Area {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

interface Reading {
  readonly unitId: string;
  readonly sheetId: string;
  readonly range: Area;
}

/** A formula as the engine keeps it, and what it reads. */
interface Formula {
  readonly treeId: number;
  readonly rangeList: readonly Reading[];
}

type Ids = ReadonlySet<number>;
type ByPlace<T> = ReadonlyMap<number, T>;

/** Who reads which cells, as the engine keeps it; private there. */
interface Manager {
  addDependencyRTreeCache(formula: Formula): void;
  _removeDependencyRTreeCache(id: number): void;
  _removeDependencyRTreeCacheById(unitId: string, sheetId?: string): void;
  _removeAllTreeMap(id: number): void;
  reset(): void;
  readonly _dependencyRTreeCache: {
    readonly _oneCellCache: ReadonlyMap<string, ReadonlyMap<string, ByPlace<ByPlace<Ids>>>>;
    _searchByOneCellCache(search: Reading): number[];
    bulkRemove(readings: (Reading & { readonly id: number })[]): void;
    openKdTree(): void;
    closeKdTree(): void;
  };
}

/**
 * Mends two costs and a defect of engine 0.25.1. At every calculation it notes again what each formula reads, and ranges of several cells then stand
 * there once more, so that each edit takes longer than the one before: notes what is not noted yet. And it sorts all single cells that are read in
 * the workbook, to look up those of a few: looks them up where it keeps them. Of a formula that went it takes out the area around all that it read, which is noted nowhere, so that the
 * readings stay behind, looked up for ever; and when cells move, none of those on other sheets: takes out each that was noted.
 */
export function keepDependencies(injector: Injector): void {
  const manager = injector.get(IDependencyManagerService) as unknown as Manager;
  if (typeof manager.addDependencyRTreeCache !== "function") throw new Error("the engine does not keep what formulas read");
  noteOnce(manager);
  const cells = manager._dependencyRTreeCache;
  cells.openKdTree = () => undefined;
  cells.closeKdTree = () => undefined;
  cells._searchByOneCellCache = ({ unitId, sheetId, range }) => {
    const rows = cells._oneCellCache.get(unitId)?.get(sheetId);
    if (rows === undefined) return [];
    return between(rows, range.startRow, range.endRow).flatMap((columns) =>
      between(columns, range.startColumn, range.endColumn).flatMap((ids) => [...ids]),
    );
  };
}

/** What stands from one place to another, at the price of the fewer: the places, or all that is kept. */
function between<T>(kept: ByPlace<T>, from: number, to: number): T[] {
  if (to - from >= kept.size) return [...kept].flatMap(([place, one]) => (place >= from && place <= to ? [one] : []));
  const found: T[] = [];
  for (let place = from; place <= to; place++) {
    const one = kept.get(place);
    if (one !== undefined) found.push(one);
  }
  return found;
}

function noteOnce(manager: Manager): void {
  const noted = new Map<number, readonly Reading[]>();
  const add = manager.addDependencyRTreeCache.bind(manager);
  manager.addDependencyRTreeCache = ({ treeId, rangeList }) => {
    if (isSame(noted.get(treeId), rangeList)) return;
    takeOut(treeId);
    add({ treeId, rangeList });
    // The engine empties its list when the calculation is over.
    noted.set(treeId, [...rangeList]);
  };
  const [remove, forget, removeSheet, reset] = [
    manager._removeDependencyRTreeCache.bind(manager),
    manager._removeAllTreeMap.bind(manager),
    manager._removeDependencyRTreeCacheById.bind(manager),
    manager.reset.bind(manager),
  ];
  const takeOut = (id: number): void => {
    const readings = noted.get(id);
    if (readings !== undefined) manager._dependencyRTreeCache.bulkRemove(readings.map((one) => ({ ...one, id })));
    noted.delete(id);
  };
  manager._removeDependencyRTreeCache = (id) => {
    takeOut(id);
    remove(id);
  };
  manager._removeAllTreeMap = (id) => {
    takeOut(id);
    forget(id);
  };
  manager._removeDependencyRTreeCacheById = (unitId, sheetId) => {
    // All that is read on the sheet goes, by whomever.
    for (const [id, readings] of noted)
      if (readings.some((one) => one.unitId === unitId && (sheetId === undefined || one.sheetId === sheetId))) noted.delete(id);
    removeSheet(unitId, sheetId);
  };
  manager.reset = () => {
    noted.clear();
    reset();
  };
}

const isSame = (noted: readonly Reading[] | undefined, readings: readonly Reading[]): boolean =>
  noted?.length === readings.length &&
  readings.every(({ unitId, sheetId, range }, index) => {
    const before = noted[index];
    if (before === undefined || before.sheetId !== sheetId || before.unitId !== unitId) return false;
    const { startRow, startColumn, endRow, endColumn } = before.range;
    return startRow === range.startRow && startColumn === range.startColumn && endRow === range.endRow && endColumn === range.endColumn;
  });
