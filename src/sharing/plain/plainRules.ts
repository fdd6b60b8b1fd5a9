import { tokenize, tokenTypes } from "@borgar/fx";
import type { WhyFixed } from "../../problems/sharing/plainCellProblems";
import { cellArea, cellAt, wholeLines } from "../../workbook/cellArea";
import { plainFormula } from "./plainFormula";
import { plainNames, type NameWritten, type PlainNames } from "./plainNames";
import type { NameReading, PlainReading } from "./reading/PlainReading";
import type { RuleReading } from "./reading/RuleReading";
import { sourcesOf } from "./change/precedents";
import { namesOf } from "./reading/ReadSheets";
import { ruleAlone } from "./ruleAlone";
import type { PlainOptions, Surroundings, TablePlace } from "./reading/Surroundings";

/** What becomes of a rule that calls us or reads a sheet that goes: other formulas, as many as before, or why it has to go. */
export type PlainRule = RuleReading & (RuleWritten | { readonly why: WhyFixed });

interface RuleWritten {
  readonly now: readonly string[];
  /** True where it is what it was, but for holding for nothing once a cell that it reads is fixed. */
  readonly isGuardAlone?: boolean;
}

/** What stands beside the cells of shared sheets and called us, or read a sheet that goes. */
export interface RulesPut {
  readonly rules: readonly PlainRule[];
  readonly namesWritten: readonly NameWritten[];
  readonly namesGone: PlainNames["gone"];
  /** Those that call us still, in a workbook that stays. */
  readonly namesKept?: readonly NameReading[];
  /** What is neither rule nor name and could not stay. */
  readonly others?: readonly TakenOut[];
}

export interface TakenOut {
  readonly what: RuleReading["kind"] | "name" | "link" | "smallChart" | "series" | "chart" | "pivot" | "slicer" | "query";
  /** "Tray!D1:D9", or a defined name. */
  readonly where: string;
  readonly why: WhyFixed;
}

/** What was taken out, and why: the rules by their cells, the names behind them. */
export const takenOut = ({ rules, namesGone, others = [] }: RulesPut): readonly TakenOut[] => [
  ...rules.flatMap((rule) => ("why" in rule ? [{ what: rule.kind, where: `${rule.sheet}!${rule.areas.join(" ")}`, why: rule.why }] : [])),
  ...others,
  ...namesGone.map(({ name, why }) => ({ what: "name" as const, where: name.name, why })),
];

/**
 * Tells of a rule what becomes of it where the add-in is not; undefined for one that does without. A rule holds one formula and no steps elsewhere,
 * so only a form that asks its cells anew each time may stand in it: none for what a cell held when the workbook was read, none over arrays, and none
 * with a list in braces, which rules may not hold (Excel's own refusal: no array constants).
 */
export function plainRules(
  names: readonly NameReading[],
  sheets: readonly string[],
  options: PlainOptions,
  { going, tables = [] }: Pick<PlainReading, "going" | "tables"> = {},
): (rule: RuleReading) => PlainRule | undefined {
  const { inCells } = plainNames(names, { names: sheets, spillOf: () => undefined }, options);
  const [nameAsRead, nameNow] = [namesOf(names), namesOf(inCells)];
  const tableOf = (name: string): TablePlace | undefined => tables.find((one) => one.name.toLowerCase() === name.toLowerCase());
  return (rule) => {
    const place: Surroundings = {
      ...{ sheet: rule.sheet, cell: firstCell(rule.areas), area: firstCell(rule.areas) },
      ...{ nameOf: nameAsRead, tableOf: going === undefined ? () => undefined : tableOf, spillOf: () => undefined },
      ...(going && { isGone: going.isGone, heldAt: going.heldAt }),
    };
    const now: string[] = [];
    let isOther = false;
    for (const before of rule.formulas) {
      const { isOurs, isBeyond } = sourcesOf(before, place, sheets, going?.order);
      const formula = isBeyond && going !== undefined ? ruleAlone(before, rule, place, sheets) : before;
      if (formula === undefined) return { ...rule, why: "notShared" };
      isOther ||= isOurs || formula !== before;
      if (!isOurs) {
        now.push(formula);
        continue;
      }
      const plain = plainFormula(formula, { ...place, nameOf: nameNow }, options);
      if (plain.kind === "none") return { ...rule, why: plain.why };
      if (plain.kind === "cells" || plain.isArray || plain.held.length > 0 || holdsList(plain.formula)) return { ...rule, why: "ruleForm" };
      now.push(plain.formula);
    }
    return isOther ? { ...rule, now } : undefined;
  };
}

function firstCell(areas: readonly string[]): string {
  const area = cellArea(areas[0] ?? "") ?? wholeLines(areas[0] ?? "");
  return cellAt(area?.row ?? 0, area?.column ?? 0);
}

const holdsList = (formula: string): boolean => tokenize(formula).some(({ type, value }) => type === tokenTypes.OPERATOR && value === "{");
