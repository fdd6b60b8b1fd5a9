import { tokenize, tokenTypes } from "@borgar/fx";
import { areaNamed } from "../../workbook/areaNamed";
import { cellArea, cellAt, rangeOf, type CellArea } from "../../workbook/cellArea";
import { LONGEST_FORMULA } from "./writing/CannotWrite";
import { STALE } from "./change/flagText";
import { sourcesOf } from "./change/precedents";
import { cellsReferred, sheetText } from "./formula/reference";
import type { PlainRule } from "./plainRules";
import type { RuleReading } from "./reading/RuleReading";
import type { PlainSheets } from "./plainSheets";
import type { NameReading } from "./reading/PlainReading";
import { namesOf } from "./reading/ReadSheets";

/** What a rule is compared with that holds for no cell. */
const NOTHING = "NA()";

/**
 * Tells of a rule for colouring or entries what becomes of it where cells that it reads may come to say that they are fixed: a text is more than any
 * number, so that it would go on vouching. Its formulas ask the flags of those cells, which stand at the same places of another sheet, and hold for
 * nothing once one is stale. A rule of which that cannot be said goes. Undefined for a rule that reads no such cell, a list, a scale, bars or icons.
 */
export function guardedRules(
  { cells, flags }: Pick<PlainSheets, "cells" | "flags">,
  names: readonly NameReading[],
  sheets: readonly string[],
): (rule: RuleReading) => PlainRule | undefined {
  const guarded = new Map<string, CellArea[]>();
  for (const { sheet, area, isGuarded } of cells) {
    if (isGuarded !== true) continue;
    const here = guarded.get(sheet);
    if (here === undefined) guarded.set(sheet, [areaNamed(area)]);
    else here.push(areaNamed(area));
  }
  const flagSheetOf = new Map(flags.map(({ of, name }) => [of.toLowerCase(), name]));
  const nameOf = namesOf(names);
  const mayBeStale = (sheet: string, area: CellArea): boolean =>
    [...guarded].some(([name, areas]) => name.toLowerCase() === sheet.toLowerCase() && areas.some((one) => overlaps(one, area)));

  return (rule) => {
    if (rule.says === undefined || guarded.size === 0) return undefined;
    const first = firstOf(rule);
    const asked = new Set<string>();
    const flag = (sheet: string, cells: string): void => {
      const of = flagSheetOf.get(sheet.toLowerCase());
      if (of !== undefined) asked.add(`${sheetText(of)}!${cells}`);
    };
    const place = { sheet: rule.sheet, cell: first, area: first, nameOf, tableOf: () => undefined, spillOf: () => undefined };
    for (const formula of rule.formulas)
      for (const { type, value } of tokenize(formula.startsWith("=") ? formula : `=${formula}`)) {
        const found = type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM ? cellsReferred(value, rule.sheet) : undefined;
        if (found?.sheet !== undefined && mayBeStale(found.sheet, reached(found.area, value, rule)))
          flag(found.sheet, value.slice(value.lastIndexOf("!") + 1));
        if (type !== tokenTypes.REF_NAMED) continue;
        // What a name stands for is the same in each cell, or nobody can tell which.
        for (const { sheet, area } of sourcesOf(`=${value}`, place, sheets).precedents)
          if (mayBeStale(sheet, area)) flag(sheet, rangeOf(area).replace(/([A-Z]{1,3})(\d+)/g, "$$$1$$$2"));
      }
    const own = rule.areas.map((area) => cellArea(area)).filter((area) => area !== undefined);
    if (rule.kind === "colouring" && rule.says === "compared" && own.some((area) => mayBeStale(rule.sheet, area))) flag(rule.sheet, first);
    if (asked.size === 0) return undefined;
    if (rule.kind === "entry" && rule.says === "compared") return { ...rule, why: "ruleStale" };
    const isStale = `MAX(${[...asked].join(",")})=${STALE}`;
    const now = rule.formulas.map((formula) => `=IF(${isStale},${rule.says === "holds" ? "FALSE" : NOTHING},${formula.replace(/^=/, "")})`);
    return now.some(({ length }) => length > LONGEST_FORMULA) ? { ...rule, why: "tooLong" } : { ...rule, now };
  };
}

const firstOf = ({ areas }: RuleReading): string => {
  const area = cellArea(areas[0] ?? "");
  return cellAt(area?.row ?? 0, area?.column ?? 0);
};

/** The cells that a reference means in any cell of a rule: one that is not fixed moves with the cell. */
function reached(area: CellArea, text: string, { areas }: RuleReading): CellArea {
  const cells = text.slice(text.lastIndexOf("!") + 1);
  const own = areas.flatMap((one) => cellArea(one) ?? []);
  const [top, left] = [own[0]?.row ?? 0, own[0]?.column ?? 0];
  const isFixed = (part: RegExp): boolean => cells.split(":").every((one) => part.test(one));
  const [down, across] = [isFixed(/\$\d+$/) ? [0] : own.flatMap(({ row, rows }) => [row - top, row + rows - 1 - top]), isFixed(/^\$[A-Z]/i) ? [0] : own.flatMap(({ column, columns }) => [column - left, column + columns - 1 - left])]; // prettier-ignore
  const [up, low, before, after] = [Math.min(0, ...down), Math.max(0, ...down), Math.min(0, ...across), Math.max(0, ...across)];
  return { row: area.row + up, column: area.column + before, rows: area.rows + low - up, columns: area.columns + after - before };
}

const overlaps = (one: CellArea, other: CellArea): boolean =>
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;
