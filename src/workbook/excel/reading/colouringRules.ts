import { isFormulaText, type RulesThere, type RuleThere } from "./RuleThere";
import { withoutSheet } from "./readCells";

const EVERYWHERE = "A:XFD";
// Rules are copied along with cells, so that a sheet may have many.
const MOST_RULES = 2000;

/**
 * Asks for the rules by which a sheet colours cells: those with a condition of their own, and those that compare the cell's value (ExcelApi 1.6).
 * Bounds of scales, bars and icons are not asked for.
 * @returns what they are, once the request has been answered; takes one more where any holds a formula
 */
export function askForColouring(context: Excel.RequestContext, worksheet: Excel.Worksheet): () => Promise<RulesThere> {
  const there = worksheet
    .getRange(EVERYWHERE)
    .conditionalFormats.load("items/type,items/customOrNullObject/rule/formula,items/cellValueOrNullObject/rule");
  return async () => {
    const withFormulas = there.items.slice(0, MOST_RULES).flatMap((format) => {
      const found = formulasOf(format);
      // Areas of a rule need ExcelApi 1.9.
      return found === undefined ? [] : [{ ...found, format, areas: format.getRanges().load("address") }];
    });
    if (withFormulas.length > 0) await context.sync();
    const rules = withFormulas.map(({ formulas, put, format, areas }): RuleThere => ({
      rule: { kind: "colouring", areas: areas.address.split(",").map(withoutSheet), formulas },
      put,
      takeOut: () => format.delete(),
    }));
    return { rules, areAll: there.items.length <= MOST_RULES };
  };
}

function formulasOf(format: Excel.ConditionalFormat): (Pick<RuleThere, "put"> & { readonly formulas: readonly string[] }) | undefined {
  if (format.type === Excel.ConditionalFormatType.custom) {
    const { rule } = format.customOrNullObject;
    const put = ([formula = ""]: readonly string[]): void => void (rule.formula = formula);
    return isFormulaText(rule.formula) ? { formulas: [rule.formula], put } : undefined;
  }
  if (format.type !== Excel.ConditionalFormatType.cellValue) return undefined;
  const { rule } = format.cellValueOrNullObject;
  const formulas = [rule.formula1, rule.formula2].filter(isFormulaText);
  const put = (now: readonly string[]): void => {
    const ahead = [...now];
    const next = (held: string): string => (isFormulaText(held) ? (ahead.shift() ?? held) : held);
    const formula1 = next(rule.formula1);
    format.cellValueOrNullObject.rule = { ...rule, formula1, ...(rule.formula2 === undefined ? {} : { formula2: next(rule.formula2) }) };
  };
  return formulas.length === 0 ? undefined : { formulas, put };
}
