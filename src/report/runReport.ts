import { otherFormulas } from "../problems/runsheet/growingProblems";
import { balanceBlocks } from "../runsheet/blocks/balance/planBalanceSheet";
import type { BlockCell } from "../runsheet/blocks/Block";
import { NEXT } from "../runsheet/blocks/headBlock";
import { everyBlock } from "../runsheet/buildRunSheet";
import { cell } from "../runsheet/expressions/Expression";
import { nextAsTold } from "../runsheet/reading/readHead";
import { formulasNotOwn } from "../runsheet/reading/formulasNotOwn";
import type { BalanceSheet } from "../runsheet/sheet/BalanceSheet";
import { LABEL } from "../runsheet/sheet/Columns";
import type { RunSheet } from "../runsheet/sheet/RunSheet";
import { balanceWords } from "../runsheet/words/balance/balanceWords";
import { cautions } from "../runsheet/words/cautions";
import { headWords } from "../runsheet/words/headWords";
import { plannedLines } from "../runsheet/words/planWords";
import { kindWords } from "../runsheet/words/kindWords";
import { stripWords } from "../runsheet/words/stripWords";
import type { RangeReading } from "../workbook/Workbook";
import { chartFigure } from "./chart/chartFigure";
import { chartsOf } from "./chart/chartsOn";
import { checksSection } from "./checksSection";
import { node, type Child } from "./Markup";
import { page, paragraph, section } from "./page";
import type { ReportExtras } from "./ReportExtras";
import { partsOf, type Part } from "./sheet/Part";
import { fact, isMark, partFacts, partTable } from "./sheet/partTable";
import { ShownCells } from "./sheet/ShownCells";
import { foot, sourcesSection } from "./sourcesSection";
import { reportWords } from "./words/reportWords";

type AnySheet = { readonly is: "whole"; readonly sheet: RunSheet } | { readonly is: "balance"; readonly sheet: BalanceSheet };

/** The report of a run sheet, in the sheet's own words and numbers. */
export function runReport(reading: RangeReading, read: AnySheet, extras: ReportExtras): string {
  const shown = new ShownCells(reading);
  const { sheet } = read;
  const planned: readonly BlockCell[] = read.is === "balance" ? balanceBlocks(read.sheet).cells : everyBlock(read.sheet).cells;
  const parts = partsOf(planned, shown, sheet.columns.width);
  const at = (heading: number | undefined): readonly Part[] => parts.filter((part) => part.heading === heading);
  const { kind } = sheet.options;
  const about =
    read.is === "balance"
      ? {
          setup: read.sheet.rows.weight.heading,
          results: read.sheet.rows.performance,
          settings: undefined,
          openFire: undefined,
          materials: undefined,
        }
      : { ...headings(read.sheet), results: read.sheet.rows.results };
  const aside = [about.setup, about.results.heading, about.settings, about.openFire, about.materials, sheet.rows.checks.heading, sheet.rows.cautions.heading, sheet.rows.curves.heading]; // prettier-ignore
  const tables = parts.filter(({ heading }) => !aside.includes(heading));
  const subject = shown.text(read.is === "balance" ? read.sheet.setup.balance : read.sheet.setup.material);
  const charts = chartsOf(read, reading, shown);
  const words = reportWords;
  const results = at(about.results.heading).flatMap((part) => (hasNumbers(part) ? partTable(part) : paragraph(words.noResults)));
  const footer = shown.text(cell(about.results.foot, LABEL));
  const parted = (...children: readonly Child[]): readonly Child[] =>
    tables.some(isBeside) ? [node("div", { class: "close" }, ...children)] : children;
  return page(
    words.title(kindWords[kind].title, subject),
    ...parted(
      node(
        "dl",
        {},
        at(about.setup).flatMap((part) => partFacts(part, "said")),
        fact(words.setup.sheet, reading.sheet),
        fact(words.setup.made, extras.date),
      ),
      paragraph(otherFormulas(formulasNotOwn(reading)), "failed"),
      head(sheet, shown),
      section(
        words.results,
        node(
          "div",
          { class: "tables" },
          node("div", {}, results),
          at(about.openFire).map((part) => compared(part)),
        ),
        hasNumbers(at(about.results.heading)[0]) ? paragraph(footer, "note") : [],
      ),
      checksSection(sheet, shown),
      about.settings === undefined
        ? []
        : section(
            words.method,
            node(
              "dl",
              {},
              at(about.settings).flatMap((part) => partFacts(part, "left out")),
            ),
            plannedLines(sheet.options.plan, sheet.options.degrees).map((line) => paragraph(line)),
          ),
      section(
        words.weighings,
        // Narrow tables stand side by side, so what was read beside the weighings comes after them all.
        [tables.filter((part) => !isBeside(part)), tables.filter(isBeside)].map((some) =>
          node(
            "div",
            { class: "tables" },
            some.map((part) => node("div", {}, partTable(part, isBeside(part) ? besideOf(part, tables) : part.headings.get(LABEL)))),
          ),
        ),
      ),
      section(
        words.charts,
        charts.length === 0
          ? paragraph(words.noChart)
          : node(
              "div",
              { class: "charts" },
              charts.map((chart, index) => chartFigure(chart, `chart-${index + 1}`)),
            ),
      ),
      section(words.cautions, node("ul", { class: "small" }, cautions[kind].map((line) => node("li", {}, line)))), // prettier-ignore
      sourcesSection(reading, true),
      foot(extras),
    ),
  );
}

const headings = ({ rows }: RunSheet) => ({
  setup: rows.setup.heading,
  settings: rows.settings.heading,
  openFire: rows.openFire?.heading,
  materials: rows.materials.heading,
});

/** Zeros and temperatures, which stand below the table of weighings that they belong to. */
const isBeside = ({ headings }: Part): boolean => headings.get(LABEL) === stripWords.heading;
const besideOf = (part: Part, tables: readonly Part[]): string =>
  `${tables[tables.indexOf(part) - 1]?.headings.get(LABEL) ?? ""}: ${stripWords.heading}`;

const hasNumbers = (part: Part | undefined): boolean =>
  part?.rows.some(({ cells }) => cells.some(({ isBox, text }) => !isBox && text !== "")) ?? false;

/** How far the run is, its answer, how its checks stand and what the answer rests on. */
function head({ rows, options }: RunSheet | BalanceSheet, shown: ShownCells): Child {
  const { state } = reportWords;
  const next = cell(rows.head.title, NEXT);
  const lines = [rows.head.answer, rows.head.checks, rows.head.covers, rows.head.openly].map((row) => cell(row, LABEL));
  const wrong = [next, ...lines].filter((at) => shown.isError(at));
  if (wrong.length > 0)
    return node("div", { class: "answer", role: "note" }, paragraph(state.errors(shown.reading(wrong[0] ?? next)?.cell ?? ""), "failed"));
  const texts = lines.map((at) => shown.text(at));
  const isBlank = texts[0] === headWords.answer.nothing || texts[0] === balanceWords.head.nothing;
  const told = nextAsTold(shown.text(next), texts[1] ?? "");
  const goesOn = told === headWords.next.complete ? state.finished(told) : state.unfinished(told.replace("► ", ""));
  const now = isBlank ? state.blank : options.kind === "balance" ? state.history : goesOn;
  return [
    paragraph(now, "state"),
    node(
      "div",
      { class: "answer" },
      texts.filter((text) => text !== "").map((text) => node("p", { class: isMark(text) ? "failed" : undefined }, text)),
    ),
  ];
}

/** What open burning would have done, as far as an analysis was given. */
function compared(part: Part): Child {
  const worked = part.rows.map((row) => ({ ...row, cells: row.cells.filter(({ isBox, isNumber }) => !isBox && isNumber), label: row.beside }));
  const rows = worked.filter(({ cells }) => cells.length > 0);
  if (rows.length === 0) return [];
  return node("div", {}, partTable({ ...part, rows }, reportWords.compared), node("dl", {}, partFacts(part, "left out")));
}
