// ECMA-376 Part 1, 18.3.1.13: a column of n characters is n times the widest digit plus 5 pixels. The widest digit of the
// standard font (Calibri 11) is 7 pixels; a pixel is 72/96 of a point.
const WIDEST_DIGIT_PIXELS = 7;
const PADDING_PIXELS = 5;
const POINTS_A_PIXEL = 0.75;

/** The width of a column in points, as Excel's format.columnWidth takes it: 8.43 characters are 48 points. */
export const columnPoints = (characters: number): number => Math.round(characters * WIDEST_DIGIT_PIXELS + PADDING_PIXELS) * POINTS_A_PIXEL;
