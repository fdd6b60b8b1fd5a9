import type { OddCase, Outcome } from "./oddCases";
import { oddBook } from "./oddBook";

/** The bytes of a case's file. */
export const fileOf = ({ book }: OddCase): Uint8Array<ArrayBuffer> => (typeof book === "function" ? book() : oddBook(book));

/** Begins what a copy says of itself, in each kind of copy. */
export const SAYS = { values: /^Values of /, plain: /^Plain cells of / } as const;

export const isRefused = (outcome: Outcome | undefined): outcome is RegExp => outcome instanceof RegExp;

/** What else a copy of a case has to keep and to say. */
export const promisedOf = ({ keeps = [], keepsParts = [], records = {} }: OddCase, kind: keyof typeof SAYS) => ({
  keeps,
  keepsParts,
  records: records[kind] ?? [],
});
