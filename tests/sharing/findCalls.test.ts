import fc from "fast-check";
import { findCalls } from "../../src/sharing/findCalls";

const found = (cellFormula: string) => findCalls(cellFormula).map(({ name, argumentTexts }) => [name, ...argumentTexts]);
const textOf = (cellFormula: string) => findCalls(cellFormula).map(({ start, end }) => cellFormula.slice(start, end));

describe("findCalls(cellFormula)", () => {
  it("gives the name and the text of each argument", () => {
    expect(findCalls("=RETORT.VOLATILEFRACTION($B$4, C5 , C6)")).toEqual([
      { name: "VOLATILEFRACTION", argumentTexts: ["$B$4", "C5", "C6"], start: 1, bracket: 24, end: 39 },
    ]);
  });

  it("finds nothing in a cell formula of built-in functions, in text, or in an empty cell", () => {
    expect(found('=IF(COUNT(A1:A3)=3,SUM(A1:A3),"")')).toEqual([]);
    expect(found("RETORT is on the shelf")).toEqual([]);
    expect(found("")).toEqual([]);
  });

  it("knows the namespace in any letter case and gives the name in capitals", () => {
    expect(found("=retort.Volatilefraction(1,2,3)")).toEqual([["VOLATILEFRACTION", "1", "2", "3"]]);
  });

  it("does not take a longer name that ends or begins the same way", () => {
    expect(found("=MYRETORT.CHARYIELD(1)+RETORTS.CHARYIELD(1)+RETORT_CHARYIELD(1)")).toEqual([]);
  });

  it("finds each call of several, and a call inside another call", () => {
    expect(found("=IF(RETORT.A(1)>0,RETORT.B(RETORT.C(2),3),4)")).toEqual([
      ["A", "1"],
      ["B", "RETORT.C(2)", "3"],
      ["C", "2"],
    ]);
  });

  it("marks where each call begins and ends", () => {
    expect(textOf("=1+RETORT.B(RETORT.C(2),3)*2")).toEqual(["RETORT.B(RETORT.C(2),3)", "RETORT.C(2)"]);
  });

  it("splits arguments at top level only: not in text, braces, brackets or sheet names", () => {
    expect(found(`=RETORT.X("a,b",{1,2;3,4},(A1,B1),'Tin 3, lid (b)'!A1,MAX(1,2),Runs[[#This Row],[Mass, g]])`)).toEqual([
      ["X", '"a,b"', "{1,2;3,4}", "(A1,B1)", "'Tin 3, lid (b)'!A1", "MAX(1,2)", "Runs[[#This Row],[Mass, g]]"],
    ]);
  });

  it("keeps a place for an argument left out", () => {
    expect(found('=RETORT.X(A1:A9,,"of last",)')).toEqual([["X", "A1:A9", "", '"of last"', ""]]);
    expect(found("=RETORT.X()")).toEqual([["X"]]);
  });

  it("does not take text that looks like a call", () => {
    expect(found('="Type RETORT.X(1) or ""RETORT.Y(2)"""&RETORT.Z("RETORT.X(")')).toEqual([["Z", '"RETORT.X("']]);
  });

  it("does not take the name of a sheet that looks like a call", () => {
    expect(found("='RETORT.X(1)'!A1+'[RETORT.Y(2).xlsx]It''s RETORT.Z('!B2")).toEqual([]);
  });

  it("maps the stored form back to the catalogue's name", () => {
    expect(found("=_xldudf_RETORT_VOLATILEFRACTION(A1,B1,C1)")).toEqual([["VOLATILEFRACTION", "A1", "B1", "C1"]]);
    expect(found("=_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)")).toEqual([["MOISTURE.WET", "A1", "B1", "C1"]]);
    expect(found("=_xldudf_retort_constantweight_steps(A1:A9)")).toEqual([["CONSTANTWEIGHT.STEPS", "A1:A9"]]);
  });

  it("gives a stored name the catalogue does not have as it stands", () => {
    expect(found("=_xldudf_RETORT_GONE_NOW(1)")).toEqual([["GONE_NOW", "1"]]);
  });

  it("leaves another add-in's stored functions alone", () => {
    expect(found("=_xldudf_OTHER_MOISTURE_WET(1)+_xldudf_RETORTED_X(1)")).toEqual([]);
  });

  it.each(["'C:/add ins/x.xla'!", "'C:\\Docs\\A & B (2)\\[x.xla]It''s'!", "'https://example.org/shared/x.xlam'!", "[2]!"])(
    "takes the broken link %s before a stored name as part of the call",
    (link) => {
      const cellFormula = `=-${link}_xldudf_RETORT_CHARYIELD(A1,"x, y")+1`;
      expect(found(cellFormula)).toEqual([["CHARYIELD", "A1", '"x, y"']]);
      expect(textOf(cellFormula)).toEqual([`${link}_xldudf_RETORT_CHARYIELD(A1,"x, y")`]);
    },
  );

  it("sees past a leading @", () => {
    expect(textOf("=@RETORT.X(A1)+@_xldudf_RETORT_Y(B1)")).toEqual(["RETORT.X(A1)", "_xldudf_RETORT_Y(B1)"]);
  });

  it("sees past spaces and line breaks", () => {
    expect(found("=  RETORT.X(\n  A1,\n  B1\n)")).toEqual([["X", "A1", "B1"]]);
  });

  it("does not take a call whose bracket is never closed", () => {
    expect(found("=RETORT.X(A1")).toEqual([]);
  });

  it("is not misled by an apostrophe in a column name of a table", () => {
    expect(found("=Runs[Bob''s tin]+RETORT.X(Runs['[g']])+'A b'!C1")).toEqual([["X", "Runs['[g']]"]]);
  });

  it("finds every call of any nesting, whatever text and sheet names stand between", () => {
    const leaf = fc.oneof(
      fc.string().map((text) => `"${text.replaceAll('"', '""')}"`),
      fc.constantFrom("A1", "$B$2:$B$9", "1.5", "{1,2;3,4}", "'Tin, 3 (\\b)'!C4", "TRUE", "Runs[[#This Row],[Mass, g]]", ""),
    );
    const { call } = fc.letrec<{ call: Built; argument: Built }>((tie) => ({
      call: fc
        .tuple(fc.constantFrom("RETORT.A.B", "retort.c", "_xldudf_RETORT_D"), fc.array(tie("argument"), { minLength: 2, maxLength: 4 }))
        .map(([head, inputs]) => ({
          text: `${head}(${inputs.map(({ text }) => text).join(",")})`,
          calls: [{ argumentTexts: inputs.map(({ text }) => text) }, ...inputs.flatMap(({ calls }) => calls)],
        })),
      argument: fc.oneof(
        { depthSize: "small" },
        leaf.map((text) => ({ text, calls: [] })),
        tie("call"),
      ),
    }));
    fc.assert(
      fc.property(call, ({ text, calls }) => {
        const got = findCalls(`=1+${text}*2`);
        expect(got.map(({ argumentTexts }) => argumentTexts)).toEqual(calls.map(({ argumentTexts }) => argumentTexts));
        expect(got[0]).toMatchObject({ start: 3, end: 3 + text.length });
      }),
    );
  });
});

interface Built {
  readonly text: string;
  readonly calls: readonly { readonly argumentTexts: readonly string[] }[];
}
