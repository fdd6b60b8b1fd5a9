// What the checks of a balance check find, on plain values, finding by finding and at its boundary. The readings are invented.
import { CellProblem } from "../../../src/cells/CellProblem";
import type { BalanceCheck } from "../../../src/runsheet/sheet/balanceRows";
import type { Plain } from "../../../src/explanation/runSheet/Plain";
import { plainBalance, type PlainBalance } from "./plainBalance";

type Fill = (run: PlainBalance) => void;

const NOT_YET = "· not yet";
const FINE = "✓ in order";
const FIVE = [200.01, 200, 200.02, 200.01, 200];

const valued: Fill = (run) => run.type(run.sheet.setup.value, 200);
const known = (off: Plain): Fill => (run) => run.type(run.sheet.setup.known, off); // prettier-ignore
const read = (...readings: Plain[]): Fill => (run) => run.rounds(readings); // prettier-ignore
const zeros = (...readings: Plain[]): Fill => (run) => run.rounds(FIVE.slice(0, readings.length), readings); // prettier-ignore
const dates =
  (...days: Plain[]): Fill =>
  (run) =>
    days.forEach((day, index) => run.type(run.sheet.round(run.sheet.rows.rounds.first + index).date, day));
const begun = (day: number): Fill => (run) => run.type(run.sheet.setup.date, day); // prettier-ignore
const corners = (centre: Plain, backLeft: Plain, again: Plain = null): Fill => (run) => run.corners({ centre, backLeft, centreAgain: again }); // prettier-ignore

const FINDINGS: Readonly<Record<BalanceCheck, readonly (readonly [title: string, fills: readonly Fill[], says: string])[]>> = {
  given: [
    ["nothing", [], NOT_YET],
    ["a value", [valued, read(200)], FINE],
    ["no value", [read(200)], "? B9 is blank: type what the check weight weighs, from its certificate or as marked."],
    [
      "no display step",
      [valued, read(200), (run) => run.type(run.sheet.setup.step, null)],
      "? B11 is blank: type the balance's display step, such as 0.01.",
    ],
    ["a weight known to five steps", [valued, known(0.05), read(200, 200)], FINE],
    [
      "a weight known worse",
      [valued, known(0.06), read(200, 200)],
      "? B10: known too coarsely to judge this balance by. Take a weight with a smaller ±.",
    ],
  ],
  dates: [
    ["nothing", [], NOT_YET],
    ["dates a week apart", [valued, read(...FIVE)], FINE],
    ["two rounds on one day", [valued, read(200, 200), dates(46340, 46340)], FINE],
    [
      "a bare number",
      [valued, read(200, 200), dates(46340, 21.11)],
      "? B14 is no date. Type it as 21 Nov 2026; a bare number such as 21.11 is none.",
    ],
    ["text", [valued, read(200), dates("Saturday")], "? B13 is no date. Type it as 21 Nov 2026; a bare number such as 21.11 is none."],
    [
      "a day before the round above",
      [valued, read(200, 200), dates(46340, 46339)],
      "? B14 is before B13, the round above it: one of the two is wrong. Put it right.",
    ],
    [
      "a year typed wrong in an older round",
      [valued, read(200, 200, 200), dates(46340, 59171, 46354)],
      "? B15 is before B14, the round above it: one of the two is wrong. Put it right.",
    ],
    [
      "a year typed wrong in the newest",
      [valued, read(200, 200), dates(46340, 59171)],
      "? B14 is more than three years after the date before it: is the year right?",
    ],
    [
      "a day before the history begins",
      [valued, read(200), dates(46340), begun(46341)],
      "? B13 is before B7, the day this history begins. Put right the one that is wrong.",
    ],
    [
      "a first round years after it",
      [valued, read(200), dates(46340), begun(44000)],
      "? B13 is more than three years after the date before it: is the year right?",
    ],
    ["no date", [valued, read(200, 200), dates(46340, null)], "? B14 is blank beside a reading. Type the day of that round."],
  ],
  rows: [
    ["nothing", [], NOT_YET],
    ["every round", [valued, read(...FIVE)], FINE],
    ["a round left out", [valued, read(200, null, 200)], "? C14 is empty above a filled row. Type its weight, or clear what stands below it."],
    ["text for a reading", [valued, read(200, "heavy")], "? C14 is text, not a weight. Type grams as a plain number."],
    ["an error for a zero", [valued, zeros(0, new CellProblem("#DIV/0!", ""))], "? D14 shows an error. Type the weight again, in grams."],
  ],
  slip: [
    ["no value to hold it against", [read(200)], NOT_YET],
    ["1 in 100 off", [valued, read(202)], FINE],
    [
      "further off",
      [valued, read(200, 197.99)],
      "▲ C14 is 2.01 g off the weight's value, B9: another weight, or a slip. Weigh again, or mend the value.",
    ],
  ],
  newest: [
    ["five rounds, which begin the history", [valued, read(...FIVE)], NOT_YET],
    ["the sixth in order", [valued, read(...FIVE, 200.02)], FINE],
    // mean 200.008, s 0.0083666: t s sqrt(1 + 1/5) is 0.0254 g at 1 in 20 and 0.0607 g at 1 in 370
    ["beyond 2 s, as one in seven is by chance", [valued, read(...FIVE, 200.03)], FINE],
    [
      "as one in twenty is",
      [valued, read(...FIVE, 199.98)],
      "? C18 is 0.028 g below the mean before: by chance one round in twenty is. Weigh again.",
    ],
    [
      "as one in 370 is",
      [valued, read(...FIVE, 199.94)],
      "? C18 is 0.068 g below the mean; by chance 1 in 370 is. Level, clean, weigh again; then have it adjusted.",
    ],
    ["back in order after that", [valued, read(...FIVE, 199.98, 200.01)], FINE],
    // Eight rounds, mean 200.1425, s 0.3462: G = 0.8575 / 0.3462 = 2.477; Grubbs' critical value for 8 at 1 %, two-sided, is 2.274 (tables)
    [
      "a slip among the rounds, which would hide itself and all that follow",
      [valued, read(200, 200.01, 200, 201, 199.99, 200.01, 200, 200.09)],
      "? C16 lies apart from all other rounds: a slip? Put it right, or clear it; till then no round can be judged.",
    ],
    ["the same in the first round", [valued, read(201, 200.01, 200, 200, 199.99, 200.01)], "? C13 lies apart from all other rounds: a slip? Put it right, or clear it; till then no round can be judged."], // prettier-ignore
    ["all alike but two steps", [valued, read(200, 200, 200.02, 200, 200, 200, 200)], FINE],
    [
      "readings that climb by a step a round",
      [valued, read(199.98, 199.99, 200, 200.01, 200.02, 200.03, 200.04, 200.05)],
      "? The readings climb 0.070 g over 8 rounds, which chance rarely makes them do. Clean the weight; have it adjusted.",
    ],
    // Slope -0.19 / 17.5 = -0.010857 g a round, over five; r = -0.19 / sqrt(17.5 * 0.0023333) = -0.940, beyond 0.917 for 6 rounds at 1 % (tables)
    ["readings that fall", [valued, read(200.05, 200.02, 200.03, 200.01, 200, 199.99)], "? The readings fall 0.054 g over 6 rounds, which chance rarely makes them do. Clean the weight; have it adjusted."], // prettier-ignore
    ["readings that wander", [valued, read(200, 200.02, 200.01, 200.03, 200.01, 200.02, 200, 200.02)], FINE],
  ],
  bias: [
    ["one round", [valued, read(200)], NOT_YET],
    ["a mean that its ± explains", [valued, known(0.01), read(...FIVE)], FINE],
    // 200.03 in each of five: s 0; rounding 0.0081650, weight 0.01: ± 0.012910
    [
      "a mean beyond its ±",
      [valued, known(0.01), read(200.03, 200.03, 200.03, 200.03, 200.03)],
      "? The mean is 0.030 g above the value, more than its ± 0.013 g. Adjust the balance, or check the weight.",
    ],
  ],
  zero: [
    ["no zeros", [valued, read(200)], NOT_YET],
    ["two steps, which two readings explain", [valued, zeros(0, 0.02)], FINE],
    ["three steps", [valued, zeros(0, -0.03)], "? D14: -0.03 g left on an empty pan. Clean the pan, keep draughts off, let it warm up, weigh again."],
    ["an older one, zero again since", [valued, zeros(0.03, 0)], FINE],
  ],
  corners: [
    ["nothing", [], NOT_YET],
    ["two steps", [valued, corners(70, 70.02)], FINE],
    [
      "three steps",
      [valued, corners(70, 69.97)],
      "? C28 is 0.03 g below the centre. Level the balance, look under the pan; weigh in the middle till mended.",
    ],
    [
      "the centre otherwise after them",
      [valued, corners(70, 70.02, 70.09)],
      "? C25 and C30, the centre twice, differ by 0.09 g: the zero wandered. Zero it, and weigh all corners again.",
    ],
    ["another load", [valued, corners(70, 50)], "? C28 is 20.00 g below the centre, more than corners are: another load, or a slip. Weigh it again."],
    ["no centre", [corners(null, 70)], "? C25 is blank: the corners are held against the centre. Weigh it."],
    ["text", [corners(70, "off")], "? C28 is text, not a weight. Type grams as a plain number."],
  ],
  typedOver: [
    ["nothing", [], FINE],
    [
      "a difference typed over",
      [(run) => run.type(run.sheet.round(13).off, 0)],
      "? F13 was typed over: its formula is gone. Undo, or press Mend formulas in the task pane.",
    ],
    [
      "a finding typed over",
      [(run) => run.type(run.sheet.finding("scatter").value, 0)],
      "? C42 was typed over: its formula is gone. Undo, or press Mend formulas in the task pane.",
    ],
  ],
};

describe.each(Object.entries(FINDINGS))("The check %s", (name, rows) => {
  it.each(rows.map((row) => [row[0], row] as const))("on %s", (_title, [, fills, says]) => {
    const run = plainBalance();
    fills.forEach((fill) => fill(run));
    const isQuiet = says === NOT_YET || says === FINE;
    expect(run.check(name as BalanceCheck)).toEqual(isQuiet ? [says, ""] : [says.startsWith("▲") ? "▲ wrong" : "? doubt", says]);
  });
});
