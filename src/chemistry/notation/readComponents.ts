import { bareDecimal } from "../../problems/formulaProblems";
import { formulaNotes } from "./formulaNotes";
import { hydrateDots } from "./hydrateDots";
import { isBareDecimal } from "./isBareDecimal";
import { readComponent } from "./readComponent";
import type { Reading } from "./Reading";
import { skipSpaces } from "./skipSpaces";

const BRACKET_CLOSES = 0x29;

/**
 * Reads parts joined by hydrate dots, `CuSO4` and `5H2O`, up to what can be neither.
 * @throws InputProblem
 */
export function readComponents(reading: Reading): void {
  const { text } = reading;
  readComponent(reading, undefined);
  for (;;) {
    const dot = skipSpaces(text, reading.at);
    // What most parts end in, kept free of a search.
    if (dot === text.length || text.charCodeAt(dot) === BRACKET_CLOSES || !hydrateDots.includes(text.charAt(dot))) return;
    if (isBareDecimal(text, dot)) throw bareDecimal(reading.spot(dot), /^\.[\d₀-₉]+/.exec(text.slice(dot))?.[0] ?? ".");
    if (text.charAt(dot) === ".") reading.note(formulaNotes.hydrateDot(text, dot));
    reading.at = skipSpaces(text, dot + 1);
    readComponent(reading, dot);
  }
}
