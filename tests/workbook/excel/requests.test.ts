import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";
import { COUNTED, countRequests, requestTable } from "./requestCounts";

// A sheet of a hundred thousand rows takes seconds where many processes share a processor.
jest.setTimeout(120_000);

const host = new ExcelHost();
loadClientLibrary(host);
let counts: Awaited<ReturnType<typeof countRequests>>;
beforeAll(async () => {
  counts = await countRequests(host);
});

// Office Add-ins documentation, "Resource limits and performance optimization for Office Add-ins".
const FIVE_MEGABYTES = 5_000_000;

describe("requests that the user waits for", () => {
  test.each(COUNTED.flatMap(({ title, most }) => (most === undefined ? [] : [[title, most] as const])))("to %s: at most %d", (title, most) => {
    const counted = counts.find(({ operation }) => operation === title);
    expect(counted?.requests).toBeGreaterThan(0);
    expect(counted?.requests).toBeLessThanOrEqual(most);
    expect(counted?.longestAnswer).toBeLessThan(FIVE_MEGABYTES);
  });

  test("are printed as a table, a row for each operation", () => {
    expect(requestTable(counts).split("\n")).toHaveLength(2 + COUNTED.length);
  });
});
