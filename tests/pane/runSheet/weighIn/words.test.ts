import { runCellWords } from "../../../../src/problems/paneProblems";
import { calculatedByRun, RUN_CELL_DIFFERS, RUN_CELL_OTHERWISE, typedOverInRun } from "../../../../src/problems/workbook/cellNotes";
import { weighInWords } from "../../../../src/problems/runsheet/weighInWords";
import { changedSince, newerThanValue, valueMayStand, valueNotPutBack } from "../../../../src/problems/workbook/workbookProblems";

test("what is said while weighing in", () => {
  expect([weighInWords.clockEnter("lit, firing 1"), weighInWords.box("round 2", "C13"), weighInWords.noNumber("heavy")]).toEqual([
    "Lit: now",
    "Round 2 (C13)",
    '"heavy" is not a number. Type digits, such as 51.21.',
  ]);
  expect([weighInWords.lost("0.40"), weighInWords.lost("-0.40")]).toEqual(["Lost 0.40 g.", "Gained 0.40 g."]);
  expect(weighInWords.clockLeft("It broke.")).toBe("The reading stands, but its time could not be written: It broke.");
  expect([weighInWords.due("29:07"), weighInWords.overdue("00:12"), weighInWords.isDue]).toEqual([
    "Next round due in 29:07",
    "Next round overdue by 00:12",
    "The next round is due.",
  ]);
  expect([weighInWords.takenBack("round 2", "C13"), weighInWords.takenOut("round 2", "C13"), weighInWords.askedAgain("round 2", "C13")]).toEqual([
    "Round 2, C13: taken back. Correct it and press Enter.",
    "Round 2, C13: taken back. Another box before it is blank, and comes first.",
    "Round 2, C13: not left blank after all.",
  ]);
  expect(weighInWords.done).toBe("Nothing is left to weigh on this sheet.");
});

test("what is said of kinds of run that catch, stage or check a balance", () => {
  expect([weighInWords.caught("7.40"), weighInWords.caught("-0.30"), weighInWords.left("85.60")]).toEqual([
    "Caught 7.40 g.",
    "Lighter by 0.30 g.",
    "Left: 85.60 % of the dry sample.",
  ]);
  expect([weighInWords.offWeight("0.01"), weighInWords.offWeight("-0.01"), weighInWords.offWeight("0.00"), weighInWords.offCentre("-0.07")]).toEqual([
    "0.01 g above the weight's value.",
    "0.01 g below the weight's value.",
    "As the weight's value.",
    "0.07 g below the centre.",
  ]);
  expect(weighInWords.lighterAfterFire("-0.30")).toBe("it is 0.30 g lighter than before the fire. Weigh it again, and look which part it is.");
  expect([weighInWords.toWeighing, weighInWords.noMoreStages, weighInWords.noCorners, weighInWords.noLedger]).toEqual([
    "Straight to the weighing",
    "No more stages",
    "No corners this time",
    "Leave gas, water and ± blank",
  ]);
  expect([weighInWords.day, weighInWords.today("2026-11-21"), weighInWords.noDay, weighInWords.blankWords("what left, stage 1")]).toEqual([
    "Day of it",
    "today: 2026-11-21",
    "Type the day as 21 Nov 2026 or 2026-11-21. Left blank, it is today.",
    "What left, stage 1: nothing here. Type a word or two, or leave the box blank.",
  ]);
  expect([weighInWords.opening.due("29:07"), weighInWords.opening.overdue("00:12"), weighInWords.opening.isDue]).toEqual([
    "Keep it closed for another 29:07",
    "Closed 00:12 longer than is set: open it if it is cold",
    "The vessel has been closed for as long as is set. Open it once it is cold.",
  ]);
});

test("what is said of a value that could not be put in or taken back", () => {
  expect(changedSince("C12")).toBe("Cell C12 holds something else by now, so it was left as it is. Look at it in the sheet.");
  expect(valueMayStand("It broke.", "C12")).toBe(
    "It broke. Look at cell C12 before you go on: it may have been written. If something of yours stood there, undo brings it back.",
  );
  expect(valueNotPutBack("C12", "65.2")).toBe(
    'Something came into cell C12 just before it was written, and could not be put back. It was "65.2": look at the cell, and type that again if it is not there. Undo brings back anything newer.',
  );
  expect(newerThanValue("C12", ["65.2", "65.3"])).toBe(
    'Cell C12 is being typed into, so nothing was kept there. What stands there now is the newest; before that it was "65.2" and "65.3".',
  );
});

test("what is said of a cell of a run sheet besides its explanation", () => {
  expect(calculatedByRun("F13", "lost, round 2")).toBe("F13 is calculated by this run sheet: lost, round 2.");
  expect(typedOverInRun("F13")).toBe(
    "F13 was typed over: the sheet calculates here, and its formula is gone. Undo, or press Mend formulas in the task pane.",
  );
  expect(RUN_CELL_OTHERWISE).toBe(
    "The formula here is not the one this sheet was made with: rows were put in beside it, or it was changed. What follows explains the formula as it stands.",
  );
  expect(RUN_CELL_DIFFERS).toBe(
    "The sheet shows otherwise than this formula gives for what stands in its cells now, so no arithmetic is given. Recalculate; if it stays, look for a cell that was typed over.",
  );
  expect([
    runCellWords.summary("F13", "lost, round 2", "9.89 g", "", []),
    runCellWords.summary("F13", "lost, round 2", "", "round 2 (C13) is blank", []),
    runCellWords.summary("C60", "finding", "", "", ["Look again."]),
  ]).toEqual(["F13, lost, round 2: 9.89 g.", "F13, lost, round 2: not yet: round 2 (C13) is blank.", "C60, finding: shows nothing. Look again."]);
});
