/** A cell with nothing in it, told apart from a typed 0 only as far as the host does. */
export const BLANK = Symbol("blank");

/** An error that an input cell already shows, such as #N/A. */
export class CellError {
  constructor(readonly code: string) {}
}

/** What one cell holds once the host's wrapping is taken off. The host hands many blank cells over as the number 0. */
export type CellValue = number | string | boolean | typeof BLANK | CellError;
