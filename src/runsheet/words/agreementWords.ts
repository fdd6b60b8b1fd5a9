/** How samples of a row agree, by the number that stands for it in the workings. */
export const agreementWords: Readonly<Record<number, string>> = {
  0: "well",
  1: "wider together than wanted",
  2: "too far apart for one value",
  3: "beyond the method's own scatter",
  4: "nobody said what they are",
  5: "beyond weighing, no wanted ± known",
};
