import { all, any, anyWhere, firstOf, isNumber, noNumber, NOTHING, product } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { lastRowWhere } from "../../formulas/cellsNamed";
import { isRepeated, lostInStage } from "../../formulas/stages";
import { block } from "../../formulas/weighings";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired } from "../../sheet/Weighed";
import { checkWords } from "../../words/checkWords";
import { stageWords } from "../../words/stageWords";
import { step, type Check, type Step } from "../Check";
import { isFarFromSet } from "./farFromSet";

const words = checkWords;

const rowsOf = ({ rows: { first, last } }: Fired): readonly number[] => Array.from({ length: last - first + 1 }, (_, index) => first + index);
const fireOf = (table: Fired, row: number) => table.fire(table.rows.fire.first + row - table.rows.first);
const boxesOf = ({ across }: RunSheet, table: Fired, row: number): Range => across((sample) => table.box(row, sample));

/** Whether each stage is set no lower than the one before, has a temperature, and was measured near what was set. */
export function risingCheck(sheet: RunSheet): Check | undefined {
  const { stages } = sheet;
  if (stages === undefined) return undefined;
  const { first, last } = stages.rows.fire;
  return {
    silentWhile: all(noNumber(block(sheet, stages)), noNumber(range(fixed(stages.fire(first).set), fixed(stages.fire(last).measured)))),
    steps: rowsOf(stages).flatMap((row): Step[] => {
      const { set, measured } = fireOf(stages, row);
      const isWeighed = is(fn("COUNT", boxesOf(sheet, stages, row)), ">", 0);
      return [
        ...(row === stages.rows.first ? [] : [falls(stages, row)]),
        step(all(isWeighed, is(fn("COUNT", set, measured), "=", 0)), words.rising.unknown(fn("ROW", set))),
        step(isFarFromSet({ set, measured }, sheet.options.degrees), words.farFromSet(nameOf(measured))),
      ];
    }),
  };
}

/** Set below the stage before; where one of the two was not set, measured below it. */
function falls(table: Fired, row: number): Step {
  const [here, before] = [fireOf(table, row), fireOf(table, row - 1)];
  const isLower = all(is(fn("COUNT", here.set, before.set), "=", 2), is(fn("N", here.set), "<", fn("N", before.set)));
  const isMeasuredLower = all(
    is(fn("COUNT", here.set, before.set), "<", 2),
    is(fn("COUNT", here.measured, before.measured), "=", 2),
    is(fn("N", here.measured), "<", fn("N", before.measured)),
  );
  return step(any(isLower, isMeasuredLower), words.rising.falls(nameOf(here.set)));
}

/** Whether a stage that was held again lost nothing more; one that was never held again cannot be told. */
export function stageHeldCheck(sheet: RunSheet): Check | undefined {
  const { stages, working, samples, drying, across } = sheet;
  if (stages === undefined) return undefined;
  const later = rowsOf(stages).slice(1);
  const repeated = later.map((row) => all(isRepeated(stages, row), is(fn("COUNT", boxesOf(sheet, stages, row)), ">", 0)));
  const losing = (row: number) =>
    any(
      ...samples.map((sample) =>
        all(isNumber(stages.box(row, sample)), isNumber(drying.net(sample)), is(lostInStage(sheet, row, sample), ">", fn("N", working.explained))),
      ),
    );
  // Losing at the latest of several at one temperature counts; one followed by a repeat without loss is mended.
  const losingRow = firstOf(
    later.map((row) => {
      const next = row + 1;
      const isHeldOn =
        next > stages.rows.last ? [] : [is(all(isRepeated(stages, next), is(fn("COUNT", boxesOf(sheet, stages, next)), ">", 0)), "=", false)];
      return [all(isRepeated(stages, row), losing(row), ...isHeldOn), fn("ROW", stages.box(row, 1))] as const;
    }),
    fn("NA"),
  );
  const verdicts = range(fixed(stages.verdict(stages.rows.first)), fixed(stages.verdict(stages.rows.last)));
  const below = range(fixed(stages.verdict(stages.rows.first + 1)), fixed(stages.verdict(stages.rows.last + 1)));
  const unproven = (word: string): Expression => product(is(verdicts, "=", word), reckon(1, "-", is(below, "=", stageWords.says.heldEnough)));
  const said = (word: "colder" | "short"): Expression => words.stageHeld[word](lastRowWhere(unproven(stageWords.says[word]), verdicts));
  const says = firstOf(
    (["colder", "short"] as const).map((word) => [anyWhere(unproven(stageWords.says[word])), said(word)]),
    NOTHING,
  );
  return {
    silentWhile: is(any(...repeated), "=", false),
    // What is summed shows an error where a weight does. The sentence once, not once a stage, of which there may be twelve: it is an error while no stage loses.
    steps: [
      step(fn("ISERROR", fn("SUM", block(sheet, stages), across(drying.net))), words.unreadable),
      step(is(1, "=", 1), fn("IFERROR", words.stageHeld.losing(losingRow), says)),
    ],
  };
}
