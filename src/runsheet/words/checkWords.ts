import { CLOCK_SHAPE } from "../../problems/runsheet/clockProblems";
import { joined, text, type Expression } from "../expressions/Expression";

/**
 * The two grades of bad: what cannot be, and what may be. Mark, word and weight carry them; colour never alone. And what was found in order as
 * far as it was seen, which is no verdict yet.
 */
export const MARKS = { contradiction: "▲ ", doubt: "? ", unseen: "· " } as const;

const { contradiction, doubt, unseen } = MARKS;
const doubted = (sentence: Expression) => joined(doubt, sentence);
const MEND = "Undo, or press Mend formulas in the task pane.";
/** What a finding about kilograms or milligrams ends with, and no other. */
export const TYPE_GRAMS = "Type grams.";
/** What a finding that waits for the other vessels ends with, and no other. */
export const CLEAR_OTHERS = "Weigh it, or clear the others.";
const ofSample = (sample: number, sentence: Expression) => joined(`Sample ${sample}: `, sentence);

/** Words of the checks: the name of each, and what it finds: where, what, and what to do. */
export const checkWords = {
  heading: "CHECKS",
  columns: { verdict: "Verdict", finding: "What was found, where, and what to do" },
  verdicts: { inOrder: "✓ in order", notYet: "· not yet", doubt: "? doubt", contradiction: "▲ wrong", notJudged: "· not judged" },
  numbered: (number: number, name: string): string => `${number}  ${name}`,
  names: {
    vessel: "Vessel and sample",
    times: "Times in order",
    rows: "No row left out",
    gain: "No gain on heating",
    order: "Order of weights",
    dryness: "Shown dry",
    opened: "Opened when cold",
    charDone: "Charring finished",
    ashDone: "Ashing finished",
    heatDone: "Heating finished",
    theory: "Loss beside theory",
    rising: "Temperatures rise",
    stageHeld: "Held long enough",
    air: "No air got in",
    caught: "Caught, all weighed",
    ledger: "Products add up",
    vesselAgain: "Vessel at the end",
    agree: "Samples agree",
    fine: "Balance fine enough",
    range: "Usual range",
    material: "Temperatures",
    analysis: "Analysis",
    zeros: "Pan zeros",
    warmth: "Cold when weighed",
    typedOver: "Nothing typed over",
  },
  /** Where a check cannot be worked out because a cell it reads shows an error. */
  notJudged: "Not judged: Retort is not here. The third line of the sheet says what to do.",
  unreadable: doubted("A cell that this check reads shows an error: put that right first."),
  /** A box that holds no number that can be, and what to type. */
  wanted: {
    least: { any: "no number", "0": "no number of 0 or more", "above 0": "no number above 0" },
    noNumber: (at: Expression, none: string, remedy: string) => doubted(text`${at} holds ${none}. ${remedy}`),
    truth: (at: Expression) =>
      joined(contradiction, text`${at} holds TRUE or FALSE, or a formula for 1 or 0, which look alike here. Type the number itself.`),
    fire: "Type degrees as a plain number, such as 480.",
    held: "Type minutes as a plain number, such as 30.",
    degrees: "Type degrees as a plain number, such as 21.",
    weight: "Type grams as a plain number.",
    vessel: "Type grams as a plain number, or the word tared.",
    zero: "Type what the empty pan shows, in grams, such as 0 or -0.01.",
    gramsOrPercent: "Type it as a plain number, in grams or percent.",
    analysis: "Type percent of the dry sample as a plain number, such as 48.6.",
    date: "Type the date alone, such as 21 Nov 2026.",
    minutes: "Type minutes since round 1, such as 30.",
  },
  vessel: {
    units: (sample: number, sentence: Expression) => joined(contradiction, ofSample(sample, sentence)),
    kilograms: (at: Expression, sample: number, moist: Expression) =>
      doubted(ofSample(sample, text`${at} is under a thousandth of ${moist}: kilograms typed, or milligrams there? ${TYPE_GRAMS}`)),
    finer: (at: Expression, step: Expression) =>
      doubted(text`${at} is finer than the balance's step, ${step}: kilograms typed? Type grams, or mend the step.`),
    coarser: (at: Expression, step: Expression) =>
      doubted(text`${at} is too much for a balance of the step in ${step}: milligrams typed? Type grams, or mend the step.`),
    notWeighed: (sample: number, vessel: Expression) =>
      doubted(ofSample(sample, text`empty vessel not weighed, ${vessel}. Weigh it, or type tared.`)),
    notAbove: (sample: number, moist: Expression, vessel: Expression) =>
      joined(contradiction, ofSample(sample, text`${moist} is not above the empty vessel, ${vessel}. Typed without it, or swapped? Weigh again.`)),
    barelyAbove: (sample: number, moist: Expression, vessel: Expression) =>
      doubted(ofSample(sample, text`${moist} is barely above the empty vessel, ${vessel}. Another vessel, or swapped? Weigh again.`)),
  },
  times: {
    noTime: (at: Expression) => doubted(text`${at} is no clock time. Type ${CLOCK_SHAPE}: 9:30, not 9.30 or 900.`),
    firedBefore: (row: Expression) =>
      doubted(text`Row ${row}: lit before the work above was over. Put the times right; on a later day, add the date.`),
    litBefore: (row: Expression) =>
      doubted(text`Row ${row}: lit before the firing above was over. Put the times right; on a later day, add the date.`),
    heldLonger: (row: Expression) => doubted(text`Row ${row}: held longer than from lit to opened. Put one of the three right, or type dates too.`),
    dayAlone: (row: Expression) => doubted(text`Row ${row}: a date without a time, such as 9-10 or 9/30 becomes. Type the time with a colon: 9:30.`),
    wholeDay: (at: Expression) => doubted(text`${at} is a date without a time, such as 9-10 or 9/30 becomes. Type the time with a colon: 9:30.`),
    tooSoon: (at: Expression, minutes: Expression, planned: Expression) =>
      doubted(text`${at} comes ${minutes} min after the round before; planned ${planned} min. Too soon to tell: if right, weigh once more later.`),
    firstMinute: (at: Expression) => doubted(text`${at} is round 1, and not 0. Type 0 there, and below it minutes since round 1, no clock times.`),
    daysAfter: (at: Expression, hours: Expression, planned: Expression) =>
      doubted(text`${at} comes ${hours} h after the round before, planned ${planned} min. Check their dates; if right, weigh once more.`),
    firstMissing: (at: Expression) => doubted(text`${at} is blank: without the time of round 1 no time counts. Type it: 9:30.`),
    dateMissing: (at: Expression, date: Expression, first: Expression) =>
      doubted(text`${at} has a date and round 1 has none. Type the date of round 1 in ${date}, or in ${first} too.`),
    notAfter: (at: Expression) =>
      doubted(text`${at} is not after the round before. Put it right; a day or more later, type the date too: 21 Nov 9:30.`),
    decimal: (at: Expression, reads: Expression, typed: Expression, meant: Expression) =>
      doubted(text`${at} reads ${reads}. If ${typed} was typed, type ${meant} with a colon.`),
    /** In place of a time where none is meant for sure. */
    theTime: "the time",
    farOff: (at: Expression, hours: Expression, minutes: Expression, planned: Expression) =>
      doubted(text`${at} comes ${hours} h ${minutes} min after the round before; planned ${planned} min. Look at both; if right, type its date too.`),
    farInMinutes: (at: Expression, minutes: Expression, planned: Expression) =>
      doubted(text`${at} comes ${minutes} min after the round before; planned ${planned} min. Seconds typed? If right, weigh once more.`),
    /** The day of the run, in its box and in round 1. */
    dateOld: (at: Expression) => doubted(text`${at} lies before the year 2000: a slip in the year? Type the day of the run, such as 21 Nov 2026.`),
    dateOther: (date: Expression, first: Expression) =>
      doubted(text`${date} and ${first} give two days for round 1, and that in ${first} counts. Put the wrong one right.`),
    longAfter: (at: Expression) => doubted(text`${at} lies more than a month after the round before. Look at its date.`),
    minutesAsText: (at: Expression) => doubted(text`${at} is no number. Type minutes since round 1, such as 30.`),
    clockForMinutes: (at: Expression) => doubted(text`${at} is a clock time, and this sheet counts minutes. Type minutes since round 1, such as 30.`),
    minutesNotAfter: (at: Expression) => doubted(text`${at} is not after the round before. Type minutes since round 1.`),
  },
  rows: {
    error: (at: Expression) => doubted(text`${at} shows an error. Type the weight again, in grams.`),
    isText: (at: Expression) => doubted(text`${at} is text, not a weight. Type grams as a plain number.`),
    stageWithoutLine: (row: Expression) =>
      doubted(text`Row ${row}: a stage put in by hand has no line in the results. Undo it, and add the stage in the task pane.`),
    gap: (at: Expression) => doubted(text`${at} is empty above a filled row. Type its weight, or clear what stands below it.`),
    minute: (at: Expression) => doubted(text`${at} is blank beside a weight. Type the minutes of that round since round 1.`),
    clock: (at: Expression) => doubted(text`${at} is blank beside a weight. Type the time of that round: 9:30.`),
  },
  gain: {
    crosswise: (one: Expression, other: Expression) =>
      doubted(text`${one} and ${other} look crosswise: exchanged, they follow the row above. Swapped here or there? Weigh again.`),
    crosswiseUnseen: joined(unseen, "Not told whether samples stand crosswise: beside text, or a row put in by hand till the pane adds a round."),
    stage: (at: Expression) => doubted(text`${at} is heavier than the stage before: air or damp taken up, or a slip in either. Weigh again, cold.`),
    heavier: (at: Expression) =>
      doubted(text`${at} is heavier than the weight before: damp taken up, a draught, or a slip in either. Weigh again, cold.`),
  },
  order: {
    of: (sample: number, finding: Expression, others: readonly Expression[]) => joined(contradiction, ofSample(sample, finding), ...others),
    units: (one: Expression, other: Expression) =>
      text`${one} and ${other} cannot both be grams. Kilograms or milligrams in one, or swapped? ${TYPE_GRAMS}`,
    belowZero: (at: Expression) => text`${at} is below 0, which no weight is. A dash typed before it? ${TYPE_GRAMS}`,
    alsoSample: (sample: number): string => ` Also sample ${sample}.`,
    belowVessel: (at: Expression, vessel: Expression) => text`${at} is not above the empty vessel, ${vessel}. Weigh both again, cold.`,
    dryAboveMoist: (dry: Expression, moist: Expression) => text`dry, ${dry}, is above moist, ${moist}. Swapped? Weigh again, cold.`,
    charAboveDry: (char: Expression, dry: Expression) => text`char, ${char}, is above the dry sample, ${dry}. Swapped? Weigh again, cold.`,
    vesselFar: (again: Expression, vessel: Expression) =>
      text`the vessel at the end, ${again}, is far from that before, ${vessel}. Another vessel, or a slip? Weigh it again.`,
    vesselExplains: (again: Expression, vessel: Expression) =>
      text`with the vessel at the end, ${again}, what stayed cannot be; before it was ${vessel}. Weigh the vessel again.`,
    leftFarAbove: (left: Expression, times: number, before: Expression) =>
      text`what is left, ${left}, is over ${times} times what was heated, ${before}: no such gain can be. Weigh both again, cold.`,
    charBelowVessel: (char: Expression, vessel: Expression) => text`char, ${char}, is below the empty vessel, ${vessel}. Weigh both again, cold.`,
    ashAboveChar: (ash: Expression, char: Expression) => text`ash, ${ash}, is above char, ${char}. Swapped? Weigh both again, cold.`,
    leftBelowVessel: (left: Expression, vessel: Expression) =>
      text`what is left, ${left}, is below the empty vessel, ${vessel}. Weigh both again, cold.`,
    receiverLighter: (after: Expression, before: Expression) =>
      text`receiver lighter with its liquid, ${after}, than empty, ${before}. Swapped? Weigh again.`,
    waterAboveAll: (at: Expression) => text`${at} is above 100 %: more water than liquids cannot be. Type percent, such as 70, or clear it.`,
    fedAllWater: (at: Expression) => text`${at} is 100 % or more: nothing dry would be left. Type percent of the moist weight, such as 12.`,
    productsAboveFed: (found: Expression, fed: Expression) =>
      text`products, ${found} g, exceed the ${fed} g fed by more than the weighing ±. Weigh all again.`,
    ashBelowVessel: (ash: Expression, vessel: Expression) => text`ash, ${ash}, is below the empty vessel, ${vessel}. Weigh both again, cold.`,
  },
  dryness: {
    charredBefore: (sample: number, row: Expression, last: Expression) =>
      doubted(ofSample(sample, text`charred, row ${row}, before it was shown dry. A slip in ${last} or above? If not, no share follows.`)),
    unjudged: (sample: Expression, at: Expression) =>
      doubted(text`Sample ${sample}: cannot be judged: a weight, time or setting of it cannot be used. More: This cell, on ${at}.`),
    unknownCriterion: (at: Expression) => doubted(text`${at} is none of the criteria. Choose one from its list, such as readability.`),
    settings: (first: Expression, last: Expression) =>
      doubted(text`A setting is blank, rows ${first} to ${last}: step, rounds apart, criterion or limit. Type it.`),
    tooWide: (limit: Expression) =>
      doubted(text`${limit} lets pass more than 0.2 % of the moist sample, or than is wanted; no ± holds it. Take 2 display steps.`),
    coarse: (grams: Expression, step: Expression) =>
      doubted(text`All weights are whole ${grams} g; ${step} says the balance shows more. Set the true step, or type every figure.`),
    /** Limits that no weighing is judged by. */
    refused: {
      /** In steps of the balance or in grams. */
      mass: (limit: Expression) => doubted(text`${limit} lets pass over 4 % of a sample, so none is judged. Take 2 display steps, or more sample.`),
      share: (limit: Expression) =>
        doubted(text`${limit} is over 4 %, so no sample is judged. Percent typed? Type 0.1 % as 0.001, or choose readability.`),
      steps: (limit: Expression) =>
        doubted(text`${limit} is less than 2 display steps, which rounding alone makes up: no sample is judged. Type 2 or more.`),
    },
    tooCoarse: (limit: Expression) =>
      doubted(text`The balance is too coarse for the limit in ${limit}. Allow two display steps, or take more sample.`),
  },
  heatedBefore: (sample: number, row: Expression, last: Expression) =>
    doubted(ofSample(sample, text`heated, row ${row}, before it was shown dry. A slip in ${last} or above? If not, no share follows.`)),
  opened: {
    unseen: (row: Expression) =>
      joined(unseen, text`Not told of row ${row}: without the times of quiet and opened nobody knows whether it was cold. Type them.`),
    noSetting: (at: Expression) => joined(unseen, text`${at} is blank: type how many minutes closed are enough, as 60.`),
    stageTooEarly: (at: Expression, minutes: Expression, least: Expression) =>
      doubted(text`${at}: opened ${minutes} min after the vent fell quiet, sooner than ${least} min. Warm, it reads light, and air gets in.`),
    oneUndated: (row: Expression) =>
      doubted(text`Row ${row}: of quiet and opened one has a date. Type both dates: the time closed may be hours or days.`),
    notInOrder: (row: Expression) =>
      doubted(text`Row ${row}: lit, quiet and opened are not in order. Put the times right; days later, type dates too.`),
    tooEarly: (at: Expression, minutes: Expression, least: Expression) =>
      doubted(text`${at}: opened ${minutes} min after the vent fell quiet, sooner than ${least} min. Char may have burnt: yield reads low.`),
  },
  fired: {
    unfinished: (what: "Charring" | "Ashing" | "Heating") =>
      doubted(`${what} is not shown finished: fire again and weigh, till two weighings agree within the limit.`),
    wentOn: (sample: number, what: "charring" | "ashing" | "heating", last: Expression) =>
      doubted(ofSample(sample, text`${what} not shown finished. A slip in ${last} or before? If not, what stayed may read high.`)),
    colder: (at: Expression, hottest: Expression, what: "charring" | "ashing" | "heating") =>
      doubted(text`${at} is colder than ${hottest}: no proof that ${what} is finished. Fire again as hot, and weigh.`),
    short: (at: Expression, what: "charring" | "ashing" | "heating") =>
      doubted(text`${at}: held not at all, or far shorter than before: no proof that ${what} is finished. Fire again as long.`),
    unjudged: (what: "Charring" | "Ashing" | "Heating", reason: Expression) => doubted(text`${what} cannot be judged: ${reason}.`),
  },
  theory: {
    notHere: joined(unseen, "Formulas are not read here, which takes Retort: theory is not judged. Weights and shares are."),
    residueMissing: (at: Expression) => doubted(text`${at} is blank: type what stays, and theory can be told.`),
    unread: (at: Expression, working: Expression) =>
      doubted(text`The formula in ${at} cannot be read: look at capitals, brackets, digits, commas. More: This cell, on ${working}.`),
    notFrom: (at: Expression, formula: Expression, working: Expression) =>
      doubted(text`${at}: swapped with ${formula}? Or unread, with more than ${formula} has, or a metal left out. More: This cell, on ${working}.`),
    nothingLeaves: (formula: Expression, at: Expression) => doubted(text`By ${formula} and ${at} nothing would leave. Put the formulas right.`),
    above: (sample: number, percent: Expression, theory: Expression) =>
      joined(
        contradiction,
        ofSample(sample, text`lost ${percent} %, theory ${theory} %. A slip, overheated, a second step, spat, damp, or not this salt?`),
      ),
    below: (sample: number, percent: Expression, theory: Expression) =>
      doubted(ofSample(sample, text`lost ${percent} %, theory ${theory} %: not all changed, or impure; weights cannot tell. Heat on?`)),
    aboveByVessel: (sample: number, percent: Expression, theory: Expression, again: Expression, vessel: Expression) =>
      joined(
        contradiction,
        ofSample(sample, text`lost ${percent} %, theory ${theory} %; and the vessel changed, ${vessel} to ${again}. Weigh it again first.`),
      ),
  },
  air: {
    gained: (at: Expression) => doubted(text`${at} is heavier than the weight before: air or damp got in, or a slip. Weigh or fire again, closed.`),
    whiteEdges: (row: Expression) => doubted(text`White edges seen, row ${row} or near it: air got in and char burnt. The yield reads low.`),
    low: (percent: Expression) =>
      doubted(text`Char of ${percent} % is less than untreated plants leave: air got in, or a slip. Look for white edges.`),
  },
  rising: {
    falls: (at: Expression) =>
      doubted(text`${at} is set below the stage before: what left earlier is counted there. Heat upwards, or mend the figure.`),
    unknown: (row: Expression) => doubted(text`Row ${row}: weighed without a temperature, set or measured. Type one.`),
  },
  farFromSet: (at: Expression) => doubted(text`${at} is far from what was set. Measured elsewhere, or a slip? Look at both.`),
  stageHeld: {
    losing: (row: Expression) =>
      doubted(text`Row ${row}: held again at the same temperature it still lost. Hold it there until nothing more leaves.`),
    colder: (row: Expression) =>
      doubted(text`Row ${row}: held again, but colder at the sample: no proof that nothing more leaves. Hold it again as hot.`),
    short: (row: Expression) =>
      doubted(text`Row ${row}: held again not at all, or far shorter: no proof that nothing more leaves. Hold it again as long.`),
  },
  caught: {
    notAfter: (at: Expression) => doubted(text`${at} was weighed empty and not again: the liquids wait. Weigh it, or clear it.`),
    notBefore: (at: Expression) => doubted(text`${at} was not weighed before the fire: its gain is not known. Clear its weight, note it below.`),
    isText: (at: Expression) => doubted(text`${at} is text, not a number. Type it as a plain number, in grams or percent.`),
    lighter: (at: Expression) => doubted(text`${at} is lighter than before the fire. Dust or wet lost, or another part? Weigh it again.`),
    nothingCaught: (sample: number) => doubted(ofSample(sample, "nothing was caught that counts. Cold enough, and tight? Look for a leak.")),
  },
  ledger: {
    percent: (at: Expression) => doubted(text`${at}: typed as a fraction? Type percent, such as 70 for 0.70.`),
    mostlyWater: (at: Expression, most: number) => doubted(text`${at}: a sample of more than ${most} % water is none that is charred. A slip?`),
    hardlyKnown: (at: Expression, most: number) =>
      doubted(text`${at}: percent known to no more than ± ${most} % tell nothing. Type percentage points, such as 1.`),
    driedBefore: (fed: Expression, at: Expression) =>
      doubted(text`${fed} is taken off ${at}, though it lost water while drying before. Clear ${fed}, or dry on till steady.`),
    dryAndMoist: (at: Expression) => doubted(text`${at} says fed moist, and the sample was shown dry. Clear one: the dried sample counts.`),
    waterNegative: (sample: number, at: Expression) =>
      doubted(ofSample(sample, text`less water in the liquids than was fed. Look at its moisture and ${at}; or water escaped.`)),
    waterOverVapour: (sample: number, at: Expression) =>
      doubted(ofSample(sample, text`more water than left as vapour. Look at the water content in ${at}.`)),
    unaccounted: (sample: number, percent: Expression) =>
      doubted(ofSample(sample, text`${percent} % of the dry feed unaccounted for, more than wanted. A leak, liquid in the tube, a slip?`)),
  },
  vesselAgain: {
    someOnly: (sample: number, at: Expression) =>
      doubted(ofSample(sample, text`${at} is blank and others are not: scale is taken off those alone. ${CLEAR_OTHERS}`)),
    lighter: (sample: number, at: Expression, grams: Expression, before: Expression) =>
      doubted(ofSample(sample, text`${at} is ${grams} g lighter than ${before}: a slip in one, another vessel, scale lost. Weigh it again.`)),
    heavier: (sample: number, at: Expression, grams: Expression, before: Expression) =>
      doubted(ofSample(sample, text`${at} is ${grams} g heavier than ${before}: more than scale, or char left inside. Brush out, weigh again.`)),
    farHeavier: (sample: number, at: Expression, grams: Expression, before: Expression) =>
      doubted(ofSample(sample, text`${at} is ${grams} g heavier than ${before}: a slip in one, a lid left off, another vessel? Weigh it again.`)),
    /** Of what follows from a vessel in doubt, whose gain is in every ±. */
    waits: joined(unseen, "Waits for the vessel at the end: its gain is in every ±, and is to be put right first."),
  },
  agree: {
    unfinished: (sample: Expression, finished: Expression) =>
      joined(unseen, text`Waits for sample ${sample}, not shown finished as ${finished} others are. Fire it again and weigh.`),
    oneApart: (sample: Expression) =>
      doubted(text`Sample ${sample} stands apart from the others at 95 %, as one run in 20 has by chance. Look for a slip.`),
    copied: (column: Expression) =>
      doubted(text`Column ${column} repeats another sample's in every box: copied? Type what this one weighed, or clear it.`),
    sayWhich: (at: Expression) => doubted(text`Say in ${at} whether the samples are repeats or different.`),
    notInList: (at: Expression) => doubted(text`${at} holds neither repeats nor different, so nothing is averaged. Choose one from its list.`),
    /** Of how far repeats lie apart: what it begins with, and what to do. */
    ranged: (opening: Expression, percent: Expression, times: Expression, apart: Expression, ending: Expression) =>
      doubted(text`${opening} ${percent} %, ${times} times a weighing ±${apart}${ending}`),
    range: "Range",
    together: (together: Expression) => text`Together ± ${together} %, more than wanted: range`,
    /** What is wanted is not known; together they scatter by more than that; and where there is no common answer, there is no ± of it. */
    unexplained: (wanted: Expression) => text`. Find out why, or type in ${wanted} how close is close enough.`,
    differ: ". Take more.",
    farApart: ": no one answer. Find out why, or take more.",
    rowUnexplained: (row: Expression, wanted: Expression) =>
      doubted(text`${row}: apart by more than weighing explains. Find out why, or type in ${wanted} what is close enough.`),
    rowApart: (row: Expression, together: Expression) =>
      doubted(text`${row}: the samples lie too far apart for one value (± ${together} % together). Look for a slip or a cause, or take more.`),
    rowWide: (row: Expression, together: Expression) =>
      doubted(text`${row}: together ± ${together} %, more than wanted. Look for a slip or a cause, or take more.`),
    apart: (sample: Expression) => text`; sample ${sample} apart at 95 %`,
    beyondMethod: (percent: Expression, allowed: Expression, apart: Expression) =>
      doubted(text`Samples differ by ${percent} %; the method's own scatter allows ${allowed} %${apart}. Look for a cause.`),
  },
  fine: {
    noWanted: (at: Expression, most: number) =>
      doubted(text`${at} is no wanted ±, which is a share up to ${most} %. For one percent type 1% or 0.01; or leave it blank.`),
    tooLittle: (sample: number, grams: Expression) =>
      doubted(ofSample(sample, text`too little for this balance and the wanted ±: weigh out ${grams} g or more.`)),
    tooLittleDry: (sample: Expression, grams: Expression) =>
      doubted(text`Sample ${sample}: too little is left dry for this balance and the wanted ±, below ${grams} g. Start with more.`),
    offPlan: (settings: Expression, planned: Expression, percent: Expression, grams: Expression) =>
      doubted(text`${settings} on: balance or wanted ± not as planned: ${planned} g give about ± ${percent} %. Take ${grams} g or more.`),
    dryBelowPlan: (sample: Expression, grams: Expression, planned: Expression, percent: Expression) =>
      doubted(text`Sample ${sample}: ${grams} g dry, ${planned} g planned: the ± will be about ${percent} %. Start with more.`),
    belowPlan: (sample: number, grams: Expression, planned: Expression, percent: Expression) =>
      doubted(ofSample(sample, text`${grams} g is less than the ${planned} g planned: the ± will be about ${percent} %. Weigh out more.`)),
    toDry: (percent: Expression, grams: Expression) =>
      doubted(text`± ${percent} %, more than wanted, by ${grams} g that may yet dry off. Dry longer before charring; if charred, next time.`),
    plusMinus: (percent: Expression) => doubted(text`Weighing alone gives ± ${percent} %, more than wanted: take more sample, or a finer balance.`),
  },
  range: {
    called: { moisture: "water", char: "char", ash: "ash" },
    outside: (sample: number, called: string, percent: Expression, atLeast: string, atMost: string) =>
      doubted(
        ofSample(sample, text`${called} of ${percent} % is outside the ${atLeast} to ${atMost} % of untreated plants (common practice). A slip?`),
      ),
  },
  material: {
    ask: (at: Expression, hottest: Expression, unit: string) =>
      doubted(text`${at} is blank: choose what vessel and lid are made of, which ${hottest} °${unit} is held against, or none of these.`),
    noneOfThese: "none of these",
    tooCold: (at: Expression, set: Expression, unit: string, what: "char" | "ash", least: number) =>
      doubted(text`${at}: ${set} °${unit} is too cold to ${what}, below ${least} °${unit} (common practice). A slip, or the other degrees?`),
    oven: (at: Expression, set: Expression, unit: string, least: number, most: number) =>
      doubted(text`${at}: ${set} °${unit} is no drying oven, ${least} to ${most} °${unit} (common practice). A slip, or the other degrees?`),
    celsiusOven: (at: Expression, set: Expression, celsius: Expression, meant: Expression, below: number, above: number) =>
      doubted(text`${at}: ${set} °F is ${celsius} °C. If ${set} °C is meant, type ${meant}; if ${celsius} °C is, type ${below} or ${above}.`),
    bothDegrees: (row: Expression, unit: string) =>
      doubted(text`Row ${row} and the row above have one heat in °C and in °F. This sheet wants °${unit} in both: type the one anew.`),
    notListed: (at: Expression) => doubted(text`${at} is not in the list at the foot of the sheet. Choose from the list.`),
    aboveLimit: (at: Expression, set: Expression, unit: string, stands: Expression, material: Expression) =>
      doubted(text`${at}: ${set} °${unit} is above the ${stands} °${unit} that ${material} stands. Change vessel or programme.`),
  },
  analysis: {
    both: (formula: Expression) => doubted(text`${formula}: a formula and an analysis are both given. Clear one of the two.`),
    formula: (sentence: Expression) => doubted(sentence),
    notHere: (formula: Expression) => joined(unseen, text`${formula} is not read here, which takes Retort: the formula is not judged.`),
    fractions: (first: Expression) => doubted(text`${first} on: typed as fractions? Type percent, such as 48.6 for 0.486.`),
    waits: (percent: Expression, least: number) =>
      doubted(text`The analysis adds up to ${percent} % with the ash: the comparison waits for ${least} %.`),
    tooMuch: (percent: Expression) => doubted(text`The analysis adds up to ${percent} % with the ash, more than there is. Look for a slip.`),
    unexplained: (percent: Expression) => doubted(text`The analysis leaves ${percent} % of the dry sample unexplained. Look for what is missing.`),
  },
  zeros: {
    oneMissing: (row: Expression) =>
      doubted(text`Row ${row}: one of the two zeros is missing, so that row is not corrected. Type it, or clear the other.`),
  },
  warmth: {
    readsLight: (row: Expression, degrees: Expression, unit: string, milligrams: Expression) =>
      doubted(
        text`Row ${row}: ${degrees} °${unit} above the room reads light; a 17 g crucible by up to ${milligrams} mg (published case). Cool first.`,
      ),
    readsHeavy: (row: Expression) =>
      doubted(text`Row ${row}: weighed colder than the room reads heavy, and damp settles on it. Let it come to the room.`),
  },
  typedOver: {
    one: (at: Expression) => text`${at} was typed over: its formula is gone. ${MEND}`,
    several: (cells: Expression) => text`${cells} were typed over: their formulas are gone. ${MEND}`,
    more: (count: Expression) => text` and ${count} more`,
    columns: "A column was put in, moved or taken out. Undo that. To leave a sample out, clear its boxes.",
    row: "A row of boxes was deleted. Undo that. To leave a reading out, clear its box.",
    within: (blocks: Expression) => text`Something was typed over within ${blocks}: its formula is gone. ${MEND}`,
  },
} as const;
