import { textOf } from "../xlsx/package/partsIn";
import { oddBook, xml } from "../sharing/odd/oddBook";
import { CommandFolder, ran } from "./inFolder";

jest.setTimeout(60_000);

const WET = "_xldudf_RETORT_MOISTURE_WET(Tray!$A$1,Tray!$B$1,Tray!$C$1)";
const GROUPS = "_xldudf_RETORT_COMPARE_GROUPS(Tray!$A$1:$A$4,Tray!$B$1:$B$4)";
const cells = { A1: 25, B1: 35, C1: 31.5, D1: { formula: "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)", value: 0.35 } };

/** What became of a name that a program keeps for itself, in words and in the file. */
async function shared(as: "values" | "plain-cells", name: string, refersTo: string, about = ' localSheetId="0"'): Promise<readonly [string, string]> {
  const files = new CommandFolder();
  try {
    const behind = `<definedNames><definedName name="${name}"${about}>${xml(refersTo)}</definedName></definedNames>`;
    const book = files.put("in.xlsx", oddBook({ sheets: [{ name: "Tray", cells }], behind }));
    const { code, answer } = await ran("share", book, "--as", as, "-o", files.at("out.xlsx"));
    expect(code).toBe(0);
    return [answer, await textOf(files.read("out.xlsx"), "xl/workbook.xml")];
  } finally {
    files.remove();
  }
}

describe.each(["values", "plain-cells"] as const)("names that a program keeps for itself, shared as %s", (as) => {
  test.each([
    ["_xlnm.Print_Area", `OFFSET(Tray!$A$1,0,0,ROUND(${WET}*10,0),3)`],
    ["_xlnm.Print_Titles", `OFFSET(Tray!$1:$1,0,0,ROUND(${WET}*3,0))`],
    ["_xlnm.Criteria", `OFFSET(Tray!$A$1,0,0,ROWS(${GROUPS}),3)`],
  ])("%s goes and is told where it calls one of our functions", async (name, refersTo) => {
    const [answer, workbook] = await shared(as, name, refersTo);
    expect(answer).toContain(`${name} (defined name): a printed area or another name that programs keep for themselves is no place for its form`);
    expect(workbook).not.toMatch(/xldudf/i);
  });

  test("one that is hidden is written in built-in functions, as any name is", async () => {
    const [, workbook] = await shared(as, "hiddenwet", WET, ' hidden="1"');
    expect(workbook).not.toMatch(/xldudf/i);
  });

  test("any other stays as it is", async () => {
    const [answer, workbook] = await shared(as, "_xlnm.Print_Area", "Tray!$A$1:$C$9");
    expect(answer).not.toContain("Print_Area");
    expect(workbook).toMatch(/name="_xlnm.Print_Area" localSheetId="0">[^<]*\$A\$1:\$C\$9</);
  });
});
