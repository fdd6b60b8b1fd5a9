import { tokenize, tokenTypes } from "@borgar/fx";
import { numberText } from "../../inputs/numberText";
import { cellArea } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { LONGEST_FORMULA } from "./writing/CannotWrite";
import { sourcesOf } from "./change/precedents";
import { formulaNamed } from "./writing/named";
import { cellsReferred, tableCellsReferred, type Referred } from "./formula/reference";
import type { RuleReading } from "./reading/RuleReading";
import type { Surroundings } from "./reading/Surroundings";

// A name that leads round in a circle is none.
const MOST_NAMES = 20;
/** Characters of a list that stands in a rule for entries itself (Excel specifications and limits). */
const LONGEST_LIST = 255;
const LONGEST_TEXT = 255;

/**
 * A formula of a rule with what it read on sheets that go written out: the value of a cell in place of the cell, and the entries of a list. A rule holds
 * for many cells, so only a reference that means the same in all of them can be written out, and a rule may hold no ranges in braces.
 * @returns undefined where it cannot go without those sheets
 */
export function ruleAlone(formula: string, rule: RuleReading, place: Surroundings, sheets: readonly string[]): string | undefined {
  const list = rule.isList === true ? listAlone(formula, place) : undefined;
  if (list !== undefined) return list;
  const isOneCell = rule.areas.length === 1 && cellArea(rule.areas[0] ?? "")?.rows === 1 && cellArea(rule.areas[0] ?? "")?.columns === 1;
  const written = withValues(formula, place, isOneCell, 0);
  if (written === undefined || written.length > LONGEST_FORMULA || sourcesOf(written, place, sheets).isBeyond) return undefined;
  return written;
}

const isGone = (found: Referred | undefined, { isGone: gone }: Surroundings): found is Referred & { readonly sheet: string } =>
  found?.sheet !== undefined && (gone?.(found.sheet) === true || (found.lastSheet !== undefined && gone?.(found.lastSheet) === true));

function withValues(formula: string, place: Surroundings, isOneCell: boolean, depth: number): string | undefined {
  let written = "";
  for (const { type, value } of tokenize(formula.startsWith("=") ? formula : `=${formula}`)) {
    const piece =
      type === tokenTypes.REF_NAMED
        ? nameAlone(value, place, depth)
        : type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_TERNARY
          ? referenceAlone(value, place, isOneCell)
          : value;
    if (piece === undefined) return undefined;
    written += piece;
  }
  return written;
}

function referenceAlone(text: string, place: Surroundings, isOneCell: boolean): string | undefined {
  const found = cellsReferred(text, place.sheet);
  if (!isGone(found, place)) return text;
  const { sheet, lastSheet, area } = found;
  const isSame = isOneCell || /!\$[A-Z]+\$\d+$/i.test(text);
  if (lastSheet !== undefined || !isSame || area.rows * area.columns > 1) return undefined;
  return valueAlone(place.heldAt?.(sheet, area.row, area.column));
}

/** A blank cell is 0 to one operator and no text to the next, which no value is. */
function valueAlone(held: CellReading | undefined): string | undefined {
  if (held === undefined) return undefined;
  const { value, error } = held;
  if (error !== "") return error;
  if (typeof value === "number") return value < 0 ? `(${numberText(value)})` : numberText(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value === null || value === "" || value.length > LONGEST_TEXT ? undefined : `"${value.replace(/"/g, '""')}"`;
}

function nameAlone(text: string, place: Surroundings, depth: number): string | undefined {
  const named = formulaNamed(text, place);
  if (named === undefined) return text;
  const formula = named.startsWith("=") ? named : `=${named}`;
  const inside = depth > MOST_NAMES ? undefined : withValues(formula, place, false, depth + 1);
  return inside === formula ? text : inside === undefined ? undefined : `(${inside.slice(1)})`;
}

/** The entries of a list, where they can stand in the rule: a comma divides them, and a decimal is spelled otherwise elsewhere. */
function listAlone(formula: string, place: Surroundings): string | undefined {
  const text = formula.replace(/^=/, "");
  const named = /[!:[]/.test(text) ? undefined : formulaNamed(text, place);
  const reference = (named ?? text).replace(/^=/, "");
  const found = cellsReferred(reference, place.sheet) ?? tableCellsReferred(reference, place);
  if (!isGone(found, place) || found.isWhole || (found.area.rows > 1 && found.area.columns > 1)) return undefined;
  const { sheet, area } = found;
  const entries = Array.from({ length: area.rows * area.columns }, (_, index) =>
    place.heldAt?.(sheet, area.row + (area.columns > 1 ? 0 : index), area.column + (area.columns > 1 ? index : 0)),
  );
  if (entries.some((entry) => entry !== undefined && entry.error !== "")) return undefined;
  const values = entries.flatMap((entry) => (entry === undefined || entry.value === null || entry.value === "" ? [] : [entry.value]));
  const canStand = values.every((value) => (typeof value === "string" ? !/[,"]|^\s|\s$/.test(value) : Number.isSafeInteger(value)));
  const list = values.map(String).join(",");
  return canStand && list !== "" && list.length <= LONGEST_LIST ? `="${list}"` : undefined;
}
