import type { FormulaSources } from "./FormulaSources";
import { calculatedFrom, type FormsHeld, type Staleness } from "./staleness";
import type { ReadSheets } from "../reading/ReadSheets";
import type { Sizes } from "./Sizes";

export interface SeenFrom {
  readonly sheets: ReadSheets;
  readonly sources: readonly FormulaSources[];
  readonly fixed: ReadonlySet<number>;
  readonly held: FormsHeld;
  readonly sizes: Sizes;
  readonly staleness: Staleness;
}

// Each is looked at over all formulas.
const MOST_LOOKED_AT = 4;

/** Formulas that do not show all that they refer to and that something fixed was calculated from, the fixed ones left aside. */
export const unseenBefore = ({ sources, fixed, staleness }: Pick<SeenFrom, "sources" | "fixed" | "staleness">): readonly number[] =>
  [...staleness.before].filter((id) => !fixed.has(id) && sources[id]?.isUnseen === true);

/**
 * Those of them that have to be fixed. What does not show its references may refer to any fixed cell, so it says so once the inputs of any have
 * changed; where it is itself an input, that would go round in a circle. It goes on where everything fixed for which it is an input, and everything
 * else whose references do not show, is calculated from it, since it then refers to none of those.
 */
export function tangledUnseen(from: SeenFrom): readonly number[] {
  const { sheets, sources, fixed, held, sizes, staleness } = from;
  const inputs = unseenBefore(from);
  if (inputs.length === 0 || inputs.length > MOST_LOOKED_AT) return inputs;
  const reached = inputs.map((id) => calculatedFrom(sheets, sources, new Set([id]), [], sizes));
  const anyReached = (id: number): boolean => reached.some((one) => one.has(id));
  const others = [...staleness.after].filter((id) => sources[id]?.isUnseen === true && !inputs.includes(id));
  const later = [...fixed, ...held.keys(), ...sizes.resized.keys()].filter(anyReached);
  return [...others, ...later].every((id) => inputs.includes(id) || reached.every((one) => one.has(id))) ? [] : inputs;
}
