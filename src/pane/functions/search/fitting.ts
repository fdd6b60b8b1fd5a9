import { isRightlySpelled } from "./everydayWords";
import type { SearchedTexts } from "./functionTexts";
import { likeWords } from "./likeWords";
import { stem } from "./stem";
import { nearestWords } from "./typingErrors";
import { fillerIn } from "./words";

/** One thing that a search asks for: stems that answer to it, each with how well. The first is the nearest. */
export type Part = readonly (readonly [stem: string, fits: number])[];

// How well another word fits than the very one.
const BY_LIKE_WORD = 0.5;
const BY_BEGINNING = 0.8;
const BY_MENDING = 0.8;

const SHORTEST_BEGINNING = 3;
// German joins words, the one that says what it is at the end: "Restfeuchte".
const SHORTEST_ENDING = 5;

export interface Fitting {
  readonly part: Part;
  /** The word that a mistyped one was taken for. */
  readonly readAs?: string;
}

/** The words that a slip in a search may stand for: in a search in English no trade word of another language. */
export function mayBeMeant(texts: SearchedTexts, words: readonly string[]): readonly string[] {
  const languages = words.map((word) => texts.writtenIn(word) ?? fillerIn(word) ?? (isRightlySpelled(word) ? "English" : undefined));
  const isEnglish = languages.includes("English") && !languages.includes("another");
  const known = [...texts.written.keys()].filter((word) => texts.isKnown(texts.written.get(word) ?? ""));
  return isEnglish ? known.filter((word) => texts.writtenIn(word) === "English") : known;
}

/**
 * What a word of a search answers to: itself, words that begin so, a name or a like word, what it is a slip of, or what it ends in.
 * @param mayStandFor the words it may be a slip of; undefined for a word that is spelled as it should be
 */
export function fitting(texts: SearchedTexts, typed: string, word: string, mayStandFor: readonly string[] | undefined): Fitting | undefined {
  const each = (stems: readonly string[], fits: number): Fitting => ({
    part: withLikeWords(
      texts,
      stems.map((known): [string, number] => [known, fits]),
    ),
  });
  if (texts.isKnown(word)) return each([word], 1);
  const beginnings = word.length < SHORTEST_BEGINNING ? [] : [...texts.stems()].filter((known) => known.startsWith(word));
  if (beginnings.length > 0) return each(beginnings, BY_BEGINNING);
  if (word.length >= SHORTEST_BEGINNING && texts.isInName(word)) return { part: [[word, BY_BEGINNING], ...likeOf(texts, word, BY_BEGINNING)] };
  const like = likeOf(texts, word, 1);
  if (like.length > 0) return { part: like };
  if (mayStandFor === undefined) return undefined;
  const nearest = nearestWords(typed, mayStandFor);
  const [readAs] = nearest;
  if (readAs !== undefined) return { ...each([...new Set(nearest.map(stem))], BY_MENDING), readAs };
  const ending = [...texts.written.keys()]
    .filter((known) => known.length >= SHORTEST_ENDING && typed.endsWith(known))
    .sort((a, b) => b.length - a.length)[0];
  return ending === undefined ? undefined : each([stem(ending)], BY_BEGINNING);
}

const withLikeWords = (texts: SearchedTexts, fitting: readonly (readonly [string, number])[]): Part => [
  ...fitting,
  ...fitting.flatMap(([word, fits]) => likeOf(texts, word, fits)),
];

const likeOf = (texts: SearchedTexts, word: string, fits: number): [string, number][] =>
  likeWords(word)
    .filter((other) => texts.isKnown(other) || texts.isInName(other))
    .map((other) => [other, fits * BY_LIKE_WORD]);
