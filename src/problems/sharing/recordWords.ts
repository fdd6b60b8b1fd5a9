// What a calculation record says beside formulas and values.

export const recordWords = {
  /** The columns, from the first on. */
  columns: ["Cell", "On the sheet", "Value", "Unit of the function", "Cell formula as typed, what went into it, and its form in built-in functions"],
  /** Before the lines that belong to the formula above them. */
  moving: "moving too",
  inputs: "with",
  values: "every value",
  toldAbove: "told above",
  builtIn: "built-in form",
  entered: "entered",
  functions: "Functions of Retort, each once",
  builtInGroup: "Built-in functions",
  unknownGroup: "Other functions",
  sayings: "What the sheet says of it",
  unprinted: "Formulas of what the sheet says",
} as const;

export const NOT_LISTED = "Not a function of this version of Retort.";

/** Said where the formulas of a run sheet's sentences, checks and curves are not printed. @param row of the record */
export const sayingsAbout = (row: number): string =>
  `Sentences, checks and workings of the curves, on which no number rests that is listed above. Their formulas stand on this sheet from row ${row} on and are not printed.`;

export const andMore = (count: number): string => `and ${count} more`;
export const blanks = (count: number): string => `${count} blank`;

/** Below a form that works on ranges cell by cell. */
export const enteredAsArray = "as an array: end it with Ctrl+Shift+Enter. Entered otherwise, older programs take one cell of each range.";

/** Why a call has no built-in form on the record. */
export const noFormBecause = (why: string): string => `none: ${why}`;
export const formInSeveralCells = "none in one cell: its steps take several. A copy of plain cells holds them on a sheet of workings";
export const formFillsSeveral = "none in one cell: it fills several. A copy of plain cells holds a form for each";
export const formForNowAlone = "none that stays right: it would hold for what its cells hold now. A copy of plain cells watches them";
export const formWithNames = "none here: it uses a name or a table, which a copy of plain cells looks up";
