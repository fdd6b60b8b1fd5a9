import { tokenize, tokenTypes } from "@borgar/fx";
import { everyFunction, NAMESPACE } from "../functions/catalogue";
import { areaNamed } from "../workbook/areaNamed";
import { cellsOfArea } from "../workbook/cellArea";
import type { CellReading, RangeReading, Reentry } from "../workbook/Workbook";
import { findCalls, type RetortCall } from "./findCalls";

const UNKNOWN_NAME = "#NAME?";

/** A cell whose formula is to be entered again. */
export interface Mendable extends Reentry {
  /** Where the formula comes from: the cell itself, or the calculation record where only an error is left of it. */
  readonly from: "cell" | "record";
}

export interface Mending {
  readonly cells: readonly Mendable[];
  /** Cells whose text is lost and in no record, or that call a function this version does not have. */
  readonly beyond: readonly string[];
}

/**
 * Cells that came back from a program without the add-in: calls under the names that files use or behind a broken link, calls of ours that show
 * #NAME?, and newer functions under a file's name that show it. An error that any other cell shows is left alone, and so is every other text.
 * @param recorded formulas of the sheet by cell, from its calculation record
 */
export function cellsToMend({ rows }: Pick<RangeReading, "rows">, recorded: ReadonlyMap<string, string> = new Map()): Mending {
  const [cells, beyond]: [Mendable[], string[]] = [[], []];
  const isFilled = filledBySpills(rows);
  for (const reading of rows.flat()) {
    const broken = isFilled(reading.cell) ? undefined : brokenAs(reading);
    if (broken === undefined) continue;
    const formula = broken === "lost" ? recorded.get(reading.cell) : typedAgain(reading.formula);
    const isKnown = formula !== undefined && findCalls(formula).every(isOfThisVersion);
    if (!isKnown) beyond.push(reading.cell);
    else if (broken === "lost") cells.push({ cell: reading.cell, held: heldBy(reading), formula: typedAgain(formula), from: "record" });
    else cells.push({ cell: reading.cell, held: reading.formula, formula, from: "cell" });
  }
  return { cells, beyond };
}

/** True where some formula's text is lost, so that only a record can help. */
export const hasLost = ({ rows }: Pick<RangeReading, "rows">): boolean => {
  const isFilled = filledBySpills(rows);
  return rows.some((row) => row.some((reading) => !isFilled(reading.cell) && brokenAs(reading) === "lost"));
};

/** Tells cells in which another cell's formula shows what it came to. */
function filledBySpills(rows: RangeReading["rows"]): (cell: string) => boolean {
  const areas = rows.flatMap((row) => row.flatMap(({ cell, spill }) => (spill === "" ? [] : [{ anchor: cell, area: areaNamed(spill) }])));
  const filled = new Set(areas.flatMap(({ anchor, area }) => cellsOfArea(area).flat().filter((cell) => cell !== anchor))); // prettier-ignore
  return (cell) => filled.has(cell);
}

/** A text that reads like the error is somebody's text. */
function brokenAs({ formula, error }: CellReading): "stored" | "lost" | undefined {
  const isUnknown = error === UNKNOWN_NAME;
  if (formula === "") return isUnknown ? "lost" : undefined;
  // What some programs write where they do not know a function.
  if (/^=@?#NAME\?(?:\(|$)/i.test(formula)) return "lost";
  const calls = findCalls(formula);
  if (calls.some((call) => isStored(formula, call))) return "stored";
  return isUnknown && (calls.length > 0 || STORED_NEWER.test(formula)) ? "stored" : undefined;
}

const STORED_NEWER = /_xlfn\.|_xlws\.|_xlpm\./i;

const isStored = (formula: string, { start, bracket }: RetortCall): boolean =>
  !formula.slice(start, bracket).toUpperCase().startsWith(`${NAMESPACE}.`);

const isOfThisVersion = ({ name }: RetortCall): boolean => everyFunction.some((one) => one.name === name);

const heldBy = ({ formula, value }: CellReading): string => (formula === "" ? String(value ?? "") : formula);

/** A cell formula as a person types it, from any form in which a workbook holds it; texts in it stay. */
export function typedAgain(formula: string): string {
  const calls = findCalls(formula).reduceRight(
    (text, { name, start, bracket }) => `${text.slice(0, start)}${NAMESPACE}.${name}${text.slice(bracket)}`,
    formula,
  );
  if (!STORED_NEWER.test(calls)) return calls;
  return tokenize(calls, { mergeRefs: false })
    .map(({ type, value }) => {
      if (type === tokenTypes.FUNCTION) return value.replace(/^_xlfn\.(_xlws\.)?/i, "");
      return type === tokenTypes.REF_NAMED ? value.replace(/^_xlpm\./i, "") : value;
    })
    .join("");
}
