import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";
import { brokenPromises, faultCases, faultTable, KINDS, OPERATIONS, type FaultCase } from "./faultTable";

// Seven hundred runs of an operation take seconds where many processes share a processor.
jest.setTimeout(120_000);

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

  test("every operation meets every kind of fault at each of its requests, done or not done, for once or for good, alone or not", () => {
    for (const { title } of OPERATIONS) {
      const some = cases.filter(({ operation }) => operation === title);
      const requests = new Set(some.map(({ fault }) => fault.after)).size;
      expect(requests).toBeGreaterThan(1);
      expect(some).toHaveLength(requests * KINDS.length * 2 * 2 * 2);
    }
  });

  test("an Excel that answers again is left with everything or with nothing, but for a formula whose answer was lost", () => {
    const left = cases.filter(({ fault, outcome }) => !fault.forGood && outcome === "left and said so");
    expect([...new Set(left.map(({ operation, fault }) => `${operation} ${fault.answerLost}`))]).toEqual(["put a formula into a cell true"]);
  });

  test("a name taken by somebody else, or a group of undo that Excel refuses, does not stop a run sheet", () => {
    const went = cases.filter(({ operation, fault }) => operation === "insert a run sheet" && !fault.forGood && fault.after > 0);
    for (const code of ["ItemAlreadyExists", "UndoNotSupported"]) {
      expect(went.filter(({ fault, outcome }) => fault.code === code && outcome !== "finished")).toEqual([]);
    }
  });

  test("the counts are printed as a table of one row for each operation and state of the host, and one for all", () => {
    const rows = faultTable(cases).split("\n");
    expect(rows).toHaveLength(2 + 2 * OPERATIONS.length + 1);
    expect(rows.at(-1)).toMatch(new RegExp(`^\\| all \\| ${cases.length} \\|.*\\| 0 \\|$`));
  });
});
