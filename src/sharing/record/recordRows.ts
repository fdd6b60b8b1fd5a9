import { catalogue, everyFunction, NAMESPACE } from "../../functions/catalogue";
import { WHY_FIXED } from "../../problems/plainCellProblems";
import { fixedBecause, RULE_KINDS, rulesOfSheet, takenOutBecause } from "../../problems/sharedCopyWords";
import type { CellContent } from "../../workbook/Workbook";
import { findCalls } from "../findCalls";
import type { FormulaCell } from "../formulaCells";
import { inBuiltInFunctions } from "../inBuiltInFunctions";
import type { RulesPut } from "../plain/plainRules";
import type { PlainCell } from "../plain/plainSheets";

/** One line of a calculation record. */
export interface RecordRow {
  /** "B7", or the area of a spill: "B7:C12". */
  readonly cells: string;
  /** What the sheet calls the cell, or "". */
  readonly label: string;
  readonly typed: string;
  /** The value of the cell, or of the first cell of a spill; null is blank. */
  readonly value: CellContent;
  readonly unit: string;
  readonly about: string;
  readonly source: string;
  /** The same cell formula without the add-in, "" where there is none. */
  readonly builtIn: string;
}

const NOT_LISTED = "Not a function of this version of Retort.";
/** Begins what is said of a formula that stands for a whole column of cells. */
export const FILLED_DOWN = "Filled down; formula and value are those of the first cell. ";
const BUILT_IN = "Built-in functions of the spreadsheet only.";

/** The lines of one step of the work on a run sheet; elsewhere the functions of one family, or the cell formulas of built-in functions alone. */
export interface RecordGroup {
  readonly heading: string;
  readonly rows: readonly RecordRow[];
}

const BUILT_IN_GROUP = "Built-in functions";
const UNKNOWN_GROUP = "Other functions";

/**
 * A line for each Retort function that a cell calls, and one for each other cell formula that shows a value: those blank until an input exists
 * explain no value on the sheet. On a run sheet step by step, as the work goes; elsewhere by families in the order of the catalogue.
 * @param plainCells what became of the cells on a copy of plain cells
 */
export function recordGroups(formulaCells: readonly FormulaCell[], plainCells: readonly PlainCell[] = []): RecordGroup[] {
  const plain = new Map(plainCells.map((one) => [one.cell, one]));
  const lines = formulaCells.flatMap((cell) => {
    const own = plain.get(cell.cell);
    if (cell.calls.length > 0) return rowsOfCalls(cell, own).map((line) => ({ ...line, step: cell.step }));
    if (firstValue(cell) === null) return [];
    return [{ heading: BUILT_IN_GROUP, row: row(cell, { unit: "", about: BUILT_IN, source: "" }, own), step: cell.step }];
  });
  const families = [...catalogue.map(({ heading }) => heading), UNKNOWN_GROUP, BUILT_IN_GROUP];
  const headings = lines.some(({ step }) => step !== undefined) ? [...new Set(lines.map(({ step = "" }) => step))] : families;
  const groups = new Map<string, RecordRow[]>(headings.map((heading) => [heading, []]));
  for (const { heading, step = heading, row: line } of lines) groups.get(step)?.push(line);
  return [...groups].map(([heading, rows]) => ({ heading, rows })).filter(({ rows }) => rows.length > 0);
}

/** The rules of a copy and the defined names that called us, where there were any. */
export function ruleGroups(copy: string, put: RulesPut | undefined): RecordGroup[] {
  const rules = (put?.rules ?? []).filter(({ sheet }) => sheet === copy);
  const rows = [
    ...rules.map((rule) => ({
      ...{ cells: rule.areas.join(" "), label: RULE_KINDS[rule.kind], typed: rule.formulas.join("; ") },
      builtIn: "now" in rule ? rule.now.join("; ") : takenOutBecause(WHY_FIXED[rule.why]),
    })),
    ...(put?.namesGone ?? []).map(({ name, why }) => ({
      ...{ cells: name.name, label: RULE_KINDS.name, typed: asTyped(name.formula) },
      builtIn: takenOutBecause(WHY_FIXED[why]),
    })),
  ];
  const about = { value: null, unit: "", about: rulesOfSheet.about, source: "" };
  return rows.length === 0 ? [] : [{ heading: rulesOfSheet.heading, rows: rows.map((one) => ({ ...one, ...about })) }];
}

/** The same without their groups. */
export const recordRows = (formulaCells: readonly FormulaCell[]): RecordRow[] => recordGroups(formulaCells).flatMap(({ rows }) => rows);

function rowsOfCalls(cell: FormulaCell, plain: PlainCell | undefined): { readonly heading: string; readonly row: RecordRow }[] {
  const names = new Set(cell.calls.map(({ name }) => name));
  return [...names].map((name) => {
    const heading = catalogue.find(({ functions }) => functions.some((one) => one.name === name))?.heading ?? UNKNOWN_GROUP;
    const definition = everyFunction.find((one) => one.name === name);
    const about = `${NAMESPACE}.${name}: ${definition?.summary ?? NOT_LISTED}`;
    return { heading, row: row(cell, { unit: definition?.result.unit ?? "", about, source: definition?.source ?? "" }, plain) };
  });
}

function row(cell: FormulaCell, about: Pick<RecordRow, "unit" | "about" | "source">, plain: PlainCell | undefined): RecordRow {
  const first = cell.filledDown === undefined ? "" : FILLED_DOWN;
  return {
    cells: cell.filledDown ?? cell.area.range,
    label: cell.label,
    typed: asTyped(cell.formula),
    value: firstValue(cell),
    ...about,
    about: `${first}${about.about}`,
    builtIn: plain === undefined ? (rewritten(cell) ?? "") : onCopy(plain),
  };
}

/** What stands in the first cell of a copy of plain cells, or why its value does. */
function onCopy({ kind, why, formulas }: PlainCell): string {
  if (kind === "fixed") return fixedBecause(why === undefined ? "" : WHY_FIXED[why]);
  return "one" in formulas ? formulas.one : (formulas.each[0]?.[0] ?? "");
}

/** A spill of a call over whole ranges has no single cell in which to type it again. */
const rewritten = (cell: FormulaCell): string | undefined =>
  cell.calls.length > 0 && cell.area.range === cell.cell ? inBuiltInFunctions(cell.formula) : undefined;

const firstValue = ({ area }: FormulaCell): CellContent => area.values[0]?.[0] ?? null;

/** The cell formula with every Retort call under the name a person types, whatever form the workbook stores it in. */
const asTyped = (cellFormula: string): string =>
  findCalls(cellFormula).reduceRight(
    (text, { name, start, bracket }) => `${text.slice(0, start)}${NAMESPACE}.${name}${text.slice(bracket)}`,
    cellFormula,
  );
