import { changeFor, type RuleChange } from "../../CellsBeside";
import { withSheetRenamed } from "../../renamedSheet";
import { askForColouring } from "../reading/colouringRules";
import { askForEntryRules } from "../reading/entryRules";

interface Copied {
  /** The sheet that was copied, what its copy is called now, and what it will be called. */
  readonly sheet: string;
  readonly copyName: string;
  readonly lastName: string;
}

/**
 * Puts other formulas into rules of a copy, or takes them out, with the next request. They are found by what they hold on the copy, since a rule is
 * read and written relative to the same cell only on the same object.
 */
export async function changeRules(
  context: Excel.RequestContext,
  copy: Excel.Worksheet,
  changes: readonly RuleChange[],
  { sheet, copyName, lastName }: Copied,
): Promise<void> {
  if (changes.length === 0) return;
  const of = (kind: RuleChange["kind"]): boolean => changes.some((one) => one.kind === kind);
  const asked = [...(of("colouring") ? [askForColouring] : []), ...(of("entry") ? [askForEntryRules] : [])].map((ask) => ask(context, copy));
  await context.sync();
  const here = (formula: string): string => withSheetRenamed(withSheetRenamed(formula, sheet, copyName), lastName, copyName);
  for (const answer of asked)
    for (const { rule, put, takeOut } of (await answer()).rules) {
      const change = changeFor(rule, changes, (read, held) => here(read) === here(held));
      if (change?.now === "out") takeOut();
      else if (change !== undefined) put(change.now.map(here));
    }
}
