import { any, firstOf, noNumber } from "../../expressions/choices";
import { cell, fixed, fn, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { LABEL } from "../../sheet/Columns";
import { sharesOf, isStageShare } from "../../sheet/sharesOf";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired } from "../../sheet/Weighed";
import { headWords } from "../../words/headWords";
import { isAbsent } from "./absence";
import { percent } from "../percent";
import { isMarked, type ChecksAt } from "./checksSay";
import { block } from "../weighings";

const words = headWords.stages;
// Letters of a name that a line has room for; its label in the results shows about 17.
const LONGEST = 40;

/** In which stage most was lost, of the sample in which it was most, by the name that the person gave it. */
export function stagesSay(sheet: RunSheet, table: Fired, checks: ChecksAt): Expression {
  const { options, rows, share, samples } = sheet;
  const names = sharesOf(options).filter(isStageShare);
  const [first, last] = [names[0] ?? "stage1", names.at(-1) ?? "stage1"];
  // The first sample stands for all: stages are heated together, and samples that disagree are told by their check.
  const own: Range = range(share(first, samples[0] ?? 1), share(last, samples[0] ?? 1));
  const labels = range(fixed(cell(rows.results.shares[first] ?? 0, LABEL)), fixed(cell(rows.results.shares[last] ?? 0, LABEL)));
  const most = fn("MAX", own);
  const place = fn("MATCH", most, own, 0);
  const label = fn("INDEX", labels, place);
  const name = fn("MID", label, reckon(fn("FIND", " ", label), "+", 1), LONGEST);
  return firstOf(
    [
      [any(isMarked(checks), isAbsent(sheet)), words.waits],
      [noNumber(block(sheet, table)), words.none],
      [noNumber(own), words.none],
    ],
    words.most(place, name, percent(most)),
  );
}
