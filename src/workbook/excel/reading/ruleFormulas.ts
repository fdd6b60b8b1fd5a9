/**
 * The conditions by which a sheet colours cells. Excel tells a rule for entries only of cells that share it (Office Add-ins documentation,
 * Excel.DataValidation), so those are left out.
 */
export async function ruleFormulas(context: Excel.RequestContext, sheet: string): Promise<string[][]> {
  const everywhere = context.workbook.worksheets.getItem(sheet).getRange("A:XFD");
  const there = everywhere.conditionalFormats.load("items/type,items/customOrNullObject/rule/formula");
  await context.sync();
  return there.items.flatMap(({ type, customOrNullObject }) =>
    type === Excel.ConditionalFormatType.custom ? [[customOrNullObject.rule.formula]] : [],
  );
}
