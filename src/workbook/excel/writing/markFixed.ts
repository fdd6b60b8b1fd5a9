import { rangeOf } from "../../cellArea";
import { FIXED_FILL } from "../../sheetStyles";
import { alikeAreas } from "./alikeAreas";
import { setLater, type WrittenLater } from "./weighed";

/** Fills cells that are fixed at their values; everything else of their look stays. */
export const markFixed = (worksheet: Excel.Worksheet, cells: readonly string[]): WrittenLater[] =>
  alikeAreas(
    cells.map((cell) => ({ cell })),
    () => "fixed",
  ).map(({ area }) => setLater(1, () => void (worksheet.getRange(rangeOf(area)).format.fill.color = FIXED_FILL)));
