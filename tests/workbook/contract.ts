import {
  cellNotBlank,
  changedSince,
  changedWhileCopied,
  nameJustTaken,
  noSuchSheet,
  notACellFormula,
  notACellRange,
  sheetNameMarks,
  textTooLong,
  valuesDoNotFit,
} from "../../src/problems/workbook/workbookProblems";
import { areaNamed } from "../../src/workbook/areaNamed";
import { cellsOfArea } from "../../src/workbook/cellArea";
import type { EntryRule, PlannedCell, SheetPlan } from "../../src/workbook/SheetPlan";
import type { CellAddress, CellReading, FrozenArea, Workbook } from "../../src/workbook/Workbook";
import { growContract } from "./growContract";

/** A workbook under test. The checks make sheets of their own, so one workbook may serve them all. */
export interface ContractSubject {
  readonly workbook: Workbook;
  /** As a person would: "=..." is a cell formula, null clears the cell. */
  type(sheet: string, cell: string, content: number | string | boolean | null): Promise<void>;
  /** Resolves when calculation and events have come to rest. */
  settled(): Promise<void>;
}

export interface ContractPromise {
  readonly title: string;
  check(subject: ContractSubject): Promise<void>;
}

const LONG_COLUMN = 1000;
const WHOLE_NAME = "A name of thirty-one characters";

/** What every workbook adapter keeps. The formulas used are =1+1, =A1*2, =SEQUENCE(3,2), =NA(), =1/0, ="" and a reference to another sheet. */
export const workbookContract: readonly ContractPromise[] = [
  {
    title: "sheetNames() lists a new sheet last",
    async check({ workbook }) {
      const before = await workbook.sheetNames();
      const name = await workbook.addSheet(plan("Listed last"));
      expect(await workbook.sheetNames()).toEqual([...before, name]);
    },
  },
  {
    title: "cellsBeside(sheet) has a rule of neither a sheet without any nor one with a list of words, and refuses a sheet that is not there",
    async check({ workbook }) {
      const [bare, listed] = [plan("No rules"), plan("A list of words")];
      const words = { range: "B2:B4", promptTitle: "", prompt: "", refusal: "yes or no", allow: { kind: "words", words: ["yes", "no"] } } as const;
      const names = [await workbook.addSheet(bare), await workbook.addSheet({ ...listed, entryRules: [words] })];
      for (const name of names) expect(await workbook.cellsBeside(name)).toMatchObject({ rules: [], unread: [] });
      await expect(workbook.cellsBeside("Nowhere")).rejects.toThrow(noSuchSheet("Nowhere"));
    },
  },
  {
    title: "cellsBeside(sheet) tells a rule for entries with its cells and formula, among several on one sheet",
    async check({ workbook }) {
      const rule = (range: string, condition: string): EntryRule => ({
        ...{ range, promptTitle: "", prompt: "", refusal: "not so" },
        allow: { kind: "condition", condition },
      });
      const made = { ...plan("Conditions"), entryRules: [rule("B2:B4", "=$B$9>1"), rule("B5", "=$B$9>2"), rule("D2:E3", "=$B$9>3")] };
      const { rules, unread } = await workbook.cellsBeside(await workbook.addSheet(made));
      expect(unread).toEqual([]);
      const told = rules.flatMap(({ kind, areas, formulas }) => areas.flatMap((area) => cellsOfArea(areaNamed(area)).flat().map((cell) => `${cell} ${kind} ${formulas.join()}`))); // prettier-ignore
      expect(told.sort()).toEqual([
        ...["B2", "B3", "B4"].map((cell) => `${cell} entry =$B$9>1`),
        "B5 entry =$B$9>2",
        ...["D2", "D3", "E2", "E3"].map((cell) => `${cell} entry =$B$9>3`),
      ]);
    },
  },
  {
    title: "copyWithValues() puts other formulas into rules of the copy or takes them out, and leaves the sheet and other rules alone",
    async check({ workbook }) {
      const rule = (range: string, condition: string): EntryRule => ({
        ...{ range, promptTitle: "", prompt: "", refusal: "not so" },
        allow: { kind: "condition", condition },
      });
      const made = { ...plan("Rules to change"), entryRules: [rule("B2:B4", "=$B$9>1"), rule("B5", "=$B$9>2"), rule("D2:E3", "=$B$9>3")] };
      const sheet = await workbook.addSheet(made);
      const formulasOn = async (name: string): Promise<string[]> =>
        (await workbook.cellsBeside(name)).rules.flatMap(({ formulas }) => formulas).sort();
      const { copy } = await workbook.copyWithValues(sheet, {
        ...{ name: "Rules changed", read: await workbook.readUsed(sheet), areas: [], beside: plan("Rules changed record"), keepsRules: true },
        rules: [
          { kind: "entry", formulas: ["=$B$9>1"], now: ["=$B$9>11"] },
          { kind: "entry", formulas: ["=$B$9>3"], now: "out" },
          { kind: "colouring", formulas: ["=$B$9>2"], now: "out" },
        ],
      });
      expect(await formulasOn(copy)).toEqual(["=$B$9>11", "=$B$9>2"]);
      expect(await formulasOn(sheet)).toEqual(["=$B$9>1", "=$B$9>2", "=$B$9>3"]);
    },
  },
  {
    title: "addSheet(plan) gives the wanted name when it is free",
    check: async ({ workbook }) => expect(await workbook.addSheet(plan("Wanted name"))).toBe("Wanted name"),
  },
  {
    title: "addSheet(plan) numbers the name when it is taken, whatever the letter case",
    async check({ workbook }) {
      const names = [await workbook.addSheet(plan("Kiln run")), await workbook.addSheet(plan("Kiln run")), await workbook.addSheet(plan("KILN RUN"))];
      expect(names).toEqual(["Kiln run", "Kiln run (2)", "KILN RUN (3)"]);
    },
  },
  {
    title: "addSheet(plan) cuts a long name so that its number fits into 31 characters",
    async check({ workbook }) {
      expect(await workbook.addSheet(plan(WHOLE_NAME))).toBe(WHOLE_NAME);
      expect(await workbook.addSheet(plan(WHOLE_NAME))).toBe("A name of thirty-one charac (2)");
    },
  },
  {
    title: "addSheet(plan) takes a name with spaces, quotation marks and apostrophes, and the sheet answers to it",
    async check({ workbook }) {
      const name = await workbook.addSheet(plan(`Ana's "pear" run & more`, [{ cell: "A1", content: 7 }]));
      expect(name).toBe(`Ana's "pear" run & more`);
      expect((await cellOf(workbook, name, "A1")).value).toBe(7);
    },
  },
  {
    title: "addSheet(plan) refuses a name that no sheet may have",
    check: async ({ workbook }) => expect(workbook.addSheet(plan("run 3/4"))).rejects.toThrow(sheetNameMarks("run 3/4")),
  },
  {
    title: "addSheet(plan) leaves every other sheet as it was",
    async check({ workbook, type, settled }) {
      const other = await workbook.addSheet(plan("Bystander", [{ cell: "A1", content: "kept" }]));
      await type(other, "B2", 4);
      await workbook.addSheet(plan("Bystander", [{ cell: "A1", content: "new" }]));
      await settled();
      expect(await contents(workbook, other)).toEqual([
        ["kept", null],
        [null, 4],
      ]);
    },
  },
  {
    title: "addSheet(plan) writes numbers, text and truth values as what they are",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(plan("Kinds", [at("A1", 12.5), at("B1", "shells"), at("C1", true), at("D1", false)]));
      expect(await contents(workbook, sheet)).toEqual([[12.5, "shells", true, false]]);
    },
  },
  {
    title: "addSheet(plan) keeps the text =1+1 as text",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(plan("Text with equals", [at("A1", "=1+1")]));
      await settled();
      expect(await cellOf(workbook, sheet, "A1")).toMatchObject({ value: "=1+1", formula: "", error: "" });
    },
  },
  {
    title: "addSheet(plan) keeps text that looks like a number, a date, a truth value, an error or a formula as text",
    async check({ workbook, settled }) {
      const texts = ["+5", "-", "-12", "@home", "007", "1/2", "12%", "TRUE", "#N/A", "'quoted", "3 Mar"];
      const sheet = await workbook.addSheet(
        plan(
          "Text in disguise",
          texts.map((text, row) => at(`A${row + 1}`, text)),
        ),
      );
      await settled();
      const { rows } = await workbook.read(sheet, `A1:A${texts.length}`);
      expect(rows.map(([cell]) => [cell?.value, cell?.formula, cell?.error])).toEqual(texts.map((text) => [text, "", ""]));
    },
  },
  {
    title: "addSheet(plan) leaves planned cells without content blank, and tells a planned 0 from them",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(plan("Blank or zero", [at("A1", 0), { cell: "B1", style: "input" }, at("C1", "end")]));
      expect((await workbook.read(sheet, "A1:C1")).rows[0]?.map(({ value }) => value)).toEqual([0, null, "end"]);
    },
  },
  {
    title: "addSheet(plan) writes formulas that read back as written and calculate",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(plan("Formulas", [at("A1", 21), { cell: "B1", formula: "=A1*2" }]));
      await settled();
      expect(await cellOf(workbook, sheet, "B1")).toEqual({
        cell: "B1",
        formula: "=A1*2",
        value: 42,
        shown: "42",
        error: "",
        message: "",
        spill: "",
      });
    },
  },
  {
    title: "addSheet(plan) writes formulas that refer to another sheet, whose name is quoted, and they read back as written",
    async check({ workbook, settled }) {
      await workbook.addSheet(plan("Ana's run (a)", [at("B2", 7)]));
      const sheet = await workbook.addSheet(plan("Refers", [{ cell: "A1", formula: "='Ana''s run (a)'!$B$2" }]));
      await settled();
      expect(await cellOf(workbook, sheet, "A1")).toMatchObject({ formula: "='Ana''s run (a)'!$B$2", value: 7, error: "" });
    },
  },
  {
    title: "addSheet(plan) shows numbers in the planned number formats",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(
        plan("Number formats", [
          { cell: "A1", content: 0.35, format: "0.0%" },
          { cell: "A2", content: 3.14159, format: "0.00" },
        ]),
      );
      const { rows } = await workbook.read(sheet, "A1:A2");
      expect(rows.map(([cell]) => [cell?.value, cell?.shown])).toEqual([
        [0.35, "35.0%"],
        [3.14159, "3.14"],
      ]);
    },
  },
  {
    title: "addSheet(plan) selects the planned start cell on the new sheet",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet({ ...plan("Start cell"), startAt: "C4" });
      await settled();
      expect(await workbook.selectedCell()).toEqual({ sheet, cell: "C4" });
    },
  },
  {
    title: "addSheet(plan) takes every style, kind of entry rule, column widths, frozen rows and a chart",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(everything);
      expect((await cellOf(workbook, sheet, "A1")).value).toBe("Everything");
    },
  },
  {
    title: "addSheet(plan) refuses an entry prompt of 256 characters and makes no sheet",
    async check({ workbook }) {
      const before = await workbook.sheetNames();
      const longPrompt = { ...everything, entryRules: everything.entryRules.map((rule) => ({ ...rule, prompt: "x".repeat(256) })) };
      await expect(workbook.addSheet(longPrompt)).rejects.toThrow(textTooLong("entry prompt", 256, 255));
      expect(await workbook.sheetNames()).toEqual(before);
    },
  },
  {
    title: "addSheet(plan) writes a column of 1,000 rows",
    async check({ workbook }) {
      const column = Array.from({ length: LONG_COLUMN }, (_, row) => row * 0.5);
      const sheet = await workbook.addSheet(
        plan(
          "Long column",
          column.map((value, row) => at(`B${row + 1}`, value)),
        ),
      );
      const { range, rows } = await workbook.readUsed(sheet);
      expect(range).toBe(`B1:B${LONG_COLUMN}`);
      expect(rows.map(([cell]) => cell?.value)).toEqual(column);
    },
  },
  {
    title: "read(sheet, range) tells a blank cell from a typed 0, and sees a cell cleared again",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Typed"));
      await type(sheet, "A1", 0);
      await type(sheet, "C1", 5);
      await type(sheet, "C1", null);
      await settled();
      const [row] = (await workbook.read(sheet, "A1:C1")).rows;
      expect(row?.map(({ value, shown }) => [value, shown])).toEqual([
        [0, "0"],
        [null, ""],
        [null, ""],
      ]);
    },
  },
  {
    title: "read(sheet, range) gives the cells of a range row by row with their names",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(plan("Order", [at("B2", 1), at("C2", 2), at("B3", 3)]));
      const { sheet: read, range, rows } = await workbook.read(sheet, "B2:C3");
      expect([read, range]).toEqual([sheet, "B2:C3"]);
      expect(rows.map((row) => row.map(({ cell, value }) => [cell, value]))).toEqual([
        [
          ["B2", 1],
          ["C2", 2],
        ],
        [
          ["B3", 3],
          ["C3", null],
        ],
      ]);
    },
  },
  {
    title: "read(sheet, range) gives the error code a formula shows",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Errors"));
      await type(sheet, "A1", "=1/0");
      await type(sheet, "A2", "=NA()");
      await settled();
      const { rows } = await workbook.read(sheet, "A1:A2");
      expect(rows.map(([cell]) => [cell?.formula, cell?.value, cell?.error])).toEqual([
        ["=1/0", "#DIV/0!", "#DIV/0!"],
        ["=NA()", "#N/A", "#N/A"],
      ]);
    },
  },
  {
    title: "read(sheet, range) gives the area of a spill at its formula's cell, and no formula in the cells it fills",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Spill"));
      await type(sheet, "B2", "=SEQUENCE(3,2)");
      await settled();
      const { rows } = await workbook.read(sheet, "B2:C4");
      expect(rows.map((row) => row.map(({ value, formula, spill }) => [value, formula, spill]))).toEqual([
        [
          [1, "=SEQUENCE(3,2)", "B2:C4"],
          [2, "", ""],
        ],
        [
          [3, "", ""],
          [4, "", ""],
        ],
        [
          [5, "", ""],
          [6, "", ""],
        ],
      ]);
    },
  },
  {
    title: "read(sheet, cell) inside a spill gives the value there and no formula",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Inside a spill"));
      await type(sheet, "A1", "=SEQUENCE(3,2)");
      await settled();
      expect(await cellOf(workbook, sheet, "B3")).toMatchObject({ value: 6, formula: "", spill: "" });
    },
  },
  {
    title: "read(sheet, range) refuses what is no range",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(plan("No range"));
      await expect(workbook.read(sheet, "here")).rejects.toThrow(notACellRange("here"));
    },
  },
  {
    title: "read(sheet, range) names a sheet that does not exist",
    check: async ({ workbook }) => expect(workbook.read("Nowhere", "A1")).rejects.toThrow(noSuchSheet("Nowhere")),
  },
  {
    title: "readUsed(sheet) of an empty sheet has no range and no rows",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(plan("Empty"));
      expect(await workbook.readUsed(sheet)).toEqual({ sheet, range: "", rows: [] });
    },
  },
  {
    title: "readUsed(sheet) reaches from the first to the last cell that holds anything, spilled cells included",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Used", [at("B2", "first")]));
      await type(sheet, "C4", "=SEQUENCE(3,2)");
      await settled();
      expect((await workbook.readUsed(sheet)).range).toBe("B2:D6");
    },
  },
  {
    title: "select(address) shows the sheet and selects the cell",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(plan("Shown"));
      await workbook.addSheet(plan("In front"));
      await workbook.select({ sheet, cell: "D9" });
      await settled();
      expect(await workbook.selectedCell()).toEqual({ sheet, cell: "D9" });
    },
  },
  {
    title: "select(address) names a sheet that does not exist",
    check: async ({ workbook }) => expect(workbook.select({ sheet: "Nowhere", cell: "A1" })).rejects.toThrow(noSuchSheet("Nowhere")),
  },
  {
    title: "onSelection(listener) tells the newly selected cell",
    check: (subject) =>
      watching(subject, "Watched cell", async (sheet, told) => {
        await subject.workbook.select({ sheet, cell: "B5" });
        await subject.settled();
        expect(told.at(-1)).toEqual({ sheet, cell: "B5" });
      }),
  },
  {
    title: "onSelection(listener) tells when the selected cell's content changes, and not when another cell's does",
    check: (subject) =>
      watching(subject, "Watched content", async (sheet, told) => {
        await subject.workbook.select({ sheet, cell: "B2" });
        await subject.settled();
        const before = told.length;
        await subject.type(sheet, "D4", 1);
        await subject.settled();
        expect(told).toHaveLength(before);
        await subject.type(sheet, "B2", 1);
        await subject.settled();
        expect(told.slice(before)).toContainEqual({ sheet, cell: "B2" });
      }),
  },
  {
    title: "onSelection(listener) tells when the selected formula comes to something else",
    check: (subject) =>
      watching(subject, "Watched result", async (sheet, told) => {
        await subject.type(sheet, "A1", 3);
        await subject.type(sheet, "B1", "=A1*2");
        await subject.workbook.select({ sheet, cell: "B1" });
        await subject.settled();
        const before = told.length;
        await subject.type(sheet, "A1", 4);
        await subject.settled();
        expect(told.slice(before)).toContainEqual({ sheet, cell: "B1" });
      }),
  },
  {
    title: "onSelection(listener) hands back what ends the calls",
    check: (subject) =>
      watching(subject, "No longer watched", async (sheet, told, stop) => {
        await subject.workbook.select({ sheet, cell: "B5" });
        await subject.settled();
        const before = told.length;
        expect(before).toBeGreaterThan(0);
        await stop();
        await subject.workbook.select({ sheet, cell: "E5" });
        await subject.settled();
        expect(told).toHaveLength(before);
      }),
  },
  {
    title: "calculation() is done and not manual when everything has come to rest",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("At rest"));
      await type(sheet, "A1", "=1+1");
      await settled();
      expect(await workbook.calculation()).toEqual({ state: "done", manual: false });
    },
  },
  {
    title: "look(address) gives what read gives of the cell, and that it is final",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Looked at", [at("A1", 21), at("A2", "plum")]));
      await type(sheet, "B1", "=A1*2");
      await type(sheet, "D1", "=SEQUENCE(3,2)");
      await settled();
      for (const cell of ["A1", "A2", "A3", "B1", "D1"]) {
        const reading = await cellOf(workbook, sheet, cell);
        expect(await workbook.look({ sheet, cell })).toEqual({ address: { sheet, cell }, reading, calculation: { state: "done", manual: false } });
      }
    },
  },
  {
    title: "look(address) inside a spill gives the formula cell that fills it",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Looked at inside"));
      await type(sheet, "A1", "=SEQUENCE(3,2)");
      await settled();
      const { reading, anchor } = await workbook.look({ sheet, cell: "B3" });
      expect([reading.value, reading.formula, anchor?.cell, anchor?.formula]).toEqual([6, "", "A1", "=SEQUENCE(3,2)"]);
    },
  },
  {
    title: "look() gives the selected cell",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet({ ...plan("Looked at selected"), startAt: "C4" });
      await settled();
      expect((await workbook.look()).address).toEqual({ sheet, cell: "C4" });
    },
  },
  {
    title: "look(address) names a sheet that does not exist",
    check: async ({ workbook }) => expect(workbook.look({ sheet: "Nowhere", cell: "A1" })).rejects.toThrow(noSuchSheet("Nowhere")),
  },
  {
    title: "readInputs(address, wanted) gives cells, ranges, spills and other sheets in the order asked for, and the cell once more",
    async check({ workbook, type, settled }) {
      const other = await workbook.addSheet(plan("Inputs elsewhere", [at("A1", "here")]));
      const sheet = await workbook.addSheet(plan("Inputs", [at("A1", 1), at("B2", true)]));
      await type(sheet, "A2", "=1/0");
      await type(sheet, "D1", "=SEQUENCE(3,2)");
      await settled();
      const wanted = [
        { sheet, range: "A1:B2", spill: false },
        { sheet: other, range: "A1", spill: false },
        { sheet, range: "D1", spill: true },
        { sheet, range: "A1", spill: true },
      ];
      const { again, ranges } = await workbook.readInputs({ sheet, cell: "A1" }, wanted);
      expect(again).toEqual(await workbook.look({ sheet, cell: "A1" }));
      expect(ranges.map((rows) => rows?.map((row) => row.map(({ value, error }) => (error === "" ? value : `error ${error}`))))).toEqual([
        [
          [1, null],
          ["error #DIV/0!", true],
        ],
        [["here"]],
        [
          [1, 2],
          [3, 4],
          [5, 6],
        ],
        [[1]],
      ]);
    },
  },
  {
    title: "readInputs(address, wanted) reads whole columns and rows as far as they are filled, whatever else the sheet holds",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(plan("Whole lines", [at("B2", 1), at("B4", 2), at("A9", "further down"), at("F2", 3)]));
      const wanted = ["B:B", "2:2", "C:D", "A2:B12"].map((range) => ({ sheet, range, spill: false }));
      const { ranges } = await workbook.readInputs({ sheet, cell: "A1" }, wanted);
      const [column, row, nothing, part] = ranges.map((rows) => rows?.map((line) => line.map(({ value }) => value)));
      expect(column).toEqual([[null], [1], [null], [2]]);
      expect(row).toEqual([[null, 1, null, null, null, 3]]);
      expect(nothing).toEqual([[null, null]]);
      expect([part?.length, part?.[0], part?.[7]]).toEqual([11, [null, 1], ["further down", null]]);
    },
  },
  {
    title: "holdsText(sheet, text) finds a whole text in its letter case, and nothing less",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(plan("Found text", [at("C7", "Elapsed (min)")]));
      const asked = ["Elapsed (min)", "elapsed (min)", "Elapsed"].map((text) => workbook.holdsText(sheet, text));
      expect(await Promise.all(asked)).toEqual([true, false, false]);
      await expect(workbook.holdsText("Nowhere", "x")).rejects.toThrow(noSuchSheet("Nowhere"));
    },
  },
  {
    title: "writeFormula(address, formula) fills a blank cell and calculates",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(plan("Put in"));
      await workbook.writeFormula({ sheet, cell: "B2" }, "=1+1");
      await settled();
      expect(await cellOf(workbook, sheet, "B2")).toMatchObject({ formula: "=1+1", value: 2 });
    },
  },
  {
    title: "writeFormula(address, formula) refuses a cell that holds text, 0, or a formula, and leaves it alone",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Not over", [at("A1", "mine"), at("A2", 0)]));
      await type(sheet, "A3", '=""');
      await settled();
      for (const cell of ["A1", "A2", "A3"]) await expect(workbook.writeFormula({ sheet, cell }, "=1+1")).rejects.toThrow(cellNotBlank(cell));
      const { rows } = await workbook.read(sheet, "A1:A3");
      expect(rows.map(([cell]) => [cell?.value, cell?.formula])).toEqual([
        ["mine", ""],
        [0, ""],
        ["", '=""'],
      ]);
    },
  },
  {
    title: "writeFormula(address, formula) refuses a cell that a spill fills",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Not into a spill"));
      await type(sheet, "A1", "=SEQUENCE(3,2)");
      await settled();
      await expect(workbook.writeFormula({ sheet, cell: "B2" }, "=1+1")).rejects.toThrow(cellNotBlank("B2"));
      expect((await cellOf(workbook, sheet, "B2")).value).toBe(4);
    },
  },
  {
    title: "writeFormula(address, formula) refuses text that is no cell formula",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(plan("No formula"));
      await expect(workbook.writeFormula({ sheet, cell: "A1" }, "1+1")).rejects.toThrow(notACellFormula("1+1"));
    },
  },
  {
    title: "replaceValue(address, null, content) fills a blank cell, keeps its format, and formulas follow",
    async check({ workbook, settled }) {
      const formatted = { cell: "B1", format: "0.00" };
      const sheet = await workbook.addSheet(plan("Put in a value", [formatted, { cell: "C1", formula: "=A1*2" }]));
      await workbook.replaceValue({ sheet, cell: "A1" }, null, 51.21);
      await workbook.replaceValue({ sheet, cell: "B1" }, null, 0.40625);
      await workbook.replaceValue({ sheet, cell: "D1" }, null, "tared");
      await workbook.replaceValue({ sheet, cell: "E1" }, null, "=1+1");
      await settled();
      const [row] = (await workbook.read(sheet, "A1:E1")).rows;
      expect(row?.map(({ value, formula }) => [value, formula])).toEqual([
        [51.21, ""],
        [0.40625, ""],
        [102.42, "=A1*2"],
        ["tared", ""],
        ["=1+1", ""],
      ]);
      expect(row?.[1]?.shown).toBe("0.41");
    },
  },
  {
    title: "replaceValue(address, held, content) changes and takes back exactly what was put there",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(plan("Taken back", [at("A1", 51.21), at("B1", "tared")]));
      await workbook.replaceValue({ sheet, cell: "A1" }, 51.21, 51.12);
      await settled();
      expect((await cellOf(workbook, sheet, "A1")).value).toBe(51.12);
      await expect(workbook.replaceValue({ sheet, cell: "A1" }, 51.21, null)).rejects.toThrow(changedSince("A1"));
      await workbook.replaceValue({ sheet, cell: "A1" }, 51.12, null);
      await workbook.replaceValue({ sheet, cell: "B1" }, "tared", null);
      await settled();
      expect([(await cellOf(workbook, sheet, "A1")).value, (await cellOf(workbook, sheet, "B1")).value]).toEqual([null, null]);
    },
  },
  {
    title: "replaceValue(address, null, content) refuses a cell that holds text, 0, a formula, one that gives nothing, or a spill",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Value not over", [at("A1", "mine"), at("A2", 0)]));
      await type(sheet, "A3", '=""');
      await type(sheet, "A4", "=SEQUENCE(3,2)");
      await settled();
      const taken = ["A1", "A2", "A3", "A4", "B5"];
      for (const cell of taken) await expect(workbook.replaceValue({ sheet, cell }, null, 7)).rejects.toThrow(cellNotBlank(cell));
      await expect(workbook.replaceValue({ sheet, cell: "A3" }, "", 7)).rejects.toThrow(changedSince("A3"));
      await expect(workbook.replaceValue({ sheet, cell: "A4" }, 1, 7)).rejects.toThrow(changedSince("A4"));
      await settled();
      const read = (await workbook.read(sheet, "A1:B6")).rows.flat();
      expect(read.filter(({ cell }) => taken.includes(cell)).map(({ value }) => value)).toEqual(["mine", 0, "", 1, 4]);
    },
  },
  {
    title: "copyWithValues(sheet, wanted) copies contents, formulas it is given no values for, and number formats",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(plan("Source", [at("A1", 3), { cell: "B1", formula: "=A1*2", format: "0.00" }, at("C1", "=1+1")]));
      const copy = await copied(workbook, sheet, "Copy");
      await settled();
      const [row] = (await workbook.readUsed(copy)).rows;
      expect(row?.map(({ value, formula, shown }) => [value, formula, shown])).toEqual([
        [3, "", "3"],
        [6, "=A1*2", "6.00"],
        ["=1+1", "", "=1+1"],
      ]);
    },
  },
  {
    title: "copyWithValues(sheet, wanted) makes the sheet beside the copy, after it, and leaves no other",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(plan("Recorded"));
      const before = await workbook.sheetNames();
      const read = await workbook.readUsed(sheet);
      const beside = plan("Recorded record", [at("A1", "how it came about")]);
      const made = await workbook.copyWithValues(sheet, { name: "Recorded copy", read, areas: [], beside });
      expect(made).toEqual({ copy: "Recorded copy", beside: "Recorded record", touched: false });
      await settled();
      const after = await workbook.sheetNames();
      expect(after.filter((name) => !before.includes(name))).toEqual(["Recorded copy", "Recorded record"]);
      expect(await contents(workbook, "Recorded record")).toEqual([["how it came about"]]);
      expect(await workbook.unfinishedSheets()).toEqual([]);
    },
  },
  {
    title: "copyWithValues(sheet, wanted) leaves the original alone when the copy is changed",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Original", [at("A1", 3), { cell: "B1", formula: "=A1*2" }]));
      const copy = await copied(workbook, sheet, "Changed copy", [{ range: "B1", values: [[200]] }]);
      await type(copy, "A1", 100);
      await settled();
      const [row] = (await workbook.readUsed(sheet)).rows;
      expect(row?.map(({ value, formula }) => [value, formula])).toEqual([
        [3, ""],
        [6, "=A1*2"],
      ]);
    },
  },
  {
    title: "copyWithValues(sheet, wanted) refuses a name that is taken, whatever the letter case, and makes no sheet",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(plan("Taken copy"));
      const before = await workbook.sheetNames();
      await expect(copied(workbook, sheet, "TAKEN copy")).rejects.toThrow(nameJustTaken);
      const read = await workbook.readUsed(sheet);
      const beside = workbook.copyWithValues(sheet, { name: "Free copy", read, areas: [], beside: plan("taken COPY") });
      await expect(beside).rejects.toThrow(nameJustTaken);
      expect(await workbook.sheetNames()).toEqual(before);
    },
  },
  {
    title: "copyWithValues(sheet, wanted) refuses a sheet on which something else stands than was read, and makes none",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Changed meanwhile", [at("A1", 3)]));
      const before = await workbook.sheetNames();
      const read = await workbook.readUsed(sheet);
      await type(sheet, "C4", 4);
      await settled();
      const copying = workbook.copyWithValues(sheet, { name: "Changed meanwhile, copy", read, areas: [], beside: plan("Changed meanwhile, record") });
      await expect(copying).rejects.toThrow(changedWhileCopied(sheet));
      expect(await workbook.sheetNames()).toEqual(before);
    },
  },
  {
    title: "readSettled(sheet) gives what readUsed(sheet) gives, also of an empty sheet, and that it is final",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Read twice", [at("B2", "first")]));
      const empty = await workbook.addSheet(plan("Read twice, empty"));
      await type(sheet, "C4", "=SEQUENCE(3,2)");
      await settled();
      for (const one of [sheet, empty]) {
        const reading = await workbook.readUsed(one);
        expect(await workbook.readSettled(one, false)).toEqual({ calculation: { state: "done", manual: false }, reading });
      }
    },
  },
  {
    title: "copyWithValues(sheet, wanted) names a sheet that does not exist, and makes none",
    async check({ workbook }) {
      const before = await workbook.sheetNames();
      await expect(copied(workbook, "Nowhere", "Copy of nothing")).rejects.toThrow(noSuchSheet("Nowhere"));
      expect(await workbook.sheetNames()).toEqual(before);
    },
  },
  {
    title: "copyWithValues(sheet, wanted) puts the value in place of the formula and keeps the number format",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(plan("Frozen", [at("A1", 0.2), { cell: "B1", formula: "=A1*2", format: "0.0%" }]));
      await settled();
      const copy = await copied(workbook, sheet, "Frozen copy", [{ range: "B1", values: [[0.4]] }]);
      await settled();
      expect(await cellOf(workbook, copy, "B1")).toEqual({ cell: "B1", formula: "", value: 0.4, shown: "40.0%", error: "", message: "", spill: "" });
    },
  },
  {
    title: "copyWithValues(sheet, wanted) keeps the text =1+1 as text",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Frozen text"));
      await type(sheet, "A1", "=1+1");
      await settled();
      const copy = await copied(workbook, sheet, "Frozen text copy", [{ range: "A1", values: [["=1+1"]] }]);
      await settled();
      expect(await cellOf(workbook, copy, "A1")).toMatchObject({ value: "=1+1", formula: "", error: "" });
    },
  },
  {
    title: "copyWithValues(sheet, wanted) takes a spill as a whole",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(plan("Frozen spill"));
      await type(sheet, "A1", "=SEQUENCE(3,2)");
      await settled();
      const values = [
        [1, 2],
        [3, 4],
        [5, "six"],
      ];
      const copy = await copied(workbook, sheet, "Frozen spill copy", [{ range: "A1:B3", values }]);
      await settled();
      const { rows } = await workbook.read(copy, "A1:B3");
      expect(rows.map((row) => row.map(({ value }) => value))).toEqual(values);
      expect(rows.flat().every(({ formula, spill }) => formula === "" && spill === "")).toBe(true);
    },
  },
  {
    title: "copyWithValues(sheet, wanted) takes several areas and leaves every other cell alone",
    async check({ workbook, settled }) {
      const cells: PlannedCell[] = [at("A1", 5), { cell: "A2", formula: "=A1*2" }, { cell: "A3", formula: "=1+1" }, { cell: "A4", formula: "=1+1" }];
      const sheet = await workbook.addSheet(plan("Frozen in part", cells));
      await settled();
      const copy = await copied(workbook, sheet, "Frozen in part copy", [
        { range: "A2", values: [[10]] },
        { range: "A4", values: [[2]] },
      ]);
      await settled();
      const { rows } = await workbook.read(copy, "A1:A4");
      expect(rows.map(([cell]) => [cell?.value, cell?.formula])).toEqual([
        [5, ""],
        [10, ""],
        [2, "=1+1"],
        [2, ""],
      ]);
    },
  },
  {
    title: "copyWithValues(sheet, wanted) refuses values that do not fit their range and changes nothing",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(plan("Misfit", [{ cell: "A1", formula: "=1+1" }]));
      await settled();
      const before = await workbook.sheetNames();
      await expect(copied(workbook, sheet, "Misfit copy", [{ range: "A1:A2", values: [[2]] }])).rejects.toThrow(valuesDoNotFit("A1:A2"));
      expect((await cellOf(workbook, sheet, "A1")).formula).toBe("=1+1");
      expect(await workbook.sheetNames()).toEqual(before);
    },
  },
  {
    title: "addSheet(plan) twice at once makes two sheets",
    async check({ workbook, settled }) {
      const twice = [plan("At once", [at("A1", 1)]), plan("At once", [at("A1", 2)])];
      const names = await Promise.all(twice.map((one) => workbook.addSheet(one)));
      await settled();
      expect([...names].sort()).toEqual(["At once", "At once (2)"]);
      expect(await Promise.all(names.map((name) => contents(workbook, name)))).toEqual([[[1]], [[2]]]);
    },
  },
  ...growContract,
];

const at = (cell: string, content: string | number | boolean): PlannedCell => ({ cell, content });

const plan = (name: string, cells: readonly PlannedCell[] = []): SheetPlan => ({
  name,
  cells,
  columnWidths: [],
  entryRules: [],
  frozenRows: 0,
  startAt: "A1",
});

const everything: SheetPlan = {
  name: "Everything",
  cells: [
    { cell: "A1", content: "Everything", style: "title" },
    { cell: "A2", content: "Heading", style: "heading" },
    { cell: "A3", content: "Elapsed (min)", style: "columnHeading" },
    { cell: "B3", content: "Sample (g)", style: "columnHeading" },
    { cell: "A4", style: "input", format: "0" },
    { cell: "B4", style: "input", format: "0.000" },
    { cell: "A5", style: "input", format: "0" },
    { cell: "B5", style: "input", format: "0.000" },
    { cell: "C4", formula: "=1+1", style: "computed", format: "0.0" },
    { cell: "A6", content: "Result", style: "label" },
    { cell: "B6", formula: "=1+1", style: "result" },
    { cell: "B7", content: "2.0 ± 0.1", style: "result" },
    { cell: "A7", content: "A note.", style: "note" },
    { cell: "C7", content: "Worked out from:", style: "noteHeading" },
    { cell: "A8", content: "Hot.", style: "caution" },
  ],
  columnWidths: [16, 12],
  entryRules: [
    {
      range: "A4:A5",
      allow: { kind: "number", atLeast: 0, atMost: 6000 },
      promptTitle: "Elapsed time",
      prompt: "Minutes since the start.",
      refusal: "Give minutes, 0 or more.",
    },
    {
      range: "B4",
      allow: { kind: "words", words: ["tared", "gross"] },
      promptTitle: "Weighing",
      prompt: "tared or gross.",
      refusal: "One of the two.",
    },
    { range: "B5", allow: { kind: "anything" }, promptTitle: "Remark", prompt: "Anything.", refusal: "" },
  ],
  charts: [
    {
      title: "Drying",
      xTitle: "Elapsed (min)",
      yTitle: "Sample (g)",
      series: [{ name: "Sample 1", x: "A4:A5", y: "B4:B5" }],
      over: "E2:K16",
    },
  ],
  frozenRows: 3,
  startAt: "A4",
};

/** A copy, and a sheet beside it that the check is not about. @returns the copy's name */
async function copied(workbook: Workbook, sheet: string, name: string, areas: readonly FrozenArea[] = []): Promise<string> {
  const read = await workbook.readUsed(sheet);
  await workbook.copyWithValues(sheet, { name, read, areas, beside: plan(`${name}, beside`) });
  return name;
}

async function cellOf(workbook: Workbook, sheet: string, cell: string): Promise<CellReading> {
  const reading = (await workbook.read(sheet, cell)).rows[0]?.[0];
  if (reading === undefined) throw new Error(`nothing read at ${cell}`);
  return reading;
}

async function contents(workbook: Workbook, sheet: string): Promise<CellReading["value"][][]> {
  return (await workbook.readUsed(sheet)).rows.map((row) => row.map(({ value }) => value));
}

/** Runs a check on a fresh sheet with a listener on the selection, which is taken away again. */
async function watching(
  { workbook, settled }: ContractSubject,
  name: string,
  check: (sheet: string, told: readonly CellAddress[], stop: () => Promise<void>) => Promise<void>,
): Promise<void> {
  const sheet = await workbook.addSheet(plan(name));
  await settled();
  const told: CellAddress[] = [];
  const end = await workbook.onSelection(({ address }) => void told.push(address));
  let ended: Promise<void> | undefined;
  const stop = (): Promise<void> => (ended ??= end());
  try {
    await check(sheet, told, stop);
  } finally {
    await stop();
  }
}
