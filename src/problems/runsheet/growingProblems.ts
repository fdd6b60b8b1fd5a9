// Sentences about a run sheet that grows with its run.
/** What a run sheet grows by, as the pane and its messages name it. */
export const grownBy = {
  weighIns: { one: "round", many: "rounds" },
  charFirings: { one: "firing of the char", many: "firings of the char" },
  heatings: { one: "firing", many: "firings" },
  ashFirings: { one: "firing of the ash", many: "firings of the ash" },
  stages: { one: "stage", many: "stages" },
  receivers: { one: "receiver", many: "receivers" },
  replicates: { one: "sample", many: "samples" },
} as const;
type GrownBy = keyof typeof grownBy;

export const noRunSheet = "The selected sheet is no run sheet. Click into the run sheet that is to grow, then press again.";

export const olderRunSheet =
  "This run sheet was made by an earlier version and does not say what it was made with, so it cannot be grown from here. By hand: insert a copy of the last round above the total and type over it, or insert a new run sheet and type the weights over.";

/** A growth broke off, and somebody moved rows before it was finished. */
export const rearrangedWhileGrowing =
  "This run sheet grew half-way, and then its rows were moved, so it cannot be finished from here. Undo what moved them, then press again; all that was typed stands.";

/** @param missing the heading that was not found @param cell where it should stand; "" where it is the sheet's own record that is changed */
export const rearrangedRunSheet = (missing: string, cell: string): string =>
  cell === ""
    ? `The record of what this run sheet was made with was changed (${missing}…), so it cannot be grown from here. Undo that change, or insert a copy of the last round above the total by hand and type over it.`
    : `This run sheet was rearranged: "${missing}" does not stand in ${cell}, so nothing was done. Undo what moved it, or insert a copy of the last round above the total by hand and type over it.`;

/**
 * What became of a sheet whose columns or cells were put in, taken out or moved, and what to do.
 * @param missing what stands elsewhere; "" for the formula of the cell @param cell where it belongs @param stands where it is
 */
export const columnsMoved = (missing: string, cell: string, stands: string): string =>
  `A column, or cells, of this run sheet were put in, taken out or moved: ${missing === "" ? "a formula" : `"${missing}"`} belongs in ${cell} and stands in ${stands}. Undo that. To leave a sample out, clear its boxes; notes have rows of their own.`;

/** Beside a run sheet whose first lines are not found. */
export const headElsewhere = "This run sheet does not begin in A1: a column or a row was put in before it. Undo that.";

/** The same where the sheet was to be changed. */
export const nothingDone = (why: string): string => `Nothing was done. ${why}`;

/** @param cells that hold something typed, where formulas would be put and none of the sheet's own formulas looks for one */
export const noPlaceOfFormulas = (cells: readonly string[]): string =>
  `Nothing was done: ${someCells(cells)} ${cells.length === 1 ? "holds" : "hold"} something typed, and the sheet's own formulas expect none there, as after columns were moved. Undo that. If it is not to be kept, clear it, then press again.`;

export const mostOnASheet = (by: GrownBy, most: number): string =>
  `A run sheet holds at most ${most} ${grownBy[by].many}, and this one has them. Insert another run sheet to go on.`;

const NO_USE: Readonly<Record<GrownBy, string>> = {
  weighIns: "it has no rounds",
  charFirings: "no char is fired on it",
  heatings: "nothing is fired on it",
  ashFirings: "no char is burnt to ash on it",
  stages: "it is not heated in stages",
  receivers: "no liquids are caught on it",
  replicates: "a balance check has one check weight",
};

/** Where the kind of run has no such thing. */
export const noUseFor = (by: GrownBy): string =>
  `This sheet takes no further ${grownBy[by].one}: ${NO_USE[by]}. Insert a run sheet of the kind that you need.`;

/** Samples beyond the columns that stand ready need a sheet of more columns. */
export const carriedOver = (old: string, made: string, samples: number): string =>
  `Made: sheet "${made}" for ${samples} samples, with everything that stands in the boxes of "${old}". Go on there. "${old}" stays as it is, with whatever you wrote beside its tables; delete it when you have looked.`;

export const cellsInTheWay = (cells: readonly string[]): string =>
  `Nothing was done: ${someCells(cells)} ${cells.length === 1 ? "holds" : "hold"} something of yours where the larger sheet needs room. Move it, then press again.`;

/** Beside the buttons, while a growth waits to be finished. */
export const growthUnderWay = 'A change of this sheet broke off half-way; all that was typed stands. "Mend formulas" finishes it.';

/** @param because what went wrong, as a whole sentence */
export const growthBrokeOff = (because: string): string =>
  `${because} The sheet may be half-way larger; all that was typed stands. Press "Mend formulas" to finish it.`;

/** @param because what went wrong, as a whole sentence */
export const grownUnseen = (because: string): string =>
  `${because} The sheet was changed, but could not be looked at afterwards. Press "Mend formulas" to see whether it is whole.`;

/** @param cells in which something that was typed does not stand any more */
export const typedIsElsewhere = (cells: readonly string[]): string =>
  `What was typed does not stand where it should: look at ${someCells(cells)}. Somebody may have typed there meanwhile; if not, undo brings it back.`;

export const notAllFormulas = (cells: readonly string[]): string =>
  `The sheet did not take every formula: look at ${someCells(cells)}. Unmerge merged cells there, then press "Mend formulas".`;

/** What was done, in a sentence. */
export const grew = (by: GrownBy, count: number): string => `Added: ${grownBy[by].one} ${count}. Everything typed stands.`;

/** Where all weighings were in before. */
export const grewWhenComplete = " All weighings were in before: what is new may stay blank.";

export const finishedGrowth = "Finished what had broken off: the sheet is whole. Everything typed stands.";

export const mendedCells = (cells: readonly string[]): string =>
  cells.length === 0 ? "All calculated cells hold their formulas; nothing had to be mended." : `Mended: ${someCells(cells)}. No box was touched.`;

export const stillTypedOver = (cells: readonly string[]): string =>
  ` ${someCells(cells)} ${cells.length === 1 ? "holds" : "hold"} something typed over a formula: "Mend formulas" puts the formula back.`;

/** Said wherever a run is vouched for; "" where each formula is the sheet's own. */
export const otherFormulas = (cells: readonly string[]): string => {
  if (cells.length === 0) return "";
  const [formula, its] =
    cells.length === 1
      ? ["The formula", "is not the sheet's own, so its number is"]
      : ["The formulas", "are not the sheet's own, so their numbers are"];
  return `${formula} of ${someCells(cells)} ${its} not vouched for. Undo, or press Mend formulas in the task pane.`;
};

export const keptTyped = (cells: readonly string[]): string =>
  ` Somebody typed into ${someCells(cells)} meanwhile; that was kept. "Mend formulas" puts the formula back.`;

const MOST_NAMED = 4;

/** "F14", "F14 and G14", "F14, G14, H14, F15 and 7 more". */
function someCells(cells: readonly string[]): string {
  const [named, more] =
    cells.length > MOST_NAMED + 1 ? [cells.slice(0, MOST_NAMED), `${cells.length - MOST_NAMED} more`] : [cells.slice(0, -1), cells.at(-1) ?? ""];
  return named.length === 0 ? more : `${named.join(", ")} and ${more}`;
}

/** No layout of ours asks for it: a defect where it is met. */
export const movesUp = (row: number): string => `Row ${row} of the run sheet would have to move up past another.`;
