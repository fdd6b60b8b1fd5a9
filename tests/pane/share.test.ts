import { share, type Wanted } from "../../src/pane/share/sharing";
import {
  beyondMending,
  canBeMended,
  changedMeanwhileLeft,
  enterAgain,
  mended,
  nothingToMend,
  stillUnknown,
} from "../../src/problems/sharing/mendWords";
import { callsOnSheet, mendFirst, namesCall, nothingNeedsRetort, plainInstead, runSheetSaysSo } from "../../src/problems/sharing/asItIsWords";
import { besideUnread, namesStay, rulesStillCall } from "../../src/problems/sharing/sharedCopyWords";
import { copyInView, inThisWorkbook } from "../../src/problems/sharing/shareTabWords";
import { notFollowedElsewhere, StaysPending } from "../../src/problems/sharing/sharingProblems";
import type { OwnFiles } from "../../src/sharing/shareInFile";
import { otherFormulas } from "../../src/problems/runsheet/growingProblems";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import type { CellsBeside, SheetRule } from "../../src/workbook/CellsBeside";
import { NoOwnFile } from "../../src/workbook/NoOwnFile";
import { WorkbookProblem } from "../../src/workbook/Workbook";
import { MemoryWorkbook, reading } from "../sharing/MemoryWorkbook";

const workbookOf = (): MemoryWorkbook =>
  new MemoryWorkbook("Tin", [
    reading("A1", { value: "CaCO3" }),
    reading("B1", { formula: "=RETORT.MOLARMASS(A1)", value: 100.086, shown: "100.086" }),
  ]);
const made = { content: new Uint8Array(), fileName: "Tin values.xlsx", cells: 1, fixed: 0, takenOut: [] };
const files = (make: OwnFiles["make"], whereItIs = ""): OwnFiles => ({ make, handOut: async () => whereItIs });
const wanted = (more: Partial<Wanted>): Wanted => ({
  ...{ as: "values", sheet: "Tin", all: false, files: undefined, told: () => undefined, isStopped: () => false, pause: async () => undefined },
  ...more,
});
const refusing = (problem: Error): OwnFiles => files(() => Promise.reject(problem));

describe("share(workbook, wanted)", () => {
  test("makes a file of its own and says where it is, and no sheet", async () => {
    const workbook = workbookOf();
    const { said, made: sheets } = await share(workbook, wanted({ files: files(async () => made, "It was opened.") }));
    expect(said).toBe("Made Tin values.xlsx: 1 formula cell became a value. Your own workbook is as it was. It was opened.");
    expect([sheets, await workbook.sheetNames()]).toEqual([undefined, ["Tin"]]);
  });

  test("says which rules and names could not stay", async () => {
    const rule = { what: "colouring", where: "Tin!D1:D9", why: "ruleForm" } as const;
    const taken = [rule, { ...rule, where: "Tin!E1" }, { what: "entry", where: "Tin!A1", why: "tooLong" }, { what: "name", where: "wet", why: "noForm" }] as const; // prettier-ignore
    const made2 = (takenOut: (typeof taken)[number][]) => share(workbookOf(), wanted({ files: files(async () => ({ ...made, takenOut })) }));
    expect((await made2([...taken])).said).toBe(
      "Made Tin values.xlsx: 1 formula cell became a value. Your own workbook is as it was. Taken out, because they call Retort and have no plain form: Tin!D1:D9 (colours cells), Tin!E1 (colours cells), Tin!A1 (checks entries) and 1 more. The record says why.",
    );
    expect((await made2([rule])).said).toMatch(
      /Taken out, because it calls Retort and has no plain form: Tin!D1:D9 \(colours cells\)\. The record says why\.$/,
    );
  });

  test("makes the copy in the workbook where there is no file, and says why", async () => {
    const { said, made: sheets } = await share(workbookOf(), wanted({ files: refusing(new NoOwnFile("No file here.")) }));
    expect(said).toBe(inThisWorkbook("No file here.", 'Made "Tin values" and its record, "Tin record". One formula cell became a value.'));
    expect(sheets).toEqual({ copy: "Tin values", record: "Tin record" });
  });

  test("makes plain cells in the workbook too", async () => {
    const workbook = workbookOf();
    const { said } = await share(workbook, wanted({ as: "plain", files: refusing(new NoOwnFile("No file here.")) }));
    expect(said).toBe(
      inThisWorkbook(
        "No file here.",
        'Made "Tin plain cells" and its record, "Tin record". 1 cell of Retort written in built-in functions, none fixed.',
      ),
    );
  });

  test("says which formulas of a run sheet are not the sheet's own, and nothing of a whole one, in the workbook and in a file", async () => {
    const run = { kind: "drying", weighIns: 4, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 2 } as const;
    const { name, cells } = buildRunSheet(run);
    const changed = cells.filter(({ formula }) => formula !== undefined)[30]?.cell ?? "";
    const workbookWith = (others: readonly string[]): MemoryWorkbook =>
      new MemoryWorkbook(
        name,
        cells.map(({ cell, content = null, formula }) =>
          formula === undefined ? reading(cell, { value: content }) : reading(cell, { formula: others.includes(cell) ? "=1+1" : formula, value: "" }),
        ),
      );
    const asked = { sheet: name, asShown: true } as const;
    const sentence = `"${name}": ${otherFormulas([changed])}`;
    expect(sentence).toContain("is not the sheet's own");
    const inFile = { files: files(async () => made) };
    for (const way of [{ as: "values" }, { as: "plain" }, { as: "plain", ...inFile }] as const) {
      expect((await share(workbookWith([changed]), wanted({ ...asked, ...way }))).said.endsWith(sentence)).toBe(true);
      expect((await share(workbookWith([]), wanted({ ...asked, ...way }))).said).not.toContain("sheet's own");
    }
  });

  test("says of a copy in the workbook which of its rules call Retort, and where that could not be read", async () => {
    const workbook = workbookOf();
    const made = 'Made "Tin values" and its record, "Tin record". One formula cell became a value.';
    const rule = (...formulas: string[]): SheetRule => ({ kind: "colouring", areas: ["A1"], formulas });
    const among = (...rules: SheetRule[]): CellsBeside => ({ names: [], rules, unread: [] });
    // This workbook leaves the rules of a copy as they are, whatever is asked.
    workbook.beside = among(
      ...[rule("=A1>0"), rule('=A1="RETORT.MOLARMASS(A1)"'), rule('=RETORT.MOLARMASS("CO2")>50'), rule("=1", '=_xldudf_RETORT_MOLARMASS("CO2")')],
    );
    expect((await share(workbook, wanted({}))).said).toBe(
      `${made} 2 rules of "Tin values" for colouring or entries call Retort and do nothing without it. In a file of its own they are written in built-in functions or taken out.`,
    );
    expect(rulesStillCall("Tin values", 1)).toBe(
      '1 rule of "Tin values" for colouring or entries calls Retort and does nothing without it. In a file of its own it is written in built-in functions or taken out.',
    );
    workbook.beside = among(rule("=A1>0"));
    const again = await share(workbook, wanted({}));
    expect(again.said).not.toContain("rule");
    workbook.cellsBeside = () => Promise.reject(new WorkbookProblem("Excel did not answer."));
    const unread = await share(workbook, wanted({}));
    expect(unread.said).toMatch(
      /Whether names of the workbook or rules of "Tin values \(3\)" for colouring call Retort could not be read in full; such rules do nothing without it\.$/,
    );
    expect(unread.made?.copy).toBe("Tin values (3)");
  });

  describe("follows what is shared to other sheets", () => {
    const STALE = reading("B1", { formula: "=A1*2", value: 7 });
    const across = (...last: Parameters<typeof reading>[1][]): MemoryWorkbook => {
      const workbook = new MemoryWorkbook("Tin", last.map((about, row) => reading(`A${row + 1}`, about))); // prettier-ignore
      workbook.sheets.set("Between", new Map([["C1", reading("C1", { formula: "=Source!B1+1", value: 8 })]]));
      workbook.sheets.set("Source", new Map([["A1", reading("A1", { value: 4 })], ["B1", STALE]])); // prettier-ignore
      return workbook;
    };
    const SAYS = /^sheet: B1 on "Source" is from before: its cell formula gives something else/;

    test.each([
      ["another sheet", { formula: "=Source!B1", value: 7 }],
      ["one behind another", { formula: "=Between!C1*2", value: 16 }],
      ["what its text does not show", { formula: '=INDIRECT("Source!"&"B1")', value: 7 }],
      ["a defined name", { formula: "=taken+1", value: 8 }],
    ])("refuses a value from before on %s", async (_, about) => {
      const workbook = across(about);
      workbook.beside = { names: [{ name: "taken", formula: "=Source!$B$1" }], rules: [], unread: [] };
      await expect(share(workbook, wanted({ sheet: "Tin" }))).rejects.toThrow(SAYS);
      expect(workbook.calls.filter((call) => call.startsWith("copy"))).toEqual([]);
      expect((await share(workbook, wanted({ sheet: "Tin", asShown: true }))).said).toMatch(/^Made /);
    });

    test("and says nothing of one that it does not read, nor reads sheets that it does not need", async () => {
      const workbook = across({ formula: "=Source!A1+1", value: 5 }, { formula: "=1+1", value: 2 });
      expect((await share(workbook, wanted({ sheet: "Tin" }))).said).toMatch(/^Made /);
      expect(workbook.calls).not.toContain("read Between");
    });

    test("through a bounded number of sheets, and says so where there are more", async () => {
      const workbook = across({ formula: '=INDIRECT("S"&1&"!A1")', value: 1 });
      for (let sheet = 1; sheet <= 40; sheet++) workbook.sheets.set(`S${sheet}`, new Map([["A1", reading("A1", { value: 1 })]]));
      workbook.sheets.get("Source")?.set("B1", reading("B1", { formula: "=A1*2", value: 8 }));
      workbook.sheets.get("Between")?.set("C1", reading("C1", { formula: "=Source!B1+1", value: 9 }));
      const { said } = await share(workbook, wanted({ sheet: "Tin" }));
      expect(said.endsWith(notFollowedElsewhere)).toBe(true);
      expect(workbook.calls.filter((call) => call.startsWith("read ")).length).toBeLessThan(30);
    });
  });

  test("the words about names and about what could not be read", () => {
    expect(namesStay("Tin", [])).toBe("");
    expect(namesStay("Tin", ["a", "b", "c", "d"])).toBe(
      '4 names of the workbook call Retort and stay as they are: a, b, c and 1 more. No formula of "Tin" uses them.',
    );
    expect(namesCall(["wet"])).toBe("A name of the workbook calls Retort and is in error without it: wet. So is every cell that uses it.");
    expect(namesCall(["wet", "dry"])).toBe(
      "2 names of the workbook call Retort and are in error without it: wet, dry. So is every cell that uses one.",
    );
    expect(besideUnread("Tin", [])).toBe("");
    expect(besideUnread("Tin", ["names"])).toBe(
      "Whether names of the workbook call Retort could not be read in full; such names are in error without it.",
    );
    expect(besideUnread("Tin", ["entry"])).toBe(
      'Whether rules of "Tin" for entries call Retort could not be read in full; such rules do nothing without it.',
    );
  });

  describe("refuses saved values that their formulas do not give, and makes nothing", () => {
    const before = (): MemoryWorkbook =>
      new MemoryWorkbook("Tin", [
        reading("A1", { value: 25 }),
        reading("A2", { value: 35 }),
        reading("A3", { value: 31.5 }),
        reading("B1", { formula: "=RETORT.MOISTURE.WET(A1,A2,A3)", value: 0.99 }),
        reading("B2", { formula: "=RETORT.MOISTURE.WET(A1,A2,A3)", value: 0.35 }),
      ]);
    const SAYS =
      'sheet: B1 on "Tin" is from before: its cell formula gives something else from the inputs that stand there. Calculate the workbook anew (in Excel Ctrl+Alt+F9) and share again, or share the values shown now.';

    test.each([
      ["values", undefined],
      ["plain", undefined],
      ["values", files(async () => made)],
      ["plain", files(async () => made)],
    ] as const)("as %s, %p", async (as, into) => {
      const workbook = before();
      const making = jest.fn(into?.make);
      const owned = into === undefined ? undefined : { ...into, make: making };
      await expect(share(workbook, wanted({ as, files: owned }))).rejects.toBeInstanceOf(StaysPending);
      await expect(share(workbook, wanted({ as, files: owned }))).rejects.toThrow(SAYS);
      expect(making).not.toHaveBeenCalled();
      expect([await workbook.sheetNames(), workbook.calls.filter((call) => call.startsWith("copy"))]).toEqual([["Tin"], []]);
      // By choice the values shown now are shared.
      expect((await share(workbook, wanted({ as, files: owned, asShown: true }))).said).toMatch(/^Made /);
    });

    test("and names every such cell", async () => {
      const workbook = before();
      workbook.sheets.get("Tin")?.set("B3", reading("B3", { formula: "=B2*2", value: 7 })); // prettier-ignore
      workbook.sheets.get("Tin")?.set("B4", reading("B4", { formula: "=RETORT.MOISTURE.DRY(A1,A2,A3)", value: 7 })); // prettier-ignore
      await expect(share(workbook, wanted({}))).rejects.toThrow(
        /^sheet: B1, B3 and B4 on "Tin" are from before: their cell formulas give something else/,
      );
    });
  });

  test("does not fill the workbook with every sheet's copy, nor go on after any other problem", async () => {
    const workbook = workbookOf();
    await expect(share(workbook, wanted({ all: true, files: refusing(new NoOwnFile("No file here.")) }))).rejects.toThrow("No file here.");
    await expect(share(workbook, wanted({ files: refusing(new WorkbookProblem("Stopped.")) }))).rejects.toThrow("Stopped.");
    expect(await workbook.sheetNames()).toEqual(["Tin"]);
  });
});

test("its sentences count and name", () => {
  const seven = ["B1", "B2", "B3", "B4", "B5", "B6", "B7"];
  expect(canBeMended("Tin", seven, 2)).toBe(
    '7 cells of "Tin" can be entered again: B1, B2, B3, B4, B5, B6 and 1 more. 2 of them show an error alone; the formula comes from the calculation record. No other cell is touched.',
  );
  expect(canBeMended("Tin", ["B1"], 1)).toContain("One of them shows an error alone");
  expect(beyondMending(["B3"])).toBe(
    "B3: shows #NAME? and neither the cell nor a calculation record tells a formula of this version of Retort. Undo, or an older copy of the workbook, may have it.",
  );
  expect([enterAgain(1), enterAgain(7), mended(7)]).toEqual(["Enter 1 formula again", "Enter 7 formulas again", "Entered 7 formulas again."]);
  expect(changedMeanwhileLeft(["B1", "B2"])).toBe("B1, B2 hold something else by now and stayed as they are.");
  expect(stillUnknown(["B1"])).toBe(
    "B1 still shows #NAME?: something in the formula is known neither to the workbook nor to Retort. Select the cell to read it under This cell.",
  );
  expect(nothingToMend("Tin")).toBe('No cell of "Tin" has a Retort function that has to be entered again.');
  expect(callsOnSheet("Tin", ["B1"])).toBe(
    '1 cell of "Tin" calls a function of Retort: B1. Your colleague first sees the values that stand there now.',
  );
  expect(mendFirst(["B1", "B2"])).toBe("Not yet: B1, B2 are broken on your own machine. Enter them again below first.");
  expect([plainInstead(3, 3), plainInstead(3, 1)]).toEqual([
    "As plain cells all of them would go on calculating.",
    "As plain cells 1 of them would go on calculating; the others would keep their values and say so once an input changes.",
  ]);
  expect(nothingNeedsRetort("Tin")).toBe('Nothing on "Tin" needs Retort: it calculates on everywhere. Save the workbook and send it.');
  expect(runSheetSaysSo("▲ Here.")).toBe(
    'This run sheet notices. Once calculated again, losses between weighings follow new weights, for they need no function of Retort; shares rest on samples judged dry or finished and come out empty. What it cannot judge it calls not judged, accuses nobody, and its third line says: "▲ Here."',
  );
  expect(copyInView("Tin values", "Tin record")).toBe('"Tin values" is in view. Its record is "Tin record".');
});
