import { namesWritten, plainNames } from "../../sharing/plain/plainNames";
import { plainRules, type PlainRule, type RulesPut, type TakenOut } from "../../sharing/plain/plainRules";
import type { PlainOptions } from "../../sharing/plain/Surroundings";
import type { WorkbookPackage } from "../package/WorkbookPackage";

/**
 * Writes the rules for colouring and for entries, and the defined names, that call one of our functions in built-in ones; takes out those that have
 * no such form, which would do nothing without a word.
 */
export async function putRules(file: WorkbookPackage, sheets: readonly string[], options: PlainOptions = {}): Promise<RulesPut> {
  const names = await file.definedNames();
  const { changed, gone } = plainNames(names, { names: sheets, spillOf: () => undefined }, options);
  const plainOf = plainRules(names, sheets, options);
  const rules: PlainRule[] = [];
  for (const sheet of sheets)
    await file.changeRules(sheet, (rule) => {
      const plain = plainOf({ ...rule, sheet });
      if (plain === undefined) return undefined;
      rules.push(plain);
      return "now" in plain ? plain.now : "out";
    });
  await file.changeNames(changed);
  const namesGone = new Set(gone.map(({ name: { name, sheet = "" } }) => `${sheet}!${name}`));
  if (namesGone.size > 0) await file.takeNames((name, sheet = "") => namesGone.has(`${sheet}!${name}`));
  return { rules, namesWritten: namesWritten(names, changed), namesGone: gone };
}

/** What was taken out, and why: the rules by their cells, the names behind them. */
export const takenOut = ({ rules, namesGone }: RulesPut): readonly TakenOut[] => [
  ...rules.flatMap((rule) => ("why" in rule ? [{ what: rule.kind, where: `${rule.sheet}!${rule.areas.join(" ")}`, why: rule.why }] : [])),
  ...namesGone.map(({ name, why }) => ({ what: "name" as const, where: name.name, why })),
];
