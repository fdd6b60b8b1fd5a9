import type { SearchedTexts } from "./functionTexts";
import { fitting, mayBeMeant, type Part } from "./fitting";
import { formulaNamed } from "./formulaNamed";
import { likeWords } from "./likeWords";
import { isRightlySpelled } from "./everydayWords";
import { isMaterial, namesApart } from "./materials";
import { namedIn, type NamedSubstance } from "./substanceNamed";
import { stem } from "./stem";
import { everyWord, meaningWords } from "./words";

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

const BY_ANY_COMPOUND = 0.9; // so that "{hydrate}" goes before "{compound}" for a hydrate

const OF_A_NAME = 0.5;
// What looks like a slip may be a word that nobody wrote down.
const OF_A_SLIP = 0.6;

/** Takes a search apart: what it names, and each other word that carries meaning. Words known to nobody fall away. */
export function queryParts(texts: SearchedTexts, query: string): Query {
  const { formulas, rest } = withoutFormulas(query, (word) => texts.isAsked(stem(word.toLowerCase())));
  const words = everyWord(rest);
  const named = namedIn(words, {
    isWord: (word) => [stem(word), ...likeWords(stem(word))].some(texts.isAsked),
    isSpoken: texts.isSpoken,
  });
  const mayStandFor = mayBeMeant(texts, words);
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
