import { all, any, firstOf, when, type Condition } from "../../expressions/choices";
import { fn, is, reckon, type Cell, type Expression, type Range } from "../../expressions/Expression";
import { checkWords } from "../../words/checkWords";
import { headWords } from "../../words/headWords";

const { verdicts } = checkWords;

/** Where the checks stand that the head tells of. */
export interface ChecksAt {
  readonly verdicts: Range;
  readonly findings: Range;
  readonly count: number;
  /** Undefined on a sheet of one sample. */
  readonly agree: Cell | undefined;
  /** It marks the comparison with open burning only. Undefined for a run that ends with drying. */
  readonly analysis: Cell | undefined;
  /** Those that mark the product ledger only. Left out where there is none. */
  readonly ledger?: readonly Cell[];
  /** How the samples agree in the rows that bear on the answer, all but those of the ledger. Left out where there is no ledger or one sample. */
  readonly agreedBesideLedger?: Range;
  /** That of the theoretical loss. Left out where no salt is heated. */
  readonly theory?: Cell;
  /** That of what was typed over: wrong where the answer is calculated from it, in doubt where it is not. */
  readonly typedOver: Cell;
}

export const counted = ({ verdicts: every }: ChecksAt, verdict: string): Expression => fn("COUNTIF", every, verdict);

/** How many checks that bear on the answer are in doubt; those on the analysis, the ledger and the formulas of a salt do not. */
export const doubts = (checks: ChecksAt): Expression => {
  const beside = [...[checks.analysis, checks.theory].flatMap((at) => at ?? []), ...(checks.ledger ?? [])].map((at) => is(at, "=", verdicts.doubt));
  return [...beside, ...disagreeInLedger(checks)].reduce<Expression>(
    (so, isBeside) => reckon(so, "-", when(isBeside, 1, 0)),
    counted(checks, verdicts.doubt),
  );
};

/** Whether samples disagree in rows of the ledger only, on a sheet that has one. */
export const disagreeInLedger = ({ agree, agreedBesideLedger }: ChecksAt): Condition[] =>
  agree === undefined || agreedBesideLedger === undefined ? [] : [all(is(agree, "=", verdicts.doubt), is(fn("SUM", agreedBesideLedger), "=", 0))];

/** Whether the answer is marked. By the checks, not by the mark it begins with: a spreadsheet may read "?" as any one character. */
export const isMarked = (checks: ChecksAt): Condition => any(is(counted(checks, verdicts.contradiction), ">", 0), is(doubts(checks), ">", 0));

/** Whether a cell that the answer is calculated from was typed over. */
export const restsOnTypedOver = ({ typedOver }: ChecksAt): Condition => is(typedOver, "=", verdicts.contradiction);

/** How the checks stand: all in order, some waiting, or how many fail with what the gravest found first says. */
export function checksSay(checks: ChecksAt): Expression {
  const { verdicts: every, findings, count } = checks;
  const [wrong, doubted, waiting] = [counted(checks, verdicts.contradiction), counted(checks, verdicts.doubt), counted(checks, verdicts.notYet)];
  const gravest = when(is(wrong, ">", 0), verdicts.contradiction, verdicts.doubt);
  // What was typed over explains whatever else contradicts, and is looked at last.
  const finding = fn("INDEX", findings, when(restsOnTypedOver(checks), count, fn("MATCH", gravest, every, 0)));
  return firstOf(
    [
      [
        is(reckon(wrong, "+", doubted), ">", 0),
        headWords.checks.failed(fn("LEFT", finding, 1), reckon(wrong, "+", doubted), count, withoutMark(finding)),
      ],
      [is(waiting, ">", 0), headWords.checks.some(counted(checks, verdicts.inOrder), waiting)],
    ],
    headWords.checks.all(count),
  );
}

const MARK_LENGTH = 2;
// Longer than any finding, in characters.
const ALL_OF_IT = 255;

/** The mark stands before the count, so it is left out of the finding. */
const withoutMark = (finding: Expression): Expression => fn("MID", finding, 1 + MARK_LENGTH, ALL_OF_IT);
