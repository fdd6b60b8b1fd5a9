import type { FormulaSources, Precedent } from "../../sharing/plain/change/FormulaSources";
import { namesOf, ReadSheets, type ReadFormula } from "../../sharing/plain/reading/ReadSheets";
import { FilledDownFormulas } from "../../sharing/plain/FilledDownFormulas";
import { calculatedFrom } from "../../sharing/plain/change/staleness";
import { sourcesOf } from "../../sharing/plain/change/precedents";
import type { RuleReading } from "../../sharing/plain/reading/RuleReading";
import { WorkingsSheet } from "../../sharing/plain/WorkingsSheet";
import { areaNamed } from "../../workbook/areaNamed";
import { cellArea, overlap, wholeLines } from "../../workbook/cellArea";
import type { ReadBook } from "./ReadBook";
import { seenSources } from "./seenSources";

/** Whoever reads: everything on some sheets, or one cell with a formula. */
export interface Reader {
  readonly sheets: readonly string[];
  readonly cell?: string;
}

export interface Place {
  readonly sheet: string;
  readonly cell: string;
}

// Each is looked at over all formulas; of more, all are named as soon as one is read.
const MOST_TOLD_APART = 10;

/**
 * Those of some cells with formulas that a reader is calculated from, at whatever distance and over whichever sheets; what does not show what it
 * refers to may refer to any, unless that can be told from what it was given. Rules for colouring on the reader's sheets read too.
 */
export function calculatedFromThese<P extends Place>(
  { sheets, names, tables, colouring }: ReadBook,
  reader: Reader,
  these: readonly P[],
): readonly P[] {
  if (these.length === 0) return these;
  const read = new ReadSheets({ sheets: sheets.map(({ reading }) => reading), names, tables });
  const formulas = new FilledDownFormulas(read, {}, new WorkingsSheet(""));
  const nameAsRead = namesOf(names);
  const seen = seenSources(read, nameAsRead);
  const sources = read.formulas.map((formula) => seen(formula, formulas.sourcesOf(formula, nameAsRead)));
  const unseen = sources.flatMap(({ isUnseen }, id) => (isUnseen ? [id] : []));
  const byRules = reader.cell === undefined ? colouring.filter(({ sheet }) => reader.sheets.includes(sheet)).map((rule) => readBy(rule, read, nameAsRead)) : []; // prettier-ignore
  const isReader = ({ sheet, reading }: ReadFormula): boolean =>
    reader.sheets.includes(sheet) && (reader.cell === undefined || reader.cell === reading.cell);
  // What reads a cell that no formula fills, as one of a what-if table.
  const idsOf = ({ sheet, cell }: Place): readonly number[] => {
    const area = areaNamed(cell);
    const own = read.sheet(sheet)?.formulaAt(area.row, area.column)?.id;
    if (own !== undefined) return [own];
    const reads = ({ precedents }: FormulaSources): boolean => precedents.some((one) => isIn({ sheet, area }, one));
    return sources.flatMap((one, id) => (reads(one) ? [id] : []));
  };
  const isRead = (ids: readonly number[]): boolean => {
    const after = calculatedFrom(read, sources, new Set(ids), unseen);
    const found = [...new Set([...ids, ...after])].flatMap((id) => read.formulas[id] ?? []);
    return found.some((formula) => isReader(formula) || byRules.some((rule) => rule.isUnseen || rule.precedents.some((one) => isIn(formula, one))));
  };
  const ids = these.map((place) => idsOf(place));
  if (!isRead(ids.flat())) return [];
  return these.length > MOST_TOLD_APART ? these : these.filter((_, place) => isRead(ids[place] ?? []));
}

const isIn = ({ sheet, area }: Precedent, { sheet: on, area: of }: Precedent): boolean =>
  sheet.toLowerCase() === on.toLowerCase() && overlap(area, of);

interface ReadByRule {
  readonly precedents: readonly Precedent[];
  readonly isUnseen: boolean;
}

/** What the formulas of a rule read in any of the cells that it is for. */
function readBy({ sheet, areas, formulas }: RuleReading, read: ReadSheets, nameOf: ReturnType<typeof namesOf>): ReadByRule {
  const all = areas.flatMap((one) => cellArea(one.replaceAll("$", "")) ?? wholeLines(one.replaceAll("$", "")) ?? []);
  const first = all[0] ?? { row: 0, column: 0, rows: 1, columns: 1 };
  const bottom = Math.max(...all.map(({ row, rows }) => row + rows), 0);
  const right = Math.max(...all.map(({ column, columns }) => column + columns), 0);
  const further = { rows: Math.max(0, bottom - first.row - 1), columns: Math.max(0, right - first.column - 1) };
  const found = formulas.map((formula) => {
    const reading = { cell: "A1", formula, value: null, shown: "", error: "", message: "", spill: "" };
    return sourcesOf(formula, read.around({ id: -1, sheet, reading, area: first }, nameOf), read.names);
  });
  const grown = ({ sheet: on, area }: Precedent): Precedent => ({
    sheet: on,
    area: { ...area, rows: area.rows + further.rows, columns: area.columns + further.columns },
  });
  return { precedents: found.flatMap(({ precedents }) => precedents.map(grown)), isUnseen: found.some(({ isUnseen }) => isUnseen) };
}
