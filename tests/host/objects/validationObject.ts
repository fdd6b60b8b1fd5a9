import { cellArea, covers, type CellArea } from "../../../src/workbook/cellArea";
import { badArgument } from "../HostError";
import type { HostObject } from "../HostObject";
import { WHOLE_SHEET, type EntryRuleState, type SheetState } from "../SheetState";

// [MS-XLSB] DValStrings, and the length of a list of words typed into the rule.
const LONGEST = { title: 32, prompt: 255, refusal: 225, list: 255 } as const;

interface Prompt {
  readonly title: string;
  readonly message: string;
}

/** Data validation of one range; of several over one cell the last counts. The file format's limits on text are held. */
export function validationObject(sheet: SheetState, range: string): HostObject {
  const state = (): EntryRuleState => {
    const known = sheet.entryRules.at(-1);
    if (known?.range === range && known.isCleared !== true) return known;
    const rule: EntryRuleState = { range };
    sheet.entryRules.push(rule);
    return rule;
  };
  const area = cellArea(range) ?? WHOLE_SHEET;
  const rules = (): readonly (EntryRuleState | undefined)[] => [...new Set(rulesOver(sheet, area).map(({ rule }) => rule))];
  return {
    kind: "DataValidation",
    reads: {
      Type: () => {
        const [one, ...others] = rules();
        if (others.length === 0) return typeOf(one);
        return rules().includes(undefined) ? "MixedCriteria" : "Inconsistent";
      },
      Rule: () => (rules().length === 1 ? (rules()[0]?.rule ?? {}) : null),
    },
    methods: { Clear: () => void sheet.entryRules.push({ range, isCleared: true }) },
    writes: {
      Rule: (rule: { list?: { source: string } }) => {
        within(rule.list?.source ?? "", LONGEST.list);
        state().rule = rule;
      },
      Prompt: (prompt: Prompt & { showPrompt: boolean }) => {
        within(prompt.title, LONGEST.title);
        within(prompt.message, LONGEST.prompt);
        state().prompt = { title: prompt.title, message: prompt.message };
      },
      ErrorAlert: (alert: Prompt & { style: string; showAlert: boolean }) => {
        within(alert.title, LONGEST.title);
        within(alert.message, LONGEST.refusal);
        state().errorAlert = { style: alert.style, title: alert.title, message: alert.message };
      },
    },
  };
}

/** A part of an area in which one rule holds, or none. */
interface RuleOver {
  readonly area: CellArea;
  readonly rule: EntryRuleState | undefined;
}

/** An area cut along the edges of all rules. */
function rulesOver(sheet: SheetState, { row, column, rows, columns }: CellArea): RuleOver[] {
  const known = sheet.entryRules.flatMap((rule) => {
    const on = cellArea(rule.range);
    return on === undefined ? [] : [{ rule, on }];
  });
  const cuts = (from: number, to: number, edges: readonly number[]): number[] =>
    [...new Set([from, ...edges.filter((edge) => edge > from && edge < to), to])].sort((one, other) => one - other);
  const across = cuts(row, row + rows, known.flatMap(({ on }) => [on.row, on.row + on.rows])); // prettier-ignore
  const down = cuts(column, column + columns, known.flatMap(({ on }) => [on.column, on.column + on.columns])); // prettier-ignore
  const ruleAt = (at: number, beside: number): EntryRuleState | undefined => {
    const last = known.filter(({ on }) => covers(on, at, beside)).at(-1)?.rule;
    return last?.rule === undefined ? undefined : last;
  };
  return across.slice(0, -1).flatMap((top, index) =>
    down.slice(0, -1).map((left, place) => ({
      area: { row: top, column: left, rows: (across[index + 1] ?? top) - top, columns: (down[place + 1] ?? left) - left },
      rule: ruleAt(top, left),
    })),
  );
}

/** The cells of an area that have a rule, whichever, those below one another together. */
export function cellsWithRules(sheet: SheetState, area: CellArea): CellArea[] {
  const found: CellArea[] = [];
  for (const { area: part, rule } of rulesOver(sheet, area)) {
    if (rule === undefined) continue;
    const above = found.findIndex((one) => one.column === part.column && one.columns === part.columns && one.row + one.rows === part.row);
    if (above === -1) found.push(part);
    else found.splice(above, 1, { ...(found[above] as CellArea), rows: (found[above] as CellArea).rows + part.rows });
  }
  return found;
}

function typeOf(state: EntryRuleState | undefined): string {
  const [kind] = Object.keys((state?.rule as object | undefined) ?? {});
  return kind === undefined ? "None" : `${kind.charAt(0).toUpperCase()}${kind.slice(1)}`;
}

function within(text: string, limit: number): void {
  if (text.length > limit) throw badArgument(`text of ${text.length} characters`);
}
