import type { Family } from "../../../functions/catalogue";
import type { CellFunction } from "../../../functions/cellFunction";
import type { Phrases, Spoken } from "../phrases/Phrases";
import { stem } from "./stem";
import { everyWord, meaningWords } from "./words";

/** One phrase or name by which a function is asked for. */
export interface Asked {
  readonly text: string;
  readonly stems: ReadonlySet<string>;
  readonly isPhrase: boolean;
  /** True for a trade word of another language than English. */
  readonly isForeign: boolean;
}

/** What is searched of one function. */
export interface SearchedFunction {
  readonly definition: CellFunction;
  readonly asked: readonly Asked[];
  /** How often each stem stands in all that is said of the function; less where it only stands in the description of an input. */
  readonly said: ReadonlyMap<string, number>;
}

/** Everything that is searched, and how much each stem tells. */
export interface SearchedTexts {
  readonly functions: readonly SearchedFunction[];
  /** Every word of names, phrases and summaries as it is written, with its stem, to mend typing errors by. */
  readonly written: ReadonlyMap<string, string>;
  /** In which language a word is written; undefined where it is written nowhere. */
  readonly writtenIn: (word: string) => "English" | "another" | undefined;
  /** True where a phrase holds these stems one behind the other. */
  readonly isSpoken: (stems: readonly string[]) => boolean;
  readonly isKnown: (stem: string) => boolean;
  readonly stems: () => Iterable<string>;
  /** True where it stands inside the name of a function, as "weigh" in CONSTANTWEIGHT. */
  readonly isInName: (stem: string) => boolean;
  /** True for a word of a phrase, name, summary or heading. */
  readonly isAsked: (stem: string) => boolean;
  /** A stem that few functions know tells more (inverse document frequency). */
  readonly tells: (stem: string) => number;
}

// An input's description is often about something beside the function.
const SAID_OF_AN_INPUT = 0.3;
// "{compound}" tells less than a word, because nearly every question names a material.
const PLACEHOLDER_TELLS = 0.75;

export function functionTexts(families: readonly Family[], phrases: Phrases): SearchedTexts {
  const functions = families.flatMap(({ heading, functions: ofFamily }) =>
    ofFamily.map((definition) => searched(definition, heading, phrases[definition.name])),
  );
  const knownTo = new Map<string, number>();
  for (const { asked, said } of functions)
    for (const word of new Set([...said.keys(), ...asked.flatMap(({ stems }) => [...stems])])) knownTo.set(word, (knownTo.get(word) ?? 0) + 1);
  const inPhrases = new Set(functions.flatMap(({ said }) => [...said].flatMap(([word, times]) => (times >= 1 ? [word] : []))));
  const wordsOf = (foreign: boolean): string[] =>
    functions.flatMap(({ asked, definition: { summary } }) =>
      [...asked.filter(({ isForeign }) => isForeign === foreign).map(({ text }) => text), ...(foreign ? [] : [summary])].flatMap(everyWord),
    );
  const [english, foreign] = [new Set(wordsOf(false)), new Set(wordsOf(true))];
  const spoken = functions.flatMap(({ asked }) => asked.map(({ text }) => inOneLine(everyWord(text).map(stem))));
  return {
    functions,
    written: new Map([...english, ...foreign].map((word) => [word, stem(word)])),
    writtenIn: (word) => (english.has(word) ? "English" : foreign.has(word) ? "another" : undefined),
    isSpoken: (stems) => spoken.some((phrase) => phrase.includes(inOneLine(stems))),
    isKnown: (word) => knownTo.has(word),
    stems: () => knownTo.keys(),
    isInName: (word) => functions.some(({ asked: [name] }) => name?.text.includes(word)),
    isAsked: (word) => inPhrases.has(word),
    tells: (word) => Math.log(1 + functions.length / (knownTo.get(word) ?? 1)) * (isPlaceholder(word) ? PLACEHOLDER_TELLS : 1),
  };
}

const inOneLine = (stems: readonly string[]): string => ` ${stems.join(" ")} `;

const isPlaceholder = (word: string): boolean => word.startsWith("{");

function searched(definition: CellFunction, heading: string, spoken: Spoken | undefined): SearchedFunction {
  const name = definition.name.toLowerCase();
  const asked = [
    { text: name, stems: new Set(meaningWords(name.replaceAll(".", " "))), isPhrase: false, isForeign: false },
    ...phrasesOf(spoken).map(({ text, isForeign }) => ({ text, stems: new Set(meaningWords(text)), isPhrase: true, isForeign })),
  ];
  const said = new Map<string, number>();
  const add = (text: string, amount: number): void => {
    for (const word of new Set(meaningWords(text))) if (!isPlaceholder(word)) said.set(word, (said.get(word) ?? 0) + amount);
  };
  for (const { text } of asked) add(text.replaceAll(".", " "), 1);
  add(definition.summary, 1);
  add(heading, 1);
  for (const [input, { about }] of Object.entries(definition.inputs)) add(`${input} ${about}`, SAID_OF_AN_INPUT);
  return { definition, asked, said };
}

function phrasesOf(spoken: Spoken | undefined): readonly Pick<Asked, "text" | "isForeign">[] {
  if (spoken === undefined) return [];
  const { en, de = [], fr = [], es = [] } = spoken;
  return [...en.map((text) => ({ text, isForeign: false })), ...[...de, ...fr, ...es].map((text) => ({ text, isForeign: true }))];
}
