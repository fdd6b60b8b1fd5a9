import { areaNamed, areaToFill } from "../../areaNamed";
import { cellArea, cellAt, rangeOf, type CellArea } from "../../cellArea";
import { typedCells } from "../../holdsTheSame";
import type { CellContent, CopyWithValues } from "../../Workbook";
import { cellEntry } from "../writing/cellEntry";
import { isErrorCode } from "../reading/errorCodes";
import { fitsOneAnswer, isAlike, isFormula, type HeldCells } from "../reading/heldCells";
import { lengthOf, type WrittenLater } from "../writing/writePlan";

/** What a copy with values would be like if nobody else touched it. */
export interface ExpectedCopy {
  /** True where all that stands on the sheet fits one answer. */
  readonly isSmall: boolean;
  /** Where things stand on it. */
  readonly extent: CellArea | undefined;
  readonly anchors: readonly string[];
  /** Writes the values; formats stay. */
  writes(copy: Excel.Worksheet): readonly WrittenLater[];
  /** True where the sheet holds what was read of it; what formulas come to may differ. */
  wasReadFrom(held: HeldCells): boolean;
  /** @param asCopied what stood on the sheet when it was copied, where that is known */
  isOurs(held: HeldCells, blocked: ReadonlySet<string>, asCopied?: HeldCells): boolean;
  isWhole(held: HeldCells, name: string): boolean;
  isAsMade(held: HeldCells): boolean;
  /** What somebody typed where values are to be written: only before they are. */
  typedWhereValuesGo(held: HeldCells): readonly (readonly [cell: string, entry: string | number | boolean])[];
}

/** @throws WorkbookProblem where values do not fit their range */
export function expectedCopy({ name: lastName, read, areas }: CopyWithValues): ExpectedCopy {
  const filled = areas.map((one) => ({ area: areaToFill(one), values: one.values }));
  const extent = read.range === "" ? undefined : areaNamed(read.range);
  const typed = typedCells(read);
  const frozen = new Map(filled.flatMap(valuesIn));
  const anchorOf = anchors([...filled.map(({ area }) => area), ...read.rows.flat().flatMap(({ spill }) => cellArea(spill) ?? [])]);
  const isTyped = (cell: string, held: Entry): boolean => isAlike(typed.get(cell), held);
  const isFrozen = (cell: string, held: Entry): boolean => isAlike(frozen.get(cell), held);
  const isFilled = (cell: string, held: HeldCells): boolean => isFormula(held.get(anchorOf.get(cell) ?? ""));
  const made = [...new Map([...typed, ...frozen])].filter(([, entry]) => entry !== "");
  const cellsMade = new Set(made.map(([cell]) => cell));
  return {
    extent,
    isSmall: extent === undefined || fitsOneAnswer(extent),
    anchors: [...new Set(anchorOf.values())],
    writes: (copy) => filled.map(({ area, values }) => ({ area, characters: lengthOf(values), write: () => freeze(copy, area, values) })),
    wasReadFrom: (held) => holdsAll(held, [...typed]) && [...held].every(([cell, entry]) => isTyped(cell, entry) || isFilled(cell, held)),
    isOurs: (held, blocked, asCopied) =>
      [...held].every(
        ([cell, entry]) =>
          [isTyped(cell, entry), isFrozen(cell, entry), asCopied?.get(cell) === entry].includes(true) ||
          (isFilled(cell, held) && !blocked.has(anchorOf.get(cell) ?? "")),
      ),
    isWhole: (held, name) =>
      name === lastName && [...frozen.keys()].every((cell) => !isFormula(held.get(cell)) || isFrozen(cell, held.get(cell) ?? "")),
    typedWhereValuesGo: (held) => [...held].filter(([cell, entry]) => frozen.has(cell) && !isTyped(cell, entry) && !isFilled(cell, held)),
    isAsMade: (held) => holdsAll(held, made) && [...held.keys()].every((cell) => cellsMade.has(cell)),
  };
}

type Entry = string | number | boolean;
type Filled = { readonly area: CellArea; readonly values: readonly (readonly CellContent[])[] };

/** Empty text is not told from a blank cell. */
const holdsAll = (held: HeldCells, entries: readonly (readonly [string, Entry])[]): boolean =>
  entries.every(([cell, entry]) => entry === "" || isAlike(entry, held.get(cell) ?? ""));

const valuesIn = ({ area, values }: Filled): [string, Entry][] =>
  values.flatMap((line, down) => line.map((value, across): [string, Entry] => [cellAt(area.row + down, area.column + across), value ?? ""]));

/** The first cell of each area of several cells, under the name of each other cell in it. */
function anchors(areas: readonly CellArea[]): ReadonlyMap<string, string> {
  const cells = areas.flatMap(({ row, column, rows, columns }) =>
    Array.from({ length: rows * columns - 1 }, (_, index): [string, string] => [
      cellAt(row + Math.floor((index + 1) / columns), column + ((index + 1) % columns)),
      cellAt(row, column),
    ]),
  );
  return new Map(cells);
}

/**
 * Puts values where formulas stood; formats stay. The first cell of a spill goes first: with its formula gone, the cells
 * it filled are free to take their values.
 */
function freeze(copy: Excel.Worksheet, area: CellArea, values: Filled["values"]): void {
  const entries = values.map((row) => row.map(frozenEntry));
  if (area.rows * area.columns > 1) copy.getRange(cellAt(area.row, area.column)).values = [entries[0]?.slice(0, 1) ?? []];
  copy.getRange(rangeOf(area)).values = entries;
}

/**
 * Text that is empty stays text: as a blank cell it would count as 0 in formulas that stay. An error stays that error.
 * The empty string clears a cell, since null would leave it as it is.
 */
function frozenEntry(value: CellContent): string | number | boolean {
  if (value === null) return "";
  return isErrorCode(value) ? value : cellEntry(value);
}
