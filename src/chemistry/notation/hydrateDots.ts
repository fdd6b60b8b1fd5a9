/**
 * Every mark that joins the parts of a formula, the full stop, which also stands in decimals, first. After the common ones
 * the dots of other keyboards and scripts: hyphenation point, katakana middle dots, Greek and phonetic middle dot, black circle.
 */
export const hydrateDots = ".·•∙⋅*\u2027\u30fb\uff65\u0387\ua78f\u25cf";
