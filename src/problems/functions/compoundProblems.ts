import { InputProblem } from "../InputProblem";
import { NoAnswer } from "../NoAnswer";
import { quoted } from "../quoted";

export const noSuchElement = (text: string, inThisCase: string | undefined): InputProblem =>
  new InputProblem(
    "symbol",
    `no element ${quoted(text)}`,
    inThisCase === undefined ? "Type a symbol such as Ca, or a name; for a compound use MOLARMASS." : `Capitals matter: type ${inThisCase}.`,
  );

export const noInterval = (name: string, symbol: string): NoAnswer =>
  new NoAnswer("symbol", `${name} (${symbol}) has one standard value, not an interval`, "Ask for its limit.");

export const noLimitOfIsotope = (symbol: string): NoAnswer =>
  new NoAnswer("symbol", `${symbol} is one isotope, whose mass is known to better than 1e-7 g/mol`, "Ask for its value.");

export const partNotKnown = (text: string, groups: readonly string[]): InputProblem =>
  new InputProblem("part", `${quoted(text)} is no element and none of ${groups.join(" ")}`, "For what leaves on heating use THEORETICALLOSS.");

/** A share of nothing is an element from nowhere; how often it stands there may be asked, since none is an answer to that. */
export const holdsNone = (part: string, formula: string): InputProblem =>
  new InputProblem("part", `no ${quoted(part)} in ${quoted(formula)}`, 'Check both formulas; asked for its "count", none is 0.');

// Notes beside an answer.

export const countsNone = (part: string): string => `the compound holds no ${part}`;

export const countedByScarcest = (part: string): string =>
  `a formula does not say which atoms belong together: ${part} is counted by its scarcest atom`;
