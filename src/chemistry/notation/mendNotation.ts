import { formulaNotes } from "./formulaNotes";
import { hydrateDots } from "./hydrates/hydrateDot";

/** A text in another notation of print, written as the reader takes it, and what was decided on the way: one clause each. */
export interface Mended {
  readonly text: string;
  readonly notes: readonly string[];
}

const TIMES = /[x×X✕⨯]/g;
const FORMULA_ENDS = /[A-Za-z\d)\]}₀-₉]/;
const SUBSCRIPT = /_(?:\{(\d+(?:[.,]\d+)?)\}|(\d))/g;
const ARROWS: ReadonlyMap<string, string> = new Map([
  ["↑", "gas given off"],
  ["↓", "solid that settles"],
]);

/**
 * What bottle labels, text-books and typesetting write and has one meaning: `CuSO4 x 5H2O`, `CO2↑`, `H2O.` at the end of a sentence, `H_2O`.
 * Asked only for a text that could not be read as it stands, so that nothing readable changes.
 * @returns undefined where the text holds nothing of the kind
 */
export function mendNotation(text: string): Mended | undefined {
  const notes: string[] = [];
  const mended = withoutUnderscores(withDots(withoutEnd(text, notes), notes), notes);
  return notes.length === 0 ? undefined : { text: mended, notes };
}

function withoutEnd(text: string, notes: string[]): string {
  const trimmed = text.trimEnd();
  const last = trimmed.slice(-1);
  const arrow = ARROWS.get(last);
  const rest = trimmed.slice(0, -1).trimEnd();
  if (arrow !== undefined) notes.push(formulaNotes.arrow(last, arrow));
  else if (last === "." && rest !== "" && !hydrateDots.includes(rest.slice(-1))) notes.push(formulaNotes.endOfSentence);
  else return text;
  return rest;
}

/** A times sign behind a formula and before an amount becomes a hydrate dot; × also before the water alone. */
function withDots(text: string, notes: string[]): string {
  // The sign of `3 × H2O` has a number alone before it.
  const firstSymbol = text.search(/[A-Z]/);
  return text.replace(TIMES, (sign, at: number) => {
    const behind = nextCharacter(text, at, 1);
    const isTimes = /[\d½⅓⅔¼¾⅛]/.test(behind) || (sign === "×" && /[A-Z([{]/.test(behind));
    if (!isTimes || !FORMULA_ENDS.test(nextCharacter(text, at, -1)) || at < firstSymbol || firstSymbol < 0) return sign;
    notes.push(formulaNotes.timesSign(sign));
    return "·";
  });
}

function nextCharacter(text: string, at: number, step: 1 | -1): string {
  let place = at + step;
  while (text.charAt(place) === " " || text.charAt(place) === "\u00a0") place += step;
  return text.charAt(place);
}

function withoutUnderscores(text: string, notes: string[]): string {
  // Behind a digit it is no subscript: CuSO4_5H2O names a hydrate.
  const plain = text.replace(SUBSCRIPT, (seen, braced: string | undefined, digit: string | undefined, at: number) =>
    /[\d₀-₉]/.test(text.charAt(at - 1)) ? seen : (braced ?? digit ?? ""),
  );
  if (plain !== text) notes.push(formulaNotes.underscores);
  return plain;
}
