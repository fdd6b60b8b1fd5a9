import { areaOfRange } from "./areaOfRange";
import { DataValidationType, type IDataValidationRule, type IRange } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { rangeOf } from "../cellArea";
import { changeFor, type CellsBeside, type RuleChange, type SheetRule } from "../CellsBeside";
import { withSheetRenamed } from "../renamedSheet";
import { namesIn } from "./writing/definedNames";
import { addRule, removeRule } from "./writing/entryRules";
import type { GridEngine } from "./GridEngine";

/** The grid colours no cells by rules of a file, which stay in the file. */
export function gridCellsBeside(engine: GridEngine, sheet: FWorksheet): CellsBeside {
  const own = sheet.getSheetName();
  return {
    names: namesIn(engine).flatMap(({ name, refersTo, sheet: on }) =>
      on === undefined ? [{ name, formula: `=${refersTo}` }] : on === own ? [{ name, formula: `=${refersTo}`, sheet: on }] : [],
    ),
    rules: sheet.getDataValidations().flatMap(({ rule }) => ruleIn(rule) ?? []),
    unread: [],
  };
}

const FORMULAS = ["formula1", "formula2"] as const;
const isFormula = (held: string | undefined): held is string => held?.startsWith("=") === true;

function ruleIn(rule: IDataValidationRule): SheetRule | undefined {
  const formulas = FORMULAS.map((name) => rule[name]).filter(isFormula);
  if (formulas.length === 0) return undefined;
  const areas = rule.ranges.map((range: IRange) => rangeOf(areaOfRange(range)));
  return { kind: "entry", areas, formulas, ...(rule.type === DataValidationType.LIST && { isList: true }) };
}

/** Puts other formulas into the rules of a copy, or takes them out. @param names of the sheet and of its copy, which formulas may name alike */
export function changeGridRules(
  engine: GridEngine,
  copy: FWorksheet,
  changes: readonly RuleChange[],
  [sheet, last]: readonly [string, string],
): void {
  const asLast = (formula: string): string => withSheetRenamed(withSheetRenamed(formula, sheet, last), copy.getSheetName(), last);
  for (const { rule } of copy.getDataValidations()) {
    const held = ruleIn(rule);
    const change = held && changeFor(held, changes, (read, here) => asLast(read) === asLast(here));
    if (change === undefined) continue;
    removeRule(engine, copy, rule.uid);
    if (change.now === "out") continue;
    const ahead = [...change.now];
    const written = FORMULAS.flatMap((name) => (isFormula(rule[name]) ? [[name, ahead.shift() ?? rule[name]]] : []));
    addRule(engine, copy, { ...rule, ...Object.fromEntries(written) });
  }
}
