const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** The value of a superscript digit, or -1 for any other character. */
export const superscriptDigit = (character: string): number => (character === "" ? -1 : SUPERSCRIPTS.indexOf(character));
