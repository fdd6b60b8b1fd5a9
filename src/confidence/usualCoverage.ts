/** The coverage factor reported where none is asked for: about 95 % (GUM, JCGM 100:2008, 6.3.3). */
export const usualCoverage = 2;
