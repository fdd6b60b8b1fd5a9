import type { Spot } from "../../problems/functions/formulaProblems";
import { characterNumber } from "../../problems/quoted";
import { isCapital, skipSpaces } from "./characters";

/**
 * The symbols of one formula's text in their order, each with its count and where it stands. One array for each property and
 * kept from one reading to the next: a long column of formulas makes no object for each symbol.
 */
export class AtomsInText {
  length = 0;
  readonly symbol: string[] = [];
  /** After all the multipliers around the symbol. */
  readonly count: number[] = [];
  /** The index of the symbol in the text. */
  readonly at: number[] = [];
  /** The index of its own count; equal to `end` where it has none. */
  readonly countAt: number[] = [];
  /** The index after the symbol and its own count. */
  readonly end: number[] = [];

  add(symbol: string, count: number, at: number, countAt: number, end: number): void {
    const place = this.length++;
    this.symbol[place] = symbol;
    this.count[place] = count;
    this.at[place] = at;
    this.countAt[place] = countAt;
    this.end[place] = end;
  }

  /** Multiplies the counts of all symbols from one on. */
  multiply(first: number, factor: number): void {
    for (let place = first; place < this.length; place++) this.count[place] = (this.count[place] as number) * factor;
  }
}

const NO_NOTES: string[] = [];

/** How far the reading of a formula's text has come, and what it has found. */
export class Reading {
  text = "";
  /** The name that problems open with. */
  argument = "";
  /** The index of the next character to be read. */
  at = 0;
  /** The index of the symbol whose count is read next. */
  symbolAt = 0;
  /** How many brackets are open. */
  depth = 0;
  /** The index after an amount before the whole formula, 0 where it has none. */
  firstAmountEnd = 0;
  readonly atoms = new AtomsInText();
  /** What was decided where another reading was possible. */
  notes = NO_NOTES;
  // Notes are made from left to right, so that each counts on from the one before.
  private countedTo = 0;
  private characters = 0;

  /** Forgets the formula before and starts at the first character that is no space. */
  begin(text: string, argument: string): void {
    this.text = text;
    this.argument = argument;
    this.at = isCapital(text.charCodeAt(0)) ? 0 : skipSpaces(text, text.length - text.trimStart().length);
    this.symbolAt = 0;
    this.depth = 0;
    this.firstAmountEnd = 0;
    this.atoms.length = 0;
    this.notes = NO_NOTES;
    this.countedTo = 0;
    this.characters = 0;
  }

  skipSpaces(): void {
    this.at = skipSpaces(this.text, this.at);
  }

  note(said: string): void {
    if (this.notes.length === 0) this.notes = [said];
    else this.notes.push(said);
  }

  /** The number from 1 of the character at an index, as a person counts, for a note to name. */
  characterAt(index: number): number {
    if (index < this.countedTo) return characterNumber(this.text, index);
    this.characters += characterNumber(this.text.slice(this.countedTo, index), index - this.countedTo) - 1;
    this.countedTo = index;
    return this.characters + 1;
  }

  /** The place of a character, for a problem to point at. */
  spot(index: number): Spot {
    return { argument: this.argument, text: this.text, index };
  }
}
