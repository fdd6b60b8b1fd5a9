/**
 * What people say who look for a function, by its name: whole everyday phrases in English, single trade words in other languages.
 * `{compound}`, `{hydrate}`, `{mineral}`, `{fuel}` and `{element}` stand for any name of that kind; `{two}` for two substances, `{same}` for one
 * that is named twice, `{materials}` for two materials that are compared.
 */
export type Phrases = Readonly<Record<string, Spoken>>;

export interface Spoken {
  readonly en: readonly string[];
  readonly de?: readonly string[];
  readonly fr?: readonly string[];
  readonly es?: readonly string[];
}
