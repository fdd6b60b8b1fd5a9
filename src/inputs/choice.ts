import { unknownChoice } from "../problems/inputProblems";
import { listed } from "../problems/quoted";
import { filledCell } from "./filledCell";
import type { CellInput } from "./Input";

/** One of a few words; capitals and outer spaces do not matter. A 0 from the host is a blank cell. */
export const choice = <C extends string>(about: string, choices: readonly C[]): CellInput<C> => ({
  ...filledCell(about, "a word", `Type one of ${listed(choices)}.`, (value, place) => {
    // Most cells hold the word as it is printed: capitals and spaces are looked into only where they do not.
    const found = choices.find((word) => word === value) ?? choices.find((word) => word.toLowerCase() === String(value).trim().toLowerCase());
    if (found === undefined) throw unknownChoice(place, value, choices);
    return found;
  }),
  choices,
  takes: { kind: "choice", words: choices },
});
