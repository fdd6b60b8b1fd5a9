import { joined, text, type Expression } from "../../expressions/Expression";
import type { BalanceCheck } from "../../sheet/balanceRows";
import { MARKS, TYPE_GRAMS } from "../checkWords";

const { contradiction, doubt } = MARKS;
const doubted = (sentence: Expression) => joined(doubt, sentence);

/** Words of the checks of a balance check: the name of each, and what it finds: where, what, and what to do. */
export const balanceCheckWords = {
  names: {
    given: "Weight's value given",
    dates: "Dates in order",
    rows: "No round left out",
    slip: "The same weight",
    newest: "Newest as before",
    bias: "Shows its value",
    zero: "Back at zero",
    corners: "Corners",
    typedOver: "Nothing typed over",
  } satisfies Readonly<Record<BalanceCheck, string>>,
  given: {
    value: (at: Expression) => doubted(text`${at} is blank: type what the check weight weighs, from its certificate or as marked.`),
    step: (at: Expression) => doubted(text`${at} is blank: type the balance's display step, such as 0.01.`),
    coarse: (at: Expression) => doubted(text`${at}: known too coarsely to judge this balance by. Take a weight with a smaller ±.`),
  },
  dates: {
    noDate: (at: Expression) => doubted(text`${at} is no date. Type it as 21 Nov 2026; a bare number such as 21.11 is none.`),
    before: (at: Expression, above: Expression) =>
      doubted(text`${at} is before ${above}, the round above it: one of the two is wrong. Put it right.`),
    begun: (at: Expression, begun: Expression) =>
      doubted(text`${at} is before ${begun}, the day this history begins. Put right the one that is wrong.`),
    farOff: (at: Expression) => doubted(text`${at} is more than three years after the date before it: is the year right?`),
    missing: (at: Expression) => doubted(text`${at} is blank beside a reading. Type the day of that round.`),
  },
  slip: {
    units: (one: Expression, other: Expression) =>
      joined(contradiction, text`${one} and ${other} cannot both be grams: kilograms or milligrams in one? ${TYPE_GRAMS}`),
    other: (at: Expression, off: Expression, value: Expression) =>
      joined(contradiction, text`${at} is ${off} g off the weight's value, ${value}: another weight, or a slip. Weigh again, or mend the value.`),
  },
  newest: {
    action: (at: Expression, off: Expression) =>
      doubted(text`${at} is ${off} the mean; by chance 1 in 370 is. Level, clean, weigh again; then have it adjusted.`),
    warning: (at: Expression, off: Expression) => doubted(text`${at} is ${off} the mean before: by chance one round in twenty is. Weigh again.`),
    apart: (at: Expression) =>
      doubted(text`${at} lies apart from all other rounds: a slip? Put it right, or clear it; till then no round can be judged.`),
    climbs: (what: Expression, rounds: Expression) =>
      doubted(text`The readings ${what} g over ${rounds} rounds, which chance rarely makes them do. Clean the weight; have it adjusted.`),
    climb: "climb",
    fall: "fall",
  },
  bias: {
    off: (off: Expression, plusMinus: Expression) =>
      doubted(text`The mean is ${off} the value, more than its ± ${plusMinus} g. Adjust the balance, or check the weight.`),
  },
  zero: {
    off: (at: Expression, grams: Expression) =>
      doubted(text`${at}: ${grams} g left on an empty pan. Clean the pan, keep draughts off, let it warm up, weigh again.`),
  },
  corners: {
    off: (at: Expression, grams: Expression) =>
      doubted(text`${at} is ${grams} the centre. Level the balance, look under the pan; weigh in the middle till mended.`),
    centres: (one: Expression, other: Expression, grams: Expression) =>
      doubted(text`${one} and ${other}, the centre twice, differ by ${grams} g: the zero wandered. Zero it, and weigh all corners again.`),
    otherLoad: (at: Expression, grams: Expression) =>
      doubted(text`${at} is ${grams} the centre, more than corners are: another load, or a slip. Weigh it again.`),
    noCentre: (at: Expression) => doubted(text`${at} is blank: the corners are held against the centre. Weigh it.`),
  },
  offBy: {
    above: (grams: Expression) => text`${grams} g above`,
    below: (grams: Expression) => text`${grams} g below`,
  },
} as const;
