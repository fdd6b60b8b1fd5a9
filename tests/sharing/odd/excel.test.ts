import { readBook } from "../../../src/command/book/Book";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { areaNamed } from "../../../src/workbook/areaNamed";
import { cellsOfArea } from "../../../src/workbook/cellArea";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import type { CellReading } from "../../../src/workbook/Workbook";
import { ExcelHost } from "../../host/ExcelHost";
import { ErrorValue, type HostValue } from "../../host/HostValue";
import { loadClientLibrary } from "../../host/loadClientLibrary";
import { oddCases } from "./oddCases";
import { fileOf, isRefused, SAYS } from "./shared";

jest.setTimeout(60_000);

const host = new ExcelHost();
loadClientLibrary(host);
const workbook = new ExcelWorkbook();

const cases = oddCases.filter(({ book, excel, name }) => typeof book !== "function" && excel !== "elsewhere" && name !== "many sheets");
const held = ({ error, value }: Pick<CellReading, "error" | "value">): HostValue => (error === "" ? value : new ErrorValue(error));

/** The file's cells in an Excel that shows what was saved. @returns the sheet to share */
async function opened(content: Uint8Array<ArrayBuffer>): Promise<string> {
  host.newBook();
  const { sheets } = await readBook(content);
  const saved = new Map<string, HostValue | HostValue[][]>();
  for (const [place, { name, reading }] of sheets.entries()) {
    const sheet = place === 0 ? host.book.active : host.book.add(name);
    sheet.name = name;
    const cells = new Map(reading.rows.flat().map((one) => [one.cell, one]));
    const filled = new Set<string>();
    for (const { cell, formula, spill } of cells.values()) {
      const area = spill === "" ? [] : cellsOfArea(areaNamed(spill));
      for (const one of area.flat()) if (one !== cell) filled.add(one);
      const valueAt = (at: string): HostValue => held(cells.get(at) ?? { error: "", value: null });
      if (formula !== "") saved.set(`${cell}${formula}`, area.length === 0 ? valueAt(cell) : area.map((row) => row.map(valueAt)));
    }
    for (const { cell, formula, value, error } of cells.values()) {
      const { row, column } = areaNamed(cell);
      if (!filled.has(cell))
        sheet.write(row, column, formula !== "" ? formula : typeof value === "string" && error === "" ? `'${value}` : (value ?? ""));
    }
  }
  host.calculate = (formula, cell) => saved.get(`${cell}${formula}`) ?? null;
  host.calculateAgain();
  return host.book.active.name;
}

test.each(cases.map((one) => [one.name, one] as const))("Excel shares %s as values", async (_, one) => {
  const sheet = await opened(fileOf(one));
  const outcome = one.excel === "elsewhere" ? undefined : (one.excel ?? one.local);
  const before = await workbook.readUsed(sheet);
  const names = await workbook.sheetNames();
  if (isRefused(outcome)) {
    await expect(shareAsValues(workbook, sheet, "2027-01-15")).rejects.toThrow(outcome);
    expect(await workbook.sheetNames()).toEqual(names);
    if (!/in error|circle/.test(outcome.source)) return;
  }
  const { copy, record, touched } = await shareAsValues(workbook, sheet, "2027-01-15", { withErrors: isRefused(outcome) });
  expect({ touched, names: await workbook.sheetNames() }).toEqual({ touched: false, names: [...names, copy, record] });
  expect(await workbook.readUsed(sheet)).toEqual(before);
  const made = (await workbook.readUsed(copy)).rows.flat();
  expect(made.filter(({ formula, spill }) => formula !== "" || spill !== "")).toEqual([]);
  const [banner, ...more] = made.filter(({ value }) => typeof value === "string" && SAYS.values.test(value));
  expect({ isThere: banner !== undefined, more }).toEqual({ isThere: true, more: [] });
  const now = new Map(made.map((cell) => [cell.cell, cell]));
  const differing = before.rows.flat().flatMap((was) => {
    const is = now.get(was.cell);
    if (was.cell === banner?.cell) return was.value === null || was.value === "" ? [] : [`banner over ${was.cell}`];
    const isSame = (was.value === "" ? null : was.value) === (is?.value ?? null) && was.error === (is?.error ?? "");
    return isSame ? [] : [`${was.cell}: ${String(was.value).slice(0, 60)} is now ${String(is?.value).slice(0, 60)}`];
  });
  expect(differing).toEqual([]);
  expect((await workbook.readUsed(record)).rows.flat().filter(({ formula }) => formula !== "")).toEqual([]);
});
