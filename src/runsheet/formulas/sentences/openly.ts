import { all, any, firstOf, isNumber, when } from "../../expressions/choices";
import { fn, is, joined, reckon, type Expression, type Range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { headWords } from "../../words/headWords";
import { percent } from "../percent";
import { isMarked, type ChecksAt } from "./checksSay";
import { isAbsent } from "./absence";
import { compared, hasFormula, isAnalysed } from "../burning";

const { verdicts } = checkWords;

/** What open burning would have taken up and sent away, beside what left closed. */
export function openlySays(sheet: RunSheet, checks: ChecksAt): Expression {
  const { composition, charring, across, share, drying, rows } = sheet;
  const openly = headWords.openly;
  if (composition === undefined || charring === undefined || rows.openFire === undefined) return openly.ofDrying;
  const oxygen = across((sample) => compared(sheet, "oxygenTaken", sample));
  const gases = across((sample) => compared(sheet, "gases", sample));
  const dry = fn("SUM", across(drying.net));
  const volatile = fn(
    "AVERAGE",
    across((sample) => share("volatile", sample)),
  );
  const per100 = (of: Range): Expression => fn("FIXED", reckon(reckon(100, "*", fn("SUM", of)), "/", dry), 0, true);
  const off = (thousandths: number): Expression => fn("FIXED", reckon(reckon(composition.exactness, "*", thousandths), "/", 1000), 0, true);
  const said = when(
    all(isNumber(composition.exactness), is(fn("COUNT", composition.carbon), ">", 0)),
    openly.open(per100(oxygen), off(OFF.oxygen), per100(gases), off(OFF.gases)),
    openly.openExact(per100(oxygen), per100(gases)),
  );
  // Its own check tells what an analysis or a formula has wrong, so what is left is a call that gave nothing.
  const isGiven = all(any(isAnalysed(composition), hasFormula(composition)), is(fn("COUNT", across(charring.net)), ">=", sheet.working.inUse));
  const closed = percent(volatile);
  const invite = openly.invite(fn("ROW", composition.carbon), fn("ROW", composition.formula));
  return firstOf(
    [
      [isMarked(checks), openly.waits],
      ...(checks.analysis === undefined ? [] : ([[is(checks.analysis, "=", verdicts.doubt), openly.inDoubt(nameOf(checks.analysis))]] as const)),
      [isAbsent(sheet), openly.waits],
      [all(is(fn("COUNT", oxygen), "<", sheet.working.inUse), isGiven), openly.notWorkedOut],
      [is(fn("COUNT", oxygen), "<", sheet.working.inUse), invite],
      [is(fn("COUNT", oxygen), "=", 0), invite],
      [
        is(charring.allSteady, "=", 0),
        joined(
          openly.soFar(
            percent(
              fn(
                "MIN",
                across((sample) => share("volatile", sample)),
              ),
            ),
          ),
          said,
        ),
      ],
    ],
    joined(openly.closed(closed), said),
  );
}

/**
 * By how much oxygen in and gases out, mg per g dry, may be off for one percent that carbon, hydrogen and oxygen may each be off:
 * roots of the sums of squares of their coefficients, from M(C) 12.011, M(H) 1.008 and M(O) 15.999 g/mol. Oxygen in is
 * 31.998/12.011 C + 15.999/2.016 H - O, sqrt(2.664^2 + 7.936^2 + 1^2) = 8.431; gases out are 44.009/12.011 C + 18.015/2.016 H, the
 * sample's own oxygen among them, sqrt(3.664^2 + 8.936^2) = 9.658 (GUM, JCGM 100:2008, equation 10).
 */
const OFF = { oxygen: 8431, gases: 9658 } as const;
