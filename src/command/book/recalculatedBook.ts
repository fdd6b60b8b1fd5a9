import { holdsCall } from "../../sharing/findCalls";
import { plainNumber } from "../../problems/quoted";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, cellsOfArea, covers, rangeOf, type CellArea } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { daysInDoubt, neverCalculatedHere, notRecalculated, type AsSaved } from "../words/refusals";
import type { Book, BookSheet } from "./Book";
import { calculatedFromThese, type Place, type Reader } from "../../explanation/saved/calculatedFromThese";
import type { Calculated } from "./recalculate";
import { nameOnSheet } from "../../workbook/nameOnSheet";
import { foundAmong } from "./doubts";
import { isSame, refuseDoubtful, refuseMisread, type CalculatedHere } from "./refuseDoubtful";

export interface RecalculatedHere {
  /** One cell that alone is asked for: of what it is not calculated from nothing is refused. */
  readonly reader?: Reader;
  /** True where the file counts days from 1904. */
  readonly from1904: boolean;
  readonly asSaved: AsSaved;
}

/**
 * The book with the values that its formulas have here in place of those in the file. What cannot be calculated here, such as what reads another
 * workbook, keeps the value in the file, and so does what comes to the same.
 * @throws Refusal where a formula without calls of ours gives an error here and a value in the file, for a formula that cannot be calculated here and
 * has no value or one that is from before, and where the file holds another value and nothing changed that it is calculated from
 */
export function recalculatedBook(book: Book, calculated: Calculated, { reader, from1904, asSaved }: RecalculatedHere): Book {
  const asked = (cells: readonly Place[]): string[] =>
    (reader === undefined ? cells : calculatedFromThese(book, reader, cells)).map(({ sheet, cell }) => nameOnSheet(sheet, cell));
  const [lost, without]: [Place[], Place[]] = [[], []];
  const sheets = book.sheets.map((sheet) => recalculatedSheet(sheet, calculated.get(sheet.name), { lost, without }));
  const [withoutAsked, lostAsked] = [asked(without), asked(lost)];
  if (withoutAsked.length > 0) throw new Refusal(neverCalculatedHere(withoutAsked, asSaved));
  if (lostAsked.length > 0) throw new Refusal(notRecalculated(lostAsked, asSaved));
  if (from1904) refuseDoubtfulDays(book, sheets, { asSaved, asked });
  const here: CalculatedHere = {
    asSaved,
    asked,
    isLookedAt: (sheet) => calculated.has(sheet),
    wasCalculated: (sheet, cell) => isCalculatedHere(calculated.get(sheet)?.get(cell)),
  };
  refuseDoubtful(book, sheets, here);
  const now = { ...book, sheets, isStale: false, isCalculatedHere: true, uncheckedHere: uncheckedAmongKept(book, here) };
  // A day and a number that counts days cannot be told apart in every cell.
  if (!from1904) refuseMisread(book, now, here);
  return now;
}

/**
 * Cells with a call of ours that keep the value in the file since they cannot be calculated here, and of which it cannot be told whether their formulas
 * give it. What merely reads a call is believed as long as that comes to what was saved.
 */
function uncheckedAmongKept(before: Book, { isLookedAt, wasCalculated }: CalculatedHere): readonly Place[] {
  const sheets = before.sheets.filter(({ name }) => isLookedAt(name));
  const kept = new Set(
    sheets.flatMap(({ name, reading }) =>
      reading.rows.flatMap((row) =>
        row.flatMap(({ cell, formula }) => (holdsCall(formula) && !wasCalculated(name, cell) ? [nameOnSheet(name, cell)] : [])),
      ),
    ),
  );
  return kept.size === 0 ? [] : foundAmong(before, sheets).unchecked.filter(({ sheet, cell }) => kept.has(nameOnSheet(sheet, cell)));
}

/**
 * In a file that counts days from 1904, numbers that do not look like days may be days all the same, and are then calculated here as days from 1900.
 * Where the file holds another number, or none, that cannot be told.
 */
function refuseDoubtfulDays(before: Book, now: readonly BookSheet[], { asSaved, asked }: Pick<CalculatedHere, "asSaved" | "asked">): void {
  const doubtful = now.flatMap(({ name, reading }, place) => {
    const was = new Map(before.sheets[place]?.reading.rows.flat().map((one) => [one.cell, one.value]));
    const reads = reading.rows.flat().filter(({ formula, value }) => formula !== "" && typeof value === "number" && !holdsCall(formula));
    return reads.filter(({ cell, value }) => !isNear(was.get(cell), value)).map(({ cell }) => ({ sheet: name, cell }));
  });
  const named = asked(doubtful);
  if (named.length > 0) throw new Refusal(daysInDoubt(named, asSaved));
}

// The two counts are far further apart.
const isNear = (one: unknown, other: unknown): boolean =>
  typeof one === "number" && typeof other === "number" && Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one));

/** What is kept as a value has no formula here. */
const isCalculatedHere = (now: CellReading | undefined): boolean => now?.formula !== undefined && now.formula !== "";

type Here = ReadonlyMap<string, CellReading>;

interface Found {
  readonly lost: Place[];
  readonly without: Place[];
}

/** @param calculated left out for a sheet that nothing wanted is calculated from, which stays as it is */
function recalculatedSheet(before: BookSheet, calculated: Here | undefined, { lost, without }: Found): BookSheet {
  if (calculated === undefined) return before;
  const { sheet, filled } = asFilledHere(before, calculated);
  const rows = sheet.reading.rows.map((row) =>
    row.map((reading): CellReading => {
      const now = filled.get(reading.cell) ?? calculated.get(reading.cell);
      const isCalculated = reading.formula === "" ? filled.has(reading.cell) : isCalculatedHere(now);
      if (!isCalculated && reading.formula !== "" && reading.value === null) without.push({ sheet: sheet.name, cell: reading.cell });
      if (now === undefined || !isCalculated) return reading;
      const { error } = now;
      if (error !== "" && error !== reading.error && reading.value !== null && !holdsCall(reading.formula) && !filled.has(reading.cell))
        lost.push({ sheet: sheet.name, cell: reading.cell });
      // A formula that gives a blank gives an empty text, as files have it.
      const value = now.value ?? (reading.formula === "" ? null : "");
      const calculatedHere = { ...reading, value, error, shown: typeof value === "number" ? plainNumber(value) : String(value ?? "") };
      return !holdsCall(reading.formula) && isSame(reading, calculatedHere) ? reading : calculatedHere;
    }),
  );
  return { ...sheet, reading: { ...sheet.reading, rows } };
}

interface FilledHere {
  /** The sheet, with a reading for every cell that a formula fills. */
  readonly sheet: BookSheet;
  /** What formulas give in the cells that they fill besides their own. */
  readonly filled: Here;
}

/** An array formula keeps its size; one that fills as many cells as it gives has the size that it has here. */
function asFilledHere(sheet: BookSheet, here: Here): FilledHere {
  const spilling = new Set(sheet.cells.flatMap(({ cell, spills }) => (spills ? [cell] : [])));
  const filled = new Map<string, CellReading>();
  const spills = new Map<string, string>();
  for (const { cell, formula, spill } of sheet.reading.rows.flat()) {
    const now = here.get(cell);
    if (formula === "" || now === undefined || !isCalculatedHere(now) || (spill === "" && !spilling.has(cell))) continue;
    const given = areaNamed(now.spill === "" ? cell : now.spill);
    const area = spilling.has(cell) ? given : areaNamed(spill);
    spills.set(cell, area.rows * area.columns === 1 ? "" : rangeOf(area));
    for (const one of cellsOfArea(area).flat().slice(1)) filled.set(one, { ...now, ...partAt(given, one, here), cell: one, formula: "", spill: "" });
    if (spill !== "") for (const one of cellsOfArea(areaNamed(spill)).flat()) if (one !== cell && !isIn(area, one)) filled.set(one, blankAt(one)); // prettier-ignore
  }
  if (spills.size === 0) return { sheet, filled };
  const known = new Set<string>();
  const rows = sheet.reading.rows.map((row) =>
    row.map((reading) => {
      known.add(reading.cell);
      const spill = spills.get(reading.cell);
      return spill === undefined ? reading : { ...reading, spill };
    }),
  );
  const missing = [...filled.keys()].filter((cell) => !known.has(cell)).map(blankAt);
  return { sheet: { ...sheet, reading: { ...sheet.reading, rows: inOrder([...rows.flat(), ...missing]) } }, filled };
}

const isIn = (area: CellArea, cell: string): boolean => {
  const { row, column } = areaNamed(cell);
  return covers(area, row, column);
};

const blankAt = (cell: string): CellReading => ({ cell, formula: "", value: null, shown: "", error: "", message: "", spill: "" });

/** A single row, column or value of an answer serves every place of an array formula; beyond it there is none. */
function partAt(given: CellArea, cell: string, here: Here): Pick<CellReading, "value" | "error" | "shown"> {
  const { row, column } = areaNamed(cell);
  const down = given.rows === 1 ? 0 : row - given.row;
  const across = given.columns === 1 ? 0 : column - given.column;
  if (down >= given.rows || across >= given.columns) return { value: BEYOND, error: BEYOND, shown: BEYOND };
  const { value = null, error = "", shown = "" } = here.get(cellAt(given.row + down, given.column + across)) ?? {};
  return { value: value ?? "", error, shown };
}

const BEYOND = "#N/A";

/** Row by row, as readings are. */
function inOrder(readings: readonly CellReading[]): CellReading[][] {
  const rows = new Map<number, { readonly column: number; readonly reading: CellReading }[]>();
  for (const reading of readings) {
    const { row, column } = areaNamed(reading.cell);
    const here = rows.get(row);
    if (here === undefined) rows.set(row, [{ column, reading }]);
    else here.push({ column, reading });
  }
  return [...rows]
    .sort(([one], [other]) => one - other)
    .map(([, row]) => row.sort((one, other) => one.column - other.column).map(({ reading }) => reading));
}
