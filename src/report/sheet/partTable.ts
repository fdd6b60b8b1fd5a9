import { node, type Markup } from "../Markup";
import { reportWords } from "../words/reportWords";
import type { Part, PartRow, ShownCell } from "./Part";

// More rows than a page has room for beside everything else are shortened in the middle.
const MOST_ROWS = 24;
const FIRST_ROWS = 6;
const LAST_ROWS = 16;
// With more, a table stands closer.
const MANY_COLUMNS = 9;
// Rows that no page break comes between.
const KEPT_TOGETHER = 9;

/** "?" and "▲" begin whatever may be or is wrong. */
export const isMark = (text: string): boolean => text.startsWith("?") || text.startsWith("▲");

/** True where something was filled in, or the sheet complains that it was not; what it calculates beside empty boxes says nothing yet. */
function says({ cells }: PartRow): boolean {
  const boxes = cells.filter(({ isBox }) => isBox);
  const filled = boxes.length === 0 ? cells : boxes;
  return filled.some(({ text }) => text !== "") || cells.some(({ text, isError }) => isError || isMark(text));
}

/**
 * A part as a table with the sheet's own headings, without rows and columns in which nothing stands.
 * @param caption left out where a heading above says it
 */
export function partTable({ headings, rows }: Part, caption?: string): readonly Markup[] {
  const every = rows.filter(({ cells }) => cells.length > 0);
  const kept = every.filter(says);
  const { nothing, blankRows } = reportWords.table;
  if (kept.length === 0) return [node("p", { class: "none" }, node("b", {}, caption ?? ""), `: ${nothing}`)];
  const columns = [...new Set(kept.flatMap(({ cells }) => cells.filter(({ text }) => text !== "").map(({ column }) => column)))].sort(
    (a, b) => a - b,
  );
  const head = node("tr", {}, node("td", {}), ...columns.map((column) => header("col", headings.get(column) ?? "")));
  const left = every.length - kept.length;
  const said = caption === undefined ? [] : [node("caption", {}, caption, left === 0 ? "" : [" ", node("small", {}, blankRows(left))])];
  const looks = columns.length > MANY_COLUMNS ? "many" : kept.length <= KEPT_TOGETHER ? "kept" : undefined;
  return [node("table", { class: looks }, ...said, node("thead", {}, head), node("tbody", {}, shortened(kept, columns)))];
}

function shortened(rows: readonly PartRow[], columns: readonly number[]): readonly Markup[] {
  const lines = rows.map((row) => tableRow(row, columns));
  if (lines.length <= MOST_ROWS) return lines;
  const missing = lines.length - FIRST_ROWS - LAST_ROWS;
  const gap = node("tr", {}, node("td", { colspan: columns.length + 1, class: "gap" }, reportWords.table.shortened(missing)));
  return [...lines.slice(0, FIRST_ROWS), gap, ...lines.slice(-LAST_ROWS)];
}

function tableRow(row: PartRow, columns: readonly number[]): Markup {
  const cells: Markup[] = [];
  for (let index = 0; index < columns.length;) {
    const column = columns[index] ?? 0;
    const at = row.cells.find((one) => one.column === column);
    const span = Math.max(1, columns.filter((one) => one >= column && one < column + (at?.over ?? 1)).length);
    cells.push(node("td", { class: classOf(at), colspan: span > 1 ? span : undefined }, at?.text ?? ""));
    index += span;
  }
  return node("tr", { class: row.isTotal ? "total" : undefined }, header("row", row.label), cells);
}

/** A cell that names a column or a row; one without a name names nothing. */
const header = (scope: "col" | "row", text: string): Markup => (text === "" ? node("td", {}) : node("th", { scope }, text));

function classOf(at: ShownCell | undefined): string | undefined {
  if (at === undefined) return undefined;
  if (at.isError || isMark(at.text)) return "failed";
  return at.isNumber ? "number" : undefined;
}

/** The boxes of each row under its label, what is blank said so or left out. */
export function partFacts({ rows }: Part, blank: "said" | "left out"): readonly Markup[] {
  return rows.flatMap(({ label, cells }): Markup[] => {
    const texts = cells.filter(({ isBox, text }) => isBox && text !== "").map(({ text }) => text);
    if (texts.length === 0 && blank === "left out") return [];
    return [fact(label, texts.length === 0 ? reportWords.notGiven : texts.join("; "))];
  });
}

export const fact = (label: string, text: string): Markup => node("div", {}, node("dt", {}, label), node("dd", {}, text));
