import { everyGuide } from "../../help/guides/everyGuide";
import { functionsOf, type Guide } from "../../help/guides/Guide";
import type { Findings } from "../functions/search/searchFunctions";
import { everyWord } from "../functions/search/words";

/** The question that a title asks, without what follows its comma. */
const questionOf = ({ title }: Guide): readonly string[] => everyWord(title.split(",")[0] ?? title);

/**
 * The guides that answer a search: those that work with the function found first, and those whose title was typed, small words and all,
 * since "balance" alone is also a mass balance.
 */
export function guidesFor(query: string, { found: [first] }: Pick<Findings, "found">): readonly Guide[] {
  const asked = new Set(everyWord(query));
  return everyGuide.filter(
    (guide) => (first !== undefined && functionsOf(guide).includes(first.definition.name)) || questionOf(guide).every((word) => asked.has(word)),
  );
}
