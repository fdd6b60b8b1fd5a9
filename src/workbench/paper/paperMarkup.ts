import { chartFigure } from "../../report/chart/chartFigure";
import { Markup, node, type Child } from "../../report/Markup";
import { POINTS_PER_PIXEL } from "../../workbook/columnPixels";
import { withDay, type PrintPlan } from "../../workbook/SheetPlan";
import type { Paper, PaperCell, PaperRow, PaperTable } from "./Paper";

// Points that a chart has besides its picture: its title, and its key in up to three lines.
const TITLE_AND_KEY = 46;
const [LOWEST, HIGHEST] = [84, 150];

/** A sheet on paper as HTML, with the style that sets up its pages. @param day in words, for the foot */
export function paperMarkup(paper: Paper, day: string): Markup {
  return node(
    "div",
    {},
    new Markup(`<style>${pageStyle(paper, day)}</style>`),
    paper.remark === "" ? [] : node("p", {}, paper.remark),
    paper.tables.map((one, index) => table(one, index)),
  );
}

/** The margins hold what the plan has at the foot, in the codes of the file format; browsers without such boxes leave them blank. */
function pageStyle({ sheet, landscape, margins: { top, right, bottom, left }, header, footer }: Paper, day: string): string {
  const margins = `margin: ${top}pt ${right}pt ${bottom}pt ${left}pt;`;
  const line = (place: string, codes: string): string => `@${place} { content: ${content(codes, sheet, day)}; font: 8.2pt Arial, sans-serif; }`;
  const foot = (side: string, codes: string): string => line(`bottom-${side}`, codes);
  const head = header === undefined ? "" : ` ${line("top-center", header)}`;
  return `@page { ${landscape ? "size: landscape; " : ""}${margins} ${foot("left", footer.left)} ${foot("center", footer.centre)} ${foot("right", footer.right)}${head} }`;
}

const COUNTERS: Readonly<Record<string, string>> = { "&P": "counter(page)", "&N": "counter(pages)" };

/** "Page &P of &N" as CSS has it: "Page " counter(page) " of " counter(pages). */
const content = (codes: PrintPlan["footer"]["left"], sheet: string, day: string): string =>
  withDay(codes, day)
    .replace(/&\d+/g, "")
    .split(/(&[PN])/)
    .map((piece) => COUNTERS[piece] ?? cssText(piece.replaceAll("&A", () => sheet)))
    .join(" ");

/** Whatever a sheet may be called, it stays a text: CSS takes any character by its number. */
const cssText = (text: string): string => `"${[...text].map((one) => (/[A-Za-z0-9 ,.]/.test(one) ? one : `\\${one.codePointAt(0)?.toString(16) ?? ""} `)).join("")}"`; // prettier-ignore

function table({ columns, head, rows, goesOn }: PaperTable, index: number): Markup {
  const width = columns.reduce((sum, one) => sum + one, 0);
  const wide = columns.length;
  return node(
    "table",
    { style: `width:${width}pt`, class: index === 0 || goesOn ? undefined : "begins" },
    node("colgroup", {}, columns.map((one) => new Markup(`<col style="width:${one}pt">`))), // prettier-ignore
    head.length === 0 ? [] : node("thead", {}, head.map((one, row) => line(one, wide, `${index}-head-${row}`))), // prettier-ignore
    node("tbody", {}, rows.map((one, row) => line(one, wide, `${index}-${row}`))), // prettier-ignore
  );
}

/** Browsers paint lines on whole pixels, so that a row of fewer would come out lower here and there. */
function line({ height, beginsPage, cells, charts }: PaperRow, wide: number, id: string): Markup {
  const attributes = {
    style: `height:${Math.round(height / POINTS_PER_PIXEL)}px`,
    class: beginsPage ? "begins" : charts === undefined ? undefined : "with-above",
  };
  return node("tr", attributes, charts === undefined ? cells.map(tableCell) : drawn(charts, wide, height, id));
}

function drawn(charts: NonNullable<PaperRow["charts"]>, wide: number, height: number, id: string): Child {
  if (charts.length === 0) return node("td", { colspan: wide, class: "by-hand" });
  const high = Math.max(LOWEST, Math.min(HIGHEST, height - TITLE_AND_KEY));
  return node("td", { colspan: wide }, node("div", { class: "charts" }, charts.map((chart, index) => chartFigure(chart, `paper-${id}-${index}`, high)))); // prettier-ignore
}

const tableCell = ({ text, across, down, css }: PaperCell): Markup =>
  node("td", { style: css, colspan: across > 1 ? across : undefined, rowspan: down > 1 ? down : undefined }, text);
