import { readBook } from "../../../src/command/book/Book";
import { plainFile } from "../../../src/xlsx/handedOn/plainFile";
import { valuesFile } from "../../../src/xlsx/handedOn/valuesFile";
import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import { partsIn } from "../package/partsIn";
import { bookOfSecrets, SECRET } from "./bookOfSecrets";

jest.setTimeout(60_000);

const WAYS = [
  ["plain cells", plainFile],
  ["values", valuesFile],
] as const;

async function shared(make: (typeof WAYS)[number][1]): ReturnType<typeof plainFile> {
  const content = bookOfSecrets();
  const sheets = (await readBook(content)).sheets.filter(({ name }) => name === "Tray").map(({ reading }) => reading);
  return make(content, { sheets, date: "2027-01-15" });
}

test.each(WAYS)("as %s, no byte of the file tells of a sheet that is not in it", async (_, make) => {
  const parts = await partsIn((await shared(make)).content);
  const telling = [...parts].filter(([name, bytes]) => name.includes(SECRET) || bytes.toString("latin1").includes(SECRET) || bytes.toString("utf16le").includes(SECRET)); // prettier-ignore
  expect(telling.map(([name, bytes]) => `${name}: ${/.{0,60}SECRET.{0,20}/.exec(bytes.toString("latin1"))?.[0] ?? ""}`)).toEqual([]);
  expect([...parts.values()].some((bytes) => bytes.toString("latin1").includes("4711"))).toBe(false);
});

test("the book tells of it in all these parts", async () => {
  const telling = [...(await partsIn(bookOfSecrets()))].filter(([, bytes]) => bytes.toString("latin1").includes(SECRET));
  expect(telling.length).toBeGreaterThan(45);
});

test.each(WAYS)("as %s, nothing that is still named is missing, and nothing is listed that is not there", async (_, make) => {
  const parts = await partsIn((await shared(make)).content);
  const names = new Set(parts.keys());
  for (const [name, bytes] of parts) {
    if (!name.endsWith(".rels")) continue;
    const folder = name.replace(/_rels\/[^/]*$/, "");
    for (const [, mode, target = ""] of relationshipsIn(bytes.toString("utf8")))
      if (mode === "") expect([name, names.has(new URL(target, `file:///${folder}`).pathname.slice(1))]).toEqual([name, true]);
    const part = name.replace(/_rels\/([^/]*)\.rels$/, "$1");
    if (part === "") continue;
    const ids = new Set([...bytes.toString("utf8").matchAll(/ Id="([^"]*)"/g)].map(([, id]) => id));
    for (const [, id] of (parts.get(part)?.toString("utf8") ?? "").matchAll(/ r:(?:id|embed)="([^"]*)"/g)) expect([part, id, ids.has(id)]).toEqual([part, id, true]); // prettier-ignore
  }
  for (const [, listed = ""] of (parts.get("[Content_Types].xml")?.toString("utf8") ?? "").matchAll(/PartName="\/([^"]*)"/g))
    expect([listed, names.has(listed)]).toEqual([listed, true]);
});

const relationshipsIn = (text: string): [string, string, string | undefined][] =>
  [...text.matchAll(/<Relationship [^>]*>/g)].map(([one]) => [one, one.includes("External") ? "External" : "", / Target="([^"]*)"/.exec(one)?.[1]]);

test("what is of the shared sheet alone stays: its pivot table with its slicer, its people, records, pictures and links", async () => {
  const { content } = await shared(plainFile);
  const parts = await partsIn(content);
  const text = (name: string): string => parts.get(name)?.toString("utf8") ?? "";
  expect([...parts.keys()].filter((name) => /pivot|slicer|timeline|media/i.test(name) && !name.endsWith(".rels")).sort()).toEqual([
    "xl/media/image1.png",
    "xl/media/image2.png",
    "xl/pivotCache/pivotCacheDefinition2.xml",
    "xl/pivotCache/pivotCacheRecords2.xml",
    "xl/pivotTables/pivotTable2.xml",
    "xl/slicerCaches/slicerCache2.xml",
    "xl/slicers/slicer2.xml",
  ]);
  expect(text("xl/workbook.xml")).toContain('<x14:slicerCache r:id="l2"/>');
  expect(text("xl/workbook.xml")).toContain("chartTrackingRefBase");
  expect(text("xl/worksheets/sheet1.xml")).toContain('<x14:slicer r:id="s2"/>');
  expect(text("xl/worksheets/sheet1.xml")).not.toContain("timeline");
  expect(text("xl/drawings/drawing1.xml")).toContain('name="wood"');
  expect(text("xl/drawings/drawing1.xml")).toContain('textlink="Tray!$A$1"');
  expect(text("xl/persons/person.xml")).toBe('<personList><person displayName="Ana" id="{1}"/></personList>');
  expect(text("xl/richData/rdrichvalue.xml")).toBe(
    '<rvData><rv s="0"><v></v><v>0</v></rv><rv s="1"><v>oak</v><v>1</v><v>1</v></rv><rv s="1"><v>bark</v><v>1</v><v>0</v></rv></rvData>',
  );
  expect(text("xl/styles.xml")).toContain('formatCode="0.0 &quot;g&quot;"');
  expect(text("xl/ctrlProps/ctrlProp1.xml")).toBe('<formControlPr objectType="Drop" fmlaRange="Tray!$A$1:$A$2"/>');
  expect(text("xl/drawings/vmlDrawing1.vml")).toContain("<br><x:FmlaRange>Tray!$A$1:$A$2</x:FmlaRange>");
});

test("a link to another workbook that stays is counted anew, and keeps the cells that are read", async () => {
  const { content } = await shared(plainFile);
  const file = await WorkbookPackage.of(content);
  const formulas: string[] = [];
  await file.readCells("Tray", ({ cell, formula }) => void (cell === "C1" && formulas.push(formula)));
  expect(formulas).toEqual(["'[1]Open'!A1+0"]);
  const parts = await partsIn(content);
  expect(parts.get("xl/workbook.xml")?.toString("utf8")).toContain('<externalReferences><externalReference r:id="e2"/></externalReferences>');
  expect(parts.get("xl/externalLinks/externalLink2.xml")?.toString("utf8")).toContain("<v>7</v>");
});

test("what was seen on the sheet and went is named", async () => {
  const { takenOut } = await shared(plainFile);
  expect(takenOut.map(({ what, where, why }) => `${what} ${where} ${why}`)).toEqual([
    "pivot Tray!K10:L12 notShared",
    "pivot Tray!K30:L32 notShared",
    "pivot Tray!K40:L42 connection",
    "query Tray connection",
    "query Tray connection",
    "query Tray!A1:B2 connection",
    "slicer Tray notShared",
    "slicer Tray notShared",
  ]);
});
