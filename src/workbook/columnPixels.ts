// ECMA-376 Part 1, 18.3.1.13: a column of n characters is n times the widest digit plus 5 pixels; the widest digit of the
// file format's default font (Calibri 11) is 7 pixels.
const WIDEST_DIGIT_PIXELS = 7;
const PADDING_PIXELS = 5;

/** A screen pixel is 1/96 inch, a point 1/72 inch (CSS Values and Units 3, 6.2). */
export const POINTS_PER_PIXEL = 0.75;

export const pixelsOf = (characters: number): number => Math.round(characters * WIDEST_DIGIT_PIXELS + PADDING_PIXELS);
export const charactersOf = (pixels: number): number => (pixels - PADDING_PIXELS) / WIDEST_DIGIT_PIXELS;
