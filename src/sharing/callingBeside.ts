import type { CellsBeside, DefinedName, SheetRule } from "../workbook/CellsBeside";
import { mayBeOurs } from "./plain/change/precedents";
import { formulaTree } from "./plain/formula/formulaTree";
import { callsOurs } from "./plain/writing/named";
import { namesOf } from "./plain/reading/ReadSheets";
import { NO_VARIABLES } from "./plain/writing/Scope";
import type { Surroundings } from "./plain/reading/Surroundings";

/** Names that call one of our functions, be it through other names. */
export function namesCalling(names: readonly DefinedName[]): readonly DefinedName[] {
  const calls = callingBy(names);
  return names.filter(({ formula, sheet }) => calls(formula, sheet));
}

/** Rules that call one of our functions, be it through names. */
export function rulesCalling({ names, rules }: Pick<CellsBeside, "names" | "rules">, sheet: string): readonly SheetRule[] {
  const calls = callingBy(names);
  return rules.filter(({ formulas }) => formulas.some((formula) => calls(formula, sheet)));
}

/** Tells whether a formula of a sheet, or of none, calls one of our functions, itself or through names. */
export function callingBy(names: readonly DefinedName[]): (formula: string, sheet?: string) => boolean {
  const nameOf = namesOf(names);
  return (formula, sheet = "") => {
    const typed = formula.startsWith("=") ? formula : `=${formula}`;
    const tree = formulaTree(typed);
    if (tree === undefined) return mayBeOurs(typed);
    const place: Surroundings = { sheet, cell: "A1", area: "A1", nameOf, tableOf: () => undefined, spillOf: () => undefined };
    return callsOurs({ tree, place, options: {}, variables: NO_VARIABLES, isSingle: false, isOnEach: false, isQualified: false });
  };
}
