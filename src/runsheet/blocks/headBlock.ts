import { any, when, type Condition } from "../expressions/choices";
import { range, cell, fixed, is, type Cell, type Expression } from "../expressions/Expression";
import { isAbsent, verdictsMissing } from "../formulas/sentences/absence";
import { answerOf } from "../formulas/sentences/answer";
import { checksSay, type ChecksAt } from "../formulas/sentences/checksSay";
import { coversSay } from "../formulas/sentences/coversSay";
import { openlySays } from "../formulas/sentences/openly";
import { productsSay } from "../formulas/sentences/productsSay";
import { saltSays } from "../formulas/sentences/saltSays";
import { stagesSay } from "../formulas/sentences/stagesSay";
import { nextRow, nextSays, samplesInUse } from "../formulas/sentences/nextStep";
import { allSteady, steadyRound } from "../formulas/weighings";
import { changeExplained } from "../formulas/sentences/changeExplained";
import { isRearranged, watchingTheChecks, watchingTheHead } from "../formulas/slips/typedOver";
import { weighingUncertainty } from "../formulas/weighingUncertainty";
import type { CheckName } from "../sheet/layout";
import type { RunSheet, Sheet } from "../sheet/RunSheet";
import { CLOCK, LABEL } from "../sheet/Columns";
import { checkWords } from "../words/checkWords";
import { headWords } from "../words/headWords";
import { kindWords } from "../words/kindWords";
import { sheetWords } from "../words/sheetWords";
import { calculated, ofCells, working, workingLabel, type Block } from "./Block";

// The next step stands beside the title, over the second sample's boxes.
export const NEXT = 3;

/** The options that give this very sheet: the cautions stay where they are, however many rows come in above them. */
export function recordOf({ options, rows }: Sheet): string {
  const cautionsAfter = rows.order[rows.order.indexOf("cautions") - 1];
  return JSON.stringify({ ...options, cautionsAfter });
}

/** Where the checks stand. */
export function checksAt({ rows, options, working: own }: RunSheet): ChecksAt {
  const { lines } = rows.checks;
  const verdictOn = (name: CheckName): Cell | undefined => {
    const line = lines.find(({ check }) => check === name);
    return line && fixed(cell(line.row, CLOCK));
  };
  const theory = verdictOn("theory");
  const ledger = (["caught", "ledger"] as const).flatMap((name) => verdictOn(name) ?? []);
  return {
    ...checkColumns(lines),
    typedOver: verdictOn("typedOver") ?? fixed(cell(0, CLOCK)),
    agree: verdictOn("agree"),
    analysis: verdictOn("analysis"),
    ...(ledger.length > 0 ? { ledger } : {}),
    ...(ledger.length > 0 && options.replicates > 1 ? { agreedBesideLedger: range(own.agreement("moistureWet"), own.agreement("charYield")) } : {}),
    ...(theory === undefined ? {} : { theory }),
  };
}

/** Whether weights contradict one another, or what they give was typed over; what theory allows is no weight to put right. */
const cannotBe = ({ rows }: RunSheet): Condition =>
  any(
    ...rows.checks.lines
      .filter(({ check }) => check === "vessel" || check === "order" || check === "typedOver")
      .map(({ row }) => is(fixed(cell(row, CLOCK)), "=", checkWords.verdicts.contradiction)),
  );

/** The verdicts and the findings of some checks one below the other. */
export function checkColumns(lines: readonly { readonly row: number }[]): Pick<ChecksAt, "verdicts" | "findings" | "count"> {
  const [first, last] = [lines[0]?.row ?? 0, lines.at(-1)?.row ?? 0];
  const down = (column: number) => range(fixed(cell(first, column)), fixed(cell(last, column)));
  return { verdicts: down(CLOCK), findings: down(CLOCK + 1), count: lines.length };
}

/** What the answer means: against an open fire, product by product, stage by stage, or beside theory. */
function lastLine(sheet: RunSheet, checks: ChecksAt): Expression {
  if (sheet.caught !== undefined) return productsSay(sheet, sheet.caught, checks);
  if (sheet.salt !== undefined) return saltSays(sheet, sheet.salt, checks);
  return sheet.stages === undefined ? openlySays(sheet, checks) : stagesSay(sheet, sheet.stages, checks);
}

/** What run this is and what comes next, the answer, the checks, and what the answer stands on; beside them the first workings. */
export function headBlock(sheet: RunSheet): Block {
  const { rows, options, working: own, drying, formats, samples } = sheet;
  const { head } = rows;
  const checks = checksAt(sheet);
  const { workings } = sheetWords;
  return ofCells(
    { at: cell(head.title, LABEL), content: kindWords[options.kind].title, style: "runTitle" },
    calculated(cell(head.title, NEXT), watchingTheChecks(sheet, nextSays(sheet, cannotBe(sheet))), "runStrong"),
    calculated(cell(head.answer, LABEL), when(isRearranged(sheet), headWords.answer.rearranged, answerOf(sheet, checks)), "runAnswer"),
    calculated(cell(head.checks, LABEL), watchingTheHead(sheet, when(isAbsent(sheet), headWords.checks.absent, checksSay(checks))), "runStrong"),
    calculated(cell(head.covers, LABEL), coversSay(sheet, checks), "runLine"),
    calculated(cell(head.openly, LABEL), lastLine(sheet, checks), "runLine"),
    workingLabel(sheet, head.title, workings.title),
    { at: cell(head.title, sheet.columns.elapsed), content: `${workings.madeWith}${recordOf(sheet)}`, style: "runWorking" },
    workingLabel(sheet, head.answer, workings.u),
    working(own.u, weighingUncertainty(sheet), formats.uncertainty),
    working(own.explained, changeExplained(sheet), formats.uncertainty),
    workingLabel(sheet, head.checks, workings.next),
    working(own.next, nextRow(sheet)),
    workingLabel(sheet, head.covers, workings.inUse),
    working(own.inUse, samplesInUse(sheet)),
    working(own.absent, verdictsMissing(sheet)),
    workingLabel(sheet, head.openly, workings.steadyRound),
    ...samples.map((sample) => working(drying.steady(sample), steadyRound(sheet, sample))),
    working(drying.allSteady, allSteady(sheet, drying)),
  );
}
