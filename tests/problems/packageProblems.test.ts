import { looksNotKept, notWrittenAnew, writtenAnew } from "../../src/problems/files/packageProblems";

test("what is said before a file is written anew", () => {
  expect(writtenAnew("runs.xlsx", "Defined names were changed.")).toBe(
    "Defined names were changed. runs.xlsx can therefore only be written anew, without what is listed here. The file you opened stays as it is.",
  );
  expect(notWrittenAnew("runs.xlsx")).toBe("runs.xlsx was not saved.");
  expect(looksNotKept).toBe("looks not known here, such as underlining and the colours of a theme, and settings of pages");
});
