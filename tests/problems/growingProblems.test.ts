import * as words from "../../src/problems/runsheet/growingProblems";

test.each([
  [words.noRunSheet, "The selected sheet is no run sheet. Click into the run sheet that is to grow, then press again."],
  [
    words.olderRunSheet,
    "This run sheet was made by an earlier version and does not say what it was made with, so it cannot be grown from here. By hand: insert a copy of the last round above the total and type over it, or insert a new run sheet and type the weights over.",
  ],
  [
    words.rearrangedRunSheet("1 DRYING", "A10"),
    'This run sheet was rearranged: "1 DRYING" does not stand in A10, so nothing was done. Undo what moved it, or insert a copy of the last round above the total by hand and type over it.',
  ],
  [
    words.rearrangedRunSheet("Retort run sheet 1", ""),
    "The record of what this run sheet was made with was changed (Retort run sheet 1…), so it cannot be grown from here. Undo that change, or insert a copy of the last round above the total by hand and type over it.",
  ],
  [
    words.nothingDone(words.columnsMoved("Sample 2", "D10", "E10")),
    'Nothing was done. A column, or cells, of this run sheet were put in, taken out or moved: "Sample 2" belongs in D10 and stands in E10. Undo that. To leave a sample out, clear its boxes; notes have rows of their own.',
  ],
  [
    words.columnsMoved("", "I14", "J14"),
    "A column, or cells, of this run sheet were put in, taken out or moved: a formula belongs in I14 and stands in J14. Undo that. To leave a sample out, clear its boxes; notes have rows of their own.",
  ],
  [words.headElsewhere, "This run sheet does not begin in A1: a column or a row was put in before it. Undo that."],
  [
    words.noPlaceOfFormulas(["F13", "F14"]),
    "Nothing was done: F13 and F14 hold something typed, and the sheet's own formulas expect none there, as after columns were moved. Undo that. If it is not to be kept, clear it, then press again.",
  ],
  [
    words.rearrangedWhileGrowing,
    "This run sheet grew half-way, and then its rows were moved, so it cannot be finished from here. Undo what moved them, then press again; all that was typed stands.",
  ],
  [words.mostOnASheet("weighIns", 60), "A run sheet holds at most 60 rounds, and this one has them. Insert another run sheet to go on."],
  [
    words.carriedOver("Plum", "Plum (2)", 4),
    'Made: sheet "Plum (2)" for 4 samples, with everything that stands in the boxes of "Plum". Go on there. "Plum" stays as it is, with whatever you wrote beside its tables; delete it when you have looked.',
  ],
  [words.cellsInTheWay(["D12"]), "Nothing was done: D12 holds something of yours where the larger sheet needs room. Move it, then press again."],
  [
    words.cellsInTheWay(["D12", "D13"]),
    "Nothing was done: D12 and D13 hold something of yours where the larger sheet needs room. Move it, then press again.",
  ],
  [words.growthUnderWay, 'A change of this sheet broke off half-way; all that was typed stands. "Mend formulas" finishes it.'],
  [words.growthBrokeOff("Busy."), 'Busy. The sheet may be half-way larger; all that was typed stands. Press "Mend formulas" to finish it.'],
  [
    words.grownUnseen("Busy."),
    'Busy. The sheet was changed, but could not be looked at afterwards. Press "Mend formulas" to see whether it is whole.',
  ],
  [
    words.typedIsElsewhere(["C12"]),
    "What was typed does not stand where it should: look at C12. Somebody may have typed there meanwhile; if not, undo brings it back.",
  ],
  [words.notAllFormulas(["F13"]), 'The sheet did not take every formula: look at F13. Unmerge merged cells there, then press "Mend formulas".'],
  [words.grewWhenComplete, " All weighings were in before: what is new may stay blank."],
  [words.grew("charFirings", 4), "Added: firing of the char 4. Everything typed stands."],
  [words.finishedGrowth, "Finished what had broken off: the sheet is whole. Everything typed stands."],
  [words.mendedCells([]), "All calculated cells hold their formulas; nothing had to be mended."],
  [words.mendedCells(["F1", "F2", "F3", "F4", "F5", "F6", "F7"]), "Mended: F1, F2, F3, F4 and 3 more. No box was touched."],
  [words.mendedCells(["F1", "F2", "F3", "F4", "F5"]), "Mended: F1, F2, F3, F4 and F5. No box was touched."],
  [words.stillTypedOver(["F13"]), ' F13 holds something typed over a formula: "Mend formulas" puts the formula back.'],
  [words.keptTyped(["F13"]), ' Somebody typed into F13 meanwhile; that was kept. "Mend formulas" puts the formula back.'],
  [words.movesUp(9), "Row 9 of the run sheet would have to move up past another."],
])("%s", (said, wanted) => expect(said).toBe(wanted));
