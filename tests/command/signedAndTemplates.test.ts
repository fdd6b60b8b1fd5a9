import { isSignedFile, signatureGone } from "../../src/problems/files/signatureWords";
import { readWorkbook } from "../../src/workbench/xlsx/readWorkbook";
import { OpenedFile } from "../../src/workbench/xlsx/inPlace/OpenedFile";
import { openFile } from "../../src/workbench/xlsx/openXlsx";
import { WorkbookPackage } from "../../src/xlsx/package/WorkbookPackage";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";
import { packageOf } from "../workbench/xlsx/packageOf";
import { partsIn } from "../xlsx/package/partsIn";
import { CommandFolder, ran } from "./inFolder";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const related = (id: string, type: string, target: string): string => `<Relationship Id="${id}" Type="${type}" Target="${target}"/>`;
const tray =
  '<row r="1"><c r="A1"><v>25</v></c><c r="B1"><v>35</v></c><c r="C1"><v>31.5</v></c><c r="D1"><f>_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)</f><v>0.35</v></c></row>';
const signed = packageOf({
  sheets: { Tray: tray },
  further: {
    "[Content_Types].xml": `<Types><Override PartName="/_xmlsignatures/sig1.xml" ContentType="application/vnd.openxmlformats-package.digital-signature-xmlsignature+xml"/></Types>`,
    "_rels/.rels": `<Relationships>${related("w", "http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument", "xl/workbook.xml")}${related("o", `${PACKAGE}/relationships/digital-signature/origin`, "_xmlsignatures/origin.sigs")}</Relationships>`,
    "_xmlsignatures/origin.sigs": "",
    "_xmlsignatures/_rels/origin.sigs.rels": `<Relationships>${related("s", `${PACKAGE}/relationships/digital-signature/signature`, "sig1.xml")}</Relationships>`,
    "_xmlsignatures/sig1.xml": "<Signature/>",
  },
});

async function signsOf(content: Uint8Array): Promise<string[]> {
  const parts = await partsIn(content);
  const said = [...parts].filter(([name, bytes]) => /\.(?:rels|xml)$/.test(name) && /digital-signature/.test(bytes.toString("utf8")));
  return [...[...parts.keys()].filter((name) => name.includes("_xmlsignatures")), ...said.map(([name]) => name)];
}

describe("a signed workbook", () => {
  test.each(["values", "plain-cells"])("shared as %s is no longer signed, and that is said", async (as) => {
    const { code, notes } = await ran("share", files.put("signed.xlsx", signed), "--as", as, "-o", files.at("out.xlsx"));
    expect({ code, said: notes.includes(signatureGone) }).toEqual({ code: 0, said: true });
    expect(await signsOf(files.read("out.xlsx"))).toEqual([]);
  });

  test("one without a signature is not spoken of", async () => {
    const { notes } = await ran(
      "share",
      files.put("plain.xlsx", packageOf({ sheets: { Tray: tray } })),
      "--as",
      "values",
      "-o",
      files.at("out.xlsx"),
    );
    expect(notes).not.toContain(signatureGone);
  });

  test("is said to be one when it is opened, stays so while nothing changes, and loses the signature with the first change", async () => {
    expect((await readWorkbook(signed)).findings.inWords()).toContain(isSignedFile);
    expect((await signsOf(await (await WorkbookPackage.of(signed)).bytes())).length).toBeGreaterThan(3);
    const book = await openHeadlessWorkbook();
    const { opened } = await openFile(book.engine, signed);
    expect(opened).toBeInstanceOf(OpenedFile);
    expect(await opened.saved()).toMatchObject({ wasSigned: false });
    await book.type("Tray", "A1", 24);
    const saved = await opened.saved();
    expect(saved).toMatchObject({ wasSigned: true });
    expect(await signsOf("content" in saved ? saved.content : new Uint8Array())).toEqual([]);
    book.close();
  });
});

describe("a name that nobody gave", () => {
  test.each([
    ["tray.xltx", "tray values.xlsx"],
    ["TRAY.XLTX", "TRAY values.xlsx"],
    ["tray", "tray values.xlsx"],
    ["TRAY.XLSX", "TRAY values.XLSX"],
  ])("beside %s is %s", async (name, made) => {
    const { code, notes } = await ran("share", files.put(name, packageOf({ sheets: { Tray: tray } })), "--as", "values");
    expect({ code, notes }).toEqual({ code: 0, notes: expect.stringContaining(`Wrote ${files.at(made)}.`) });
  });
});

describe("a formula that cannot be read", () => {
  test.each([
    ["salt", "--formula", "Xx9"],
    ["salt", "--residue", "Xx9"],
    ["charring", "--formula", "Xx9"],
  ])("of a sheet of the kind %s, %s %s, is refused and nothing written", async (kind, option, formula) => {
    const { code, notes } = await ran("sheet", "--kind", kind, option, formula, "-o", files.at("run.xlsx"));
    expect({ code, names: notes.includes(option.slice(2)), writes: notes.includes("Wrote") }).toEqual({ code: 2, names: true, writes: false });
  });

  test("one that can, and none, make a sheet", async () => {
    const asked = ["sheet", "--kind", "salt", "-o"];
    expect((await ran(...asked, files.at("one.xlsx"), "--formula", "CuSO4.5H2O", "--residue", "CuSO4")).code).toBe(0);
    expect((await ran(...asked, files.at("other.xlsx"))).code).toBe(0);
  });
});

test.each([
  [["share", "--as", "values"], "nothing was shared. Name the sheet with --sheet to share it"],
  [["report", "-o", "x.html"], "nothing was reported. Name the sheet with --sheet to report it"],
  [["record"], "nothing was recorded. Name the sheet with --sheet to record it"],
])("%j of a workbook without our functions says what was not done", async ([command = "", ...options], said) => {
  const book = files.put("none.xlsx", packageOf({ sheets: { Tray: '<row r="1"><c r="A1"><v>1</v></c></row>' } }));
  const { code, notes } = await ran(command, book, ...options.map((one) => (one === "x.html" ? files.at(one) : one)));
  expect({ code, notes }).toEqual({ code: 1, notes: expect.stringContaining(said) });
});
