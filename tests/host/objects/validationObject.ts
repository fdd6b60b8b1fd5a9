import { badArgument } from "../HostError";
import type { HostObject } from "../HostObject";
import type { EntryRuleState, SheetState } from "../SheetState";

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
  return {
    kind: "DataValidation",
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

function within(text: string, limit: number): void {
  if (text.length > limit) throw badArgument(`text of ${text.length} characters`);
}
