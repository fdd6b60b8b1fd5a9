import { inFigures } from "../inFigures";

/** The first line of working of a moisture content; both weighings in g. */
export const dryingLossLine = ({ moist, dry }: { readonly moist: number; readonly dry: number }): string =>
  `loss on drying = ${inFigures(moist)} - ${inFigures(dry)} = ${inFigures(moist - dry)} g`;
