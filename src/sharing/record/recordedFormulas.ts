import { recordWords } from "../../problems/sharing/recordWords";
import { rulesOfSheet } from "../../problems/sharing/sharedCopyWords";
import { cellArea, cellAt, cellsOfArea } from "../../workbook/cellArea";
import type { RangeReading, Workbook } from "../../workbook/Workbook";
import { RECORD_TITLE, SHEET_LABEL } from "./calculationRecord";
import { movedFormula } from "./movedFormula";
import { FILLED_DOWN } from "./recordRows";

// How records are named, numbered ones too.
const RECORD_NAME = / record( \(\d+\))?$/i;

/**
 * The cell formulas of a sheet by cell, as its calculation records in the workbook list them. A cell that two records give differently is left out:
 * which of them holds cannot be told.
 */
export async function recordedFormulas(workbook: Workbook, sheet: string): Promise<ReadonlyMap<string, string>> {
  const found = new Map<string, string>();
  const doubtful = new Set<string>();
  for (const name of (await workbook.sheetNames()).filter((one) => RECORD_NAME.test(one)))
    for (const [cell, formula] of formulasIn(await workbook.readUsed(name), sheet)) {
      if ((found.get(cell) ?? formula) !== formula) doubtful.add(cell);
      found.set(cell, formula);
    }
  for (const cell of doubtful) found.delete(cell);
  return found;
}

/** @param sheet whose record it has to be */
export function formulasIn({ rows }: Pick<RangeReading, "rows">, sheet: string): ReadonlyMap<string, string> {
  const lines = rows.map((row) => row.map(({ value }) => String(value ?? "")));
  const isItsRecord = lines[0]?.[0] === RECORD_TITLE && lines.some(([label, value]) => label === SHEET_LABEL && value === sheet);
  if (!isItsRecord) return new Map();
  const isEarlier = lines.some((line) => line[EARLIER.text] === EARLIER.heading);
  return new Map((isEarlier ? earlierEntries(lines) : entriesIn(lines)).flatMap(formulasOf));
}

interface Entry {
  readonly cells: string;
  typed: string;
  /** True for the formula of every cell of the area, that of the first moved along; else the area is what one formula fills. */
  isMoved: boolean;
  movingToo: ReadonlySet<string>;
}

const TEXT = recordWords.columns.length - 1;
const WHAT = 2;

function entriesIn(lines: readonly (readonly string[])[]): Entry[] {
  const entries: Entry[] = [];
  // True while a long formula may go on: it does so in the next rows, before anything else is said of it.
  let goesOn = false;
  for (const line of withoutRules(lines)) {
    const [cells = "", label = "", what = "", text = ""] = [line[0], line[1], line[WHAT], line[TEXT]];
    const last = entries.at(-1);
    if (cellArea(cells) !== undefined && text.startsWith("=")) {
      entries.push({ cells, typed: text, isMoved: false, movingToo: new Set() });
      goesOn = true;
      continue;
    }
    goesOn &&= cells === "" && label === "" && what === "";
    if (last === undefined || cells !== "" || label !== "") continue;
    if (goesOn) last.typed += text;
    else if (what === recordWords.moving) last.movingToo = new Set(text.split(" "));
    else if (what === recordWords.values) last.isMoved = true;
  }
  return entries;
}

/** A rule of the sheet is a formula of no cell, though it is listed under its cells. */
function withoutRules(lines: readonly (readonly string[])[]): (readonly string[])[] {
  let isRule = false;
  return lines.filter(([first = "", ...others]) => {
    if (first !== "" && others.every((text) => text === "")) isRule = first === rulesOfSheet.heading;
    return !isRule;
  });
}

// How records of versions before 0.3 were laid out: eight columns, with what is said of a function in each line.
const EARLIER = { heading: "Cell formula as typed", text: 2, about: 5 } as const;

function earlierEntries(lines: readonly (readonly string[])[]): Entry[] {
  const entries: Entry[] = [];
  for (const line of withoutRules(lines)) {
    const [cells = "", typed = "", about = ""] = [line[0], line[EARLIER.text], line[EARLIER.about]];
    const last = entries.at(-1);
    if (cellArea(cells) !== undefined && typed.startsWith("="))
      entries.push({ cells, typed, isMoved: about.startsWith(FILLED_DOWN), movingToo: new Set() }); // prettier-ignore
    // A long formula goes on in the next rows.
    else if (cells === "" && typed !== "" && last !== undefined) last.typed += typed;
  }
  return entries;
}

function formulasOf({ cells, typed, isMoved, movingToo }: Entry): [string, string][] {
  const area = cellArea(cells);
  if (area === undefined) return [];
  if (!isMoved) return [[cellAt(area.row, area.column), typed]];
  return cellsOfArea(area).flatMap((row, down) => row.map((cell, across): [string, string] => [cell, movedFormula(typed, { rows: down, columns: across }, movingToo)])); // prettier-ignore
}
