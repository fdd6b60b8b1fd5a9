import {
  callsOnSheet,
  mendFirst,
  namesCall,
  nothingChanged,
  nothingNeedsRetort,
  onceRecalculated,
  plainInstead,
  runSheetSaysSo,
} from "../../problems/sharing/asItIsWords";
import { besideUnread, rulesStillCall } from "../../problems/sharing/sharedCopyWords";
import { shareTabWords } from "../../problems/sharing/shareTabWords";
import { headWords } from "../../runsheet/words/headWords";
import { asItIs } from "../../sharing/asItIs";
import { readBeside } from "../../sharing/besideCopy";
import { rulesCalling } from "../../sharing/callingBeside";
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
    const reading = await finalValues(workbook, sheet);
    const beside = await readBeside(workbook, sheet);
    const { calling, plain, names, toMend, saysSo } = asItIs(reading, beside.names);
    const rules = rulesCalling(beside, sheet).length;
    const isNothing = [calling, toMend, names, beside.unread].every(({ length }) => length === 0) && rules === 0;
    if (isNothing) return nothingNeedsRetort(sheet);
    const what = [
      ...(calling.length === 0 ? [] : [callsOnSheet(sheet, calling), onceRecalculated]),
      ...(saysSo ? [runSheetSaysSo(headWords.checks.absent)] : []),
      ...(names.length === 0 ? [] : [namesCall(names)]),
      ...[rulesStillCall(sheet, rules), besideUnread(sheet, beside.unread)].filter((sentence) => sentence !== ""),
      ...(calling.length === 0 ? [] : [plainInstead(calling.length, plain)]),
    ];
    replaceKeepingFocus(found, [points(what)]);
    return toMend.length === 0 ? nothingChanged : mendFirst(toMend);
  };

  return way("way-as-is", words.heading, element("p", {}, words.about), look, messages.region, found);
}
