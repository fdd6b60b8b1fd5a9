import type { CellInput } from "./Input";
import { numberInput } from "./numberInput";
import { isNothing, type NumberRule } from "./scalar";

/** A required number, or one word for nothing, which reads as 0; capitals and outer spaces do not matter. */
export const numberOrWord = (about: string, rule: NumberRule, word: string): CellInput<number> => {
  const plain = numberInput(about, rule);
  const isWord = (value: unknown): boolean => typeof value === "string" && value.trim().toLowerCase() === word;
  return {
    ...plain,
    isBlank: (value) => isNothing(value) || value === 0,
    read: (value, argument) => (isWord(value) ? 0 : plain.read(value, argument)),
  };
};
