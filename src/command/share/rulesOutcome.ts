import { WHY_FIXED } from "../../problems/plainCellProblems";
import { takenOut, type RulesPut, type TakenOut } from "../../sharing/plain/plainRules";

/** What became of rules for colouring and entries, and of defined names, that called us. */
export interface RulesOutcome {
  readonly rewritten: number;
  /** Rules that hold for nothing once a cell that they read says that it is fixed. */
  readonly guarded: number;
  readonly takenOut: readonly { readonly what: TakenOut["what"]; readonly where: string; readonly why: string }[];
}

export const rulesOutcome = (put: RulesPut): RulesOutcome => ({
  rewritten: put.rules.filter((rule) => "now" in rule && rule.isGuardAlone !== true).length,
  guarded: put.rules.filter((rule) => "now" in rule && rule.isGuardAlone === true).length,
  takenOut: takenOut(put).map(({ what, where, why }) => ({ what, where, why: WHY_FIXED[why] })),
});
