import type { Spot } from "../../problems/formulaProblems";
import { AtomsInText } from "./AtomsInText";
import { isCapital } from "./isCapital";
import { skipSpaces } from "./skipSpaces";

const NO_NOTES: readonly string[] = [];

/** How far the reading of a formula's text has come, and what it has found. */
export class Reading {
  text = "";
  /** The name that problems open with. */
  argument = "";
  /** The index of the next character to be read. */
  at = 0;
  /** How many brackets are open. */
  depth = 0;
  /** The index after an amount before the whole formula, 0 where it has none. */
  firstAmountEnd = 0;
  readonly atoms = new AtomsInText();
  /** What was decided where another reading was possible. */
  notes = NO_NOTES;

  /** Forgets the formula before and starts at the first character that is no space. */
  begin(text: string, argument: string): void {
    this.text = text;
    this.argument = argument;
    this.at = isCapital(text.charCodeAt(0)) ? 0 : skipSpaces(text, text.length - text.trimStart().length);
    this.depth = 0;
    this.firstAmountEnd = 0;
    this.atoms.length = 0;
    this.notes = NO_NOTES;
  }

  skipSpaces(): void {
    this.at = skipSpaces(this.text, this.at);
  }

  note(said: string): void {
    this.notes = [...this.notes, said];
  }

  /** The place of a character, for a problem to point at. */
  spot(index: number): Spot {
    return { argument: this.argument, text: this.text, index };
  }
}
