// Three figures say how large a limit or a loss is; more would crowd the sentence.
const FIGURES = 3;

/** A number as a sentence names its size. */
export const threeFigures = (value: number): number => Number(value.toPrecision(FIGURES));
