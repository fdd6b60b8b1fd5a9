import { blankInShort, blankRule, type BlankKind } from "../problems/blankCells";
import type { Input } from "./Input";

// The host's function dialog cuts a longer line (its own published limit).
const LONGEST_LINE = 128;

/** What an input is and what a blank cell does there, in the one line that a host has for it; the second where it fits. */
export function aboutInput(input: Input<unknown>): string {
  const whole = [input.about, blankInShort(blankKind(input))].filter((part) => part !== "").join(" ");
  return input.optional || whole.length <= LONGEST_LINE ? whole : input.about;
}

/** What a blank cell and a 0 do in an input, in full. */
export const blankRuleOf = (input: Input<unknown>): string => blankRule(blankKind(input));

const blankKind = ({ optional, zero, shape, leftOut }: Input<unknown>): BlankKind => ({
  optional,
  zero,
  isColumn: shape === "column",
  ...(leftOut === undefined ? {} : { leftOut }),
});
