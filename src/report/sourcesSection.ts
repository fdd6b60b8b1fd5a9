import { EDITION } from "../chemistry/atomicWeights";
import { everyFunction, NAMESPACE } from "../functions/catalogue";
import { findCalls } from "../sharing/findCalls";
import type { RangeReading } from "../workbook/Workbook";
import { node, type Child, type Markup } from "./Markup";
import { paragraph, section } from "./page";
import type { ReportExtras } from "./ReportExtras";
import { reportWords } from "./words/reportWords";

// Of a longer one the beginning names the publication; a run has a dozen of them and two pages.
const LONGEST = 230;

/** The source of each Retort function that the sheet calls. @param isShort true where long ones are cut, which is then said */
export function sourcesSection({ rows }: RangeReading, isShort = false): Child {
  // Most cells of a sheet call what others call too; only calls are looked for, so other formulas need no reading.
  const formulas = new Set(rows.flatMap((row) => row.map(({ formula }) => formula)).filter((formula) => /retort/i.test(formula)));
  const called = new Set([...formulas].flatMap((formula) => findCalls(formula).map(({ name }) => name)));
  const bySource = new Map<string, string[]>();
  for (const { name, source } of everyFunction.filter((one) => called.has(one.name))) {
    bySource.set(source, [...(bySource.get(source) ?? []), `${NAMESPACE}.${name}`]);
  }
  const lines = [...bySource].map(([source, names]) => node("li", {}, node("b", {}, names.join(", ")), `: ${isShort ? cut(source) : source}`));
  const isCut = isShort && [...bySource.keys()].some((source) => source.length > LONGEST);
  const remark = isCut ? paragraph(reportWords.sourcesCut, "note") : [];
  return lines.length === 0 ? [] : section(reportWords.sources, node("ul", { class: "small" }, lines), remark);
}

/** Up to a whole word. */
const cut = (source: string): string => (source.length <= LONGEST ? source : `${source.slice(0, source.lastIndexOf(" ", LONGEST))} …`);

export const foot = ({ version }: ReportExtras): Markup => node("footer", {}, reportWords.foot(version, EDITION));
