import { rulesStillCall } from "../../../src/problems/sharing/sharedCopyWords";
import { share } from "../../../src/pane/share/sharing";
import { shareAsPlainCells } from "../../../src/sharing/shareAsPlainCells";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import type { CellReading } from "../../../src/workbook/Workbook";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

const DATE = "2026-01-31";
const host = new ExcelHost();
host.calculate = (formula) => (/RETORT|wet_share/.test(formula) ? 0.35 : 1);
loadClientLibrary(host);
const workbook = new ExcelWorkbook();

const WET = "RETORT.MOISTURE.WET(Sheet1!$A$1,Sheet1!$A$2,Sheet1!$A$3)";
const custom = (formula: string): object => ({ custom: { formula } });

beforeEach(() => {
  host.newBook();
  for (const [row, mass] of [25, 35, 31.5].entries()) host.type("Sheet1", `A${row + 1}`, mass);
});

const onSheet = () => host.book.sheet("Sheet1");
const cellsOf = async (sheet: string): Promise<CellReading[]> => (await workbook.readUsed(sheet)).rows.flat();
const textOf = async (sheet: string): Promise<string> => (await cellsOf(sheet)).map(({ value }) => String(value ?? "")).join("\n");

describe("what stands beside the cells of a sheet in Excel", () => {
  test("is read in one request where there is none of it", async () => {
    host.requests.length = 0;
    expect(await workbook.cellsBeside("Sheet1")).toEqual({ names: [], rules: [], unread: [] });
    expect(host.requests).toHaveLength(1);
  });

  test("names of the workbook and the sheet, colouring by a formula and by a bound, entries by a condition, bounds and a list", async () => {
    const other = host.book.add("Other");
    host.book.names.set("wet_share", { formula: `=${WET}`, visible: true });
    onSheet().names.set("tin", { formula: "=Sheet1!$A$1", visible: true });
    other.names.set("elsewhere", { formula: "=Other!$A$1", visible: true });
    onSheet().conditionalFormats.push(
      { range: "A1:A9", formula: "=A1>wet_share", look: {} },
      { range: "B1:B9", cellValue: { formula1: "=wet_share", formula2: "9", operator: "Between" }, look: {} },
      { range: "C1:C9", cellValue: { formula1: "1", operator: "GreaterThan" }, look: {} },
    );
    onSheet().entryRules.push(
      { range: "D1:D9", rule: custom(`=${WET}>D1`) },
      { range: "D4:D5", rule: { decimal: { formula1: "=A1", formula2: "=wet_share", operator: "Between" } } },
      { range: "E1", rule: { list: { source: "yes,no", inCellDropDown: true } } },
      { range: "E2", rule: { list: { source: "=tin", inCellDropDown: true } } },
      // Beyond all that is filled.
      { range: "J2000:K2003", rule: custom("=tin>1") },
    );
    const { names, rules, unread } = await workbook.cellsBeside("Sheet1");
    expect(unread).toEqual([]);
    expect(names).toEqual([
      { name: "wet_share", formula: `=${WET}` },
      { name: "tin", formula: "=Sheet1!$A$1", sheet: "Sheet1" },
    ]);
    expect(rules.filter(({ kind }) => kind === "colouring")).toEqual([
      { kind: "colouring", areas: ["A1:A9"], formulas: ["=A1>wet_share"] },
      { kind: "colouring", areas: ["B1:B9"], formulas: ["=wet_share"] },
    ]);
    const entries = rules.filter(({ kind }) => kind === "entry");
    expect(new Set(entries.map(({ formulas }) => formulas.join(" and ")))).toEqual(new Set([`=${WET}>D1`, "=A1 and =wet_share", "=tin", "=tin>1"]));
    expect(entries.find(({ isList }) => isList === true)).toEqual({ kind: "entry", areas: ["E2"], formulas: ["=tin"], isList: true });
  });

  test("takes a bounded number of requests, however many rules lie strewn about, and says where they are too many", async () => {
    for (let row = 0; row < 100; row++) onSheet().entryRules.push({ range: `C${row * 7 + 1}`, rule: custom(`=C${row + 1}>1`) });
    host.type("Sheet1", "Z1800", 1);
    host.requests.length = 0;
    const few = await workbook.cellsBeside("Sheet1");
    expect([few.rules.length, few.unread, host.requests.length <= 12]).toEqual([100, [], true]);
    // Side by side they are one area to Excel, which tells no rule of it.
    for (let row = 0; row < 1600; row++) onSheet().entryRules.push({ range: `E${row + 100}`, rule: custom(`=E${row + 1}>1`) });
    host.requests.length = 0;
    const many = await workbook.cellsBeside("Sheet1");
    expect([many.unread, host.requests.length <= 12]).toEqual([["entry"], true]);
  });

  test.each([
    ["ApiNotFound", 0],
    ["GeneralException", 1],
    ["GeneralException", 2],
  ])("what fails with %s after %p requests is told as unread, or asked for again, and the rest is read", async (code, after) => {
    host.book.names.set("wet_share", { formula: `=${WET}`, visible: true });
    onSheet().conditionalFormats.push({ range: "A1:A9", formula: "=A1>wet_share", look: {} });
    onSheet().entryRules.push({ range: "D1:D2", rule: custom("=wet_share>D1") });
    host.type("Sheet1", "D9", 1);
    host.failNext(code, after);
    const { names, rules, unread } = await workbook.cellsBeside("Sheet1");
    expect(names).toHaveLength(1);
    // The first request is sent again in parts; a later one is of one kind alone.
    expect(unread).toEqual([[], ["colouring"], ["entry"]][after]);
    expect(rules.map(({ kind }) => kind)).toEqual(["colouring", "entry"].filter((kind) => !unread.some((one) => one === kind)));
  });
});

describe("a copy within Excel", () => {
  beforeEach(() => {
    host.book.names.set("wet_share", { formula: `=${WET}`, visible: true });
    host.type("Sheet1", "B1", "=wet_share*2");
    host.type("Sheet1", "F12", 1);
    onSheet().conditionalFormats.push(
      { range: "A1:A9", formula: `=A1>${WET}`, look: {} },
      { range: "B1:B9", formula: "=B1>wet_share", look: {} },
      { range: "C1:C9", formula: "=C1>0", look: {} },
      { range: "C1:C9", formula: "=RETORT.DRYING.END(A1:A3,B1:B3)>0", look: {} },
      { range: "B1:B9", cellValue: { formula1: `=${WET}`, operator: "GreaterThan" }, look: {} },
    );
    onSheet().entryRules.push(
      { range: "D1:D9", rule: custom("=D1>wet_share"), prompt: { title: "Mass", message: "g" } },
      { range: "F10:F12", rule: custom("=RETORT.DRYING.END($A$1:$A$3,$B$1:$B$3)>0") },
      { range: "E1", rule: custom("=E1>0") },
    );
  });

  test("as plain cells has rules in built-in functions or none, asks its own cells, and leaves the sheet as it was", async () => {
    const before = structuredClone([onSheet().conditionalFormats, onSheet().entryRules]);
    const { copy, record, put, unread } = await shareAsPlainCells(workbook, "Sheet1", DATE);
    expect(unread).toEqual([]);
    expect([onSheet().conditionalFormats, onSheet().entryRules]).toEqual(before);
    const made = await workbook.cellsBeside(copy);
    const formulas = made.rules.flatMap((rule) => rule.formulas);
    expect(formulas.filter((formula) => /RETORT|wet_share|Sheet1/.test(formula))).toEqual([]);
    expect(formulas.filter((formula) => /\$A\$2/.test(formula))).toHaveLength(4);
    expect(formulas).toEqual(expect.arrayContaining(["=C1>0", "=E1>0"]));
    expect(put.rules.filter((rule) => "why" in rule).map(({ areas }) => areas.join())).toEqual(["C1:C9", "F10:F12"]);
    expect(host.book.sheet(copy).entryRules.find(({ range }) => range === "D1:D9")?.prompt).toEqual({ title: "Mass", message: "g" });
    expect((await cellsOf(copy)).filter(({ formula }) => /RETORT|wet_share/.test(formula))).toEqual([]);
    const listed = await textOf(record);
    for (const each of ["Rules and names", "wet_share", "checks entries", "colours cells", "taken out"]) expect(listed).toContain(each);
    // The name is the workbook's.
    expect(host.book.names.get("wet_share")?.formula).toBe(`=${WET}`);
  });

  test("as values has no rule for entries and colours by built-in functions", async () => {
    const { copy, record } = await shareAsValues(workbook, "Sheet1", DATE);
    const made = await workbook.cellsBeside(copy);
    expect(made.rules.filter(({ kind }) => kind === "entry")).toEqual([]);
    expect(made.rules.map(({ formulas }) => formulas.join()).filter((formula) => /RETORT|wet_share/.test(formula))).toEqual([]);
    expect(made.rules).toHaveLength(4);
    expect(await textOf(record)).toContain("Rules and names");
  });

  test.each(["values", "plain"] as const)("as %s says what was taken out and which names stay", async (as) => {
    const quiet = { told: () => undefined, isStopped: () => false, pause: async () => undefined };
    const { said, made } = await share(workbook, { as, sheet: "Sheet1", all: false, files: undefined, ...quiet, asShown: true });
    const copy = made?.copy ?? "";
    const taken = as === "values" ? `it calls Retort and has no plain form: ${copy}!C1:C9 (colours cells)` : `${copy}!C1:C9 (colours cells), ${copy}!F10:F12 (checks entries)`; // prettier-ignore
    expect(said).toContain(taken);
    expect(said).toContain(`A name of the workbook calls Retort and stays as it is: wet_share. No formula of "${copy}" uses it.`);
    expect(said).not.toMatch(/could not be read|do(es)? nothing without it/);
  });

  test("says so where nothing beside its cells could be read, and is made all the same", async () => {
    const deaf = Object.assign(new ExcelWorkbook(), { cellsBeside: () => Promise.reject(new Error("no answer")) });
    const quiet = { told: () => undefined, isStopped: () => false, pause: async () => undefined };
    const { said } = await share(deaf, { as: "plain", sheet: "Sheet1", all: false, files: undefined, ...quiet, asShown: true });
    expect(said).toContain(
      'Whether names of the workbook or rules of "Sheet1 plain cells" for colouring or entries call Retort could not be read in full; such rules do nothing without it.',
    );
    expect(rulesStillCall("Sheet1 plain cells", 0)).toBe("");
  });
});
