import {
  callsOnSheet,
  mendFirst,
  nothingChanged,
  nothingNeedsRetort,
  onceRecalculated,
  plainInstead,
  runSheetSaysSo,
} from "../../problems/asItIsWords";
import { rulesStillCall, rulesUnread } from "../../problems/sharedCopyWords";
import { shareTabWords } from "../../problems/shareTabWords";
import { headWords } from "../../runsheet/words/headWords";
import { callingAmong } from "../../sharing/callingRules";
import { asItIs } from "../../sharing/asItIs";
import { finalValues } from "../../sharing/finalValues";
import type { Workbook } from "../../workbook/Workbook";
import { button, element } from "../element";
import { Messages } from "../Messages";
import { replaceKeepingFocus } from "../replaceKeepingFocus";
import { points, way } from "./way";

/** Says what a colleague without the add-in will see of a sheet that is sent with its formulas. @param chosen the sheet */
export function asItIsWay(workbook: Workbook, chosen: () => string): HTMLElement {
  const words = shareTabWords.asItIs;
  const messages = new Messages();
  const found = element("div");
  const look = button(words.press, "primary", () => void messages.report(look, () => looked()));

  const looked = async (): Promise<string> => {
    found.replaceChildren();
    const sheet = chosen();
    const { calling, plain, toMend, saysSo } = asItIs(await finalValues(workbook, sheet));
    const rules = await workbook.ruleFormulas(sheet).then(callingAmong, () => undefined);
    if (calling.length === 0 && toMend.length === 0 && rules === 0) return nothingNeedsRetort(sheet);
    const what = [
      ...(calling.length === 0 ? [] : [callsOnSheet(sheet, calling), onceRecalculated]),
      ...(saysSo ? [runSheetSaysSo(headWords.checks.absent)] : []),
      ...(rules === undefined ? [rulesUnread(sheet)] : rules > 0 ? [rulesStillCall(sheet, rules)] : []),
      ...(calling.length === 0 ? [] : [plainInstead(calling.length, plain)]),
    ];
    replaceKeepingFocus(found, [points(what)]);
    return toMend.length === 0 ? nothingChanged : mendFirst(toMend);
  };

  return way("way-as-is", words.heading, element("p", {}, words.about), look, messages.region, found);
}
