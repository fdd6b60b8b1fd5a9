import { errorInCall, nameNotKnown, stillCalculating } from "../../src/problems/sharing/sharingProblems";

const cells = (...names: readonly string[]) => names.map((cell) => ({ cell, code: "#N/A" }));

test.each([
  [cells("B7"), 'sheet: B7 on "Tin 3" is in error (#N/A).'],
  [cells("B7", "B8"), 'sheet: B7 and B8 on "Tin 3" are in error (#N/A).'],
  [cells("B7", "B8", "B9"), 'sheet: B7, B8 and B9 on "Tin 3" are in error (#N/A).'],
  [cells("B7", "B8", "B9", "B10"), 'sheet: B7, B8 and B9 (and 1 more) on "Tin 3" are in error (#N/A).'],
  [cells("B7", "B8", "B9", "B10", "B11"), 'sheet: B7, B8 and B9 (and 2 more) on "Tin 3" are in error (#N/A).'],
])("errorInCall names up to three cells (%#)", (inTheWay, opening) => {
  expect(errorInCall("Tin 3", inTheWay).message).toBe(`${opening} Select the cell to read why under This cell, mend it, then share again.`);
});

test("stillCalculating names each code once, and counts what is waited for", () => {
  const busy = [
    { cell: "B7", code: "#BUSY!" },
    { cell: "B8", code: "#GETTING_DATA" },
    { cell: "B9", code: "#BUSY!" },
  ];
  expect(stillCalculating("Tin 3", busy)).toMatchObject({
    argument: "sheet",
    message: 'sheet: B7, B8 and B9 on "Tin 3" are not calculated yet (#BUSY!, #GETTING_DATA). Wait until each shows a value, then share again.',
  });
  expect(stillCalculating("Tin 3", busy.slice(0, 1)).advice).toBe("Wait until it shows a value, then share again.");
});

test("nameNotKnown says what to do", () => {
  expect(nameNotKnown("Tin 3", cells("B7")).message).toBe(
    'sheet: B7 on "Tin 3" is shown as #NAME?: the workbook has not loaded Retort\'s functions. Enter the cell formula again, then share again.',
  );
});
