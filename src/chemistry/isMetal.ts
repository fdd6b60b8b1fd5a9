import { elementOf } from "./elementOf";

const NONMETALS: readonly string[] = "H He B C N O F Ne Si P S Cl Ar As Se Br Kr Te I Xe At Rn".split(" ");

/** True for a symbol of a metal or of an isotope of one; boron, silicon, arsenic and tellurium count as none. */
export const isMetal = (symbol: string): boolean => !NONMETALS.includes(elementOf(symbol));
