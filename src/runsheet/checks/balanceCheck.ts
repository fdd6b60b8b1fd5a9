import { lacksNumber, NOTHING, noNumber, when } from "../expressions/choices";
import { fn, is, reckon, retort, type Cell, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import { IN_ORDER, type Check, type Step } from "./Check";

const words = checkWords.balance;

/** Whether the moist sample, and later the dry one, is large enough for the wanted uncertainty; if not, how much would be. */
export const balanceCheck = (sheet: RunSheet, { vessel, moist, dry, shares, charring }: SampleCells): Check => {
  const { weighingUncertainty: u, details } = sheet;
  // Not yet known, the loss is taken at its least favourable, which 0 stands for.
  const loss = when(noNumber(shares.moistureWet), 0, shares.moistureWet);
  return {
    silentWhile: lacksNumber(u, details.wanted, vessel, moist),
    steps: [
      { when: is(moist, "<=", vessel), says: NOTHING },
      tooCoarse(sheet, moist, vessel, loss, words.moreMoist),
      ...(charring === undefined
        ? []
        : [
            { when: lacksNumber(dry, charring.shares.volatile), says: IN_ORDER },
            tooCoarse(sheet, dry, vessel, charring.shares.volatile, words.moreDry),
          ]),
    ],
  };
};

/** A sample below SAMPLE.MINIMUM, 2 u sqrt((1 - w)^2 + 1 + w^2) / U for a loss w and a wanted uncertainty U at k = 2, g. */
function tooCoarse(
  { weighingUncertainty, details: { wanted } }: RunSheet,
  from: Cell,
  vessel: Cell,
  loss: Expression,
  said: (grams: Expression) => Expression,
): Step {
  const least = retort("SAMPLE.MINIMUM", weighingUncertainty, wanted, loss);
  // Up to two figures, so that the printed mass is enough.
  const roundedUp = fn("ROUNDUP", least, reckon(1, "-", fn("INT", fn("LOG10", least))));
  return { when: is(reckon(from, "-", vessel), "<", least), says: said(roundedUp) };
}
