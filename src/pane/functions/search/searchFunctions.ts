import type { Family } from "../../../functions/catalogue";
import type { CellFunction } from "../../../functions/cellFunction";
import { everyPhrase } from "../phrases/everyPhrase";
import type { Phrases } from "../phrases/Phrases";
import type { Part } from "./fitting";
import { functionTexts, type Asked, type SearchedFunction, type SearchedTexts } from "./functionTexts";
import { queryParts, type Query } from "./queryParts";

/** A function that answers to a search, with the everyday phrase it was found by where that says most. */
export interface Finding {
  readonly definition: CellFunction;
  readonly phrase?: string;
}

/** What a search found, best first, and how its words were read. */
export interface Findings extends Omit<Query, "parts" | "weights"> {
  readonly found: readonly Finding[];
}

// The weights below were settled on the tuned half of the questions under tests/pane/functions/questions.

// How much of the question a phrase answers counts for more than proportion: half the words are less than half the question.
const ANSWERED_POWER = 1.5;
// Of a phrase's worth, what does not depend on how much of the phrase itself was asked.
const WHATEVER_ELSE_IT_SAYS = 0.45;
// All that is said of a function, beside its best phrase.
const SAID_OF_IT = 0.8;
// A word said so often counts for half of what it could (the k1 of BM25).
const HALF_SAID = 1.2;
const SHORTEST_IN_NAME = 4; // CHARYIELD holds "char" and "yield", and by chance "hary"
const BY_ITS_NAME = 10;
// What is far behind the best is left out.
const LEAST_OF_BEST = 0.3;

let remembered: { readonly families: readonly Family[]; readonly phrases: Phrases; readonly texts: SearchedTexts } | undefined;

function textsOf(families: readonly Family[], phrases: Phrases): SearchedTexts {
  if (remembered?.families !== families || remembered.phrases !== phrases)
    remembered = { families, phrases, texts: functionTexts(families, phrases) };
  return remembered.texts;
}

/**
 * The functions that answer to a search in everyday words, best first. Each is ranked by the one phrase that answers most of the
 * question and is answered most by it, and by all that is said of the function; words that few functions know count for more.
 * Filler words are passed over, typing errors mended, and names of substances stand for their kind.
 * @returns none found when no word is known
 */
export function searchFunctions(families: readonly Family[], query: string, phrases: Phrases = everyPhrase): Findings {
  const texts = textsOf(families, phrases);
  const typed = query.trim().replace(/^=?\s*retort\./i, "");
  const { parts, weights, ...read } = queryParts(texts, typed);
  const tells = parts.map(([first], at) => (first === undefined ? 0 : texts.tells(first[0]) * (weights[at] ?? 1)));
  const total = tells.reduce((sum, each) => sum + each, 0);
  const ranked = texts.functions.map((searched) => {
    const { worth, phrase } = bestAsked(texts, searched, parts, tells, total);
    const named = lettersOf(searched.definition.name) === lettersOf(typed) ? BY_ITS_NAME : 0;
    return { definition: searched.definition, phrase, worth: named + worth + SAID_OF_IT * shareSaid(searched, parts, tells, total) };
  });
  const best = Math.max(...ranked.map(({ worth }) => worth));
  const found = ranked
    .filter(({ worth }) => worth > 0 && worth > LEAST_OF_BEST * best)
    .sort((a, b) => b.worth - a.worth)
    .map(({ definition, phrase }) => (phrase === undefined ? { definition } : { definition, phrase }));
  return { found, ...read };
}

/** A name however it is parted: "molar mass" is MOLARMASS. */
const lettersOf = (text: string): string => text.toLowerCase().replace(/[\s.]/g, "");

interface Worth {
  readonly worth: number;
  readonly phrase?: string;
}

function bestAsked(texts: SearchedTexts, { asked }: SearchedFunction, parts: readonly Part[], tells: readonly number[], total: number): Worth {
  return asked.reduce<Worth>(
    (best, one) => {
      const worth = worthOf(texts, one, parts, tells, total);
      if (worth <= best.worth) return best;
      return one.isPhrase ? { worth, phrase: one.text } : { worth };
    },
    { worth: 0 },
  );
}

function worthOf(texts: SearchedTexts, { stems, text, isPhrase }: Asked, parts: readonly Part[], tells: readonly number[], total: number): number {
  const matched = new Map<string, number>();
  let answered = 0;
  parts.forEach((part, at) => {
    const [word, fits] = bestFit(part, (candidate) =>
      stems.has(candidate) || (!isPhrase && candidate.length >= SHORTEST_IN_NAME && text.includes(candidate)) ? 1 : 0,
    );
    answered += fits * (tells[at] ?? 0);
    matched.set(word, Math.max(fits, matched.get(word) ?? 0));
  });
  if (answered === 0) return 0;
  if (!isPhrase) return (answered / total) ** ANSWERED_POWER * (WHATEVER_ELSE_IT_SAYS + (1 - WHATEVER_ELSE_IT_SAYS) * shareOfName(text, matched));
  let asked = 0;
  let all = 0;
  for (const word of stems) {
    all += texts.tells(word);
    asked += texts.tells(word) * (matched.get(word) ?? 0);
  }
  return (answered / total) ** ANSWERED_POWER * (WHATEVER_ELSE_IT_SAYS + (1 - WHATEVER_ELSE_IT_SAYS) * (asked / all));
}

/** How much of a function's name the matched words spell: "fixed" and "carbon" all of FIXEDCARBON. */
function shareOfName(name: string, matched: ReadonlyMap<string, number>): number {
  const letters = name.replaceAll(".", "");
  let left = letters;
  for (const [word, fits] of matched) if (fits > 0 && word !== "") left = left.replace(word, "");
  return 1 - left.length / letters.length;
}

function shareSaid({ said }: SearchedFunction, parts: readonly Part[], tells: readonly number[], total: number): number {
  if (total === 0) return 0;
  const saturated = (times: number): number => (times * (1 + HALF_SAID)) / (times + HALF_SAID);
  return parts.reduce((sum, part, at) => sum + (tells[at] ?? 0) * bestFit(part, (word) => saturated(said.get(word) ?? 0))[1], 0) / total;
}

function bestFit(part: Part, worth: (stem: string) => number): readonly [stem: string, fits: number] {
  let best: readonly [string, number] = ["", 0];
  for (const [word, fits] of part) {
    const fit = fits * worth(word);
    if (fit > best[1]) best = [word, fit];
  }
  return best;
}
