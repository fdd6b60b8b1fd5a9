import { all, type Condition } from "../../expressions/choices";
import { fn, is, reckon, type Cell } from "../../expressions/Expression";
import { degreesApart } from "../../options/degrees";

// A temperature beside the sample further off the set-point than this is a slip more often than a furnace, °C; own bound, no source.
const FAR_CELSIUS = 100;

/** Whether a temperature was both set and measured, and the two lie far apart. */
export const isFarFromSet = ({ set, measured }: Readonly<Record<"set" | "measured", Cell>>, unit: "C" | "F"): Condition =>
  all(is(fn("COUNT", set, measured), "=", 2), is(fn("ABS", reckon(fn("N", measured), "-", fn("N", set))), ">", degreesApart(FAR_CELSIUS, unit)));
