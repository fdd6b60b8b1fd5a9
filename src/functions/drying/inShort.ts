import { plainNumber } from "../../problems/quoted";

// An estimate in a sentence: more figures would claim what it does not know.
const FIGURES = 2;

/** An estimated number as a sentence shows it. */
export const inShort = (value: number): string => plainNumber(value, FIGURES);
