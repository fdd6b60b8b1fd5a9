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
export const likeWords = (word: string): string[] =>
  GROUPS.filter((group) => group.includes(word))
    .flat()
    .filter((other) => other !== word);
