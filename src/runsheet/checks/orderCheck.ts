import { lacksNumber, noNumber } from "../expressions/choices";
import { is } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { Ashing, Charring, SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import { IN_ORDER, type Check, type Step } from "./Check";

const words = checkWords.order;

/** Whether the weighings fall from moist to dry, char, ash and vessel, as far as they are made. */
export const orderCheck = (_: RunSheet, sample: SampleCells): Check => {
  const { vessel, moist, dry, charring, ashing } = sample;
  return {
    silentWhile: lacksNumber(vessel, moist, dry),
    steps: [
      { when: is(dry, ">", moist), says: words.dryAboveMoist },
      { when: is(dry, "<=", vessel), says: words.dryNotAboveVessel },
      ...(charring === undefined ? [] : ofChar(sample, charring)),
      ...(charring === undefined || ashing === undefined ? [] : ofAsh(sample, charring, ashing)),
    ],
  };
};

const ofChar = ({ vessel, dry }: SampleCells, { char }: Charring): Step[] => [
  { when: noNumber(char), says: IN_ORDER },
  { when: is(char, ">", dry), says: words.charAboveDry },
  { when: is(char, "<", vessel), says: words.charBelowVessel },
];

const ofAsh = ({ vessel }: SampleCells, { char }: Charring, { ash }: Ashing): Step[] => [
  { when: noNumber(ash), says: IN_ORDER },
  { when: is(ash, ">", char), says: words.ashAboveChar },
  { when: is(ash, "<", vessel), says: words.ashBelowVessel },
];
