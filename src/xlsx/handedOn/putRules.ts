import type { SheetsGoing } from "../../sharing/plain/reading/PlainReading";
import { namesWritten, plainNames } from "../../sharing/plain/plainNames";
import { plainRules, type PlainRule, type RulesPut } from "../../sharing/plain/plainRules";
import { guardedRules } from "../../sharing/plain/guardedRules";
import type { PlainSheets } from "../../sharing/plain/plainSheets";
import { holdsCall } from "../../sharing/findCalls";
import type { PlainOptions } from "../../sharing/plain/reading/Surroundings";
import type { WorkbookPackage } from "../package/WorkbookPackage";

/**
 * Writes the rules for colouring and for entries, and the defined names, that call one of our functions in built-in ones, and what rules read on sheets
 * that go as values; takes out those that have no such form, which would do nothing without a word.
 * @param going the sheets that are about to go, with the names that stand for them
 */
export async function putRules(file: WorkbookPackage, sheets: readonly string[], options: PlainOptions = {}, going?: SheetsGoing): Promise<RulesPut> {
  const names = await file.definedNames();
  const { changed: written, gone: without } = plainNames(names, { names: sheets, spillOf: () => undefined }, options);
  const isGoing = going === undefined ? () => false : await file.namesGoing(sheets);
  const changed = written.filter(({ name, sheet }) => !isGoing(name, sheet));
  const printed = (await file.namesOfPrograms()).filter(({ formula }) => holdsCall(formula)).map((name) => ({ name, why: "programName" as const }));
  const gone = [...without, ...printed].filter(({ name }) => !isGoing(name.name, name.sheet));
  const plainOf = plainRules(names, sheets, options, going && { going, tables: await file.tables() });
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

/**
 * Has rules for colouring and entries hold for nothing once a cell that they read says that it is fixed.
 * @param put what became of the rules before
 * @returns the same with those that were guarded or taken out
 */
export async function putGuards(file: WorkbookPackage, sheets: readonly string[], plain: PlainSheets, put: RulesPut): Promise<RulesPut> {
  const guardedOf = guardedRules(plain, await file.definedNames(), sheets);
  const [rules, guarded]: [PlainRule[], PlainRule[]] = [[...put.rules], []];
  for (const sheet of sheets)
    await file.changeRules(sheet, (rule) => {
      const found = guardedOf({ ...rule, sheet });
      if (found === undefined) return undefined;
      const before = rules.findIndex((one) => "now" in one && one.sheet === sheet && one.areas.join() === rule.areas.join() && one.now.join() === rule.formulas.join()); // prettier-ignore
      // It is told as it was typed.
      const [written] = before === -1 ? [] : rules.splice(before, 1);
      guarded.push(written !== undefined ? { ...found, formulas: written.formulas } : "now" in found ? { ...found, isGuardAlone: true } : found);
      return "now" in found ? found.now : "out";
    });
  return { ...put, rules: [...rules, ...guarded] };
}
