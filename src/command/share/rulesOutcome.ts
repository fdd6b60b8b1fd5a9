import { WHY_FIXED } from "../../problems/sharing/plainCellProblems";
import { takenOut, type RulesPut, type TakenOut } from "../../sharing/plain/plainRules";

/** What became of rules for colouring and entries, and of defined names, that called us. */
export interface RulesOutcome {
  readonly rewritten: number;
  /** Rules that hold for nothing once a cell that they read says that it is fixed; left out for none. */
  readonly guarded?: number;
  readonly takenOut: readonly { readonly what: TakenOut["what"]; readonly where: string; readonly why: string }[];
}

export function rulesOutcome(put: RulesPut): RulesOutcome {
  const written = put.rules.flatMap((rule) => ("now" in rule ? [rule] : []));
  const guarded = written.filter(({ isGuardAlone }) => isGuardAlone === true).length;
  return {
    rewritten: written.length - guarded,
    ...(guarded > 0 && { guarded }),
    takenOut: takenOut(put).map(({ what, where, why }) => ({ what, where, why: WHY_FIXED[why] })),
  };
}
