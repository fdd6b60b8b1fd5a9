import { all, anyWhere, firstOf, NOTHING, noNumber, when } from "../../expressions/choices";
import { fn, is, reckon, type Expression } from "../../expressions/Expression";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired } from "../../sheet/Weighed";
import { stageWords } from "../../words/stageWords";
import { weighingWords } from "../../words/weighingWords";
import { isColderStage, isShort } from "../proving";
import { grams } from "./rowSays";
import { isRepeated, lostInStage } from "../stages";
import { block } from "../weighings";

const { says } = stageWords;

/** What the sheet says of the weighing after a stage. */
export function stageSays(sheet: RunSheet, table: Fired, row: number): Expression {
  const { working, across, samples, drying } = sheet;
  const boxes = across((sample) => table.box(row, sample));
  const above = across((sample) => table.box(row - 1, sample));
  const each = samples.map((sample) => lostInStage(sheet, row, sample));
  const [most, least] = [fn("MAX", ...each), fn("MIN", ...each)];
  const explained = fn("N", working.explained);
  const common = weighingWords.says;
  return firstOf(
    [
      [is(fn("COUNTA", boxes), "=", 0), when(is(working.next, "=", fn("ROW", table.box(row, 1))), common.next, NOTHING)],
      [anyWhere(fn("ISTEXT", boxes)), common.notANumber],
      [is(fn("COUNT", boxes), "<", working.inUse), common.oneToWeigh],
      ...(row === table.rows.first ? [] : ([[is(fn("COUNT", above), "<", working.inUse), common.rowAbove]] as const)),
      [is(fn("COUNT", across(drying.net)), "<", working.inUse), says.notDry],
      [is(least, "<", reckon(0, "-", explained)), common.gained(grams(sheet, reckon(0, "-", least)))],
      [all(isRepeated(table, row), is(most, ">", explained)), says.stillLosing(grams(sheet, most))],
      [all(isRepeated(table, row), isColderStage(sheet, table, row)), says.colder],
      [all(isRepeated(table, row), isShort(table, row, "alike")), says.short],
      [isRepeated(table, row), says.heldEnough],
    ],
    says.lost(grams(sheet, most)),
  );
}

export const stagesTotalSays = (sheet: RunSheet, table: Fired): Expression =>
  when(noNumber(block(sheet, table)), NOTHING, says.after(fn("INT", reckon(fn("COUNT", block(sheet, table)), "/", sheet.working.inUse))));
