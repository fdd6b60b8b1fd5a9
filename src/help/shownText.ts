import type { Shown } from "../functions/cellFunction";
import { plainNumber } from "../problems/quoted";

const SHOWN_DIGITS = 8; // enough to check a hand calculation, few enough to read

/** What a cell shows, as an example prints it. */
export const shownText = (value: Shown): string =>
  typeof value === "number" ? plainNumber(value, SHOWN_DIGITS) : typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : value;
