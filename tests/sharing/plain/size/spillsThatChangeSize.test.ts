import { plainSheets, type PlainCell, type PlainSheets } from "../../../../src/sharing/plain/plainSheets";
import type { CellContent, CellReading } from "../../../../src/workbook/Workbook";

const DATE = "2027-01-15";
const FIXED = `fixed on ${DATE}: inputs changed`;
const WET = "RETORT.MOISTURE.WET(A1:A4,B1:B4,C1:C4)";
const PROXIMATE = "RETORT.PROXIMATE(A1,B1,C1,A2,A3)";

const reading = (cell: string, about: Partial<CellReading>): CellReading => ({
  ...{ cell, formula: "", value: null, shown: "", error: "", message: "", spill: "" },
  ...about,
});

/** A formula in E5 that takes as many cells as its answer needs, beside weighings and other cells. */
function shared(formula: string, spill = "", others: Readonly<Record<string, CellContent>> = {}, error = ""): PlainSheets {
  const weighings = [1, 2, 3, 4].flatMap((row) => [
    reading(`A${row}`, { value: 25 }),
    reading(`B${row}`, { value: 35 + row }),
    reading(`C${row}`, { value: 31 }),
  ]);
  const beside = Object.entries(others).map(([cell, content]) =>
    reading(cell, typeof content === "string" && content.startsWith("=") ? { formula: content, value: 0 } : { value: content }),
  );
  const own = reading("E5", { formula, value: error === "" ? 0.4 : error, error, spill, spills: true });
  return plainSheets({ sheets: [{ sheet: "T", range: "", rows: [weighings, [own], beside] }] }, { date: DATE, newerFunctions: true });
}

const ownIn = ({ cells }: PlainSheets): PlainCell | undefined => cells.find(({ cell }) => cell === "E5");
const becameOf = (made: PlainSheets): unknown[] => {
  const own = ownIn(made);
  return [own?.kind, own?.area, own?.keepsSize === true];
};

describe("an answer whose largest size is known and finds room goes into all the cells it may need", () => {
  test.each<[string, string, string]>([
    ["a choice of nothing", `=IF(D1="","",${WET})`, "E5:E8"],
    ["the other branch", `=IF(D1=0,${WET},0.3)`, "E5:E8"],
    ["a condition without a second branch", `=IF(D1=0,${WET})`, "E5:E8"],
    ["a table of ours", `=IF(D1="","",${PROXIMATE})`, "E5:G10"],
    ["a table that may be refused", `=IFERROR(${PROXIMATE},"")`, "E5:G10"],
    ["an error in place of a table", `=IFNA(${PROXIMATE},0)`, "E5:G10"],
    ["one of several", `=CHOOSE(D1,0.1,${WET},RETORT.AIRLEFT(A1))`, "E5:E8"],
    ["one of several named", `=SWITCH(D1,1,${WET},2,0.1,"none")`, "E5:E8"],
    ["the first that holds", `=IFS(D1>2,${WET},D1>1,0.1)`, "E5:E8"],
    ["a variable", `=LET(w,${WET},IF(D1=0,w,0))`, "E5:E8"],
    ["what is made of it", `=ROUND(IF(D1=0,100*${WET},0),1)`, "E5:E8"],
    ["a row and a column", `=IF(D1=0,${WET},1)*IF(D2=0,{1,2},1)`, "E5:F8"],
  ])("%s", (_, formula, area) => {
    const made = shared(formula);
    expect(becameOf(made)).toEqual(["plain", area, false]);
    const own = ownIn(made);
    expect(own !== undefined && "one" in own.formulas ? own.formulas.one : "").toMatch(/^=IF\(\(\{1[;,]2/);
  });

  test("a place of 0 is all of them: where it was so they stay blank beyond, and else it says so once it is", () => {
    expect(becameOf(shared(`=INDEX(${WET},D1)`, "E5:E8"))).toEqual(["plain", "E5:E8", false]);
    expect(becameOf(shared(`=INDEX(${PROXIMATE},D1,2)`, "E5:E10"))).toEqual(["plain", "E5:E10", false]);
    for (const [formula, now] of [
      [`=INDEX(${WET},D1)`, "IF(ABS(N(T!D1))<1,4,1)"],
      [`=RETORT.AIRLEFT(INDEX(A1:A4,D1))`, "IF(ABS(N(T!D1))<1,4,1)"],
      [`=INDEX(${PROXIMATE},2,D1)`, "IF(ABS(N(T!D1))<1,3,1)"],
      [`=RETORT.AIRLEFT(INDEX(A:A,D1))`, "IF(ABS(N(T!D1))<1,1048576,1)"],
    ] as const) {
      const made = shared(formula);
      expect([formula, ...becameOf(made)]).toEqual([formula, "plain", "E5", true]);
      expect(made.workings?.cells.map(({ content }) => content)).toContain(`=IF(IFERROR(${now},1)<>1,1,0)`);
    }
    expect(becameOf(shared('=RETORT.AIRLEFT(INDEX(A1:A4,MATCH("x",B1:B4,0)))'))).toEqual(["plain", "E5", false]);
  });

  test("where the size is the same whatever cells hold, nothing is put around it", () => {
    for (const [formula, spill] of [
      [`=${WET}`, "E5:E8"],
      [`=IF(A1:A4>1,${WET},0)`, "E5:E8"],
      [`=IF(TRUE,${WET},0)`, "E5:E8"],
      [`=INDEX(${WET},2)`, ""],
      [`=INDEX(${PROXIMATE},2,2)`, ""],
      [`=SUM(IF(D1=0,${WET},0))`, ""],
      [`=IFERROR(${WET},0)`, "E5:E8"],
    ] as const) {
      const made = shared(formula, spill);
      expect([formula, ...becameOf(made)]).toEqual([formula, "plain", spill === "" ? "E5" : spill, false]);
      const own = ownIn(made);
      expect(own !== undefined && "one" in own.formulas ? own.formulas.one : "").not.toMatch(/^=IF\(\(\{/);
    }
  });

  test("a table in error when it was shared has its cells again once that is mended", () => {
    const made = shared(`=${PROXIMATE}`, "", {}, "#VALUE!");
    expect(becameOf(made)).toEqual(["plain", "E5:G10", false]);
    expect(ownIn(made)?.formulas).toMatchObject({ each: { length: 6 } });
  });

  test("one that was entered into fewer cells keeps them", () => {
    const own = reading("E5", { formula: `=${PROXIMATE}`, value: "Share", spill: "E5:F6" });
    const { cells } = plainSheets({ sheets: [{ sheet: "T", range: "", rows: [[own]] }] }, { date: DATE });
    expect(cells[0]).toMatchObject({ kind: "plain", area: "E5:F6" });
  });
});

describe("what tells a blank cell from an empty text keeps it at its size, and all of them say so once it changes", () => {
  const formula = `=IF(D1=0,0.3,${WET})`;

  test.each(["=E6*2", '=IF(E6>0.3,"moist","dry")', "=COUNTA(E5:E8)", "=ISBLANK(E6)", "=SUM(E5#)", '=E5:E8&""'])("%s", (reader) => {
    const made = shared(formula, "", { H1: reader });
    expect(becameOf(made)).toEqual(["plain", "E5", true]);
    const [own] = made.cells.filter(({ cell }) => cell === "E5");
    const [watched] = made.cells.filter(({ cell }) => cell === "H1");
    expect(own !== undefined && "one" in own.formulas ? own.formulas.one : "").toContain(`=IF('T changes'!E5=2,"${FIXED}",`);
    expect(watched).toMatchObject({ kind: "watched" });
    const flags = new Map(made.flags[0]?.cells.map(({ cell, content }) => [cell, content]));
    expect(flags.get("E5")).toMatch(/^=IF\(MAX\(Workings!.*\)>0,2,0\)$/);
    // Blank cells that the answer may come to fill are flagged with it.
    expect(["E6", "E7", "E8"].map((cell) => flags.get(cell))).toEqual(["=E5", "=E5", "=E5"]);
    const size = made.workings?.cells.filter(({ content }) => content.includes("<>1,1,0)"));
    expect(size?.map(({ content }) => content)).toEqual(["=IF(IFERROR(IF(T!D1=0,1,4),1)<>1,1,0)"]);
  });

  test.each(["=SUM(E5:E8)", "=MAX(1,E6)", "=COUNT(E5:E8)=4", '=IF(E6="","none","some")', "=E5*2", "=RETORT.AIRLEFT(E5:E8)", "=D1+A1"])(
    "%s does not mind",
    (reader) => expect(becameOf(shared(formula, "", { H1: reader }))).toEqual(["plain", "E5:E8", false]),
  );

  test("so does what has no room, which is never cut in silence", () => {
    expect(becameOf(shared(formula, "", { E7: "a note" }))).toEqual(["plain", "E5", true]);
    expect(ownIn(shared(`=${PROXIMATE}`, "", { F6: "a note" }, "#VALUE!"))).toMatchObject({ kind: "fixed", why: "noRoom", area: "E5" });
  });

  test("whole columns say so once a row below or the last row is another", () => {
    const sizeOf = (spill: string): string | undefined => {
      const made = shared("=RETORT.MOISTURE.WET(A:A,B:B,C:C)", spill);
      expect(becameOf(made)).toEqual(["plain", spill, true]);
      return made.workings?.cells.map(({ content }) => content).find((content) => content.includes("COUNT("));
    };
    // Some hosts answer blank rows below the last one too.
    expect(sizeOf("E5:E10")).toContain('IF(COUNT(T!A7:A1048576)+COUNTIF(T!A7:A1048576,"?*")>0,7,6)');
    expect(sizeOf("E5:E8")).toContain('IF(COUNT(T!A5:A1048576)+COUNTIF(T!A5:A1048576,"?*")>0,5,IF(COUNT(T!A4)+COUNTIF(T!A4,"?*")>0,4,3))');
  });

  test("a table that fills a row for each weighing does so too", () => {
    const made = shared("=RETORT.CONSTANTWEIGHT.STEPS(B1:B4)", "E5:I9", { H20: "=COUNTA(E5:E9)" });
    expect(becameOf(made)).toEqual(["plain", "E5:I9", true]);
    expect(becameOf(shared("=RETORT.CONSTANTWEIGHT.STEPS(B1:B9)", "E5:I9"))).toEqual(["plain", "E5:I14", false]);
  });
});

test("a fixed answer, whose size nothing tells, flags the free cells that it may come to fill", () => {
  const made = shared("=RETORT.COMPARE.GROUPS(B1:B4,C1:C4)", "E5:G6", { E12: "a note", H1: "=E8" });
  expect(ownIn(made)).toMatchObject({ kind: "fixed", area: "E5:G6" });
  expect(made.cells.find(({ cell }) => cell === "H1")).toMatchObject({ kind: "watched" });
  const flags = new Map(made.flags[0]?.cells.map(({ cell, content }) => [cell, content]));
  expect([flags.get("E11"), flags.get("E12")]).toEqual(["=E5", undefined]);
});
