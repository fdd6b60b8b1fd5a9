import { elementNamed } from "../../../chemistry/elementNamed";
import { elementNames } from "../../../chemistry/elementNames";
import { everySubstance } from "../substances/everySubstance";
import type { Substance } from "../substances/Substance";
import { isRightlySpelled } from "./everydayWords";
import { nearestWords } from "./typingErrors";
import { americanSpelling, stem } from "./stem";
import { everyWord } from "./words";

/** A substance or an element that a search names. */
export interface NamedSubstance {
  /** The name it was found by, as the tables have it. */
  readonly name: string;
  readonly substance: Substance;
}

export interface Named {
  readonly substances: readonly NamedSubstance[];
  /** Symbols of the elements named. */
  readonly elements: readonly string[];
  /** The words that name no substance, in their order; a name's own words where they are everyday words too and the name is not longer than they. */
  readonly otherWords: readonly string[];
  /** Those of them that are a name's own, or an element's. */
  readonly nameWords: readonly string[];
}

interface Entry extends NamedSubstance {
  readonly words: readonly string[];
}

const singular = (word: string): string => (word.length > 4 && word.endsWith("s") && !/[su]s$/.test(word) ? word.slice(0, -1) : word);
const nameWord = (word: string): string => singular(americanSpelling(word));
const nameWords = (text: string): string[] => everyWord(text).map(nameWord);

const entries: readonly Entry[] = everySubstance
  .flatMap((substance) =>
    [substance.en, substance.de, substance.fr, substance.es].flatMap((names) =>
      names === undefined ? [] : names.split(", ").flatMap((name) => entriesOf(name, substance)),
    ),
  )
  .sort((a, b) => b.words.length - a.words.length);

/** A name, and with "anhydrous" before it the same without its water. */
function entriesOf(name: string, substance: Substance): Entry[] {
  const plain: Entry = { name, substance, words: nameWords(name) };
  if (substance.kind !== "hydrate" || substance.residue === undefined) return [plain];
  const dry: Substance = { formula: substance.residue, kind: "other", en: `anhydrous ${name}` };
  return [plain, { name: dry.en, substance: dry, words: ["anhydrous", ...plain.words] }];
}

const firstWords = new Set(entries.flatMap(({ words }) => words));

/** What everyday phrases hold. */
export interface Everyday {
  readonly isWord: (word: string) => boolean;
  /** True where a phrase holds these stems one behind the other. */
  readonly isSpoken: (stems: readonly string[]) => boolean;
}

/**
 * Finds the longest names first; a word with typing errors counts where no word of everyday phrases is as it was typed.
 * The words of a longer name say nothing by themselves, as "lime" in "slaked lime", unless phrases hold the whole name.
 */
export function namedIn(words: readonly string[], { isWord, isSpoken }: Everyday): Named {
  const typed = words.map((word) => mended(nameWord(word), isWord(word) || isRightlySpelled(word) || elementOf(word).length > 0));
  const taken = new Set<number>();
  const silent = new Set<number>();
  const substances: { at: number; named: NamedSubstance }[] = [];
  for (const { words: name, ...named } of entries) {
    for (let at = 0; at + name.length <= typed.length; at++) {
      const places = name.map((_, offset) => at + offset);
      if (places.some((place) => taken.has(place)) || !name.every((word, offset) => typed[at + offset] === word)) continue;
      places.forEach((place) => taken.add(place));
      if (name.length > 1 && !isSpoken(places.map((place) => stem(words[place] ?? "")))) places.forEach((place) => silent.add(place));
      substances.push({ at, named });
    }
  }
  const elements = words.flatMap((word, at) => (taken.has(at) ? [] : elementOf(word))).filter((symbol, at, all) => all.indexOf(symbol) === at);
  const otherWords = words.filter((word, at) => !silent.has(at) && (!taken.has(at) || isWord(word)));
  const nameWords = words.filter((word, at) => !silent.has(at) && (taken.has(at) ? isWord(word) : elementOf(word).length > 0));
  return { nameWords, substances: substances.sort((a, b) => a.at - b.at).map(({ named }) => named), elements, otherWords };
}

const mended = (word: string, isRight: boolean): string =>
  isRight || firstWords.has(word) || word.length < SHORTEST_MENDED_NAME ? word : (nearestWords(word, firstWords)[0] ?? word);

const SHORTEST_MENDED_NAME = 6; // shorter names are too near to everyday words

const LEAST_NAME = 3; // "tin" is a name, "he" a word

function elementOf(word: string): string[] {
  if (word.length < LEAST_NAME || elementNames().has(word)) return [];
  try {
    return [elementNamed(singular(word))];
  } catch {
    return [];
  }
}
