import { WHY_FIXED } from "../../problems/sharing/plainCellProblems";
import { nameStays, RULE_KINDS, takenOutBecause } from "../../problems/sharing/sharedCopyWords";
import type { RulesPut } from "../plain/plainRules";
import { asTyped } from "./asTyped";

/** A rule or name that calls us or read a sheet that went, as a record lists it. */
export interface RecordedRule {
  /** The cells of a rule, or what a name is called. */
  readonly where: string;
  readonly kind: string;
  readonly typed: string;
  /** Its formulas now, or what became of it. */
  readonly now: string;
}

/** The rules of a copy, what else could not stay, and the defined names that called us. */
export function recordedRules(copy: string, put: RulesPut | undefined): RecordedRule[] {
  const rules = (put?.rules ?? []).filter(({ sheet }) => sheet === copy);
  return [
    ...rules.map((rule) => ({
      ...{ where: rule.areas.join(" "), kind: RULE_KINDS[rule.kind], typed: rule.formulas.join("; ") },
      now: "now" in rule ? rule.now.join("; ") : takenOutBecause(WHY_FIXED[rule.why]),
    })),
    ...(put?.others ?? [])
      .filter(({ where }) => where.startsWith(`${copy}!`) || where === copy)
      .map(({ what, where, why }) => ({
        ...{ where: where.slice(copy.length + 1), kind: RULE_KINDS[what], typed: "" },
        now: takenOutBecause(WHY_FIXED[why]),
      })),
    ...(put?.namesWritten ?? []).map(({ name, now }) => ({
      ...{ where: name.name, kind: RULE_KINDS.name, typed: asTyped(name.formula), now },
    })),
    ...(put?.namesKept ?? []).map((name) => ({ where: name.name, kind: RULE_KINDS.name, typed: asTyped(name.formula), now: nameStays })),
    ...(put?.namesGone ?? []).map(({ name, why }) => ({
      ...{ where: name.name, kind: RULE_KINDS.name, typed: asTyped(name.formula) },
      now: takenOutBecause(WHY_FIXED[why]),
    })),
  ];
}
