import { pixelsOf, POINTS_PER_PIXEL } from "../columnPixels";

/** The width of a column in points, as Excel's format.columnWidth takes it: 8.43 characters are 48 points. */
export const columnPoints = (characters: number): number => pixelsOf(characters) * POINTS_PER_PIXEL;
