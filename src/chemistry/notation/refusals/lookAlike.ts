const CYRILLIC = { script: "Cyrillic", from: "АВЕЅІЈКМНОРСТУХаеіјорсухѕ", like: "ABESIJKMHOPCTYXaeijopcyxs" };
const GREEK = { script: "Greek", from: "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧαικνορυχ", like: "ABEZHIKMNOPTYXaiknopux" };
const FULL_WIDTH_A = 0xff21;
const FULL_WIDTH_SMALL_A = 0xff41;
const LETTERS = 26;

/** A letter of another script that looks like a Latin one: its script and the Latin letter. */
export interface LookAlike {
  readonly script: string;
  readonly latin: string;
}

/** What a character can be mistaken for, or undefined where it looks like no Latin letter. */
export function lookAlike(character: string): LookAlike | undefined {
  for (const { script, from, like } of [CYRILLIC, GREEK]) {
    const index = from.indexOf(character);
    if (index >= 0) return { script, latin: like.charAt(index) };
  }
  const code = character.charCodeAt(0);
  for (const [start, letter] of [
    [FULL_WIDTH_A, "A"],
    [FULL_WIDTH_SMALL_A, "a"],
  ] as const) {
    if (code >= start && code < start + LETTERS) return { script: "full-width", latin: String.fromCharCode(letter.charCodeAt(0) + code - start) };
  }
  return undefined;
}
