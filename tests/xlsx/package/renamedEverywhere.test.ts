import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import { packageOf } from "../../workbench/xlsx/packageOf";
import { textOf } from "./partsIn";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const related = (id: string, type: string, target: string, mode = ""): string =>
  `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}"${mode}/>`;
const OUTSIDE = ' TargetMode="External"';
const BEFORE = "'Tray 1'!$A$1";

test("a sheet's new name is in shapes, pictures of cells, controls, consolidations and links too", async () => {
  const file = await WorkbookPackage.of(
    packageOf({
      sheets: {
        "Tray 1": `<worksheet xmlns:r="r"><sheetData/><dataConsolidate><dataRefs><dataRef ref="A1" sheet="Tray 1"/></dataRefs></dataConsolidate><drawing r:id="d"/><controls><control><controlPr linkedCell="${BEFORE}"/></control></controls></worksheet>`,
      },
      further: {
        "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships>${related("d", "drawing", "../drawings/drawing1.xml")}${related("v", "vmlDrawing", "../drawings/vmlDrawing1.vml")}${related("k", "ctrlProp", "../ctrlProps/ctrlProp1.xml")}${related("h", "hyperlink", "#'Tray%201'!B2", OUTSIDE)}</Relationships>`,
        "xl/drawings/drawing1.xml": `<wsDr xmlns:a14="a"><sp textlink="${BEFORE}"/><sp textlink="Other!$A$1"/><a14:cameraTool cellRange="${BEFORE}:$B$2"/></wsDr>`,
        "xl/drawings/_rels/drawing1.xml.rels": `<Relationships>${related("y", "hyperlink", "#'Tray 1'!A1", OUTSIDE)}${related("z", "hyperlink", "https://example.org/#'Tray 1'!A1", OUTSIDE)}</Relationships>`,
        "xl/drawings/vmlDrawing1.vml": `<xml><br><x:FmlaLink>${BEFORE}</x:FmlaLink></xml>`,
        "xl/ctrlProps/ctrlProp1.xml": `<formControlPr fmlaLink="${BEFORE}" fmlaRange="${BEFORE}"/>`,
      },
    }),
  );
  await file.renameSheets(new Map([["Tray 1", "Ann's & 2"]]));
  const content = await file.bytes();
  const now = "'Ann''s &amp; 2'!$A$1";
  expect(await textOf(content, "xl/drawings/drawing1.xml")).toBe(
    `<wsDr xmlns:a14="a"><sp textlink="${now}"/><sp textlink="Other!$A$1"/><a14:cameraTool cellRange="${now}:$B$2"/></wsDr>`,
  );
  const sheet = await textOf(content, "xl/worksheets/sheet1.xml");
  expect(sheet).toContain(`linkedCell="${now}"`);
  expect(sheet).toContain('<dataRef ref="A1" sheet="Ann\'s &amp; 2"/>');
  expect(await textOf(content, "xl/ctrlProps/ctrlProp1.xml")).toBe(`<formControlPr fmlaLink="${now}" fmlaRange="${now}"/>`);
  expect(await textOf(content, "xl/drawings/vmlDrawing1.vml")).toBe(`<xml><br><x:FmlaLink>${now}</x:FmlaLink></xml>`);
  const [ofDrawing, ofSheet] = [await textOf(content, "xl/drawings/_rels/drawing1.xml.rels"), await textOf(content, "xl/worksheets/_rels/sheet1.xml.rels")]; // prettier-ignore
  expect(ofDrawing).toContain(`Target="#'Ann''s%20&amp;%202'!A1"`);
  expect(ofDrawing).toContain(`Target="https://example.org/#'Tray 1'!A1"`);
  expect(ofSheet).toContain(`Target="#'Ann''s%20&amp;%202'!B2"`);
});
