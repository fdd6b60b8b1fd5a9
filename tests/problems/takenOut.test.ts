import { rulesLines } from "../../src/command/words/shareWords";
import { WHY_FIXED } from "../../src/problems/sharing/plainCellProblems";
import { takenOutAlone, takenOutConnected, whatTaken } from "../../src/problems/sharing/sharedCopyWords";
import { isSignedFile, signatureGone } from "../../src/problems/files/signatureWords";

test("what needs a sheet that is not in the file is told by its cells", () => {
  expect(takenOutAlone([])).toBe("");
  expect(takenOutAlone([whatTaken("Tray!G1", "link")])).toBe(
    "Taken out, because it reads or leads to a sheet that is not in the file: Tray!G1 (link).",
  );
  const cells = ["H1", "H2", "H3", "H4"].map((cell) => whatTaken(`Tray!${cell}`, "smallChart"));
  expect(takenOutAlone(cells)).toBe(
    "Taken out, because they read or lead to sheets that are not in the file: Tray!H1 (small chart in a cell), Tray!H2 (small chart in a cell), Tray!H3 (small chart in a cell) and 1 more.",
  );
});

test("what reads through a connection is told apart", () => {
  expect(takenOutConnected([])).toBe("");
  expect(takenOutConnected([whatTaken("Tray!A1:B9", "query")])).toBe(
    "Taken out, because it reads through a connection, and the file carries none: Tray!A1:B9 (query). What it showed stays as values.",
  );
  expect(takenOutConnected([whatTaken("Tray!A1:B9", "query"), whatTaken("Tray", "slicer")])).toBe(
    "Taken out, because they read through a connection, and the file carries none: Tray!A1:B9 (query), Tray (slicer or timeline). What they showed stays as values.",
  );
  expect(rulesLines({ rewritten: 0, takenOut: [{ what: "query", where: "Tray!A1:B9", why: WHY_FIXED.connection }] })).toEqual([
    "1 reads through a connection and was taken out:",
    "  Tray!A1:B9 (query): it reads through a connection, and the file carries none",
  ]);
});

test("the command line tells it apart from what calls Retort", () => {
  const taken = { what: "colouring", where: "Tray!D1:D3" } as const;
  expect(
    rulesLines({
      rewritten: 0,
      takenOut: [
        { ...taken, why: WHY_FIXED.noForm },
        { ...taken, why: WHY_FIXED.notShared },
      ],
    }),
  ).toEqual([
    "1 calls Retort, has no plain form and was taken out:",
    "  Tray!D1:D3 (colours cells): this function has no form in built-in functions",
    "1 reads or leads to a sheet that is not in the file and was taken out:",
    "  Tray!D1:D3 (colours cells): it refers to a sheet that is not shared",
  ]);
});

test("a signature is spoken of on opening, and where it goes", () => {
  expect(isSignedFile).toBe(
    "This workbook carries a digital signature. It stays while nothing is changed; a changed workbook saved from here, and anything shared from it, has none.",
  );
  expect(signatureGone).toBe("The workbook it comes from carries a digital signature, which does not hold for a changed file and was taken out.");
});
