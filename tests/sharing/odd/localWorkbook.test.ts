import type { FileKind } from "../../../src/sharing/shareInFile";
import { shareInFile } from "../../../src/sharing/shareInFile";
import { openFile } from "../../../src/workbench/xlsx/openXlsx";
import { plainFile } from "../../../src/xlsx/handedOn/plainFile";
import { valuesFile } from "../../../src/xlsx/handedOn/valuesFile";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { oddCases } from "./oddCases";
import { fileOf, isRefused, promisedOf, SAYS } from "./shared";
import { wrongInPlain, wrongInValues } from "./wrongIn";

jest.setTimeout(60_000);

let live: HeadlessWorkbook;
beforeAll(async () => void (live = await openHeadlessWorkbook()));
afterAll(() => live.close());

const DATE = "2027-01-15";

async function shared(
  whole: Uint8Array<ArrayBuffer>,
  as: FileKind,
  sheets: readonly string[],
  withErrors: boolean,
): Promise<Uint8Array<ArrayBuffer>> {
  const make = as === "values" ? valuesFile : plainFile;
  const files = {
    make: async (wanted: Parameters<typeof make>[1]) => ({ ...(await make(whole.slice(), wanted)), fileName: "x.xlsx" }),
    handOut: async () => "",
  };
  return (await shareInFile(live.workbook, files, { as, sheets, date: DATE, withErrors })).content;
}

/** Refusals that the pane offers to go on from. */
const MEANT = /in error|in a circle/;

test.each(oddCases.map((one) => [one.name, one] as const))("the local workbook shares %s, in both ways", async (_, one) => {
  const content = fileOf(one);
  const opening = openFile(live.engine, content.slice());
  if (isRefused(one.local) && /password|damaged|more than\/?$/.test(one.local.source)) return expect(opening).rejects.toThrow(one.local);
  const { opened } = await opening;
  const saved = await opened.saved();
  const whole = "content" in saved ? saved.content : new Uint8Array();
  const names = await live.workbook.sheetNames();
  for (const as of ["values", "plain"] as const) {
    // One sheet as values, and all of them as plain cells.
    const sheets = as === "values" ? names.slice(0, 1) : names;
    if (isRefused(one.local)) await expect(shared(whole, as, sheets, false)).rejects.toThrow(one.local);
    if (isRefused(one.local) && !MEANT.test(one.local.source)) continue;
    const after = await shared(whole, as, sheets, isRefused(one.local));
    const copies = new Map(sheets.map((sheet) => [sheet, sheet]));
    const made = { before: content, after, copies, says: SAYS[as], tolerance: 1e-8, isCalculated: true, ...promisedOf(one, as) };
    expect(await (as === "values" ? wrongInValues : wrongInPlain)(made)).toEqual([]);
  }
});
