import { plainNumber } from "../problems/quoted";

// Balances show at most seven figures of a sample; working is for reading along, the cell keeps the full value.
export const WORKING_FIGURES = 7;

/** A computed number as a line of working shows it. */
export const inFigures = (value: number): string => plainNumber(value, WORKING_FIGURES);
