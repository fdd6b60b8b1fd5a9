import JSZip from "jszip";
import { oddBook } from "../sharing/odd/oddBook";
import { CommandFolder, ran } from "./inFolder";

const dried = { formula: "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)", value: 0.35 };
const cells = { A1: 25, B1: 35, C1: 31.5, D1: dried };

async function namesOfCopy(second: string): Promise<string[]> {
  const files = new CommandFolder();
  try {
    const content = oddBook({ sheets: [{ name: "Tray", cells }, { name: second, cells }] }); // prettier-ignore
    const done = await ran("share", files.put("in.xlsx", content), "--as", "plain-cells", "-o", files.at("out.xlsx"));
    expect(done).toMatchObject({ code: 0 });
    const book = (await (await JSZip.loadAsync(files.read("out.xlsx"))).file("xl/workbook.xml")?.async("string")) ?? "";
    expect(book.match(/<sheet /g)).toHaveLength(4);
    return [...book.matchAll(/<definedName name="([^"]+)" localSheetId="(\d)"/g)].map(([, name, sheet]) => `${name ?? ""} of ${sheet ?? ""}`);
  } finally {
    files.remove();
  }
}

const OF_RECORDS = [2, 3].flatMap((sheet) => [`_xlnm.Print_Area of ${sheet}`, `_xlnm.Print_Titles of ${sheet}`]);

test("records are printed by names of their own", async () => expect(await namesOfCopy("Two's")).toEqual(OF_RECORDS));

// LibreOffice leaves such a sheet out, and opens no file with a name of a sheet beyond the last that it counts.
test.each(["It's (a) [b]", "a]", "dry/char", "what?", "a*b", "a\\b", "'a", "a'"])("records in a book with a sheet %s are not", async (name) =>
  expect(await namesOfCopy(name)).toEqual([]),
);
