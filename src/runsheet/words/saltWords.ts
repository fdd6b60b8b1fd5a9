import { text, type Expression } from "../expressions/Expression";

/** Words of a salt or mineral that is heated: what it is, its weighings, and its loss beside theory. */
export const saltWords = {
  heading: "WHAT IS HEATED",
  about: "by theory, from the formulas",
  labels: { formula: "Formula", residue: "What stays", water: "Surface water" },
  formulaBox: {
    title: "Formula of salt or mineral",
    prompt: "What it is before heating: CuSO4·5H2O, CaCO3, Ca(OH)2; CuSO4*5H2O will do. Leave blank where the water of a hydrate is to be found.",
    refusal: "Type a formula of at most 30 characters, such as CuSO4·5H2O.",
  },
  residueBox: {
    title: "What stays",
    prompt: "The formula of what is left once nothing more leaves: CuSO4, CaO; several as CaCO3 + MgO.",
    refusal: "Type a formula of at most 30 characters, such as CuSO4.",
  },
  waterBox: {
    title: "Surface water",
    prompt:
      "as weighed: taken as free of surface water, one round is enough. dried first: rounds at a gentle heat that leaves the crystal water, until the weight holds.",
    refusal: "Choose as weighed or dried first.",
  },
  choices: { asWeighed: "as weighed", driedFirst: "dried first" },
  beside: {
    formula: "what it is: CuSO4·5H2O, CaCO3; blank: find the water",
    unread: "? cannot be read: see the checks",
    notHere: "not read here: that takes Retort",
    loses: (percent: Expression) => text`would lose ${percent} % in all`,
    residue: "what is left of it: CuSO4, CaO",
    notFrom: "? cannot be what stays: see the checks",
    asWeighed: "taken as free of surface water: round 1 is enough",
    driedFirst: "rounds until steady; what left there is not counted",
    sayWhich: "say which: as weighed or dried first",
  },
  workings: {
    theory: "theoretical loss; g/mol before",
    equation: "equation; g/mol of what stays",
    waters: "n by theory; 1: only water leaves",
  },
  drying: "1 BEFORE HEATING",
  firstRound: "Round 1: salt, g",
  firstBox: { title: "Round 1: salt", about: "The vessel with the salt or mineral as it is, with the same lid, cold." },
  before: "Before heating, g",
  asWeighed: "as weighed in",
  allIn: "all in",
  fire: {
    seen: { title: "Seen", prompt: "Colour, spitting, smell, melting, a crust, a lid that moved.", refusal: "" },
    quiet: { title: "Quiet", prompt: "When no more steam or gas was seen: 14:25." },
  },
  columns: { quiet: "Quiet", seen: "Seen (colour, spitting)" },
  box: { title: "Vessel + what is left", about: "The same vessel and lid, cooled closed in a desiccator and cold. Weigh soon: it takes up damp." },
  left: "Stayed after heating, g",
  notHeated: "Weighed in. Not heated yet.",
  soFar: (percent: Expression, material: Expression) => text`So far ${percent} % of the ${material} was lost; heating is not shown finished.`,
  lost: (share: Expression, stayed: Expression, samples: Expression, material: Expression) =>
    text`${share} (95 %) of the ${material} lost on heating; ${stayed} stayed. ${samples}`,
  lostBeside: (share: Expression, start: Expression, residue: Expression, theory: Expression, samples: Expression) =>
    text`${share} (95 %) lost on heating; ${start} to ${residue} would lose ${theory} %. ${samples}`,
  lostOfNothing: (share: Expression, start: Expression, residue: Expression, samples: Expression) =>
    text`${share} (95 %) lost on heating, though by ${start} and ${residue} nothing would leave. ${samples}`,
  above: (percent: Expression, start: Expression, residue: Expression, theory: Expression) =>
    text`▲ ${percent} % lost on heating, more than the ${theory} % of ${start} to ${residue}. See the next line.`,
  lostOfEach: "Lost on heating, of each",
  wasLost: "lost on heating",
  covers: {
    before: (isSeveral: boolean): string =>
      `The ± will cover the weighings${isSeveral ? " and the scatter between samples" : ""}; never what else is in it or left with the loss.`,
    beforeEach: "The ± will cover the weighings of each sample; never what else is in it or left with the loss.",
    alone: (what: Expression, rounding: Expression) =>
      text`The ± covers ${what}${rounding}. Surface water, other substances and spitting count as loss; what had yet to leave does not.`,
    each: (what: Expression, rounding: Expression) =>
      text`The ± covers ${what} of each sample${rounding}. Surface water, other substances and spitting count as loss; what had yet to leave does not.`,
    scatter: (what: Expression, count: Expression, times: Expression) =>
      text`The ± covers ${what} scatter of ${count} samples${times}. Surface water, other substances and spitting count as loss; what had yet to leave does not.`,
  },
  says: {
    waits: "The comparison with theory waits for the answer above.",
    notHere: "The comparison with theory needs Retort, which is not here.",
    inDoubt: (check: Expression) => text`The comparison with theory waits: see the check of it, ${check}.`,
    invite: (first: Expression, last: Expression) => text`Give the formula and what stays (rows ${first} and ${last}), and theory is told here.`,
    theory: (percent: Expression, equation: Expression) => text`By theory ${percent} % is lost: ${equation}`,
    findsWater: (residue: Expression) => text`n, the water per ${residue}, is told here once nothing more leaves; only water may leave.`,
    each: "n or the share of theory of each material stands in the results.",
    waters: (n: Expression, residue: Expression, verdict: Expression) => text`n = ${n} (95 %) H2O per ${residue}: ${verdict}.`,
    formulaSays: (n: Expression) => text`; by the formula it is ${n}`,
    asFormula: ", as the formula says",
    claimed: (n: Expression, chance: Expression) => text`only ${n} fits (${chance} % by chance)`,
    noWater: "no water is told from none",
    fits: (n: Expression, chance: Expression) =>
      text`${n} is the only one that fits, but ${chance} % of all n would by chance: no claim yet, weigh more of it`,
    open: "several numbers fit: weigh more of it",
    formulaFits: (n: Expression) => text`the formula's ${n} fits, no usual number otherwise`,
    between: "no usual hydrate within the ±: look again (all water? other gas?)",
    half: (whole: Expression) => text`${whole} 1/2`,
    theoryShare: (share: Expression, verdict: string) => text`Measured over theory: ${share} (95 %)${verdict}`,
    whole: ": not told from all of a pure one.",
    part: ": its purity if all of it changed, or how far it changed if it was pure.",
    aboveWhole: ": more than theory allows.",
  },
} as const;
