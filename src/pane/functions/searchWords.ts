import type { NamedInSearch } from "./exampleWith";
import type { Findings } from "./search/searchFunctions";

const PLACEHOLDER = /\{([a-z]+)\}/g;

/** What a placeholder of a phrase is called where nothing of its kind was named. */
const KINDS: Readonly<Record<string, string>> = {
  compound: "a compound",
  hydrate: "a hydrate",
  mineral: "a mineral",
  fuel: "a fuel",
  element: "an element",
  two: "two substances",
  same: "the substance",
  materials: "two materials",
};

const formulas = ({ substances }: NamedInSearch): string => substances.map(({ name, substance }) => `${name}: ${substance.formula}`).join("; ");

/** Placeholders that no one name fills. */
const SEVERAL = new Set(["two", "materials"]);

/** What the search of functions says. */
export const searchWords = {
  /** Under a function: by which everyday words it was found. */
  foundBy: (phrase: string, { substances, elements }: NamedInSearch): string => {
    const [substance] = substances;
    const filled = phrase.replace(
      PLACEHOLDER,
      (_, kind: string) => (kind === "element" ? elements[0] : SEVERAL.has(kind) ? undefined : substance?.name) ?? KINDS[kind] ?? kind,
    );
    return `Found by: ${filled}`;
  },
  /** Beside the example: what of the search stands in it. */
  putIn: (named: NamedInSearch): string =>
    named.substances.length > 0 ? `With what you searched for, ${formulas(named)}.` : `With what you searched for, ${named.elements.join(", ")}.`,
  /** Over the list: how many were found, and how the search was read. */
  outcome: (findings: Findings, query: string): string => {
    const { found, mended, substances } = findings;
    if (found.length === 0)
      return `No function answers to "${query}". Try what you weighed or want to know, such as moisture, ash, purity of limestone, or how long to dry; or clear the box to see all.`;
    const count = found.length === 1 ? "One function." : `${found.length} functions, best match first.`;
    const read = mended.map(({ typed, readAs }) => ` "${typed}" was read as "${readAs}".`);
    return `${count}${read.join("")}${substances.length === 0 ? "" : ` Put into the examples: ${formulas(findings)}.`}`;
  },
};
