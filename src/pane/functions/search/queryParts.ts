import type { SearchedTexts } from "./functionTexts";
import { formulaNamed } from "./formulaNamed";
import { likeWords } from "./likeWords";
import { isRightlySpelled } from "./everydayWords";
import { isMaterial, namesApart } from "./materials";
import { namedIn, type NamedSubstance } from "./substanceNamed";
import { nearestWords } from "./typingErrors";
import { stem } from "./stem";
import { everyWord, fillerIn, meaningWords } from "./words";

/** One thing that a search asks for: stems that answer to it, each with how well. The first is the nearest. */
export type Part = readonly (readonly [stem: string, fits: number])[];

export interface Query {
  readonly parts: readonly Part[];
  readonly substances: readonly NamedSubstance[];
  /** Symbols of the elements named. */
  readonly elements: readonly string[];
  /** How much of its worth each part keeps: a word that names a substance, an element or a material tells less, since it asks for nothing. */
  readonly weights: readonly number[];
  /** Words that were taken for others because nothing is written as they are. */
  readonly mended: readonly { readonly typed: string; readonly readAs: string }[];
}

// How well another word fits than the very one.
const BY_LIKE_WORD = 0.5;
const BY_BEGINNING = 0.8;
const BY_MENDING = 0.8;
const BY_ANY_COMPOUND = 0.9; // so that "{hydrate}" goes before "{compound}" for a hydrate

const OF_A_NAME = 0.5;
// What looks like a slip may be a word that nobody wrote down.
const OF_A_SLIP = 0.6;

const SHORTEST_BEGINNING = 3;
// German joins words, the one that says what it is at the end: "Restfeuchte".
const SHORTEST_ENDING = 5;

/** Takes a search apart: what it names, and each other word that carries meaning. Words known to nobody fall away. */
export function queryParts(texts: SearchedTexts, query: string): Query {
  const { formulas, rest } = withoutFormulas(query, (word) => texts.isAsked(stem(word.toLowerCase())));
  const words = everyWord(rest);
  const named = namedIn(words, {
    isWord: (word) => [stem(word), ...likeWords(stem(word))].some(texts.isAsked),
    isSpoken: texts.isSpoken,
  });
  const mayStandFor = readable(texts, words);
  const { elements, otherWords } = named;
  const all = [...formulas, ...named.substances];
  // Chalk and calcium carbonate are one substance by two names.
  const substances = all.filter(({ substance }, at) => all.findIndex((other) => other.substance.formula === substance.formula) === at);
  const mended: { typed: string; readAs: string }[] = [];
  const weights: number[] = [];
  const parts = otherWords.flatMap((typed): Part[] => {
    const [word] = meaningWords(typed);
    if (word === undefined) return [];
    const isName = named.nameWords.includes(typed) || isMaterial(typed);
    const found = fitting(texts, typed, word, isName || isRightlySpelled(typed) ? undefined : mayStandFor);
    if (found === undefined) return [];
    if (found.readAs !== undefined) mended.push({ typed, readAs: found.readAs });
    weights.push(isName ? OF_A_NAME : found.readAs === undefined ? 1 : OF_A_SLIP);
    return [found.part];
  });
  const kinds = substances.map(({ substance }): Part => [
    // A kind that no phrase asks for would seem to tell most of all.
    ...(texts.isKnown(`{${substance.kind}}`) ? ([[`{${substance.kind}}`, 1]] as const) : []),
    ["{compound}", BY_ANY_COMPOUND],
  ]);
  const together: Part[] = [
    ...(substances.length > 1 ? [[["{two}", 1]] as const] : []),
    ...(new Set(all.map(({ name }) => name)).size > substances.length ? [[["{same}", 1]] as const] : []),
    ...(namesApart(words) > 1 && parts.some(isComparing) ? [[["{materials}", 1]] as const] : []),
    ...(elements.length > 0 ? [[["{element}", 1]] as const] : []),
  ];
  const more = [...kinds, ...together];
  return {
    parts: [...parts, ...more],
    weights: [...weights, ...kinds.map(() => 1 / kinds.length), ...together.map(() => 1)],
    substances,
    elements,
    mended,
  };
}

const isComparing = (part: Part): boolean => part.some(([word]) => word === stem("compare"));

interface Fitting {
  readonly part: Part;
  /** The word that a mistyped one was taken for. */
  readonly readAs?: string;
}

/** The words that a slip in a search may stand for: in a search in English no trade word of another language. */
function readable(texts: SearchedTexts, words: readonly string[]): readonly string[] {
  const languages = words.map((word) => texts.writtenIn(word) ?? fillerIn(word) ?? (isRightlySpelled(word) ? "English" : undefined));
  const isEnglish = languages.includes("English") && !languages.includes("another");
  const known = [...texts.written.keys()].filter((word) => texts.isKnown(texts.written.get(word) ?? ""));
  return isEnglish ? known.filter((word) => texts.writtenIn(word) === "English") : known;
}

/**
 * What a word of a search answers to: itself, words that begin so, a name or a like word, what it is a slip of, or what it ends in.
 * @param mayStandFor the words it may be a slip of; undefined for a word that is spelled as it should be
 */
function fitting(texts: SearchedTexts, typed: string, word: string, mayStandFor: readonly string[] | undefined): Fitting | undefined {
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

// How much of it there is asks for nothing: "10 g of wood", "at 600 degrees".
const AMOUNT =
  /(?<![\p{L}\p{N}.])\d+(?:[.,]\d+)? ?(?:g|kg|mg|t|ml|l|litres?|liters?|min|h|hours?|days?|°[cf]|c|f|degrees?|percent|%)?(?![\p{L}\p{N}])/giu;

/** Formulas typed into a search, which are read before the words are, because their capitals tell them. */
function withoutFormulas(query: string, isEveryday: (word: string) => boolean): { formulas: readonly NamedSubstance[]; rest: string } {
  const formulas: NamedSubstance[] = [];
  const words = (/[^\s\d.,%]/.test(query) ? query.replace(AMOUNT, " ") : query).split(/\s+/).filter((word) => {
    const typed = word.replace(/["'“”?!,;:]/g, "");
    // "CO2" is a word of phrases too.
    const substance = isEveryday(typed) ? undefined : formulaNamed(typed);
    if (substance !== undefined) formulas.push({ name: typed, substance });
    return substance === undefined;
  });
  return { formulas, rest: words.join(" ") };
}
