import type { SearchedTexts } from "./functionTexts";
import { likeWords } from "./likeWords";
import { namedIn, type NamedSubstance } from "./substanceNamed";
import { nearestWords } from "./typingErrors";
import { stem } from "./stem";
import { everyWord, meaningWords } from "./words";

/** One thing that a search asks for: stems that answer to it, each with how well. The first is the nearest. */
export type Part = readonly (readonly [stem: string, fits: number])[];

export interface Query {
  readonly parts: readonly Part[];
  readonly substances: readonly NamedSubstance[];
  /** Symbols of the elements named. */
  readonly elements: readonly string[];
  /** Words that were taken for others because nothing is written as they are. */
  readonly mended: readonly { readonly typed: string; readonly readAs: string }[];
}

// How well another word fits than the very one.
const BY_LIKE_WORD = 0.5;
const BY_BEGINNING = 0.8;
const BY_MENDING = 0.8;
const BY_ANY_COMPOUND = 0.9; // so that "{hydrate}" goes before "{compound}" for a hydrate

const SHORTEST_BEGINNING = 3;

/** Takes a search apart: what it names, and each other word that carries meaning. Words known to nobody fall away. */
export function queryParts(texts: SearchedTexts, query: string): Query {
  const { substances, elements, otherWords } = namedIn(everyWord(query), (word) => [stem(word), ...likeWords(stem(word))].some(texts.isAsked));
  const mended: { typed: string; readAs: string }[] = [];
  const parts = otherWords.flatMap((typed): Part[] => {
    const [word] = meaningWords(typed);
    if (word === undefined) return [];
    if (texts.isKnown(word)) return [withLikeWords(texts, [[word, 1]])];
    const beginnings = word.length < SHORTEST_BEGINNING ? [] : [...texts.stems()].filter((known) => known.startsWith(word));
    if (beginnings.length > 0)
      return [
        withLikeWords(
          texts,
          beginnings.map((known): [string, number] => [known, BY_BEGINNING]),
        ),
      ];
    if (word.length >= SHORTEST_BEGINNING && texts.isInName(word)) return [[[word, BY_BEGINNING], ...likeOf(texts, word, BY_BEGINNING)]];
    const like = likeOf(texts, word, 1);
    if (like.length > 0) return [like];
    const [nearest, ...more] = nearestWords(typed, texts.written.keys()).filter((known) => texts.isKnown(texts.written.get(known) ?? ""));
    if (nearest === undefined) return [];
    mended.push({ typed, readAs: nearest });
    return [
      withLikeWords(
        texts,
        [...new Set([nearest, ...more].map(stem))].map((known): [string, number] => [known, BY_MENDING]),
      ),
    ];
  });
  const named = substances.map(({ substance }): Part => [
    [`{${substance.kind}}`, 1],
    ["{compound}", BY_ANY_COMPOUND],
  ]);
  const together: Part[] = [
    ...(substances.length > 1 ? [[["{two}", 1]] as const] : []),
    ...(elements.length > 0 ? [[["{element}", 1]] as const] : []),
  ];
  return { parts: [...parts, ...named, ...together], substances, elements, mended };
}

const withLikeWords = (texts: SearchedTexts, fitting: readonly (readonly [string, number])[]): Part => [
  ...fitting,
  ...fitting.flatMap(([word, fits]) => likeOf(texts, word, fits)),
];

const likeOf = (texts: SearchedTexts, word: string, fits: number): [string, number][] =>
  likeWords(word)
    .filter((other) => texts.isKnown(other) || texts.isInName(other))
    .map((other) => [other, fits * BY_LIKE_WORD]);
