import {
  carriedOver,
  cellsInTheWay,
  finishedGrowth,
  grew,
  keptTyped,
  mendedCells,
  mostOnASheet,
  noRunSheet,
  notAllFormulas,
  olderRunSheet,
  rearrangedRunSheet,
  stillTypedOver,
} from "../../../../src/problems/runsheet/growingProblems";
import { changedMeanwhile, sheetFiltered, workbookProtected } from "../../../../src/problems/workbook/workbookProblems";
import { buildRunSheet } from "../../../../src/runsheet/buildRunSheet";
import { growRunSheet, mendRunSheet } from "../../../../src/runsheet/growing/growRunSheet";
import type { Growth } from "../../../../src/runsheet/growing/growths";
import { checkOptions } from "../../../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../../../src/runsheet/options/RunSheetOptions";
import { setupWords } from "../../../../src/runsheet/words/setupWords";
import { ExcelWorkbook } from "../../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../../host/ExcelHost";
import { loadClientLibrary } from "../../../host/loadClientLibrary";
import { putRowsIn } from "../../../host/moveRows";
import { hostSheetState } from "./hostSheetState";

// A second or two each, more where many processes share a processor.
jest.setTimeout(60_000);

const host = new ExcelHost();
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
beforeEach(() => {
  host.newBook();
  host.calculate = () => "";
});

const small: RunSheetOptions = { kind: "ashing", weighIns: 3, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 1, panZeros: true };
const drying: RunSheetOptions = { ...small, kind: "drying", panZeros: false };
// The cautions stay below the block that they stood below.
const grownTo = (counts: Partial<RunSheetOptions>): RunSheetOptions => ({ ...checkOptions({ ...small, ...counts }), cautionsAfter: "ashing" });
const made = (options: RunSheetOptions): Promise<string> => workbook.addSheet(buildRunSheet(options));
const value = (sheet: string, cell: string): unknown => host.book.sheet(sheet).cells.get(cell)?.value;
const formula = (sheet: string, cell: string): string => host.book.sheet(sheet).cells.get(cell)?.formula ?? "";
const whole = (sheet: string): string => JSON.stringify(hostSheetState(host.book.sheet(sheet)));
const PARTS = ["cells", "looks", "rules", "heights", "emphasis", "page", "breaks", "charts", "frozenRows"] as const;

function expectSame(one: string, other: string): void {
  const [grown, inserted] = [one, other].map((name) => hostSheetState(host.book.sheet(name)));
  for (const part of PARTS) expect([part, grown?.[part]]).toEqual([part, inserted?.[part]]);
}

describe("growRunSheet(workbook, sheet, growth)", () => {
  test("grown by rounds, firings of each and samples, a sheet is in every cell, look, rule and line the one inserted so", async () => {
    const name = await made({ ...small, charFirings: 1, ashFirings: 1 });
    const by: readonly Growth[] = ["weighIns", "replicates", "charFirings", "weighIns", "ashFirings", "replicates"];
    for (const growth of by) expect(await growRunSheet(workbook, name, growth)).toMatch(/^Added: /);
    // The sample added last is asked for its vessel as soon as it is there.
    const large = await made({ ...grownTo({ weighIns: 5, replicates: 3, charFirings: 2, ashFirings: 2 }), addedSample: 3 });
    expect(host.book.sheet(large).cells.size).toBeGreaterThan(300);
    expectSame(name, large);
  });

  test("says what was added", async () => {
    const name = await made(small);
    expect(await growRunSheet(workbook, name, "weighIns")).toBe("Added: round 4. Everything typed stands.");
    expect(await growRunSheet(workbook, name, "charFirings")).toBe(grew("charFirings", 4));
    expect(await growRunSheet(workbook, name, "replicates")).toBe("Added: sample 2. Everything typed stands.");
  });

  test.each<[Growth, Partial<RunSheetOptions>, number]>([
    ["weighIns", { weighIns: 60 }, 60],
    ["charFirings", { charFirings: 4 }, 4],
    ["ashFirings", { ashFirings: 4 }, 4],
    ["replicates", { replicates: 6 }, 6],
  ])("says so where there are as many %s as a sheet holds", async (growth, counts, most) => {
    const name = await made({ ...small, panZeros: false, ...counts });
    const before = whole(name);
    await expect(growRunSheet(workbook, name, growth)).rejects.toThrow(mostOnASheet(growth, most));
    expect(whole(name)).toBe(before);
  });

  test("a fourth sample goes onto a new sheet with all that stands in the boxes, and the old one stays as it is", async () => {
    const name = await made({ ...small, replicates: 3 });
    const typed = { B8: "plum prunings", C12: 25.01, E13: 60.5, B9: "different" };
    for (const [cell, content] of Object.entries(typed)) host.type(name, cell, content);
    host.type(name, "Z3", "beside");
    const before = whole(name);
    expect(await growRunSheet(workbook, name, "replicates")).toBe(carriedOver(name, `${name} (2)`, 4));
    expect(Object.fromEntries(Object.keys(typed).map((cell) => [cell, value(`${name} (2)`, cell)]))).toEqual(typed);
    expect(value(`${name} (2)`, "F6")).toBe("Sample 4");
    expect(whole(name)).toBe(before);
  });

  test("does nothing, and names the cell, where something of the user's stands in the place of a new one", async () => {
    const name = await made(drying);
    host.type(name, "D12", 61.2);
    const before = whole(name);
    await expect(growRunSheet(workbook, name, "replicates")).rejects.toThrow(cellsInTheWay(["D12"]));
    expect(whole(name)).toBe(before);
    host.type(name, "D12", null);
    expect(await growRunSheet(workbook, name, "replicates")).toBe(grew("replicates", 2));
  });

  test("moves notes beside and below with their rows, and leaves the user's own looks, rules and charts", async () => {
    const name = await made(drying);
    const sheet = host.book.sheet(name);
    host.type(name, "Z15", "beside the total");
    host.type(name, "Z13", "beside round 2");
    sheet.conditionalFormats.push({ range: "C12:C14", formula: "=C12>100", look: {} });
    sheet.entryRules.push({ range: "Z1:Z99", rule: { custom: { formula: "=Z1>0" } } });
    sheet.charts.push({ id: "own", type: "Line", name: "Mine", series: [{ name: "a", y: "Z1:Z20" }] });
    await growRunSheet(workbook, name, "weighIns");
    expect([value(name, "Z13"), value(name, "Z16")]).toEqual(["beside round 2", "beside the total"]);
    expect(sheet.conditionalFormats.filter(({ formula: own }) => own === "=C12>100")).toHaveLength(1);
    expect(sheet.conditionalFormats).toHaveLength(1 + (buildRunSheet(drying).emphasis?.length ?? 0));
    expect(sheet.entryRules.some(({ range }) => range === "Z1:Z100")).toBe(true);
    expect(sheet.charts.find(({ id }) => id === "own")?.series).toEqual([{ name: "a", y: "Z1:Z21" }]);
  });

  test("goes without a chart that the user took away, and keeps a label and a formula that are the user's own", async () => {
    const name = await made(drying);
    host.book.sheet(name).charts.splice(0);
    host.type(name, "A15", "Dry weight, g");
    host.type(name, "F13", "=C12-C13+0.001");
    expect(await growRunSheet(workbook, name, "weighIns")).toBe(`${grew("weighIns", 4)}${stillTypedOver(["F13"])}`);
    expect([value(name, "A16"), formula(name, "F13")]).toEqual(["Dry weight, g", "=C12-C13+0.001"]);
    expect(host.book.sheet(name).charts).toEqual([]);
  });

  test("counts rows that were put in by hand, and numbers them", async () => {
    const name = await made(drying);
    putRowsIn(host.book, host.book.sheet(name), 14, 1);
    for (const cell of ["A", "F", "I", "O"]) {
      const copied = host.book.sheet(name).cells.get(`${cell}14`);
      if (copied !== undefined) host.book.sheet(name).cells.set(`${cell}15`, { ...copied, ...(copied.formula && { formula: copied.formula.replace(/(?<!\$)\b([A-Z])1(\d)\b/g, (_all, letter: string, row: string) => `${letter}1${Number(row) + 1}`) }) }); // prettier-ignore
    }
    host.type(name, "C15", 50.1);
    expect(await growRunSheet(workbook, name, "weighIns")).toBe(grew("weighIns", 5));
    expect([value(name, "A15"), value(name, "A16"), value(name, "C15")]).toEqual(["Round 4, g", "Round 5, g", 50.1]);
    expect(formula(name, "F16")).toBe('=IF(COUNT(C15,C16)<2,"",C15-C16)');
  });

  test("refuses, before anything is changed, a sheet that is protected, filtered or changed meanwhile", async () => {
    const name = await made(drying);
    const sheet = host.book.sheet(name);
    const before = whole(name);
    sheet.isProtected = true;
    await expect(growRunSheet(workbook, name, "weighIns")).rejects.toThrow(workbookProtected);
    Object.assign(sheet, { isProtected: false, isFiltered: true });
    await expect(growRunSheet(workbook, name, "weighIns")).rejects.toThrow(sheetFiltered(name));
    sheet.isFiltered = false;
    expect(whole(name)).toBe(before);
    host.startCounting((requests) => void (requests === 2 && sheet.write(11, 2, 61.5)));
    await expect(growRunSheet(workbook, name, "weighIns")).rejects.toThrow(changedMeanwhile(name));
    expect(value(name, "C12")).toBe(61.5);
    expect(sheet.cells.size).toBe(JSON.parse(before).cells === undefined ? 0 : Object.keys(JSON.parse(before).cells).length + 1);
  });

  test("keeps what is typed over a formula in the very last moment, and says so", async () => {
    const name = await made(drying);
    host.startCounting((requests) => void (requests === 4 && host.book.sheet(name).write(12, 5, 3.3)));
    expect(await growRunSheet(workbook, name, "weighIns")).toBe(`${grew("weighIns", 4)}${keptTyped(["F13"])}`);
    expect(value(name, "F13")).toBe(3.3);
  });

  test("says why a sheet of an earlier version, a rearranged one and any other cannot be grown", async () => {
    const older = await workbook.addSheet({ ...buildRunSheet(drying), cells: [{ cell: "F6", content: setupWords.legend }] });
    await expect(growRunSheet(workbook, older, "weighIns")).rejects.toThrow(olderRunSheet);
    await expect(growRunSheet(workbook, "Sheet1", "weighIns")).rejects.toThrow(noRunSheet);
    const name = await made(drying);
    putRowsIn(host.book, host.book.sheet(name), 7, 1);
    await expect(growRunSheet(workbook, name, "weighIns")).rejects.toThrow(rearrangedRunSheet("1 DRYING", "A10"));
    const changed = await made(drying);
    host.type(changed, "O1", "Retort run sheet 1, made with love and care and paper");
    await expect(mendRunSheet(workbook, changed)).rejects.toThrow(rearrangedRunSheet("Retort run sheet 1, made with", ""));
  });
});

describe("mendRunSheet(workbook, sheet)", () => {
  test("puts formulas, labels, rules and looks back, and never touches a box", async () => {
    const [name, other] = [await made(drying), await made(drying)];
    for (const one of [name, other]) for (const [cell, content] of [["C12", 60.1], ["B42", 0.02], ["F8", null]] as const) host.type(one, cell, content); // prettier-ignore
    const sheet = host.book.sheet(name);
    host.type(name, "F13", 3.3);
    host.type(name, "I14", null);
    host.type(name, "A15", null);
    sheet.conditionalFormats.splice(0);
    sheet.entryRules.splice(0);
    sheet.pageBreaks.push("A9");
    expect(await mendRunSheet(workbook, name)).toBe(mendedCells(["F8", "F13", "I14"]));
    expect(await mendRunSheet(workbook, other)).toBe(mendedCells(["F8"]));
    expectSame(name, other);
    expect([value(name, "C12"), value(name, "B42")]).toEqual([60.1, 0.02]);
    expect(await mendRunSheet(workbook, name)).toBe(mendedCells([]));
  });

  test.each([8, 40, 500, 900])(
    "finishes a growth that broke off after %d actions, by its own button or by that of the growth",
    async (actionsDone) => {
      const typed = [["C12", 61.1], ["Z40", "beside"]] as const; // prettier-ignore
      const filled = async (): Promise<string> => {
        const name = await made(small);
        for (const [cell, content] of typed) host.type(name, cell, content);
        return name;
      };
      const other = await filled();
      await growRunSheet(workbook, other, "weighIns");
      for (const finish of [mendRunSheet, (book: ExcelWorkbook, sheet: string) => growRunSheet(book, sheet, "replicates")]) {
        const name = await filled();
        host.startCounting(() => undefined);
        host.faults.plan({ code: "GeneralException", after: 4, answerLost: false, forGood: false, actionsDone });
        await expect(growRunSheet(workbook, name, "weighIns")).rejects.toThrow('Press "Mend formulas" to finish it.');
        expect(await finish(workbook, name)).toBe(finishedGrowth);
        expectSame(name, other);
      }
    },
  );

  test("names formulas that the sheet did not take", async () => {
    const name = await made(drying);
    host.type(name, "F13", 3.3);
    const grow = workbook.growSheet.bind(workbook);
    const stubborn = Object.assign(Object.create(workbook) as ExcelWorkbook, {
      growSheet: async (...given: Parameters<typeof grow>) => {
        const done = await grow(...given);
        host.type(name, "F13", null);
        return done;
      },
    });
    await expect(mendRunSheet(stubborn, name)).rejects.toThrow(notAllFormulas(["F13"]));
  });
});
