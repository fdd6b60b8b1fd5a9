import { readBook } from "../../../src/command/book/Book";
import { takenOutAlone, whatTaken } from "../../../src/problems/sharing/sharedCopyWords";
import { plainFile } from "../../../src/xlsx/handedOn/plainFile";
import { valuesFile } from "../../../src/xlsx/handedOn/valuesFile";
import { packageOf } from "../../workbench/xlsx/packageOf";
import { partsIn, textOf } from "../package/partsIn";

jest.setTimeout(60_000);

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const NEWER = "http://schemas.microsoft.com/office/2014/relationships";
const related = (id: string, type: string, target: string, of = OFFICE): string =>
  `<Relationship Id="${id}" Type="${of}/${type}" Target="${target}"/>`;
const relationships = (...all: readonly string[]): string => `<Relationships>${all.join("")}</Relationships>`;
const SOURCES = [
  ["H1:I4", 'sheet="Tin" ref="A1:B3"'],
  ["H6:I9", 'sheet="Tray" ref="A1:B3"'],
  ["H11:I14", 'name="weighed"'],
  ["H16:I19", 'name="Runs"'],
] as const;
const anchor = (id: string): string =>
  `<mc:AlternateContent xmlns:mc="m"><mc:Choice Requires="cx"><twoCellAnchor><graphicFrame><cx:chart xmlns:cx="x" r:id="${id}"/></graphicFrame></twoCellAnchor></mc:Choice></mc:AlternateContent>`;
const newer = (formula: string): string => `<cx:chartSpace xmlns:cx="x"><cx:chartData><cx:data id="0"><cx:numDim type="val"><cx:f>${formula}</cx:f></cx:numDim></cx:data></cx:chartData></cx:chartSpace>`; // prettier-ignore

const content = packageOf({
  sheets: {
    Tray: '<worksheet xmlns:r="r"><sheetData><row r="1"><c r="H1"><v>25</v></c></row><row r="6"><c r="H6"><v>7</v></c></row></sheetData><drawing r:id="d"/></worksheet>',
    Tin: '<worksheet xmlns:r="r"><sheetData><row r="1"><c r="A1" t="str"><v>oak</v></c><c r="B1"><v>25</v></c></row></sheetData></worksheet>',
  },
  after:
    '<definedNames><definedName name="_xlchart.v1.0" hidden="1">Tin!$B$1:$B$3</definedName><definedName name="weighed">Tin!$A$1:$B$3</definedName></definedNames>',
  further: {
    "xl/worksheets/_rels/sheet1.xml.rels": relationships(
      related("d", "drawing", "../drawings/drawing1.xml"),
      ...SOURCES.map((_, index) => related(`p${index}`, "pivotTable", `../pivotTables/pivotTable${index}.xml`)),
    ),
    "xl/worksheets/_rels/sheet2.xml.rels": relationships(related("t", "table", "../tables/table1.xml")),
    "xl/tables/table1.xml":
      '<table id="1" name="Runs" displayName="Runs" ref="A1:B3"><tableColumns count="2"><tableColumn id="1" name="wood"/><tableColumn id="2" name="g"/></tableColumns></table>',
    ...Object.fromEntries(
      SOURCES.flatMap(([ref, source], index) => [
        [`xl/pivotTables/pivotTable${index}.xml`, `<pivotTableDefinition><location ref="${ref}"/></pivotTableDefinition>`],
        [
          `xl/pivotTables/_rels/pivotTable${index}.xml.rels`,
          relationships(related("c", "pivotCacheDefinition", `../pivotCache/pivotCacheDefinition${index}.xml`)),
        ],
        [
          `xl/pivotCache/pivotCacheDefinition${index}.xml`,
          `<pivotCacheDefinition><cacheSource type="worksheet"><worksheetSource ${source}/></cacheSource></pivotCacheDefinition>`,
        ],
      ]),
    ),
    "xl/drawings/drawing1.xml": `<wsDr xmlns:r="r">${["a", "b", "c"].map(anchor).join("")}</wsDr>`,
    "xl/drawings/_rels/drawing1.xml.rels": relationships(
      ...["a", "b", "c"].map((id, index) => related(id, "chartEx", `../charts/chartEx${index}.xml`, NEWER)),
    ),
    "xl/charts/chartEx0.xml": newer("_xlchart.v1.0"),
    "xl/charts/chartEx1.xml": newer("Tin!$B$1:$B$3"),
    "xl/charts/chartEx2.xml": newer("Tray!$H$1:$H$3"),
  },
});

test.each([
  ["plain cells", plainFile],
  ["values", valuesFile],
] as const)("as %s, pivot tables and newer charts of data on a sheet that goes are taken out and named", async (as, make) => {
  const sheets = (await readBook(content)).sheets.filter(({ name }) => name === "Tray").map(({ reading }) => reading);
  const file = await make(content, { sheets, date: "2027-01-15" });
  expect(file.takenOut.map(({ what, where, why }) => [what, where, why])).toEqual([
    ...["H1:I4", "H11:I14", "H16:I19"].map((ref) => ["pivot", `Tray!${ref}`, "notShared"]),
    ...["chart", "chart"].map((what) => [what, "Tray", "notShared"]),
  ]);
  const parts = [...(await partsIn(file.content)).keys()];
  expect(parts.filter((part) => /chartEx/.test(part))).toEqual(["xl/charts/chartEx2.xml"]);
  const drawing = await textOf(file.content, "xl/drawings/drawing1.xml");
  expect([...drawing.matchAll(/r:id="(\w)"/g)].map(([, id]) => id)).toEqual(["c"]);
  const listed = await textOf(file.content, "xl/worksheets/_rels/sheet1.xml.rels");
  expect([...listed.matchAll(/Id="(p\d)"/g)].map(([, id]) => id)).toEqual(as === "values" ? [] : ["p1"]);
  const { sheets: made } = await readBook(file.content);
  expect(made[0]?.reading.rows.flat().filter(({ cell }) => /^H[16]$/.test(cell)).map(({ value }) => value)).toEqual([25, 7]); // prettier-ignore
});

test("how they are named", () => {
  expect(takenOutAlone([whatTaken("Tray!H1:I4", "pivot"), whatTaken("Tray", "chart")])).toBe(
    "Taken out, because they read or lead to sheets that are not in the file: Tray!H1:I4 (pivot table), Tray (chart).",
  );
});
