import { InputProblem } from "../InputProblem";
import { characterNumber, plainNumber, quoted } from "../quoted";

/** A place in a formula's text: the argument's name, the user's own text, and an index into it in UTF-16 units. */
export interface Spot {
  readonly argument: string;
  readonly text: string;
  readonly index: number;
}

const where = ({ text, index }: Spot): string => `at character ${characterNumber(text, index)} of ${quoted(text)}`;

const at = (spot: Spot, seen: string, wrong: string, advice: string): InputProblem =>
  new InputProblem(spot.argument, `${quoted(seen)} ${where(spot)} ${wrong}`, advice);

const whole = ({ argument, text }: Spot, wrong: string, advice: string): InputProblem =>
  new InputProblem(argument, `${quoted(text)} ${wrong}`, advice);

const EXAMPLE = "Type a chemical formula such as CaCO3.";
const CAPITALS = "Capitals matter: Co is cobalt, CO carbon monoxide.";

export const noElement = (spot: Spot, seen: string, advice = "Check the symbol."): InputProblem =>
  new InputProblem(spot.argument, `no element ${quoted(seen)} ${where(spot)}`, advice);

export const noElementInThisCase = (spot: Spot, seen: string): InputProblem => noElement(spot, seen, `Check the symbol. ${CAPITALS}`);

export const smallFirstLetter = (spot: Spot, seen: string): InputProblem =>
  noElement(spot, seen, "A symbol begins with a capital. Check the symbol.");

export const smallLOfAluminium = (spot: Spot, seen: string): InputProblem => noElement(spot, seen, "Aluminium is Al with a small L.");

export const groupAbbreviation = (spot: Spot, seen: string, group: string): InputProblem =>
  noElement(spot, seen, `Write the group out, such as ${group}.`);

export const aWord = (spot: Spot, seen: string): InputProblem => at(spot, seen, "is a word, not an element symbol", EXAMPLE);

export const foreignLetter = (spot: Spot, seen: string, script: string, latin: string): InputProblem =>
  at(spot, seen, `is a ${script} letter that looks like ${latin}`, `Retype it as ${latin}.`);

export const oxidationStateGiven = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "is an oxidation state, not iodine or vanadium", "Remove it.");

export const unknownAmount = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "stands for an unknown number", "Put the number in its place.");

export const unreadable = (spot: Spot, seen: string): InputProblem => at(spot, seen, "has no place in a formula", "Remove it.");

export const lostDot = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "is joined to the count before it", "Type · before the water of a hydrate.");

export const lostBracket = (spot: Spot, seen: string, meant: string): InputProblem =>
  at(spot, seen, "makes a compound that does not balance", `Type ${meant} if the group is meant so often.`);

/** A mark that only the water of a hydrate follows. */
export const markForDot = (spot: Spot, seen: string): InputProblem => at(spot, seen, "is no hydrate dot", "Type · in its place.");

export const percentSign = (spot: Spot): InputProblem =>
  at(spot, "%", "is a percentage, not a count", "Give the formula alone; put the share in its own cell.");

export const reactionOrArithmetic = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "makes this a calculation or a reaction", "Give one compound in a cell.");

export const moreAfterCharge = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "is followed by more", "A charge stands last; give one compound in a cell, without bonds.");

export const chargeInBracket = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "is a charge inside a bracket", "Write the charge last, once.");

export const listOfElements = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "is no decimal mark here", "Give each element its own count, such as (Mg0.5Fe0.5)2SiO4.");

export const slashInAmount = (spot: Spot): InputProblem => at(spot, "/", "divides", "Type the amount as a decimal (0.5) or as ½.");

export const timesSign = (spot: Spot, seen: string): InputProblem => at(spot, seen, "is a times sign", "Type · or . before the water of a hydrate.");

export const lineBreak = (spot: Spot): InputProblem =>
  new InputProblem(spot.argument, `a line break ${where(spot)} parts the formula`, "Give one compound in a cell.");

export const spaceInside = (spot: Spot): InputProblem =>
  new InputProblem(spot.argument, `the space ${where(spot)} parts the formula`, "Remove it, or type · before the water of a hydrate.");

export const numberApart = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "stands apart", "Close the gap for a count, or type · before the water of a hydrate.");

export const notClosed = (spot: Spot, opening: string): InputProblem => at(spot, opening, "is never closed", "Add its closing bracket.");

export const neverOpened = (spot: Spot, closing: string): InputProblem =>
  at(spot, closing, "closes nothing", "Remove it or add its opening bracket.");

export const wrongBracket = (spot: Spot, closing: string, opening: string): InputProblem =>
  at(spot, closing, `does not close ${quoted(opening)}`, "Use brackets in pairs: ( ), [ ], { }.");

export const emptyBracket = (spot: Spot, pair: string): InputProblem => at(spot, pair, "has nothing in it", "Fill it or remove it.");

export const nestedTooDeep = (spot: Spot, opening: string, deepest: number): InputProblem =>
  at(spot, opening, `is more than ${deepest} brackets deep`, "Multiply some of them out.");

export const nothingBeforeDot = (spot: Spot, dot: string): InputProblem =>
  at(spot, dot, "has no formula before it", "Put the compound before the dot.");

export const nothingAfterDot = (spot: Spot, dot: string): InputProblem =>
  at(spot, dot, "has no formula after it", "Name what follows, such as 5H2O, or remove the dot.");

export const amountOfNothing = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "multiplies nothing", "Put a formula after it, or type a decimal as 0.5.");

export const numberNotFormula = (spot: Spot): InputProblem => whole(spot, "is a number, not a chemical formula", EXAMPLE);

export const nothingToRead = (spot: Spot): InputProblem => whole(spot, "names no element", EXAMPLE);

export const cellFormulaText = (spot: Spot): InputProblem =>
  whole(spot, "is a cell formula stored as text", "Enter it as a formula, or type a chemical formula.");

export const zeroCount = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "is a count of zero", "Give a count above zero; for oxygen type the letter O.");

export const leadingZero = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "begins with the digit 0", "For oxygen type the letter O; a decimal begins 0.");

export const countTooLarge = (spot: Spot, seen: string, largest: number): InputProblem =>
  at(spot, seen, `is more than ${plainNumber(largest)}`, "Check the count.");

export const countTooSmall = (spot: Spot, seen: string, smallest: number): InputProblem =>
  at(spot, seen, `is less than ${plainNumber(smallest)}`, "Check the count.");

export const totalOutOfBounds = (spot: Spot, symbol: string, total: number): InputProblem =>
  whole(spot, `multiplies out to ${plainNumber(total)} ${symbol}`, "Check the counts.");

export const tooLong = ({ argument }: Spot, length: number, longest: number): InputProblem =>
  new InputProblem(argument, `the text is ${length} characters long`, `A formula has at most ${longest}. Check the cell.`);

export const commaOrDot = (spot: Spot): InputProblem =>
  at(spot, ",", "can be a decimal comma or a hydrate dot", "Type · for a hydrate, or bracket a decimal: S(O4.5)H2O.");

export const bareDecimal = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "can be a decimal or a hydrate dot", "Type 0 before it for a decimal, or · for the dot.");

export const decimalOrDot = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "can be a decimal mark or a hydrate dot", "Type · for the dot, or bracket a decimal: S(O4.5).");

export const twoFullStops = (spot: Spot): InputProblem => at(spot, ".", "follows a decimal", "Type · before what is added, as in CuSO4·5H2O.");

export const chargeOrCount = (spot: Spot, digits: string, sign: string): InputProblem =>
  at(spot, digits, "can be a count or part of the charge", `Type ${digits.slice(0, -1)}^${digits.slice(-1)}${sign} or ${digits}^${sign}.`);

export const caretAlone = (spot: Spot): InputProblem =>
  at(spot, "^", "has no charge or mass number after it", "Type a charge such as ^2- or an isotope such as ^13C.");

export const superscriptAlone = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "is neither a charge nor a mass number", "Add the sign of a charge, or type a count as plain digits.");

export const chargeTooLarge = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "is no charge an ion carries", "Check the charge; give one compound in a cell, without arithmetic.");

export const multipliedIon = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "multiplies a charged formula", "Give one ion, or put the neutral compound.");

export const stateNotLast = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "is a state and does not stand last", "Move it to the end or remove it.");

export const massNumberOrAmount = (spot: Spot, seen: string, symbol: string): InputProblem =>
  at(spot, seen, `can be an amount or the isotope ${symbol}-${seen}`, `Type [${seen}${symbol}] for the isotope, ${seen}( ) for the amount.`);

/** @param counted the symbol with its count as typed, such as K15; `before` the symbol alone */
export const massNumberInCount = (spot: Spot, seen: string, symbol: string, counted: string, before: string): InputProblem =>
  at(
    spot,
    seen,
    `can be a count or the isotope ${symbol}-${seen}`,
    `Type [${seen}${symbol}] for the isotope, (${before})${counted.slice(before.length)} for the count.`,
  );

export const massNumberOfTracer = (spot: Spot, seen: string, symbol: string): InputProblem =>
  at(spot, seen, `can be a count or the isotope ${symbol}-${seen}, not in the table of nuclides`, `Leave the mass number out, or type (${symbol}).`);

export const isotopeByHyphen = (spot: Spot, seen: string, nuclide: string): InputProblem => at(spot, seen, "names an isotope", `Type [${nuclide}].`);

export const noNuclide = (spot: Spot, seen: string): InputProblem =>
  new InputProblem(spot.argument, `no isotope ${quoted(seen)} ${where(spot)} in the table of nuclides`, "Check the mass number.");

export const capitalsMixedUp = (spot: Spot, seen: string, reading: string, meant: string): InputProblem =>
  at(spot, seen, `reads as ${reading}`, `Type ${meant}, or (${seen.charAt(0)})${seen.charAt(1)} if it is so meant.`);

/**
 * @param digits its count as typed, "" for none
 * @param names of the element and of the two that its letters are in capitals
 * @param brackets the pair that keeps the symbol: "()", or "[]" where it stands in round ones
 */
export const caseSlip = (spot: Spot, symbol: string, digits: string, names: readonly [string, string, string], brackets: string): InputProblem =>
  at(
    spot,
    symbol + digits,
    `reads as ${names[0]}`,
    `Type ${symbol.toUpperCase()}${digits} for ${names[1]} and ${names[2]}, or ${brackets.charAt(0)}${symbol}${brackets.charAt(1)}${digits} if so meant.`,
  );

/** @param apart the text with its first symbol in a bracket */
export const wordInCapitals = (spot: Spot, apart: string): InputProblem =>
  whole(spot, "is a word or an abbreviation, spelled in symbols", `Type the formula, or ${apart} if so meant.`);

export const abbreviationOf = (spot: Spot, formula: string): InputProblem => whole(spot, "is an abbreviation", `Type the formula: ${formula}.`);

export const aMissingNumber = (spot: Spot): InputProblem =>
  whole(spot, "is what programs write for a missing number", "Mend that cell, or type a chemical formula.");

export const oneForL = (spot: Spot, seen: string): InputProblem =>
  at(spot, seen, "reads as carbon with the digit 1", `For chlorine type Cl with a small L; for carbon (C)${seen.slice(1)}.`);

export const oneForLOfThallium = (spot: Spot): InputProblem =>
  at(spot, "T1", "reads as tritium with the digit 1", "For thallium type Tl with a small L; for tritium T.");

export const zeroForO = (spot: Spot, seen: string, symbol: string): InputProblem =>
  at(spot, seen, "holds the digit 0", `For oxygen type the letter O; for that count type (${symbol})${seen.slice(symbol.length)}.`);

/** @param name the element's name; undefined for a symbol of no element */
export const noAtomicWeight = (argument: string, symbol: string, name: string | undefined): InputProblem =>
  name === undefined
    ? new InputProblem(argument, `no element ${quoted(symbol)}`, "Check the symbol.")
    : symbol === "Ac"
      ? new InputProblem(argument, `${name} (${symbol}) has no standard atomic weight`, "For acetate write CH3COO.")
      : new InputProblem(
          argument,
          `${name} (${symbol}) has no standard atomic weight, so no molar mass follows`,
          "Leave it out or use one isotope's mass.",
        );
