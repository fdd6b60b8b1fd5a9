import { DECIMAL_MARK } from "./BoxWords";
import { text, type Expression } from "../expressions/Expression";

/** Words of the tables of weighings: while drying, after each firing, and of the empty vessel. */
export const weighingWords = {
  drying: "1 DRYING",
  weighedCold: (number: number): string => `${number} weighed when cold`,
  clock: "Clock",
  minute: "Minute",
  lost: (sample: number): string => `${sample} lost, g`,
  gained: (sample: number): string => `${sample} gain, g`,
  vessel: {
    label: "Empty vessel, g",
    title: "Empty vessel",
    prompt:
      "Weigh the empty, cold vessel with all that stays on it, lid included, in grams. Or type tared, where the balance is zeroed with the vessel on it.",
    refusal: `Type the weight in grams as a plain number, such as 41.86, or the word tared. ${DECIMAL_MARK}`,
    beside: "weigh cold; or type tared",
  },
  /** What a vessel's box may hold in place of a weight. */
  tared: "tared",
  round: (number: number): string => (number === 1 ? "Round 1: moist, g" : `Round ${number}, g`),
  afterFiring: (number: number): string => `After firing ${number}, g`,
  dry: "Dry sample, g",
  char: "Char, g",
  ash: "Ash, g",
  moistBox: {
    title: "Round 1: moist",
    about: "The vessel with the moist sample, before the oven, with the same lid.",
  },
  roundBox: {
    title: "Vessel + sample",
    about: "The vessel with the sample, cold, with the same lid, on the same balance. Fill row by row.",
  },
  charBox: { title: "Vessel + char", about: "The same vessel and lid with the char, cold. Weigh soon: char takes up water from the air." },
  ashBox: { title: "Vessel + ash", about: "The same vessel and lid with the ash, cold, once no dark specks are left." },
  clockBox: {
    title: "Clock",
    prompt: "The time of this round with a colon: 9:30. Midnight is understood. For gaps of half a day or more type the date too: 21 Nov 9:30.",
  },
  minuteBox: {
    title: "Minutes",
    prompt: "Minutes since round 1, which is 0.",
    refusal: "Type minutes since round 1 as a number, such as 30; a clock time such as 9:30 is none on this sheet.",
  },
  /** Verdicts of CONSTANTWEIGHT.STEPS that the sheet itself acts on. */
  verdicts: { steady: "steady", notYet: "not yet", first: "first", tooSoon: "too soon to tell", tooCoarse: "balance too coarse", gain: "gain" },
  /** Why a sample is not judged. */
  unjudged: {
    weightIsText: "a weight is not a number",
    rowMissing: "a row is missing",
    vesselMissing: "vessel not weighed",
    clockMissing: "a clock time is missing",
    timesWrong: "times not in order",
    settingsMissing: "settings missing",
    notDry: "not shown dry before",
    heldMissing: "minutes held are missing",
  },
  says: {
    next: "◄ next",
    notANumber: "? not a number",
    oneToWeigh: "not all weighed yet",
    clock: "? type the time",
    allIn: "all in; into the oven",
    rowAbove: "? a row above is empty",
    gained: (grams: Expression) => text`? gained ${grams} g`,
    tooSoon: "too soon to tell",
    tooCoarse: "? balance too coarse",
    nothing: "no loss that counts",
    notJudged: (why: string) => `? ${why}`,
    lost: (grams: Expression) => text`lost ${grams} g`,
    lostIn: (grams: Expression, minutes: Expression) => text`lost ${grams} g in ${minutes} min: go on`,
    losing: (grams: Expression) => text`still losing ${grams} g`,
    fireAgain: (grams: Expression) => text`lost ${grams} g: fire again`,
    // Asked for by COUNTIF: without a mark, which that reads as any character.
    colder: "colder: fire again as hot",
    short: "short: fire again as long",
  },
  total: {
    dry: (round: Expression) => text`✓ dry since round ${round}`,
    notDry: "not dry yet",
    fedMoist: "fed moist, by its moisture",
    more: (count: Expression) => text`not dry: about ${count} more`,
    full: "? full: add a round (pane)",
    steady: (firing: Expression) => text`✓ steady since firing ${firing}`,
    notFinished: "not shown finished",
    absent: "· not judged: no Retort",
  },
  end: {
    heading: (number: number): string => `${number} AT THE END`,
    vessel: "Empty vessel again, g",
    notes: "Notes",
    box: {
      title: "Empty vessel again",
      about: "The same vessel and lid, emptied and brushed out, cold. Scale that grew on it is then allowed for; a tared balance shows it as it is.",
    },
    notesBox: { title: "Notes", prompt: "Anything seen: weather, smell, a draught, a spill.", refusal: "" },
    unchanged: "vessel unchanged",
    scale: "scale allowed for",
    moreThanScale: "? more than scale",
    lighter: "? lighter than before",
  },
} as const;
