import { areaNamed, areaToFill } from "../../areaNamed";
import { cellArea, cellAt, rangeOf, type CellArea } from "../../cellArea";
import { typedCells } from "../../holdsTheSame";
import { withSheetRenamed } from "../../renamedSheet";
import type { CellContent, CopiedFormula, CopyWithValues } from "../../Workbook";
import { cellBlocks } from "../writing/cellBlocks";
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
  return {
    extent,
    isSmall: extent === undefined || fitsOneAnswer(extent),
    anchors: [...new Set(anchorOf.values())],
    writes: (copy) => [
      ...filled.map(({ area, values }) => ({ area, characters: lengthOf(values), write: () => freeze(copy, area, values) })),
      ...rewriting(copy, rewritten),
    ],
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
    const at = { ...area, rows: 1, columns: 1 };
    return { area: at, write: () => void (copy.getRange(rangeOf(at)).formulas = [[formula[0]?.[0] ?? ""]]) };
  });
  const cells = rewritten.flatMap((one) => formulasIn(one).map(([cell, formula]) => ({ cell, formula: String(formula) })));
  return [
    ...first,
    ...cellBlocks(cells).map(({ area, entries }): WrittenLater => ({
      area,
      characters: lengthOf(entries),
      write: () => void (copy.getRange(rangeOf(area)).formulas = entries),
    })),
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
