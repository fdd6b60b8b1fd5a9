import {
  copyKeptInPart,
  copyLacks,
  copyNotKept,
  copyNotOpened,
  copyOffered,
  copyOfFile,
  copyOpenedInPart,
  oneFileAtATime,
  nothingKeptHere,
  notShown,
  readingFailed,
  saveOutOfReach,
} from "../../src/problems/files/fileProblems";

// Sentences that no test of the room that says them reaches.

test.each([
  ["macro", 1, [], "1 set of macros"],
  ["drawing", 2, ["Kiln", "Salts"], "2 drawings (Kiln, Salts)"],
  ["comment", 2, ["Kiln", "Salts"], "2 sheets with comments (Kiln, Salts)"],
  ["outside", 12_345, ["Kiln"], "12345 cell formulas that read other workbooks, shown as the values they had (Kiln)"],
])("notShown(%j, %j, %j)", (thing, count, sheets, words) => {
  expect(notShown(thing, count, sheets)).toBe(words);
});

test("a copy is offered with its time and its first sheet, and one that could not be kept is told with the last that was", () => {
  expect(copyOffered("15 January 2026 at 09:45", ["Orchard kiln"])).toBe(
    'A copy of sheets that were not saved as a file was kept in this browser on 15 January 2026 at 09:45: "Orchard kiln". Opening it puts them in place of the sheets shown now.',
  );
  expect(copyOffered("15 January 2026 at 09:45", ["A", "B", "C"])).toContain(': "A" and 2 more sheets. ');
  expect(copyNotKept("09:45")).toBe(
    "No copy could be kept: this browser's storage is full. The last copy is from 09:45. Save the workbook as a file.",
  );
});

test("a copy of an opened file says whether the file was kept with it, and what it lacks without", () => {
  expect(copyOfFile("kiln.xlsx")).toBe("They come from kiln.xlsx, which was kept with them with everything in it.");
  expect(copyKeptInPart("09:45", "kiln.xlsx")).toBe(
    "Not saved as a file yet. A copy from 09:45 is kept in this browser, but its storage is full: what kiln.xlsx holds that is not shown here is not in the copy. Save the workbook as a file.",
  );
  expect(copyLacks("kiln.xlsx", ["2 charts (Kiln)", "1 pivot table (Runs)"])).toBe(
    "They come from kiln.xlsx, for which this browser had no room. What the file holds besides is not in the copy: 2 charts (Kiln); 1 pivot table (Runs).",
  );
  expect(copyOpenedInPart("15 January 2026 at 09:45", "kiln.xlsx")).toBe(
    "Opened the copy from 15 January 2026 at 09:45. It lacks what kiln.xlsx holds besides, which is listed; open kiln.xlsx itself where that is needed. Save the copy as a file to keep it.",
  );
  expect(oneFileAtATime).toBe("More than one file was dropped here, and nothing was opened. One workbook is open at a time: drop one file.");
});

test("what failed for no reason of the user's is told with what to do", () => {
  expect(readingFailed("TypeError: x")).toBe(
    'This file could not be read to its end, which is a defect of this page and not of the file; nothing was changed. What happened: "TypeError: x".',
  );
  expect(nothingKeptHere).toBe("This browser keeps no copy of what is not saved, as in some private windows. Save the workbook as a file.");
  expect(copyNotOpened).toBe("The copy could not be opened, so nothing was changed. It stays in this browser; try again after reloading the page.");
  expect(saveOutOfReach).toBe(
    "The part of this page that reads and writes files could not be fetched. Start its server again at the same address, or go online, and try again.",
  );
});
