/** What a calculated cell means, in words. */
export interface Meaning {
  readonly about: string;
  /** What a ± covers, and by what factor. */
  readonly plusMinus?: string;
  readonly source: string;
}

const DIFFERENCE = "Difference of two weighings in one vessel, so that the vessel cancels.";
const MASS_SHARES = "Shares by mass, as in ISO 18134 and EN 13183-1 for moisture and ISO 18123 for volatile matter.";
const STAGE_SHARES = "Share by mass of the dry sample, from differences of two weighings in one vessel.";
const BY_ITS_CHECK = "Own convention: the sheet marks what its checks put in doubt.";
const WEIGHING_ALONE =
  "The ± covers the weighings, 2 u, two standard uncertainties, about 95 %, and what may yet have dried off, added whole. Of products it holds too how far typed percentages may be off. It holds nothing of how samples differ or stand for the heap.";
const LEDGER = "Conservation of mass over feed, char, liquids and gas, as RETORT.PRODUCT.LEDGER.";
const OPEN_FIRE = "Mass balance of complete burning, as RETORT.BURN.COMPARE gives it; its own explanation stands below.";

export const meaningWords = {
  lost: { about: "What left since the weighing above. Below 0 is a gain.", source: DIFFERENCE },
  gain: {
    about:
      "What the empty vessel weighs more than at the start: scale, or something left inside, which cannot be told apart. It is taken off what stayed, and the ± reaches from none of it to all of it.",
    source: DIFFERENCE,
  },
  gainOfPart: {
    about: "What this part of the apparatus weighs more after the fire than before it: what it caught. Below 0 it lost something.",
    source: DIFFERENCE,
  },
  dry: { about: "The sample without its vessel once it is shown dry; blank until then.", source: DIFFERENCE },
  char: { about: "What is left after the latest firing, without the vessel as it was then, shown finished or not.", source: DIFFERENCE },
  ash: { about: "What is left after the latest ashing, without the vessel as it was then, shown finished or not.", source: DIFFERENCE },
  moistureWet: { about: "Water as a share of the moist sample.", source: MASS_SHARES },
  moistureDry: { about: "Water over the dry sample; it can pass 100 %.", source: MASS_SHARES },
  volatile: { about: "What left as vapour on charring, as a share of the dry sample.", source: MASS_SHARES },
  charYield: { about: "What stayed as char, as a share of the dry sample.", source: MASS_SHARES },
  charYieldAshFree: { about: "Char less its ash over dry sample less its ash.", source: MASS_SHARES },
  ashShare: { about: "Ash as a share of the dry sample.", source: "Share by mass, as in ISO 18122 for ash of solid biofuels." },
  beforeHeating: { about: "What goes into the fire, without its vessel: as weighed in, or dried of its surface water.", source: DIFFERENCE },
  leftAfterHeating: { about: "What is left after the latest heating, without the vessel as it was then.", source: DIFFERENCE },
  lossOnHeating: {
    about: "What was lost on heating, as a share of what went into the fire.",
    source: "Share by mass, from differences of two weighings in one vessel; the scale found on the vessel at the end is taken off what stayed.",
  },
  ofTheory: {
    about: "The loss over what theory allows: a purity if all of it changed, or how far it changed if it was pure.",
    source: "Conservation of each element, as RETORT.THEORETICALLOSS; other things that left with it make it read high.",
  },
  waters: {
    about: "Waters lost for one formula of what stays, where nothing but water leaves.",
    source: "n = w / (1 - w) × M(residue) / M(water), w the loss; atomic weights CIAAW 2021. Adsorbed water counts as crystal water.",
  },
  theoryLoss: {
    about: "The share of its mass that the salt or mineral loses when all of it turns into what stays, by the formulas alone.",
    source: "Conservation of each element, as RETORT.THEORETICALLOSS; its own explanation stands below.",
  },
  molarMass: {
    about: "Grams of one mole of the formula typed.",
    source: "Sum of the atomic weights, CIAAW 2021, as RETORT.MOLARMASS; its own explanation stands below.",
  },
  equation: {
    about: "What becomes of the salt or mineral, balanced from the two formulas.",
    source: "Conservation of each element, as RETORT.THEORETICALLOSS; its own explanation stands below.",
  },
  watersByTheory: {
    about: "Waters that leave for one formula of what stays, taken from the theoretical loss as if water alone left.",
    source: "n = w / (1 - w) × M(residue) / M(water), w the theoretical loss; atomic weights CIAAW 2021.",
  },
  onlyWater: {
    about: "1 where n by theory comes out as whole sixths, as it does where water alone leaves; 0 where it does not, and then no n is told.",
    source: "Own convention: waters in formulas are whole, halves, thirds or sixths.",
  },
  plusMinus: {
    about: "How far this share may be off by weighing, and by what may yet have dried off a sample taken for dry.",
    plusMinus: WEIGHING_ALONE,
    source:
      "Propagation of uncertainty, GUM (JCGM 100:2008), equation 10 and 5.1.2; a weighing that stands in both masses is counted once. What may yet have dried off is an effect of one sign, added whole: F.2.4.5, from memory.",
  },
  together: {
    about: "What all samples say together: the mean and its ±, or why there is none.",
    plusMinus:
      "95 %. For several samples the larger of t s / sqrt(n), the scatter between them with Student's t for n samples, and the weighing ± / sqrt(n); for one sample its weighing ±. What may yet have dried off is alike in all and added whole.",
    source: "GUM (JCGM 100:2008), 4.2.3 and G.3 for t; 7.2.6 for the figures. That the larger of the two counts is our own convention.",
  },
  togetherWorking: {
    about: "The ± of all samples together, as a fraction.",
    plusMinus:
      "95 %. For several samples the larger of t s / sqrt(n), the scatter between them with Student's t for n samples, and the weighing ± / sqrt(n); for one sample its weighing ±. What may yet have dried off is alike in all and added whole.",
    source: "GUM (JCGM 100:2008), 4.2.3 and G.3 for t. That the larger of the two counts is our own convention.",
  },
  agreement: {
    about:
      "How the samples of this row agree: 0 well, 1 wider together than wanted, 2 too far apart for one value, 3 beyond the method's own scatter, 4 nobody said what they are, 5 beyond weighing and no wanted ± known.",
    source:
      "Own convention: farther apart than the wanted ± and than three times the largest weighing ±. Method's own scatter by the critical range of ISO 5725-6. Each row by the same.",
  },
  trust: { about: "Whether this line is to be trusted, or the first check that puts it in doubt.", source: BY_ITS_CHECK },
  says: {
    about: "What the sheet makes of this row.",
    source: "The criterion and limit of the settings; two display steps are ASTM D4442 method A. A gain counts when two weighings do not explain it.",
  },
  saysOfPart: {
    about: "What the boxes of this row come to, or what is still missing in it.",
    source: "Sum of the differences of two weighings over the samples; a loss counts when two weighings do not explain it.",
  },
  saysOfVessel: {
    about: "Whether the empty vessel weighs what it did at the start.",
    source: "A difference counts when two weighings do not explain it: GUM (JCGM 100:2008), 6.3.3, for the factor 2.",
  },
  takenOff: {
    about: "What is taken off each weighing of this row: the middle of the zeros before and after.",
    source: "A drift of the zero is taken to run evenly between the two readings; own convention.",
  },
  coldEnough: {
    about: "Whether this balance could show that the vessel was warmer or colder than the room. Nothing is corrected.",
    source: "Published case of one crucible, 0.19 mg a °C (Blade, Analytical Chemistry); a tenth of a display step counts, own margin.",
  },
  next: { about: "The next box to fill, from what is filled.", source: "Own convention: the order of the work." },
  answer: {
    about: "The answer in a sentence, as far as the run has come; withheld or marked while a check fails.",
    plusMinus: "The ± stands under Together in the results, at 95 %; the line about what it covers says what is in it.",
    source: BY_ITS_CHECK,
  },
  checks: { about: "How the checks stand, and what the gravest found first says.", source: BY_ITS_CHECK },
  verdict: { about: "How this check stands: in order, not yet, doubt (may be) or wrong (cannot be).", source: BY_ITS_CHECK },
  finding: { about: "What this check found, where, and what to do; blank while nothing is wrong.", source: BY_ITS_CHECK },
  covers: {
    about: "What the ± of the answer covers and what it does not.",
    source: "GUM (JCGM 100:2008), 3.3.2: what is not measured is no part of a ±.",
  },
  openly: {
    about: "What open burning of the same would have taken up and sent away, of 100 g dry, beside what left closed.",
    plusMinus:
      "The ± of the gases follows from how exact the analysis is: for each percent that carbon, hydrogen and oxygen may be off, oxygen in is off by 8.43 g and gases out by 9.66 g of 100 g, at the same 95 %.",
    source: "Stoichiometry of complete burning, C 12.011, H 1.008, O 15.999 g/mol; GUM (JCGM 100:2008), equation 10, for the ±.",
  },
  productsTold: {
    about:
      "What became of 100 g of the dry sample, the mean of repeats: char, what was caught, the water formed in it, and the gas, measured or by difference.",
    plusMinus: "Where the gas was measured, the ± is that of what is unaccounted: weighings, and how far typed percentages may be off, at 95 %.",
    source: LEDGER,
  },
  stagesTold: {
    about: "In which stage most was lost, by the first sample, and how much of its dry weight that was.",
    source: STAGE_SHARES,
  },
  theoryTold: {
    about:
      "The loss beside what the formulas allow: n, the waters of one formula of what stays, with the number that alone fits it, or the share of theory.",
    plusMinus:
      "95 %, from the ± of the loss: of n it is U M(residue) / M(water) / (1 - w)^2, w the loss; of the share of theory U over the theoretical loss.",
    source:
      "Conservation of each element, as RETORT.THEORETICALLOSS; n = w / (1 - w) × M(residue) / M(water). Which n is claimed is our own convention.",
  },
  waterTold: {
    about: "What the water of this run stands for; the same whatever is weighed.",
    source: "Loss on drying, as in ISO 18134 and EN 13183-1.",
  },
  compared: { about: "From the comparison of this run with open burning of the same dry sample.", source: OPEN_FIRE },
  u: {
    about: "Standard uncertainty of one weighing: repeatability, and the rounding of the display at zero and at load.",
    source: "GUM (JCGM 100:2008), 4.3.7: a step d rounds with u = d / sqrt(12).",
  },
  explained: {
    about: "The change that two weighings explain by themselves; a larger one is real.",
    source: "As RETORT.CHANGE.SIGNIFICANT for a known display step; GUM (JCGM 100:2008), 6.3.3, for the factor 2.",
  },
  steady: {
    about: "Since which weighing nothing more left, or why that cannot be told.",
    source: "The criterion and limit of the settings, judged by RETORT.CONSTANTWEIGHT; two display steps are ASTM D4442 method A.",
  },
  proving: {
    about:
      "Which firings were hot and long enough to prove that nothing more leaves, as a sum: 2 for the first, 4 for the second, 8 for the third. What was not noted counts as enough.",
    source:
      "Common practice, no source: no more than 20 °C colder than an earlier firing, held a quarter of the longest hold before it or an hour, and not 0.",
  },
  vessel: {
    about: "The empty vessel that counts: as weighed, less the balance's zero where that was read; 0 where the balance was tared with it.",
    source: "A tared balance shows what is in the vessel alone, so that nothing is taken off.",
  },
  counted: {
    about: "The weighing that counts: as read, less the balance's zero where that was read.",
    source: "A zero that is off shifts every reading by as much; where it was not read, it is taken to cancel between two weighings.",
  },
  firedVessel: {
    about: "The vessel as it was while this was weighed: with the scale found at the end, or half of it in between.",
    source: "Own convention: scale is taken to grow evenly with the firings.",
  },
  before: {
    about: "The weighing that the first firing is held against: what went into it, and its vessel.",
    source: "Sum of the two, so that what the first firing took away is a difference of two weighings in one vessel.",
  },
  elapsed: {
    about:
      "Minutes since round 1, or held at temperature so far, of ash on from its char; a bare clock time counts on past midnight, a firing without its minutes counts 1.",
    source: "Own convention: the shortest time that the clock allows.",
  },
  yetToDry: {
    about:
      "What may still dry off a sample that was shown dry, as its last rounds foretell: the ± holds it. 0 where it is less than a quarter of u, or where less than 8 u was lost in all.",
    source:
      "Geometric series of a loss by one rate, b / (a / b - 1): b lost since a round, a over as long before it, with 2 u of a difference. A slower tail that has not shown is not foretold.",
  },
  contradiction: {
    about: "What cannot be in this sample's weights, by more than two readings explain; blank while nothing contradicts.",
    source: "Conservation of mass: what is heated only loses. How far apart two weights are taken for kilograms or milligrams is our own bound.",
  },
  inUse: { about: "Samples with a vessel or any weight.", source: "Own convention." },
  absent: {
    about: "1 where a verdict is missing because the spreadsheet does not know Retort's functions: then nothing is judged.",
    source: "Own convention: a function of Retort that has an answer everywhere is asked once a verdict is an error.",
  },
  start: { about: "When round 1 was, in days as the spreadsheet counts them, where its date is known.", source: "Own convention." },
  crosswise: {
    about:
      "Where two samples stand crosswise, (10000 - row) × 10000 and both columns, 0 for nowhere, -1 where it cannot be looked for: exchanged, they follow the weights before four times nearer.",
    source: "Own bound: samples that only lose never do.",
  },
  nextRow: { about: "The row of the next box to fill.", source: "Own convention: the order of the work." },
  band: {
    about: "A corner of the band in the chart: a next weighing within it counts as dry.",
    source: "The criterion of the settings, drawn from the latest weighing for one interval on.",
  },
  firingBand: {
    about: "A corner of the band in the chart: a next weighing within it, after another firing as long as the last, counts as nothing lost.",
    source: "The criterion of the settings, drawn from the latest weighing for as long as the last firing was held.",
  },
  frame: {
    about: "How far an axis of the chart goes while nothing is weighed, below 0 where that is not known; then the place of something weighed.",
    source: "Own convention: a blank sheet prints its axes, to draw the curve by hand.",
  },
  drawn: {
    about: "A point of the chart: a weighing less the balance's zero, and its minutes; where none was weighed, the point before it.",
    source: "Own convention: the chart shows the numbers that the sheet reasons with.",
  },
  latest: { about: "Where the latest weighing stands in the chart: its weight, or its minutes since round 1.", source: DIFFERENCE },
  foretold: {
    about: "Where the drying curve would end, as the chart draws it; on the latest weighing while no end can be foretold.",
    source: "RETORT.DRYING.END on the weighings so far.",
  },
  fed: { about: "What went into the fire: the dry sample, with its water where it was charred moist.", source: LEDGER },
  found: { about: "Char, what was caught, and the gas where it was measured.", source: LEDGER },
  liquids: {
    about: "What receivers, trap, tube and lid gained together; blank until each that was weighed empty is weighed again.",
    source: DIFFERENCE,
  },
  pairs: { about: "How many parts were weighed both before the fire and after it.", source: "Own convention." },
  liquidYield: { about: "What was caught, as a share of the dry feed.", source: LEDGER },
  waterFormed: { about: "Water in the liquids less the water fed, as a share of the dry feed.", source: LEDGER },
  gasMeasured: { about: "The gas as it was measured, as a share of the dry feed.", source: LEDGER },
  gasDifference: {
    about: "What is left of the feed when char and liquids are taken off: it holds every leak and slip, and closes nothing.",
    source: LEDGER,
  },
  unaccounted: { about: "What was fed and not found again, as a share of the dry feed, where the gas was measured.", source: LEDGER },
  closure: { about: "What was found over what was fed, where the gas was measured.", source: LEDGER },
  stagesDone: { about: "How many stages each sample was weighed after; all of them once the run is over, 0 before.", source: "Own convention." },
  stageLeft: { about: "What is left after this stage, as a share of the dry sample; scale on the vessel is taken off.", source: STAGE_SHARES },
  stageLost: { about: "What left in this stage, as a share of the dry sample.", source: STAGE_SHARES },
  lostInAll: { about: "What left in all stages together, as a share of the dry sample.", source: STAGE_SHARES },
  leftAtEnd: { about: "What is left after the latest stage: in g in the table, as a share of the dry sample in the results.", source: STAGE_SHARES },
  note: { about: "What the figures above rest on, or what is wrong with what was given.", source: "Own convention." },
  beside: { about: "What follows from the boxes of this row, in words.", source: "Own convention." },
  wrongBox: {
    about:
      "The last box that holds no time, or no minutes, as row × 100 + column; 0 for none. Below 0, in millions, the last with a truth that counts as a number.",
    source: "Own convention: what is pasted passes entry rules.",
  },
  typedOver: {
    about:
      "Calculated cells without their formulas: how many, and the first of them as row × 100 + column, 0 for none; by name those of the head, and blocks of them.",
    source: "Own convention: what is pasted passes entry rules.",
  },
  other: { about: "Worked out by the sheet from what is typed into its boxes.", source: "Own convention of the run sheet." },
} as const satisfies Readonly<Record<string, Meaning>>;
