import type { Beside, CellsBeside, DefinedName, RuleChange, SheetRule } from "../workbook/CellsBeside";
import { withoutSheetName, withSheetRenamed } from "../workbook/renamedSheet";
import type { Workbook } from "../workbook/Workbook";
import { namesCalling } from "./callingBeside";
import { plainRules, type PlainRule, type RulesPut } from "./plain/plainRules";

/** Of a copy within the workbook: names mean the cells of the sheet that was copied, and hosts differ in what they make of them on the copy. */
export const ON_COPY = { areNamesWrittenOut: true } as const;

/** What is read beside the cells of a sheet, where that can be read. */
export const readBeside = (workbook: Workbook, sheet: string): Promise<CellsBeside> =>
  workbook.cellsBeside(sheet).catch(() => ({ names: [], rules: [], unread: EVERYTHING }));

const EVERYTHING: readonly Beside[] = ["names", "colouring", "entry"];

export interface BesideCopy {
  /** As they would read on the copy. */
  readonly names: readonly DefinedName[];
  /** What the record lists. */
  readonly put: RulesPut;
  /** What is to be done to rules of the copy. */
  readonly changes: readonly RuleChange[];
  readonly unread: readonly Beside[];
}

/**
 * What becomes of rules and names that call us on a copy within the workbook: rules are written in built-in functions or taken out, as in a file of
 * its own; names belong to the workbook and stay.
 * @param kinds of rules that the copy keeps
 */
export async function besideCopy(workbook: Workbook, sheet: string, copy: string, kinds: readonly SheetRule["kind"][]): Promise<BesideCopy> {
  const { names, rules, unread } = await readBeside(workbook, sheet);
  const onCopy = (formula: string): string => withSheetRenamed(formula, sheet, copy);
  const namesOnCopy = names.map(({ sheet: on, ...name }) => ({
    ...name,
    formula: onCopy(name.formula),
    ...(on !== undefined && { sheet: on === sheet ? copy : on }),
  }));
  const plainOf = plainRules(namesOnCopy, [copy], ON_COPY);
  const changed = rules
    .filter(({ kind }) => kinds.includes(kind))
    .map((rule) => plainOf({ ...rule, sheet: copy, formulas: rule.formulas.map(onCopy) }))
    .filter((rule): rule is PlainRule => rule !== undefined)
    // The copy is called otherwise while it is made.
    .map((rule): PlainRule => ("now" in rule ? { ...rule, now: rule.now.map((formula) => withoutSheetName(formula, copy)) } : rule));
  return {
    names: namesOnCopy,
    put: { rules: changed, namesWritten: [], namesGone: [], namesKept: namesCalling(names) },
    changes: changed.map((rule) => ({ kind: rule.kind, formulas: rule.formulas, now: "now" in rule ? rule.now : "out" })),
    unread: unread.filter((what) => what === "names" || kinds.includes(what)),
  };
}
