import { text, type Expression } from "../expressions/Expression";

/** Words of the head of a sheet: the next step, the answer, the checks, and what the answer stands on. */
export const headWords = {
  next: {
    vessels: (row: Expression) => text`► Next: weigh the empty vessels, row ${row}`,
    vesselMissing: (name: Expression) => text`► First: type the weight of the empty vessel, ${name}`,
    round: (round: Expression, at: Expression, row: Expression) => text`► Next: round ${round}${at}, row ${row}`,
    leftOut: (row: Expression) => text`► First: fill row ${row}, left out above a filled one, or clear what stands below`,
    finishRound: (round: Expression, row: Expression) => text`► Next: finish round ${round}, row ${row}`,
    about: (time: Expression) => text` at about ${time}`,
    minute: (minute: Expression) => text` at about minute ${minute}`,
    fire: (what: string, firing: Expression, fireRow: Expression, weighRow: Expression) =>
      text`► Next: ${what} ${firing}, row ${fireRow}; then weigh cold, row ${weighRow}`,
    leftBehind: (sample: Expression) => text`► Next: weigh sample ${sample} too; if it is lost, clear all its boxes`,
    charring: "firing",
    ashing: "ashing",
    heating: "heating",
    roundsFull: (row: Expression) => text`► Full, not dry: add a round (task pane), or insert a copy of row ${row} below it`,
    roundsAtLimit: "► Full, not dry: a sheet holds no more rounds; go on on a new run sheet",
    // By hand a firing takes a row in each of two tables, and what is read from the first would miss it.
    firingsFull: "► Not finished: add a firing (task pane, Run sheet tab)",
    firingsAtLimit: "► Not finished: a sheet holds no more firings; go on on a new run sheet",
    stage: "stage",
    receivers: (row: Expression) => text`► Next: weigh tube, trap, receivers empty, row ${row} on`,
    caught: (row: Expression) => text`► Next: weigh what was caught, row ${row} on`,
    mend: "► First: put right what the third line names",
    /** The same beside the sheet, where no third line stands. */
    mendThis: (finding: string) => `► First put right: ${finding}`,
    vesselAgain: (row: Expression) => text`► Next: weigh the empty vessels again, row ${row}`,
    absent: "► What is next is not judged here",
    complete: "Run complete: all weighings are in",
    // Char that is ash cannot be fired again.
    charUnproven: 'All weighed; charring was not shown finished, and the char is ash: "At least" stays',
  },
  answer: {
    nothing: "No answer yet: nothing has been weighed.",
    absent: "No answer: whether the samples are dry or finished cannot be judged here.",
    oneRound: "Drying. One round weighed: no answer yet.",
    roundMissing: "Drying. A sample has no weight in one of the rounds: no answer yet.",
    withheld: "▲ Answer withheld: two weights contradict each other. Put right what the next line names.",
    rearranged: "▲ Answer withheld: a row or a column of this sheet was moved or taken out, or a column put in. Undo as the next line says.",
    typedOver: "▲ Answer withheld: a cell that it is calculated from was typed over. Put right what the next line names.",
    drying: (percent: Expression) => text`Drying. Lost so far ${percent} % of the moist weight, and not shown dry: no answer yet.`,
    dryingTogether: (percent: Expression) =>
      text`Drying. Lost so far ${percent} % of the moist weight of all together, and not shown dry: no answer yet.`,
    fromTo: (least: Expression, most: Expression) => text`${least} to ${most}`,
    dry: (percent: Expression) => text`Dry. ${percent} % of the moist weight was water. Not charred yet.`,
    charredMoist: "Charred before it was shown dry: no answer on the dry sample.",
    atLeast: (percent: Expression, material: Expression) =>
      text`At least ${percent} % of the dry ${material} has left as vapour so far; charring is not shown finished.`,
    vapour: (share: Expression, stayed: Expression, samples: Expression, material: Expression) =>
      text`${share} (95 %) of the dry ${material} left as vapour; ${stayed} stayed. ${samples}`,
    water: (share: Expression, stayed: Expression, samples: Expression, material: Expression) =>
      text`${share} (95 %) of the moist ${material} was water; ${stayed} stayed dry. ${samples}`,
    driedNotHeated: (percent: Expression) => text`Dry. ${percent} % of the moist weight was water. Not heated further yet.`,
    heatedMoist: "Heated before it was shown dry: no answer on the dry sample.",
    fedMoist: "Fed moist. Not charred yet.",
    soFar: (percent: Expression, material: Expression) => text`So far ${percent} % of the dry ${material} has left; more stages are to come.`,
    stages: (share: Expression, stayed: Expression, stages: Expression, samples: Expression, material: Expression) =>
      text`${share} (95 %) of the dry ${material} left in ${stages} stages; ${stayed} stayed. ${samples}`,
    lostOfEach: "Lost in all, of each when dry",
    wasLost: "of the dry weight left in all",
    oneSample: "1 sample.",
    meanOf: (count: Expression) => text`Mean of ${count} samples.`,
    meanOfSome: (count: Expression, inUse: Expression) => text` Of ${count} of ${inUse} samples only.`,
    someOf: (done: Expression, inUse: Expression) => text`${done} of ${inUse} samples have a result so far: no common answer yet.`,
    noUncertainty: (step: Expression, repeatability: Expression) =>
      text`No answer: nothing has a ± without the balance's step in ${step}, and its repeatability in ${repeatability} as a number or left blank.`,
    inDoubt: "? In doubt: ",
    doubtedCounted: " All counted.",
    disagree: (shares: Expression, what: string) => text`? Samples disagree: ${shares} ${what}. No common answer.`,
    unsaid: (at: Expression, what: string, shares: Expression) =>
      text`? Repeats or different? Say it in ${at}. Till then no common answer. ${what}: ${shares}.`,
    different: (shares: Expression, what: string, plusMinus: Expression) => text`${what}: ${shares}; weighing ± ${plusMinus} % (95 %) each.`,
    leftOfEach: "Left as vapour, of each when dry",
    waterOfEach: "Water, of each when moist",
    leftAsVapour: "of the dry weight left as vapour",
    wasWater: "of the moist weight was water",
    sample: "sample",
    /** In place of what a name is too long for. */
    leftOut: "…",
  },
  checks: {
    // Stands only on a sheet that was shared as it is: values have no formula that could say it, and plain cells judge by themselves.
    absent: "▲ Retort is not here: losses follow new weights, verdicts and shares do not. Install Retort, or ask for the sheet in plain cells.",
    all: (count: number) => `✓ All ${count} checks are in order.`,
    some: (inOrder: Expression, waiting: Expression) => text`✓ Checks: ${inOrder} in order, ${waiting} with nothing to look at yet.`,
    failed: (mark: Expression, failed: Expression, count: number, finding: Expression) => text`${mark} ${failed} of ${count} checks: ${finding}`,
  },
  covers: {
    before: (isSeveral: boolean) =>
      `The ± will cover the weighings${isSeveral ? " and the scatter between samples" : ""}; never how well the samples stand for the whole heap.`,
    beforeEach: "The ± will cover the weighings of each sample; never how well they stand for their heaps.",
    alone: (what: Expression, rounding: Expression, others: Expression) =>
      text`The ± covers ${what}${rounding}, not the scatter of repeats, how the heap was sampled, ${others}.`,
    each: (what: Expression, rounding: Expression, others: Expression) =>
      text`The ± covers ${what} of each sample${rounding}, not how each heap was sampled, ${others}.`,
    scatter: (what: Expression, count: Expression, times: Expression, others: Expression) =>
      text`The ± covers ${what} scatter of ${count} samples${times}, not how the heap was sampled, ${others}.`,
    /** What it covers, and what it does where something had yet to dry off when a sample was taken for dry. */
    what: {
      alone: { weighed: "the weighings alone", drying: "weighing and drying to come" },
      each: { weighed: "the weighings", drying: "weighing and drying to come" },
      scatter: { weighed: "weighing and", drying: "weighing, drying and" },
    },
    /** What else it does not cover, of a run that chars, dries only, or heats in stages. */
    others: { charring: "air, tar or ", drying: "what else left or ", stages: "spitting, damp or " },
    toCome: { weighed: "loss yet to come", drying: "more loss" },
    times: (times: Expression) => text` (range ${times} times a weighing ±)`,
    roundingOnly: " (rounding only)",
  },
  ledger: {
    waits: "The products wait for the answer above.",
    invite: (first: Expression, last: Expression) => text`The products are told here once what was caught is weighed (rows ${first} to ${last}).`,
    different: "The products of each material stand in the results; different materials have no common ledger.",
    told: (feedWater: Expression, char: Expression, liquids: Expression, water: Expression, gas: Expression) =>
      text`Of 100 g dry${feedWater}: ${char} g char, ${liquids} g liquids${water}, ${gas}.`,
    feedWater: (grams: Expression) => text` and ${grams} g water fed`,
    water: (grams: Expression) => text` (${grams} g of them water formed)`,
    waterOfMoist: (grams: Expression) => text` (${grams} g water formed)`,
    byDifference: (grams: Expression) => text`${grams} g gas by difference, every leak with it`,
    mixed: "gas measured in some and by difference in others: see the results",
    measured: (grams: Expression, unaccounted: Expression, plusMinus: Expression) =>
      text`${grams} g gas measured; ${unaccounted} ± ${plusMinus} g unaccounted (95 %)`,
  },
  stages: {
    waits: "What each stage lost waits for the answer above.",
    none: "What each stage lost is told here once one is weighed.",
    most: (number: Expression, name: Expression, percent: Expression) =>
      text`Most left in stage ${number} (${name}): ${percent} % of the dry sample.`,
  },
  openly: {
    ofDrying: "Water is what left on drying; anything else that left with it counts as water.",
    waits: "The comparison with open burning waits for the answer above.",
    notWorkedOut:
      "Open burning is not worked out: carbon or hydrogen is missing, or the formula or Retort cannot be read here; see the foot of OPEN FIRE.",
    invite: (first: Expression, last: Expression) =>
      text`Open burning of the same: give the analysis below (rows ${first} to ${last}) and it is told here.`,
    inDoubt: (check: Expression) => text`The comparison with open burning waits: see the check of the analysis, ${check}.`,
    closed: (grams: Expression) => text`Of 100 g dry, closed: ${grams} g left as vapour. `,
    open: (oxygen: Expression, oxygenOff: Expression, gases: Expression, gasesOff: Expression) =>
      text`Burnt openly: ${oxygen} ± ${oxygenOff} g oxygen in, ${gases} ± ${gasesOff} g gases out (95 %).`,
    openExact: (oxygen: Expression, gases: Expression) =>
      text`Burnt openly: ${oxygen} g oxygen in, ${gases} g gases out, by the formula as it stands.`,
    soFar: (grams: Expression) => text`Of 100 g dry, closed: at least ${grams} g left as vapour so far. `,
  },
} as const;
