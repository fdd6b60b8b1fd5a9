// What is said of a signature over a workbook file, which holds for the bytes of its parts and no longer once one of them is another.

/** Of a file that was made or saved. */
export const signatureGone = "The workbook it comes from carries a digital signature, which does not hold for a changed file and was taken out.";

/** Of a file that was opened. */
export const isSignedFile =
  "This workbook carries a digital signature. It stays while nothing is changed; a changed workbook saved from here, and anything shared from it, has none.";
