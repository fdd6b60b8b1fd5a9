import { firstOf, NOTHING, when } from "../expressions/choices";
import { cell, fixed, fn, is, type Cell, type Expression } from "../expressions/Expression";
import { isAbsent } from "../formulas/sentences/absence";
import { AGREEMENT, agreementOf } from "../formulas/agreement";
import { plusMinusOf, shareOf, studentFactor, togetherOf, togetherSays } from "../formulas/results";
import { grams } from "../formulas/sentences/rowSays";
import { stageName } from "../formulas/stages";
import { isYetToDry } from "../formulas/yetToDry";
import { CLOCK, LABEL } from "../sheet/Columns";
import type { CheckName, ShareName } from "../sheet/layout";
import { isLedgerShare, isStageShare, judgedBy, sharesOf, type LedgerShare, type StageShare } from "../sheet/sharesOf";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { resultWords } from "../words/resultWords";
import { sheetWords } from "../words/sheetWords";
import { band, calculated, ofCells, working, workingLabel, type Block, type BlockCell } from "./Block";

const SHARE = "0.00%";
const PLUS_MINUS = "0.000%";
const COUNT = "0.000";

/** Checks that bear on every share, on those of the char, and on those of the ash. */
const ON_DRYING: readonly CheckName[] = ["vessel", "times", "rows", "gain", "dryness", "typedOver"];
const ON_CHAR: readonly CheckName[] = [...ON_DRYING, "opened", "charDone", "air", "vesselAgain"];
const ON_ASH: readonly CheckName[] = [...ON_CHAR, "ashDone"];
const ON_LEDGER: readonly CheckName[] = [...ON_CHAR, "caught", "ledger"];
const ON_STAGES: readonly CheckName[] = [...ON_DRYING, "opened", "rising", "stageHeld", "vesselAgain"];
const ON_HEATING: readonly CheckName[] = [...ON_DRYING, "opened", "heatDone", "vesselAgain"];
const ON_THEORY: readonly CheckName[] = [...ON_HEATING, "theory"];
/** The checks that put a share in doubt. */
export const bears = (name: ShareName): readonly CheckName[] => (isLedgerShare(name) ? ON_LEDGER : isStageShare(name) ? ON_STAGES : BEARS[name]);
const BEARS: Readonly<Record<Exclude<ShareName, LedgerShare | StageShare>, readonly CheckName[]>> = {
  moistureWet: ON_DRYING,
  moistureDry: ON_DRYING,
  volatile: ON_CHAR,
  charYield: ON_CHAR,
  charYieldAshFree: ON_ASH,
  ash: ON_ASH,
  lostInAll: ON_STAGES,
  leftAtEnd: ON_STAGES,
  lossOnHeating: ON_HEATING,
  leftOnHeating: ON_HEATING,
  ofTheory: ON_THEORY,
  waters: ON_THEORY,
};

/** The shares of each sample with their ± by weighing, what they say together, and how far each line is to be trusted. */
export function resultsBlock(sheet: RunSheet): Block {
  const { rows, columns, options, samples } = sheet;
  const { heading, foot, ledgerFoot } = rows.results;
  return ofCells(
    ...band(sheet, heading, "runBand", {
      [LABEL]: resultWords.heading,
      [CLOCK]: resultWords.trust,
      ...Object.fromEntries(
        samples.flatMap((sample) => [
          [columns.box(1, sample).column, sheetWords.sample(sample)],
          [columns.reckoned(1, sample).column, resultWords.plusMinus(sample)],
        ]),
      ),
      [columns.verdict]: resultWords.together,
    }),
    ...sharesOf(options).flatMap((name) => shareRow(sheet, name)),
    calculated(cell(foot, LABEL), footOf(sheet), "runHelp"),
    ...(ledgerFoot === undefined ? [] : [{ at: cell(ledgerFoot, LABEL), content: resultWords.ledgerFoot, style: "runHelp" } as const]),
  );
}

function footOf(sheet: RunSheet): Expression {
  const { options, working, across } = sheet;
  const toCome = grams(sheet, fn("MAX", across(working.yetToDry)));
  const of = (usual: Expression, drying: Expression): Expression => when(isYetToDry(sheet), drying, usual);
  const ofOne = of(resultWords.footOfOne, resultWords.footDryingOfOne(toCome));
  if (options.replicates === 1) return ofOne;
  const factor = fn("FIXED", studentFactor(working.inUse), 2, true);
  return when(is(working.inUse, "<", 2), ofOne, of(resultWords.foot(factor, working.inUse), resultWords.footDrying(toCome, factor, working.inUse)));
}

/** Where a check of that name has its verdict. */
const verdictOn = ({ rows }: RunSheet, name: CheckName): Cell | undefined => {
  const line = rows.checks.lines.find(({ check }) => check === name);
  return line && fixed(cell(line.row, CLOCK));
};

const numberOf = ({ rows }: RunSheet, name: CheckName): number => rows.checks.lines.findIndex(({ check }) => check === name) + 1;

function shareRow(sheet: RunSheet, name: ShareName): BlockCell[] {
  const { rows, columns, samples, working: own } = sheet;
  const row = rows.results.shares[name] ?? 0;
  const isHeadline = name === "volatile" || name === "moistureWet" || name === "lostInAll" || name === "lossOnHeating";
  return [
    sheet.stages !== undefined && isStageShare(name)
      ? calculated(cell(row, LABEL), stageName(sheet.stages, name, sheet.options.degrees), "runLabel")
      : { at: cell(row, LABEL), content: resultWords.shares[name], style: isHeadline ? "runTotal" : "runLabel" },
    calculated(cell(row, CLOCK), trustOf(sheet, name), "runMark"),
    ...samples.map((sample) =>
      calculated(
        columns.box(row, sample),
        shareOf(sheet, name, sample),
        isHeadline ? "runTotalNumber" : "runReckoned",
        name === "waters" ? COUNT : SHARE,
      ),
    ),
    ...samples.map((sample) =>
      calculated(columns.reckoned(row, sample), plusMinusOf(sheet, name, sample), "runReckoned", name === "waters" ? COUNT : PLUS_MINUS),
    ),
    calculated(cell(row, columns.verdict), togetherSays(sheet, name), "runVerdictStrong"),
    ...(samples.length === 1
      ? []
      : [
          workingLabel(sheet, row, sheetWords.workings.together),
          working(own.together(name), togetherOf(sheet, name), "0.000000"),
          ...(judgedBy(name) === name ? [working(own.agreement(name), agreementOf(sheet, name), "0")] : []),
        ]),
  ];
}

/** "✓", or the first check that puts the line in doubt, by its number. */
function trustOf(sheet: RunSheet, name: ShareName): Expression {
  const shares = sheet.across((sample) => sheet.share(name, sample));
  const bearing = [...bears(name), "agree" as const].sort((one, other) => numberOf(sheet, one) - numberOf(sheet, other));
  const contradicting = (["typedOver", "vessel", "order", ...(bears(name).includes("theory") ? (["theory"] as const) : [])] as const).flatMap(
    (check) => {
      const at = verdictOn(sheet, check);
      return at === undefined ? [] : [[is(at, "=", checkWords.verdicts.contradiction), resultWords.contradicted(numberOf(sheet, check))] as const];
    },
  );
  const doubting = bearing.flatMap((check) => {
    const at = verdictOn(sheet, check);
    if (at === undefined) return [];
    // That of the samples tells of many rows; each looks at its own.
    const isDoubted = check === "agree" ? is(sheet.working.agreement(name), ">", AGREEMENT.agree) : is(at, "=", checkWords.verdicts.doubt);
    return [[isDoubted, resultWords.doubted(numberOf(sheet, check))] as const];
  });
  const withheld = when(
    is(fn("COUNTIF", shares, resultWords.withheld), ">", 0),
    firstOf(contradicting, resultWords.trusted),
    when(isAbsent(sheet), resultWords.unjudged, NOTHING),
  );
  const unjudged = [isAbsent(sheet), resultWords.unjudged] as const;
  return when(is(fn("COUNT", shares), "=", 0), withheld, firstOf([...contradicting, unjudged, ...doubting], resultWords.trusted));
}
