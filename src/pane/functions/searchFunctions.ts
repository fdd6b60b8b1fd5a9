import type { Family } from "../../functions/catalogue";
import type { CellFunction } from "../../functions/cellFunction";

// How much a word counts by where it is found: the name says most, an input's description least.
const IN_NAME_EXACTLY = 100;
const STARTS_NAME = 60;
const IN_NAME = 30;
const IN_HEADING = 12;
const IN_SUMMARY = 8;
const IN_INPUT_NAME = 4;
const IN_INPUT_ABOUT = 2;

// Another word for the same thing counts for less than the word typed.
const LIKE_WORD = 0.25;

const WORDS_OF_NO_USE = new Set("a an and as by do does for from how in is it many much my of on or that the to what when which with".split(" "));

/**
 * The functions that answer to a search, best first: all that hold every word, or else those that hold any, most words first.
 * @returns none when no word is found anywhere
 */
export function searchFunctions(families: readonly Family[], query: string): CellFunction[] {
  const words = searchWords(query);
  const found = families.flatMap(({ heading, functions }) => functions.map((definition) => ({ definition, ...marks(definition, heading, words) })));
  const complete = found.filter(({ hits }) => hits > 0 && hits === words.length);
  return (complete.length > 0 ? complete : found.filter(({ hits }) => hits > 0))
    .sort((a, b) => b.hits - a.hits || b.weight - a.weight)
    .map(({ definition }) => definition);
}

const searchWords = (query: string): string[] =>
  query
    .toLowerCase()
    .replace(/^retort\./, "")
    .split(/[^\p{L}\p{N}.]+/u)
    .filter((word) => word !== "" && !WORDS_OF_NO_USE.has(word));

function marks(definition: CellFunction, heading: string, words: readonly string[]): { hits: number; weight: number } {
  const weights = words.map((word) =>
    Math.max(weightOf(definition, heading, word), ...likeWords(word).map((other) => LIKE_WORD * weightOf(definition, heading, other))),
  );
  return { hits: weights.filter((weight) => weight > 0).length, weight: weights.reduce((sum, weight) => sum + weight, 0) };
}

function weightOf({ name, summary, inputs }: CellFunction, heading: string, word: string): number {
  const lower = name.toLowerCase();
  if (lower === word) return IN_NAME_EXACTLY;
  if (lower.startsWith(word)) return STARTS_NAME;
  const stem = stemOf(word);
  if (lower.includes(stem)) return IN_NAME;
  const places: readonly (readonly [string, number])[] = [
    [heading, IN_HEADING],
    [summary, IN_SUMMARY],
    ...Object.entries(inputs).flatMap(([input, { about }]): [string, number][] => [
      [input, IN_INPUT_NAME],
      [about, IN_INPUT_ABOUT],
    ]),
  ];
  return Math.max(0, ...places.map(([text, weight]) => (hasWordBeginning(text, stem) ? weight : 0)));
}

const hasWordBeginning = (text: string, stem: string): boolean =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}.]+/u)
    .some((word) => word.startsWith(stem));

// Shorter words lose too much: "ring" would become "r".
const SHORTEST_STEM = 3;

/** The word without a common English ending, so that "drying" finds "dry" and "weights" finds "weight". */
function stemOf(word: string): string {
  const stem = word.replace(/(ing|ed|es|s)$/, "");
  return stem.length >= SHORTEST_STEM ? stem : word;
}

/** Words that people use for one thing, each group in lower case; a search for one also finds the others. */
const GROUPS: readonly (readonly string[])[] = [
  ["water", "moisture", "wet", "damp"],
  ["dry", "moisture"],
  ["weight", "mass", "weighing"],
  ["lost", "loss", "lose"],
  ["vapour", "vapor", "smoke", "fumes", "gas", "volatile"],
  ["char", "charcoal", "biochar", "coke"],
  ["ash", "mineral"],
  ["burn", "burning", "combustion", "combust", "fire"],
  ["steady", "constant", "finished", "done"],
  ["reaction", "equation", "balanced", "stoichiometry"],
  ["molar", "molecular"],
];

/** The other words for a word: "smoke" gives "vapour", "fumes" and so on. */
const likeWords = (word: string): string[] =>
  GROUPS.filter((group) => group.includes(word))
    .flat()
    .filter((other) => other !== word);
