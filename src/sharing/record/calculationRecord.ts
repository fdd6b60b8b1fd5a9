import { EDITION } from "../../chemistry/atomicWeights";
import { cellAt } from "../../workbook/cellArea";
import type { CellStyle, PlannedCell, SheetPlan } from "../../workbook/SheetPlan";
import type { CellContent } from "../../workbook/Workbook";
import { wrappedLines } from "../../workbook/wrappedLines";
import { aboutPlainCells, aboutValues, checkByHand, formsOnCopy, shownRounded } from "../../problems/sharedCopyWords";
import type { FormulaCell } from "../formulaCells";
import type { PlainCell } from "../plain/plainSheets";
import type { RulesPut } from "../plain/plainRules";
import { recordGroups, ruleGroups, type RecordRow } from "./recordRows";

/** What a calculation record is about. */
export interface SharedCopy {
  /** The sheet that was shared. */
  readonly sheet: string;
  /** The copy that holds its values. */
  readonly copy: string;
  /** The day of sharing, as it is to be printed. */
  readonly date: string;
  readonly formulaCells: readonly FormulaCell[];
  /** What became of the cells, of a copy of plain cells: such a copy goes on calculating. */
  readonly plainCells?: readonly PlainCell[];
  /** The rules and names beside the cells that called us. */
  readonly put?: RulesPut;
}

/** Put in place by the build, from package.json. */
declare const RETORT_VERSION: string | undefined;

/** The version of this add-in, "0.1.0"; outside a build, the words that say so. */
export const VERSION: string = typeof RETORT_VERSION === "string" ? RETORT_VERSION : "unreleased source";

/** By which a record is read again. */
export const RECORD_TITLE = "Calculation record";
export const SHEET_LABEL = "Sheet";

const COLUMNS = [
  "Cell",
  "On the sheet",
  "Cell formula as typed",
  "Value",
  "Unit of the function",
  "What the function is",
  "Its source",
  "With built-in functions only",
];
// Characters: all eight columns stand on the width of a page in landscape, be it A4 or Letter, with letters above 7 points, and still do where a
// program draws columns 2.5 % wider than Excel, as was measured on LibreOffice.
const COLUMN_WIDTHS = [15, 18, 42, 14, 11, 33, 25, 40];
/** Percent: 11 points print at 7.3. */
const SCALE = 66;
const MARGIN = 25;
const MARGINS = { left: MARGIN, right: MARGIN, top: MARGIN, bottom: 36, header: 12, footer: 15 };
const FOOTER = { left: "&10&A", centre: "&10Page &P of &N", right: "&10Retort calculation record" };

// Points of a line of letters of 11 points, as spreadsheets set rows. A row holds at most 409 points.
const LINE = 15;
// Letters, signs and digits of formulas and sentences side by side are narrower than the digits that a column's width counts: LibreOffice sets 53
// characters of a formula where 44 digits stand.
const CHARACTERS_A_DIGIT = 1.08;
const MOST_LINES = 27;
/** Characters that fit into one row; a longer formula goes on in the next, and one that breaks badly sooner. */
const LONGEST_PIECE = 900;
const SHORTER = 0.9;
/** Characters of a label or a value, which stand whole on the sheet itself. */
const LONGEST_SHOWN = 250;

/**
 * The sheet that goes with a shared copy: how each value came about, in words and in cell formulas kept as text, so
 * that a colleague without the add-in can check it. Grouped by families of functions; printed in landscape.
 * @param name of the new sheet
 */
export function calculationRecord(shared: SharedCopy, name: string): SheetPlan {
  const top = heading(shared);
  const plainHere = shared.plainCells?.filter(({ sheet }) => sheet === shared.sheet);
  const groups = [...recordGroups(shared.formulaCells, plainHere), ...ruleGroups(shared.copy, shared.put)].flatMap((group) => [
    COLUMNS.map((_, column): Content => [column === 0 ? group.heading : "", "heading"]),
    ...group.rows.flatMap(linesOf),
  ]);
  const lines: Content[][] = [...top, ...groups];
  return {
    name,
    cells: lines.flatMap((contents, row) => contents.flatMap((content, column) => plannedCell(content, row, column))),
    columnWidths: COLUMN_WIDTHS,
    rowHeights: lines.flatMap((contents, row) => (row < top.length - 1 ? [] : [{ from: row + 1, to: row + 1, height: heightOf(contents) }])),
    entryRules: [],
    frozenRows: 1,
    print: {
      ...{ area: `A1:${cellAt(lines.length - 1, COLUMNS.length - 1)}`, landscape: true, titleFrom: top.length, titleRows: top.length },
      ...{ scale: SCALE, margins: MARGINS, footer: FOOTER, breaksBefore: [] },
    },
    startAt: "A1",
  };
}

type Content = readonly [CellContent, CellStyle];

const heading = ({ sheet, copy, date, plainCells }: SharedCopy): Content[][] => [
  [[RECORD_TITLE, "title"]],
  [[plainCells === undefined ? aboutValues(sheet, copy) : aboutPlainCells(copy), "note"]],
  [
    [SHEET_LABEL, "label"],
    [sheet, "computed"],
  ],
  [
    ["Shared on", "label"],
    [date, "computed"],
  ],
  [
    ["Add-in", "label"],
    [`Retort ${VERSION}`, "computed"],
  ],
  [
    ["Atomic weights", "label"],
    [EDITION, "computed"],
  ],
  [[plainCells === undefined ? checkByHand(copy) : formsOnCopy, "note"]],
  [[shownRounded, "note"]],
  [],
  COLUMNS.map((column) => [column, "columnHeading"]),
];

/** One line, or several where a formula or a text is longer than a row holds. */
function linesOf(row: RecordRow): Content[][] {
  const { cells, label, typed, value, unit, about, source, builtIn } = row;
  const columns = [cells, begun(label), typed, begun(value), unit, about, source, builtIn].map((content, column) =>
    typeof content === "string" ? pieces(content, COLUMN_WIDTHS[column] ?? 1, content.startsWith("=")) : [content],
  );
  return Array.from({ length: Math.max(...columns.map(({ length }) => length)) }, (_, index) =>
    columns.map((parts): Content => [parts[index] ?? (index === 0 ? "" : null), "recorded"]),
  );
}

const begun = (content: CellContent): CellContent =>
  typeof content === "string" && content.length > LONGEST_SHOWN ? `${content.slice(0, LONGEST_SHOWN - 1).replace(/[\ud800-\udbff]$/, "")}…` : content;

/** What stands in a column in pieces for a row each. @param anywhere false where it breaks between words */
function pieces(text: string, width: number, anywhere: boolean): string[] {
  const found: string[] = [];
  for (let rest = text; rest !== "";) {
    let length = Math.min(LONGEST_PIECE, rest.length);
    while (linesIn(rest.slice(0, length), width) > MOST_LINES) length = Math.floor(length * SHORTER);
    if (!anywhere && length < rest.length) length = rest.lastIndexOf(" ", length) + 1 || length;
    // Half of a surrogate pair is no character.
    if (/[\ud800-\udbff]$/.test(rest.slice(0, length))) length++;
    found.push(rest.slice(0, length));
    rest = rest.slice(length);
  }
  return found;
}

const linesIn = (text: string, width: number): number => wrappedLines(text, Math.floor(width * CHARACTERS_A_DIGIT));

const heightOf = (contents: readonly Content[]): number =>
  LINE *
  Math.max(1, ...contents.map(([content, style], column) => (style === "heading" ? 1 : linesIn(String(content ?? ""), COLUMN_WIDTHS[column] ?? 1))));

function plannedCell([content, style]: Content, row: number, column: number): PlannedCell[] {
  const cell = cellAt(row, column);
  // A band runs across the page, so that its words, which run on, stand on it.
  if (content === null || content === "") return style === "heading" ? [{ cell, style }] : [];
  return [{ cell, content, style }];
}
