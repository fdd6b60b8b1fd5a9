import { EDITION } from "../../chemistry/atomicWeights";
import { cellAt } from "../../workbook/cellArea";
import type { CellStyle, PlannedCell, SheetPlan } from "../../workbook/SheetPlan";
import type { CellContent, RangeReading } from "../../workbook/Workbook";
import { drawnLines } from "../../workbook/drawnLines";
import { recordWords } from "../../problems/sharing/recordWords";
import { aboutPlainCells, aboutValues, checkByHand, formsOnCopy, shownRounded } from "../../problems/sharing/sharedCopyWords";
import type { FormulaCell } from "../formulaCells";
import type { PlainCell } from "../plain/plainSheets";
import type { RulesPut } from "../plain/plainRules";
import { recordEntries } from "./recordEntries";
import { entryLines, functionLines, ruleLines, sayingLines, unprintedLines, type RecordLine } from "./recordLines";
import { recordedRules } from "./recordedRules";

/** What a calculation record is about. */
export interface SharedCopy {
  /** The sheet that was shared. */
  readonly sheet: string;
  /** The copy that holds its values. */
  readonly copy: string;
  /** The day of sharing, as it is to be printed. */
  readonly date: string;
  readonly formulaCells: readonly FormulaCell[];
  /** What stands on the sheet, for the numbers that went into its formulas. */
  readonly rows?: RangeReading["rows"];
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

// Characters: the columns stand on the width of a page in landscape, be it A4 or Letter, with letters above 7 points, and still do where a
// program draws columns 2.5 % wider than Excel, as was measured on LibreOffice.
const COLUMN_WIDTHS = [13, 22, 14, 10, 142];
/** Percent: 11 points print at 7.3, those of the foot too. */
const SCALE = 66;
const MARGIN = 25;
const MARGINS = { left: MARGIN, right: MARGIN, top: MARGIN, bottom: 36, header: 12, footer: 15 };
const FOOTER = { left: "&11&A", centre: "&11Page &P of &N", right: "&11Retort calculation record" };

// Points of a line of letters of 11 points, as spreadsheets set rows. A row holds at most 409 points.
const LINE = 15;
// A row stands on one page, so that a high one leaves much of the page before it blank.
const MOST_LINES = 12;
/** Characters that fit into one row; a longer formula goes on in the next, and one that breaks badly sooner. */
const LONGEST_PIECE = 1800;
const SHORTER = 0.9;
/** Characters of a label or a value, which stand whole on the sheet itself. */
const LONGEST_SHOWN = 140;

/**
 * The sheet that goes with a shared copy: how each value came about, in cell formulas kept as text, with the numbers that went into them, so that a
 * colleague without the add-in can check it. Alike formulas of a column or row are told once, and so is each function. By steps of the work on a run
 * sheet, elsewhere by families of functions. Printed in landscape; what a run sheet says in sentences is printed, and the long formulas of that stand
 * below on the sheet alone.
 * @param name of the new sheet
 */
export function calculationRecord(shared: SharedCopy, name: string): SheetPlan {
  const top = heading(shared);
  const plainHere = shared.plainCells?.filter(({ sheet }) => sheet === shared.sheet);
  const recorded = recordEntries(shared.formulaCells, plainHere);
  const rowsOf = (lines: readonly RecordLine[]): Content[][] => lines.flatMap(rowsOfLine);
  const before = [
    ...top,
    ...rowsOf(entryLines(recorded.groups, shared.rows ?? [], plainHere)),
    ...rowsOf(functionLines(recorded.groups)),
    ...rowsOf(ruleLines(recordedRules(shared.copy, shared.put))),
  ];
  const sayingsFor = (row: number): Content[][] => rowsOf(sayingLines(recorded, row));
  // A row free between what is printed and what is not.
  const printed = [...before, ...sayingsFor(before.length + sayingsFor(MOST_ROWS).length + 2)];
  const unprinted = rowsOf(unprintedLines(recorded));
  const lines = unprinted.length === 0 ? printed : [...printed, [], ...unprinted];
  return {
    name,
    cells: lines.flatMap((contents, row) => contents.flatMap((content, column) => plannedCell(content, row, column))),
    columnWidths: COLUMN_WIDTHS,
    rowHeights: lines.flatMap((contents, row) => (row < top.length - 1 ? [] : [{ from: row + 1, to: row + 1, height: heightOf(contents) }])),
    entryRules: [],
    frozenRows: 1,
    print: {
      ...{ area: `A1:${cellAt(printed.length - 1, COLUMN_WIDTHS.length - 1)}`, landscape: true, titleFrom: top.length, titleRows: top.length },
      ...{ scale: SCALE, margins: MARGINS, footer: FOOTER, breaksBefore: [] },
    },
    startAt: "A1",
  };
}

// So that a row's number takes as many characters as it may.
const MOST_ROWS = 100_000;

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
  recordWords.columns.map((column): Content => [column, "columnHeading"]),
];

/** One row, or several where a formula or a text is longer than a row holds. */
function rowsOfLine({ is, columns }: RecordLine): Content[][] {
  if (is === "band") return [columns.map((content, column): Content => [column === 0 ? content : "", "heading"])];
  const [cell, label, value, unit, text] = columns;
  const parts = [begun(cell), begun(label), begun(value), unit, text].map((content, column) =>
    typeof content === "string" ? pieces(content, COLUMN_WIDTHS[column] ?? 1, content.startsWith("=")) : [content],
  );
  return Array.from({ length: Math.max(1, ...parts.map(({ length }) => length)) }, (_, index) =>
    parts.map((part): Content => [part[index] ?? (index === 0 ? "" : null), "recorded"]),
  );
}

const begun = (content: CellContent): CellContent =>
  typeof content === "string" && content.length > LONGEST_SHOWN ? `${content.slice(0, LONGEST_SHOWN - 1).replace(/[\ud800-\udbff]$/, "")}…` : content;

/** What stands in a column in pieces for a row each. @param anywhere false where it breaks between words */
function pieces(text: string, width: number, anywhere: boolean): string[] {
  const found: string[] = [];
  for (let rest = text; rest !== "";) {
    let length = Math.min(LONGEST_PIECE, rest.length);
    while (drawnLines(rest.slice(0, length), width) > MOST_LINES) length = Math.floor(length * SHORTER);
    if (!anywhere && length < rest.length) length = rest.lastIndexOf(" ", length) + 1 || length;
    // Half of a surrogate pair is no character.
    if (/[\ud800-\udbff]$/.test(rest.slice(0, length))) length++;
    found.push(rest.slice(0, length));
    rest = rest.slice(length);
  }
  return found;
}

/** A number is drawn shorter rather than wrapped. */
const textOf = (content: CellContent): string => (typeof content === "number" ? "" : String(content ?? ""));

const heightOf = (contents: readonly Content[]): number =>
  LINE *
  Math.max(1, ...contents.map(([content, style], column) => (style === "heading" ? 1 : drawnLines(textOf(content), COLUMN_WIDTHS[column] ?? 1))));

function plannedCell([content, style]: Content, row: number, column: number): PlannedCell[] {
  const cell = cellAt(row, column);
  // A band runs across the page, so that its words, which run on, stand on it.
  if (content === null || content === "") return style === "heading" ? [{ cell, style }] : [];
  return [{ cell, content, style }];
}
