import { everyFunction } from "../functions/catalogue";
import { nothingToReport } from "../problems/sharing/reportProblems";
import { findCalls, type RetortCall } from "../sharing/findCalls";
import { labelsOf } from "../sharing/labelsOf";
import type { CellReading, RangeReading } from "../workbook/Workbook";
import { node } from "./Markup";
import { page, paragraph, section } from "./page";
import type { ReportExtras } from "./ReportExtras";
import { shownBy } from "./sheet/shownBy";
import { foot, sourcesSection } from "./sourcesSection";
import { reportWords } from "./words/reportWords";

const words = reportWords.calculations;

interface Calculation {
  readonly reading: CellReading;
  readonly calls: readonly RetortCall[];
}

/**
 * The report of a sheet of the user's own: each cell that calls a Retort function, with its formula, value, unit and source.
 * @param remark why this is no report of a run, where the sheet began as one
 * @throws InputProblem where no cell calls any
 */
export function calculationsReport(reading: RangeReading, extras: ReportExtras, remark = ""): string {
  const formulas = reading.rows.flat().filter(({ formula }) => formula !== "");
  const every = formulas.map((one): Calculation => ({ reading: one, calls: findCalls(one.formula) })).filter(({ calls }) => calls.length > 0);
  if (every.length === 0) throw nothingToReport(reading.sheet);
  const errors = every.filter(({ reading: { error } }) => error !== "").length;
  const others = formulas.length - every.length;
  const labelOf = labelsOf(reading);
  return page(
    words.title(reading.sheet),
    paragraph(remark, "state"),
    paragraph(words.about(every.length)),
    errors === 0 ? [] : paragraph(words.errors(errors), "failed"),
    node(
      "table",
      {},
      node("thead", {}, node("tr", {}, ...words.columns.map((text) => node("th", { scope: "col" }, text)))),
      node("tbody", {}, every.map((one) => line(one, labelOf(one.reading)))), // prettier-ignore
    ),
    others === 0 ? [] : paragraph(words.others(others), "note"),
    sourcesSection(reading),
    section(reportWords.setup.made, paragraph(extras.date)),
    foot(extras),
  );
}

function line({ reading, calls }: Calculation, label: string) {
  // What more is reckoned from a call has a unit that only its author knows.
  const [outermost] = calls;
  const isWhole = outermost !== undefined && outermost.start === 1 && outermost.end === reading.formula.length;
  const unit = isWhole ? (everyFunction.find((one) => one.name === outermost.name)?.result.unit ?? "") : "";
  const value = reading.error !== "" ? reading.error : reading.shown === "" ? shownBy(reading.value, undefined) : reading.shown;
  const isNumber = reading.error === "" && typeof reading.value === "number";
  return node(
    "tr",
    {},
    node("th", { scope: "row" }, reading.spill === "" ? reading.cell : reading.spill),
    node("td", {}, label),
    node("td", {}, node("code", {}, reading.formula)),
    node("td", { class: reading.error !== "" ? "failed" : isNumber ? "number" : undefined }, value),
    node("td", {}, unit),
  );
}
