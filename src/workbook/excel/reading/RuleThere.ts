import type { SheetRule } from "../../CellsBeside";

/** A rule that stands on a sheet, with what changes it there; both take effect with the next request. */
export interface RuleThere {
  readonly rule: SheetRule;
  put(formulas: readonly string[]): void;
  takeOut(): void;
}

export interface RulesThere {
  readonly rules: readonly RuleThere[];
  /** False where there are more than are asked for. */
  readonly areAll: boolean;
}

/** What a rule holds may be a number; only what begins with "=" is a formula. */
export const isFormulaText = (held: unknown): held is string => typeof held === "string" && held.startsWith("=");
