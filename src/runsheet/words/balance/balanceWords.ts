import { text, type Expression } from "../../expressions/Expression";
import type { Performance, Place } from "../../sheet/balanceRows";

/** Words of a balance check but for its checks. */
export const balanceWords = {
  setup: {
    heading: "SET UP",
    labels: { date: "Begun", balance: "Balance, its mark", value: "Check weight, g", known: "Known to ±, g", step: "Balance step, g" },
    date: {
      title: "Begun",
      prompt: "The day this history begins.",
      refusal: "Type the date alone, such as 21 Nov 2026. Who did it goes into the next box.",
    },
    operator: { title: "Done by", prompt: "Who checks the balance.", refusal: "" },
    balance: { title: "Balance", prompt: "Maker's number or the mark on the balance: one sheet, one balance, one check weight.", refusal: "" },
    value: {
      title: "Check weight",
      prompt: "Its value in grams: from its certificate, else what is marked on it. One near what you weigh, and always the same.",
      refusal: "Type the weight's value alone, in grams as a plain number, such as 200. Its mark goes into the next box.",
    },
    mark: { title: "Mark", prompt: "Mark and class of the check weight, and its certificate's number and date.", refusal: "" },
    known: {
      title: "Known to ±",
      prompt:
        "How far its value may be off, g, 95 %: from the certificate; without one the limit of its class (OIML R 111-1). Blank: taken as exact, and the sheet says so.",
      refusal: "Type grams as a number of 0 or more, such as 0.01, or leave the box blank.",
    },
    step: {
      title: "Balance step",
      prompt: "The smallest step the balance shows, in grams, such as 0.01.",
      refusal: "Type the display step in grams as a number, such as 0.01.",
    },
    beside: {
      date: "◄ done by; before it when this history begins",
      balance: "one balance a sheet",
      value: "◄ its mark; hold it with tweezers or gloves",
      known: "95 %; certificate or class limit",
      step: "smallest step of the display",
    },
  },
  rounds: {
    heading: "1 ROUNDS",
    columns: { date: "Date", reading: "Weight, g", zero: "Zero after, g", off: "off value", apart: "off mean", expected: "± 95 %" },
    round: (number: number): string => `Round ${number}`,
    total: "All rounds, g",
    date: {
      title: "Date",
      prompt: "The day of this round: 21 Nov 2026. With a time, should there be several a day: 21 Nov 2026 9:30.",
      refusal: "Type a date such as 21 Nov 2026, with a time if you like: 21 Nov 2026 9:30. A bare number is no date.",
    },
    reading: { title: "Check weight", about: "Zero the balance, put the weight in the middle of the pan, wait until the figure stands." },
    zero: { title: "Zero after", prompt: "What the balance shows once the weight is off again: 0 is a reading, so type it. In grams." },
    says: {
      date: "? type the date",
      slip: "? another weight, or a slip",
      begins: "begins the history",
      beyond: "look again: 1 in 20 is",
      farBeyond: "? look again: 1 in 370 is",
      zero: (grams: Expression) => text`? zero off by ${grams} g`,
      apart: "? apart from all others",
      waits: (row: Expression) => text`judged once row ${row} is`,
      inOrder: "in order",
      count: (count: Expression) => text`${count} rounds`,
    },
  },
  corners: {
    heading: "2 CORNERS",
    columns: { reading: "Load, g", off: "off centre" },
    places: {
      centre: "Centre, g",
      frontLeft: "Front left, g",
      frontRight: "Front right, g",
      backLeft: "Back left, g",
      backRight: "Back right, g",
      centreAgain: "Centre again, g",
    } satisfies Readonly<Record<Place, string>>,
    total: "Largest off centre, g",
    box: {
      title: "Corners",
      about:
        "One load of about a third of what the balance carries, half way from the centre to each corner; zero before each. Once in a while, and after a move.",
    },
    says: { inOrder: "in order", off: "? look again", notJudged: "not judged: centres differ", about: "load: about a third of the most" },
  },
  notes: {
    heading: "3 NOTES",
    label: "Notes",
    box: { title: "Notes", prompt: "Moved, levelled, adjusted, serviced, dropped weight: what changed, and when.", refusal: "" },
  },
  performance: {
    heading: "WHAT IT FINDS (g)",
    columns: { trust: "Trust", value: "Found, g", plusMinus: "± 95 %" },
    labels: {
      bias: "Shows too much by, g",
      scatter: "Scatter s, g",
      corner: "Largest corner, g",
      zero: "Largest zero, g",
      forRuns: "For run sheets, g",
    } satisfies Readonly<Record<Performance, string>>,
    says: {
      explained: "within its ±",
      biased: "? more than its ±",
      ofRounds: (count: Expression) => text`of ${count} rounds`,
      zero: "seen once the weight was off",
      corner: "against the centre",
      forRuns: "type as their Repeatability",
    },
    foot: "± of the first line: t s / √n for n rounds, rounding (0.82 of a step), and the weight's own ±, as root of the sum of squares.",
  },
  workings: {
    history: "mean of all rounds, g; s of all rounds, g; number of rounds",
    next: "row of the next box; change two explain, g; row of the round apart from the others",
    limits: "lower line of the chart, g; middle line of the chart, g; upper line of the chart, g",
  },
  chart: { title: "Check weight", x: "round", y: "check weight, g", readings: "reading", low: "mean - 2 s", mean: "mean", high: "mean + 2 s" },
  curves: "the check weight, round by round, between mean - 2 s and mean + 2 s",
  head: {
    next: (round: Expression, row: Expression) => text`► Next: round ${round}, on its day, row ${row}`,
    cornersToo: (row: Expression) => text`; corners once, row ${row}`,
    full: (row: Expression) => text`► Full: add a round (task pane), or insert a copy of row ${row} below it`,
    nothing: "No answer yet: nothing has been weighed.",
    unusable: "No answer: a box that the ± rests on holds no such number. Put right what the next line names.",
    noValue: (row: Expression) => text`No answer yet: type what the check weight weighs, row ${row}.`,
    one: "One round weighed: no answer yet.",
    two: "Two rounds weighed: no answer yet, since two that read alike can hide their scatter.",
    withheld: "▲ Answer withheld: a reading cannot be of this weight. Put right what the next line names.",
    lookAgain: "? Look again: ",
    inOrder: "In order: ",
    begun: "Begun: ",
    shows: (what: Expression, plusMinus: Expression, count: Expression) =>
      text`the balance shows ${what}, ± ${plusMinus} g (95 %), mean of ${count} rounds.`,
    more: (grams: Expression) => text`${grams} g more than the weight's value`,
    less: (grams: Expression) => text`${grams} g less than the weight's value`,
    itsValue: "the weight's value",
    judgedFrom: (round: number) => ` Judged from round ${round} on.`,
    coversBefore: "The ± will cover the scatter of the rounds, rounding and the weight's own ±: for this load on these days.",
    covers: "The ± covers the scatter of the rounds, rounding and the weight's own ±: for this load on these days, not for others.",
    coversExact: "The ± covers the scatter of the rounds and rounding; the weight is taken as exact. For this load on these days, not for others.",
    runsWait: (round: number) => `For run sheets on this balance a figure is told here from round ${round} on, unless the answer above is marked.`,
    runs: (grams: Expression, step: Expression) =>
      text`For run sheets on this balance: Repeatability ${grams} g (scatter and corners), balance step ${step} g: type both in their settings.`,
  },
} as const;
