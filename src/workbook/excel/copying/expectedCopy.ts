import { areaNamed, areaToFill } from "../../areaNamed";
import { cellArea, cellAt, rangeOf, type CellArea } from "../../cellArea";
import { typedCells } from "../../holdsTheSame";
import { withSheetRenamed } from "../../renamedSheet";
import type { CellContent, CopiedFormula, CopyWithValues } from "../../Workbook";
import { cellBlocks } from "../writing/cellBlocks";
import { cellEntry } from "../writing/cellEntry";
import { isErrorCode } from "../reading/errorCodes";
import { fitsOneAnswer, isAlike, isFormula, type HeldCells } from "../reading/heldCells";
import { bytesOf } from "../bytesOf";
import { contentsLater, setLater, type WrittenLater } from "../writing/weighed";

/** What a copy with values would be like if nobody else touched it. */
export interface ExpectedCopy {
  /** True where all that stands on the sheet, and all that is to stand on its copy, fits one answer. */
  readonly isSmall: boolean;
  /** Bytes of what stands on the sheet, and of what is to stand on its copy. */
  readonly bytesRead: number;
  readonly bytes: number;
  /** Where things stand on it. */
  readonly extent: CellArea | undefined;
  /** The same once all is written: a line beside or below everything is not within what was read. */
  readonly extentMade: CellArea | undefined;
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

/**
 * @param copyName what the copy is called until it is finished; formulas that name it are written so, and Excel renames it in them
 * @throws WorkbookProblem where values do not fit their range
 */
export function expectedCopy({ name: lastName, read, areas, formulas = [] }: CopyWithValues, copyName: string): ExpectedCopy {
  const filled = areas.map((one) => ({ area: areaToFill(one), values: one.values }));
  const rewritten = formulas.map(({ range, formula }): Rewritten => ({
    area: areaNamed(range),
    formula:
      typeof formula === "string"
        ? withSheetRenamed(formula, lastName, copyName)
        : formula.map((row) => row.map((one) => withSheetRenamed(one, lastName, copyName))),
  }));
  const extent = read.range === "" ? undefined : areaNamed(read.range);
  const typed = typedCells(read);
  const frozen = new Map([...filled.flatMap(valuesIn), ...rewritten.flatMap(formulasIn)]);
  const spills = [
    ...read.rows.flat().flatMap(({ spill }) => cellArea(spill) ?? []),
    ...rewritten.flatMap(({ area, formula }) => (typeof formula === "string" ? [area] : [])),
  ];
  const anchorOf = anchors([...filled.map(({ area }) => area), ...spills]);
  const isTyped = (cell: string, held: Entry): boolean => isAlike(typed.get(cell), held);
  const isFrozen = (cell: string, held: Entry): boolean => {
    const entry = frozen.get(cell);
    // Renamed with the copy.
    return isAlike(entry, held) || (isFormula(entry) && isAlike(withSheetRenamed(entry, copyName, lastName), held));
  };
  const isFilled = (cell: string, held: HeldCells): boolean => isFormula(held.get(anchorOf.get(cell) ?? ""));
  const made = [...new Map([...typed, ...frozen])].filter(([, entry]) => entry !== "");
  const filledByFormulas =
    rewritten.length === 0 ? [] : [...anchorOf].flatMap(([cell, anchor]) => (isFormula(frozen.get(anchor) ?? typed.get(anchor)) ? [cell] : []));
  const cellsMade = new Set([...made.map(([cell]) => cell), ...filledByFormulas]);
  const bytesRead = bytesOf([...typed.values()]);
  const bytes = Math.max(bytesRead, bytesOf(made.map(([, entry]) => entry)));
  return {
    extent,
    extentMade: aroundAll([...cellsMade]),
    ...{ bytesRead, bytes },
    isSmall: extent === undefined || fitsOneAnswer(extent, Math.max(bytesRead, bytes)),
    anchors: [...new Set(anchorOf.values())],
    writes: (copy) => [...filled.flatMap(({ area, values }) => freezing(copy, area, values)), ...rewriting(copy, rewritten)],
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
    isAsMade: (held) =>
      made.every(([cell, entry]) =>
        isFormula(entry) ? isFrozen(cell, held.get(cell) ?? "") || isTyped(cell, held.get(cell) ?? "") : holdsAll(held, [[cell, entry]]),
      ) && [...held.keys()].every((cell) => cellsMade.has(cell)),
  };
}

type Entry = string | number | boolean;

/** The smallest area around cells. */
function aroundAll(cells: readonly string[]): CellArea | undefined {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
  for (const { row, column } of cells.flatMap((cell) => cellArea(cell) ?? []))
    [top, left, bottom, right] = [Math.min(top, row), Math.min(left, column), Math.max(bottom, row), Math.max(right, column)];
  return bottom < 0 ? undefined : { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

interface Rewritten {
  readonly area: CellArea;
  readonly formula: CopiedFormula["formula"];
}

const formulasIn = ({ area, formula }: Rewritten): [string, Entry][] =>
  typeof formula === "string"
    ? [[cellAt(area.row, area.column), formula]]
    : formula.flatMap((row, down) => row.map((one, across): [string, Entry] => [cellAt(area.row + down, area.column + across), one]));

/** Writes formulas in place of others, those beside and below one another together. Where a spill gives way to several, its first cell goes first. */
function rewriting(copy: Excel.Worksheet, rewritten: readonly Rewritten[]): WrittenLater[] {
  const spilled = rewritten.flatMap(({ area, formula }) =>
    typeof formula === "string" || area.rows * area.columns === 1 ? [] : [{ area, formula }],
  );
  const first = spilled.map(({ area, formula }): WrittenLater => {
    const entries = [[formula[0]?.[0] ?? ""]];
    return { bytes: bytesOf(entries), cells: 1, write: () => void (copy.getRange(cellAt(area.row, area.column)).formulas = entries) };
  });
  const cells = rewritten.flatMap((one) => formulasIn(one).map(([cell, formula]) => ({ cell, formula: String(formula) })));
  return [
    ...first,
    ...cellBlocks(cells).flatMap(({ area, entries }) =>
      contentsLater(area, entries, (piece) => void (copy.getRange(rangeOf(piece.area)).formulas = piece.entries)),
    ),
  ];
}
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
function freezing(copy: Excel.Worksheet, area: CellArea, values: Filled["values"]): WrittenLater[] {
  const entries = values.map((row) => row.map(frozenEntry));
  const pieces = contentsLater(area, entries, (piece) => void (copy.getRange(rangeOf(piece.area)).values = piece.entries));
  if (area.rows * area.columns === 1) return pieces;
  const [first] = entries.map((row) => row.slice(0, 1));
  return [setLater(1, () => void (copy.getRange(cellAt(area.row, area.column)).values = [first ?? []])), ...pieces];
}

/**
 * Text that is empty stays text: as a blank cell it would count as 0 in formulas that stay. An error stays that error.
 * The empty string clears a cell, since null would leave it as it is.
 */
function frozenEntry(value: CellContent): string | number | boolean {
  if (value === null) return "";
  return isErrorCode(value) ? value : cellEntry(value);
}
