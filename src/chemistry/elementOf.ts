/** The element of an isotope symbol: "13C" is C, "D" and "T" are H; an element's own symbol stays. */
export const elementOf = (symbol: string): string => (symbol === "D" || symbol === "T" ? "H" : symbol.replace(/^\d+/, ""));
