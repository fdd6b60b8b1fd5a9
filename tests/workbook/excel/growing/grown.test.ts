import { buildRunSheet } from "../../../../src/runsheet/buildRunSheet";
import { growRunSheet } from "../../../../src/runsheet/growing/growRunSheet";
import type { Growth } from "../../../../src/runsheet/growing/growths";
import { checkOptions } from "../../../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../../../src/runsheet/options/RunSheetOptions";
import { ExcelWorkbook } from "../../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../../host/ExcelHost";
import { loadClientLibrary } from "../../../host/loadClientLibrary";
import { hostSheetState } from "./hostSheetState";

const host = new ExcelHost();
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
beforeEach(() => {
  host.newBook();
  host.calculate = () => "";
});

const small: RunSheetOptions = { kind: "ashing", weighIns: 3, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 1, panZeros: true };
// The cautions stay below the block that they stood below.
const grownTo = (counts: Partial<RunSheetOptions>): RunSheetOptions => ({ ...checkOptions({ ...small, ...counts }), cautionsAfter: "ashing" });

test("grown by a round, a firing of each and two samples, a sheet is in every cell, look, rule and line the one inserted so", async () => {
  const name = await workbook.addSheet(buildRunSheet({ ...small, charFirings: 1, ashFirings: 1 }));
  const by: readonly Growth[] = ["weighIns", "replicates", "charFirings", "weighIns", "ashFirings", "replicates"];
  for (const growth of by) expect(await growRunSheet(workbook, name, growth)).toMatch(/^Added: /);
  const large = await workbook.addSheet(buildRunSheet(grownTo({ weighIns: 5, replicates: 3, charFirings: 2, ashFirings: 2 })));
  const [grown, inserted] = [name, large].map((one) => hostSheetState(host.book.sheet(one)));
  expect(Object.keys(inserted?.cells ?? {}).length).toBeGreaterThan(300);
  for (const part of ["cells", "looks", "rules", "heights", "emphasis", "page", "breaks", "charts", "frozenRows"] as const)
    expect([part, grown?.[part]]).toEqual([part, inserted?.[part]]);
});
