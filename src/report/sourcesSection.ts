import { EDITION } from "../chemistry/atomicWeights";
import { everyFunction, NAMESPACE } from "../functions/catalogue";
import { findCalls } from "../sharing/findCalls";
import type { RangeReading } from "../workbook/Workbook";
import { node, type Child, type Markup } from "./Markup";
import { section } from "./page";
import type { ReportExtras } from "./ReportExtras";
import { reportWords } from "./words/reportWords";

/** The source of each Retort function that the sheet calls. */
export function sourcesSection({ rows }: RangeReading): Child {
  // Most cells of a sheet call what others call too; only calls are looked for, so other formulas need no reading.
  const formulas = new Set(rows.flatMap((row) => row.map(({ formula }) => formula)).filter((formula) => /retort/i.test(formula)));
  const called = new Set([...formulas].flatMap((formula) => findCalls(formula).map(({ name }) => name)));
  const bySource = new Map<string, string[]>();
  for (const { name, source } of everyFunction.filter((one) => called.has(one.name))) {
    bySource.set(source, [...(bySource.get(source) ?? []), `${NAMESPACE}.${name}`]);
  }
  const lines = [...bySource].map(([source, names]) => node("li", {}, node("b", {}, names.join(", ")), `: ${source}`));
  return lines.length === 0 ? [] : section(reportWords.sources, node("ul", { class: "small" }, lines));
}

export const foot = ({ version }: ReportExtras): Markup => node("footer", {}, reportWords.foot(version, EDITION));
