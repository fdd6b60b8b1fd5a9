import type { CellContent, RangeReading } from "../../workbook/Workbook";
import { NAMESPACE } from "../../functions/catalogue";
import { andMore, enteredAsArray, recordWords, sayingsAbout } from "../../problems/sharing/recordWords";
import { rulesOfSheet } from "../../problems/sharing/sharedCopyWords";
import type { PlainCell } from "../plain/plainSheets";
import type { AlikeCells } from "./alikeCells";
import { formOnCopy } from "./builtInForm";
import { RecordedForms } from "./RecordedForms";
import { firstValue, type Recorded, type RecordEntries } from "./recordEntries";
import { asTyped } from "./asTyped";
import { aboutFunction, namesIn } from "./recordRows";
import type { RecordedRule } from "./recordedRules";
import { inWords, valuesOf, workedWith } from "./workedWith";

/** A line of a record: the cell, what the sheet calls it, its value, the unit, and what is long. */
export interface RecordLine {
  readonly is: "band" | "line";
  readonly columns: readonly [cell: string, label: string, value: CellContent, unit: string, text: string];
}

const line = (...columns: RecordLine["columns"]): RecordLine => ({ is: "line", columns });
const band = (heading: string): RecordLine => ({ is: "band", columns: [heading, "", null, "", ""] });
/** A line that belongs to the formula above it. */
const below = (what: string, text: string): RecordLine[] => (text === "" ? [] : [line("", "", what, "", text)]);

/** The lines that are printed of the formulas of a sheet, group by group. @param plainCells what became of the cells on a copy of plain cells */
export function entryLines(groups: readonly RecordEntries[], rows: RangeReading["rows"], plainCells: readonly PlainCell[] | undefined): RecordLine[] {
  const [valueAt, forms] = [valuesOf(rows), new RecordedForms(rows)];
  const plain = new Map(plainCells?.map((one) => [one.cell, one]));
  return groups.flatMap(({ heading, entries }) => [
    band(heading),
    ...entries.flatMap((alike) => {
      const { first, range } = alike;
      const units = [...new Set(namesIn(first).map((name) => aboutFunction(name).unit))].filter((unit) => unit !== "");
      const own = plain.get(first.cell);
      const isOwn = own !== undefined && first.calls.length + Number(own.kind === "fixed") > 0;
      const form = isOwn ? formOnCopy(own) : forms.builtIn(first);
      return [
        line(range, labelOf(alike), firstValue(first), units.join(", "), forms.typed(first)),
        ...movingLine(alike),
        ...below(recordWords.inputs, workedWith(forms.ranges(first), valueAt)),
        ...(alike.cells.length === 1 ? [] : below(recordWords.values, everyValue(alike))),
        ...below(recordWords.builtIn, form.text),
        ...below(recordWords.entered, form.isArray ? enteredAsArray : ""),
      ];
    }),
  ]);
}

const movingLine = ({ movingToo }: AlikeCells): RecordLine[] => below(recordWords.moving, movingToo.join(" "));

function labelOf({ cells, first }: AlikeCells): string {
  const last = cells.at(-1)?.label ?? "";
  return last === "" || last === first.label ? first.label : `${first.label} … ${last}`;
}

// More stand on the sheet itself.
const MOST_VALUES = 48;

function everyValue({ cells }: AlikeCells): string {
  const more = cells.length - MOST_VALUES;
  const told = cells.slice(0, MOST_VALUES).map((cell) => `${cell.cell} ${inWords(firstValue(cell))}`);
  return [...told, ...(more > 0 ? [andMore(more)] : [])].join("; ");
}

/** Each function of ours once, with what calls it. */
export function functionLines(groups: readonly RecordEntries[]): RecordLine[] {
  const calledFrom = new Map<string, string[]>();
  for (const { first, range } of groups.flatMap(({ entries }) => entries))
    for (const name of namesIn(first)) {
      const ranges = calledFrom.get(name);
      if (ranges === undefined) calledFrom.set(name, [range]);
      else ranges.push(range);
    }
  if (calledFrom.size === 0) return [];
  return [
    band(recordWords.functions),
    ...[...calledFrom].map(([name, ranges]) => {
      const { about, unit, source } = aboutFunction(name);
      return line("", shortList(ranges), null, unit, `${NAMESPACE}.${name}: ${about}${source === "" ? "" : ` Source: ${source}`}`);
    }),
  ];
}

const MOST_RANGES = 6;

const shortList = (ranges: readonly string[]): string =>
  [...ranges.slice(0, MOST_RANGES), ...(ranges.length > MOST_RANGES ? [andMore(ranges.length - MOST_RANGES)] : [])].join(", ");

/** What a run sheet says, step by step, its formulas left to `unprintedLines`. @param row of the record, from 1, on which those begin */
export function sayingLines({ sayings }: Recorded, row: number): RecordLine[] {
  if (sayings.length === 0) return [];
  return [
    band(recordWords.sayings),
    line("", "", null, "", sayingsAbout(row)),
    ...sayings.map(({ heading, entries }) => line("", heading, null, "", entries.flatMap(({ cells }) => cells.map((cell) => `${cell.cell} ${said(firstValue(cell))}`)).join("; "))), // prettier-ignore
  ];
}

const said = (value: CellContent): string => (typeof value === "string" ? `"${value}"` : inWords(value));

/** The formulas that are kept below what is printed. */
export function unprintedLines({ sayings }: Recorded): RecordLine[] {
  if (sayings.length === 0) return [];
  const entries = sayings.flatMap((group) => group.entries);
  return [
    band(recordWords.unprinted),
    ...entries.flatMap((alike) => [
      line(alike.range, labelOf(alike), null, "", asTyped(alike.first.formula)),
      ...movingLine(alike),
      ...(alike.cells.length === 1 ? [] : below(recordWords.values, recordWords.toldAbove)),
    ]),
  ];
}

export function ruleLines(rules: readonly RecordedRule[]): RecordLine[] {
  if (rules.length === 0) return [];
  return [
    band(rulesOfSheet.heading),
    line("", "", null, "", rulesOfSheet.about),
    ...rules.flatMap(({ where, kind, typed, now }) => [line(where, kind, null, "", typed), ...below(recordWords.builtIn, now)]),
  ];
}
