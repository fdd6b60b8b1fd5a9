import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";
import type { FaultCase } from "./faults/faultCase";
import { brokenPromises, faultCases, faultTable, KINDS } from "./faults/faultTable";
import { OPERATIONS } from "./faults/operations";

// Some 2,400 runs of an operation take half a minute where many processes share a processor.
jest.setTimeout(300_000);

const host = new ExcelHost();
loadClientLibrary(host);
let cases: readonly FaultCase[];
beforeAll(async () => {
  cases = await faultCases(host);
});

describe("whatever request of whatever operation fails, in whatever way, and whoever else is at work:", () => {
  test("no cell of the user's is lost, no sheet of anybody else's removed, nothing left unmentioned, and no copy called values is live", () => {
    expect(cases.filter(({ broken }) => broken.length > 0)).toEqual([]);
    expect(brokenPromises(cases)).toEqual({});
  });

  test("every operation meets every kind of fault at each of its requests, done or not done or broken off half-way, for once or for good", () => {
    for (const { title, actsFrom } of OPERATIONS) {
      const faults = cases.flatMap(({ operation, fault, rival }) =>
        operation === title && rival === undefined && fault !== undefined ? [fault] : [],
      );
      const requests = new Set(faults.map(({ after }) => after)).size;
      expect(requests).toBeGreaterThan(1);
      expect(faults.filter(({ actionsDone }) => actionsDone === undefined)).toHaveLength(requests * KINDS.length * 2 * 2);
      const halfWay = new Set(faults.filter(({ actionsDone }) => actionsDone !== undefined).map(({ after }) => after));
      expect([...halfWay].sort()).toEqual(Array.from({ length: requests - actsFrom }, (_, index) => actsFrom + index));
    }
  });

  test("every operation meets everybody who may be at work, alone and together with a host that answers again and one that does not", () => {
    for (const { title, rivals } of OPERATIONS)
      for (const rival of rivals) {
        const met = cases.filter((one) => one.operation === title && one.rival === rival.title);
        expect([title, rival.title, ...new Set(met.map(({ fault }) => String(fault?.forGood)))].sort()).toEqual(
          [title, rival.title, "undefined", "false", "true"].sort(),
        );
      }
  });

  test("what is typed goes only with a sheet removed in the very next request, or where the answer to that very request was lost", () => {
    const went = cases.filter(({ inTheWindow }) => inTheWindow);
    expect(new Set(went.map(({ operation }) => operation))).toEqual(
      new Set(["insert a run sheet", "share a sheet", "share a sheet as plain cells", "remove an unfinished sheet"]),
    );
    expect(went.length).toBeLessThan(cases.length / 20);
    expect(went.filter(({ operation, fault }) => operation !== "remove an unfinished sheet" && fault === undefined)).toEqual([]);
  });

  test("an Excel that answers again is left with everything or with nothing, but where the answer was lost that told of a formula or of a sheet without a mark", () => {
    const left = cases.filter(({ fault, rival, outcome }) => rival === undefined && fault?.forGood === false && outcome === "left and said so");
    const which = left.map(({ operation, fault }) => `${operation}, ${fault?.actionsDone === undefined ? "" : "half-way, "}${fault?.answerLost}`);
    expect([...new Set(which)].filter((one) => !one.startsWith("remove")).sort()).toEqual([
      "insert a run sheet, half-way, true",
      "put a formula into a cell, half-way, false",
      "put a formula into a cell, half-way, true",
      "put a formula into a cell, true",
      "put a value into a blank cell, half-way, false",
      "put a value into a blank cell, half-way, true",
      "put a value into a blank cell, true",
      "take a value back, half-way, false",
      "take a value back, half-way, true",
      "take a value back, true",
    ]);
  });

  test("a name taken by somebody else, or a group of undo that Excel refuses, does not stop a run sheet", () => {
    const went = cases.filter(({ operation, fault, rival, rivalAt }) => {
      // A listing is never answered with these codes, so they count where the request that makes or finishes the sheet meets them.
      const isAlone = rival === undefined || (rival.startsWith("a sheet takes the name") && rivalAt === fault?.after);
      return operation === "insert a run sheet" && isAlone && fault?.forGood === false && fault.after > 0;
    });
    for (const code of ["ItemAlreadyExists", "UndoNotSupported"]) {
      const met = went.filter(({ fault }) => fault?.code === code);
      expect(met.length).toBeGreaterThan(0);
      expect(met.filter(({ outcome }) => outcome !== "finished")).toEqual([]);
    }
  });

  test("the counts are printed as a table of a row for each operation and circumstance, and one for all", () => {
    const rows = faultTable(cases).split("\n");
    expect(rows).toHaveLength(2 + 5 * OPERATIONS.length + 1);
    expect(rows.at(-1)).toMatch(new RegExp(`^\\| all \\| ${cases.length} \\|.*\\| 0 \\|$`));
  });
});
