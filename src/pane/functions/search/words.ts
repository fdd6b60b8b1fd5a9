import { stem } from "./stem";

// Words that ask but name nothing. "long", "more" and "yet" stay: they tell how long from how much.
const FILLERS = new Set(
  (
    "a about after again all also am an and any are as at be been before being but by calculate calculator can come could did do does doing find for from get " +
    "give given got had has have how i if in into is it its just know let like make makes may me mine much must my need needed needs of off on once one only or " +
    "our out please really shall she should show so some sort something tell than that the their them then there these they thing things this " +
    "those to try up us use using very want wanted was way we were what when where whether which while who why will with work would you your"
  ).split(" "),
);
const FOREIGN_FILLERS = new Set(
  "der die das den dem des ein eine einer eines ist im mein meine von und wie viel le la les un une de du des est mon ma et combien el los las una del mi es y cuanto".split(
    " ",
  ),
);

// French "d'humidité" is two words, English "doesn't" is one.
const ELIDED = /(?<!\p{L})(?:d|l|s|n|j|qu)['’](?=\p{L}{3})/gu;
// Asks for a time, though neither word means one by itself.
const WHEN = /\bwhen (?:will|is|are)\b/gu;

/** In which language a filler word is asked; undefined for a word that carries meaning, and for one of both. */
export function fillerIn(word: string): "English" | "another" | undefined {
  if (FILLERS.has(word) === FOREIGN_FILLERS.has(word)) return undefined;
  return FILLERS.has(word) ? "English" : "another";
}

/** Words of a text in lower case, accents and apostrophes taken off, every word there is; "when will" as "how long until". */
export function everyWord(text: string): string[] {
  const plain = text
    .toLowerCase()
    .replace(ELIDED, "")
    .replace(WHEN, "how long until")
    .replaceAll("ß", "ss")
    .normalize("NFKD")
    .replace(/[\u0300-\u036f'’]/g, "");
  return /[\p{L}\p{N}]/u.test(plain) ? (plain.match(/\{[a-z]+\}|[\p{L}\p{N}]+(?:\/[\p{L}\p{N}]+)*|[%±]/gu) ?? []) : [];
}

/** The words of a text that carry meaning, each by its stem; all of them where none does. */
export function meaningWords(text: string): string[] {
  return everyWord(text)
    .filter((word) => !FILLERS.has(word) && !FOREIGN_FILLERS.has(word))
    .map(stem);
}
