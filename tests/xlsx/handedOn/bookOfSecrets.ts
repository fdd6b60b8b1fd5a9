import { packageOf } from "../../workbench/xlsx/packageOf";

/** What no byte of a file may hold that was made of the sheet Tray alone. */
export const SECRET = "SECRET";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships/metadata";
const MICROSOFT = "http://schemas.microsoft.com/office";
const related = (id: string, type: string, target: string, of = OFFICE): string =>
  `<Relationship Id="${id}" Type="${of}/${type}" Target="${target}"/>`;
const outside = (id: string, type: string, target: string): string =>
  `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}" TargetMode="External"/>`;
const relationships = (...all: readonly string[]): string => `<Relationships>${all.join("")}</Relationships>`;

const cell = (at: string, value: string): string => `<c r="${at}" t="str"><v>${value}</v></c>`;
const extension = (uri: string, inside: string): string => `<ext uri="{${uri}}">${inside}</ext>`;

/** Pivot tables by the sheet and number; each reads the cache of its own number. */
const pivot = (number: number, name: string, source: string): Record<string, string> => ({
  [`xl/pivotTables/pivotTable${number}.xml`]: `<pivotTableDefinition name="${name}"><location ref="K${number * 10}:L${number * 10 + 2}"/></pivotTableDefinition>`,
  [`xl/pivotTables/_rels/pivotTable${number}.xml.rels`]: relationships(
    related("c", "pivotCacheDefinition", `../pivotCache/pivotCacheDefinition${number}.xml`),
  ),
  ...cache(number, source),
});
const cache = (number: number, source: string): Record<string, string> => ({
  [`xl/pivotCache/pivotCacheDefinition${number}.xml`]: `<pivotCacheDefinition xmlns:r="r" r:id="q"><cacheSource ${source}</cacheSource><cacheFields><cacheField name="a"><sharedItems><s v="${held(number)}"/></sharedItems></cacheField></cacheFields></pivotCacheDefinition>`,
  [`xl/pivotCache/_rels/pivotCacheDefinition${number}.xml.rels`]: relationships(related("q", "pivotCacheRecords", `pivotCacheRecords${number}.xml`)),
  [`xl/pivotCache/pivotCacheRecords${number}.xml`]: `<pivotCacheRecords><r><s v="${held(number)}"/></r></pivotCacheRecords>`,
});
/** The second cache alone is made from the sheet that is shared. */
const held = (number: number): string => (number === 2 ? "oak" : SECRET);
const worksheetSource = (source: string): string => `type="worksheet"><worksheetSource ${source}/>`;

const slicerCache = (name: string, inside: string): string =>
  `<slicerCacheDefinition name="${name}" sourceName="a">${inside}</slicerCacheDefinition>`;
const chosen = (...tables: readonly (readonly [tab: number, name: string])[]): string =>
  `<pivotTables>${tables.map(([tab, name]) => `<pivotTable tabId="${tab}" name="${name}"/>`).join("")}</pivotTables><data><tabular pivotCacheId="1"><items><i x="0" n="${tables.some(([, name]) => name !== "Own") ? SECRET : "oak"}"/></items></tabular></data>`;
const shownBy = (kind: string, name: string): string =>
  `<twoCellAnchor><mc:AlternateContent xmlns:mc="m"><mc:Choice Requires="a14"><graphicFrame><sle:${kind} xmlns:sle="s" name="${name}"/></graphicFrame></mc:Choice></mc:AlternateContent></twoCellAnchor>`;

const otherBook = (...sheets: readonly (readonly [name: string, value: string])[]): string =>
  `<externalLink xmlns:r="r"><externalBook r:id="b"><sheetNames>${sheets.map(([name]) => `<sheetName val="${name}"/>`).join("")}</sheetNames><sheetDataSet>${sheets
    .map(([, value], index) => `<sheetData sheetId="${index}"><row r="1"><cell r="A1" t="str"><v>${value}</v></cell></row></sheetData>`)
    .join("")}</sheetDataSet></externalBook></externalLink>`;

const TRAY = `<worksheet xmlns:r="r"><sheetData><row r="1">${cell("A1", "oak")}<c r="B1" s="1" vm="2" cm="1"><v>25</v></c><c r="C1"><f>'[2]Open'!A1+0</f><v>7</v></c></row><row r="2">${cell("A2", "ash")}<c r="B2"><v>65.2</v></c><c r="C2"><f>RETORT.MOISTURE.WET(25,65.2,51.21)</f><v>0.34800995024875622</v></c></row></sheetData><dataConsolidate><dataRefs><dataRef ref="A1:A2" sheet="${SECRET} tin"/></dataRefs></dataConsolidate><drawing r:id="d"/><legacyDrawing r:id="v"/><controls><control r:id="k"><controlPr linkedCell="'${SECRET} tin'!$A$1" listFillRange="Tray!$A$1:$A$2"/></control></controls><extLst>${extension("A8765BA9-456A-4DAB-B4F3-ACF838C121DE", '<x14:slicerList xmlns:x14="x"><x14:slicer r:id="s1"/><x14:slicer r:id="s2"/></x14:slicerList>')}${extension("7E03D99C-DC04-49D9-9315-930204A7B6E9", '<x15:timelineRefs xmlns:x15="x"><x15:timelineRef r:id="t"/></x15:timelineRefs>')}</extLst></worksheet>`;

const TIN = `<worksheet xmlns:r="r"><sheetData><row r="1"><c r="A1" t="s"><v>1</v></c><c r="B1" s="2" vm="1"><v>1</v></c><c r="C1"><f>[1]${SECRET}!A1</f><v>2</v></c></row></sheetData></worksheet>`;

/** A workbook whose every part that may tell of the sheet that is not shared does so. */
export const bookOfSecrets = (): Uint8Array<ArrayBuffer> =>
  packageOf({
    sheets: { Tray: TRAY, [`${SECRET} tin`]: TIN },
    before: `<mc:AlternateContent xmlns:mc="m"><mc:Choice Requires="x15"><x15ac:absPath xmlns:x15ac="y" url="C:\\${SECRET}\\"/></mc:Choice></mc:AlternateContent>`,
    after: [
      '<externalReferences><externalReference r:id="e1"/><externalReference r:id="e2"/></externalReferences>',
      `<definedNames><definedName name="${SECRET}_a">'${SECRET} tin'!$A$1</definedName><definedName name="own">Tray!$A$1</definedName><definedName name="_xlnm.Print_Area" localSheetId="1">'${SECRET} tin'!$A$1:$B$2</definedName></definedNames>`,
      `<customWorkbookViews><customWorkbookView name="${SECRET}" guid="{0}"/></customWorkbookViews>`,
      `<pivotCaches>${[1, 2, 3, 4].map((number) => `<pivotCache cacheId="${number}" r:id="p${number}"/>`).join("")}</pivotCaches>`,
      `<webPublishObjects><webPublishObject id="1" divId="d" sourceObject="${SECRET}" destinationFile="x"/></webPublishObjects>`,
      `<extLst>${extension("BBE1A952-AA13-448E-AADC-164F8A28A991", '<x14:slicerCaches xmlns:x14="x"><x14:slicerCache r:id="l1"/><x14:slicerCache r:id="l2"/></x14:slicerCaches>')}`,
      extension("D0CA8CA8-9F24-4464-BF8E-62219DCF47F9", '<x15:timelineCacheRefs xmlns:x15="x"><x15:timelineCacheRef r:id="l3"/></x15:timelineCacheRefs>'), // prettier-ignore
      extension("876F7934-8845-4945-9796-88D515C7AA90", '<x14:pivotCaches xmlns:x14="x"><pivotCache cacheId="5" r:id="p5"/></x14:pivotCaches>'),
      extension("FCE2AD5D-F65C-4FA6-A056-5C36A1767C68", `<x15:dataModel xmlns:x15="x"><x15:modelTables><x15:modelTable id="${SECRET}" name="${SECRET}"/></x15:modelTables></x15:dataModel>`), // prettier-ignore
      extension("140A7094-0E35-4892-8432-C4D2E57EDEB5", '<x15:workbookPr xmlns:x15="x" chartTrackingRefBase="1"/></extLst>').replace("</extLst></ext>", "</ext></extLst>"), // prettier-ignore
    ].join(""),
    further: {
      "_rels/.rels": relationships(
        related("w", "officeDocument", "xl/workbook.xml"),
        related("a", "extended-properties", "docProps/app.xml"),
        related("c", "custom-properties", "docProps/custom.xml"),
        related("t", "thumbnail", "docProps/thumbnail.emf", PACKAGE),
        related("u", "extensibility", "customUI/customUI.xml"),
      ),
      "docProps/app.xml": `<Properties xmlns:vt="v"><Application>x</Application><HeadingPairs><vt:vector/></HeadingPairs><TitlesOfParts><vt:vector><vt:lpstr>${SECRET} tin</vt:lpstr></vt:vector></TitlesOfParts><HLinks><vt:vector><vt:lpwstr>https://${SECRET}/</vt:lpwstr></vt:vector></HLinks></Properties>`,
      "docProps/custom.xml": `<Properties><property linkTarget="${SECRET}_a"><lpwstr>${SECRET}</lpwstr></property></Properties>`,
      "docProps/thumbnail.emf": SECRET,
      "customUI/customUI.xml": `<customUI tag="${SECRET}"/>`,
      "customXml/item1.xml": `<item>${SECRET}</item>`,
      "customXml/_rels/item1.xml.rels": relationships(related("p", "customXmlProps", "itemProps1.xml")),
      "customXml/itemProps1.xml": `<datastoreItem>${SECRET}</datastoreItem>`,
      "xl/_rels/workbook.xml.rels": relationships(
        related("s1", "worksheet", "worksheets/sheet1.xml"),
        related("s2", "worksheet", "worksheets/sheet2.xml"),
        related("ss", "sharedStrings", "sharedStrings.xml"),
        related("st", "styles", "styles.xml"),
        ...[1, 2, 3, 4, 5].map((number) => related(`p${number}`, "pivotCacheDefinition", `pivotCache/pivotCacheDefinition${number}.xml`)),
        related("l1", "slicerCache", "slicerCaches/slicerCache1.xml", `${MICROSOFT}/2007/relationships`),
        related("l2", "slicerCache", "slicerCaches/slicerCache2.xml", `${MICROSOFT}/2007/relationships`),
        related("l3", "timelineCache", "timelineCaches/timelineCache1.xml", `${MICROSOFT}/2011/relationships`),
        related("e1", "externalLink", "externalLinks/externalLink1.xml"),
        related("e2", "externalLink", "externalLinks/externalLink2.xml"),
        related("co", "connections", "connections.xml"),
        related("xm", "xmlMaps", "xmlMaps.xml"),
        related("cx", "customXml", "../customXml/item1.xml"),
        related("vo", "volatileDependencies", "volatileDependencies.xml"),
        related("re", "revisionHeaders", "revisions/revisionHeaders.xml"),
        related("mo", "powerPivotData", "model/item.data", `${MICROSOFT}/2011/relationships`),
        related("pe", "person", "persons/person.xml", `${MICROSOFT}/2017/10/relationships`),
        related("me", "sheetMetadata", "metadata.xml"),
        related("rv", "rdRichValue", "richData/rdrichvalue.xml", `${MICROSOFT}/2017/06/relationships`),
        related("rs", "rdRichValueStructure", "richData/rdrichvaluestructure.xml", `${MICROSOFT}/2017/06/relationships`),
        related("ra", "rdArray", "richData/rdarray.xml", `${MICROSOFT}/2017/06/relationships`),
        related("rr", "richValueRel", "richData/richValueRel.xml", `${MICROSOFT}/2022/10/relationships`),
        related("nn", "ofSomeLaterVersion", "later.xml", MICROSOFT),
      ),
      "xl/sharedStrings.xml": `<sst><si><t>ash</t></si><si><t>${SECRET}</t></si></sst>`,
      "xl/styles.xml": `<styleSheet><numFmts count="2"><numFmt numFmtId="170" formatCode="0.0 &quot;g&quot;"/><numFmt numFmtId="171" formatCode="0 &quot;${SECRET}&quot;"/></numFmts><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf numFmtId="0"/></cellStyleXfs><cellXfs count="3"><xf numFmtId="0" xfId="0"/><xf numFmtId="170" xfId="0"/><xf numFmtId="171" xfId="0"/></cellXfs><dxfs count="1"><dxf><numFmt numFmtId="172" formatCode="&quot;${SECRET}&quot;"/></dxf></dxfs></styleSheet>`,
      ...pivot(1, "OfTin", worksheetSource(`ref="A1:B2" sheet="${SECRET} tin"`)),
      ...pivot(2, "Own", worksheetSource('ref="A1:B2" sheet="Tray"')),
      ...pivot(3, "Gathered", `type="consolidation"><consolidation><rangeSets><rangeSet ref="A1:B2" sheet="${SECRET} tin"/></rangeSets></consolidation>`), // prettier-ignore
      ...pivot(4, "Model", 'type="external" connectionId="1">'),
      ...cache(5, worksheetSource(`ref="A1:B2" sheet="${SECRET} tin"`)),
      "xl/slicerCaches/slicerCache1.xml": slicerCache("Slicer_tin", chosen([1, "OfTin"], [1, "Own"])),
      "xl/slicerCaches/slicerCache2.xml": slicerCache("Slicer_own", chosen([1, "Own"])),
      "xl/timelineCaches/timelineCache1.xml": `<timelineCacheDefinition name="Time_tin">${chosen([2, "OfTin"])}</timelineCacheDefinition>`,
      "xl/slicers/slicer1.xml": `<slicers><slicer name="${SECRET} 1" cache="Slicer_tin" caption="${SECRET}"/></slicers>`,
      "xl/slicers/slicer2.xml": '<slicers><slicer name="wood" cache="Slicer_own" caption="wood"/></slicers>',
      "xl/timelines/timeline1.xml": `<timelines><timeline name="${SECRET} 2" cache="Time_tin" caption="${SECRET}"/></timelines>`,
      "xl/externalLinks/externalLink1.xml": otherBook([SECRET, SECRET]),
      "xl/externalLinks/_rels/externalLink1.xml.rels": relationships(outside("b", "externalLinkPath", `${SECRET}.xlsx`)),
      "xl/externalLinks/externalLink2.xml": otherBook(["Open", "7"], ["Closed", SECRET]),
      "xl/externalLinks/_rels/externalLink2.xml.rels": relationships(outside("b", "externalLinkPath", "open.xlsx")),
      "xl/connections.xml": `<connections><connection id="1" name="${SECRET}"><dbPr connection="${SECRET}" command="${SECRET}"/></connection></connections>`,
      "xl/xmlMaps.xml": `<MapInfo><Map ID="1" Name="${SECRET}"/></MapInfo>`,
      "xl/volatileDependencies.xml": `<volTypes><volType type="realTimeData"><main first="${SECRET}"><tp t="s"><v>${SECRET}</v></tp></main></volType></volTypes>`,
      "xl/revisions/revisionHeaders.xml": "<headers><header/></headers>",
      "xl/revisions/_rels/revisionHeaders.xml.rels": relationships(related("l", "revisionLog", "revisionLog1.xml")),
      "xl/revisions/revisionLog1.xml": `<revisions><rcc><nc><is><t>${SECRET}</t></is></nc></rcc></revisions>`,
      "xl/model/item.data": SECRET,
      "xl/later.xml": `<later>${SECRET}</later>`,
      "xl/left/behind.xml": `<stray>${SECRET}</stray>`,
      "xl/persons/person.xml": `<personList><person displayName="Ana" id="{1}"/><person displayName="${SECRET}" id="{2}"/></personList>`,
      "xl/metadata.xml": `<metadata><metadataTypes count="3"><metadataType name="XLDAPR"/><metadataType name="XLRICHVALUE"/><metadataType name="XLMDX"/></metadataTypes><metadataStrings count="1"><s v="${SECRET}"/></metadataStrings><mdxMetadata count="1"><mdx n="0" f="v"><k n="0" np="0" p="v"/></mdx></mdxMetadata><futureMetadata name="XLDAPR" count="1"><bk/></futureMetadata><futureMetadata name="XLRICHVALUE" count="2"><bk><extLst><ext><xlrd:rvb xmlns:xlrd="x" i="0"/></ext></extLst></bk><bk><extLst><ext><xlrd:rvb xmlns:xlrd="x" i="1"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata><valueMetadata count="2"><bk><rc t="2" v="0"/></bk><bk><rc t="2" v="1"/></bk></valueMetadata></metadata>`,
      "xl/richData/rdrichvaluestructure.xml": `<rvStructures><s t="${SECRET}"><k n="${SECRET}" t="s"/><k n="mass"/></s><s t="wood"><k n="name" t="s"/><k n="parts" t="a"/><k n="_rvRel:LocalImageIdentifier" t="i"/></s></rvStructures>`,
      "xl/richData/rdrichvalue.xml": `<rvData><rv s="0"><v>${SECRET}</v><v>4711</v></rv><rv s="1"><v>oak</v><v>1</v><v>1</v></rv><rv s="1"><v>bark</v><v>1</v><v>0</v></rv></rvData>`,
      "xl/richData/rdarray.xml": `<arrayData><a r="1" c="1"><v t="s">${SECRET}</v></a><a r="1" c="1"><v t="r">2</v></a></arrayData>`,
      "xl/richData/richValueRel.xml": '<richValueRels xmlns:r="r"><rel r:id="i1"/><rel r:id="i2"/><rel r:id="i3"/></richValueRels>',
      "xl/richData/_rels/richValueRel.xml.rels": relationships(
        related("i1", "image", "../media/image1.png"),
        related("i2", "image", "../media/image2.png"),
        related("i3", "image", "../media/image3.png"),
      ),
      "xl/media/image1.png": "bark",
      "xl/media/image2.png": "oak",
      "xl/media/image3.png": SECRET,
      "xl/worksheets/_rels/sheet1.xml.rels": relationships(
        related("d", "drawing", "../drawings/drawing1.xml"),
        related("v", "vmlDrawing", "../drawings/vmlDrawing1.vml"),
        related("k", "ctrlProp", "../ctrlProps/ctrlProp1.xml"),
        related("q", "queryTable", "../queryTables/queryTable1.xml"),
        related("b", "table", "../tables/table1.xml"),
        related("x", "tableSingleCells", "../tables/tableSingleCells1.xml"),
        related("h", "threadedComment", "../threadedComments/threadedComment1.xml", `${MICROSOFT}/2017/10/relationships`),
        related("s1", "slicer", "../slicers/slicer1.xml", `${MICROSOFT}/2007/relationships`),
        related("s2", "slicer", "../slicers/slicer2.xml", `${MICROSOFT}/2007/relationships`),
        related("t", "timeline", "../timelines/timeline1.xml", `${MICROSOFT}/2011/relationships`),
        ...[1, 2, 3, 4].map((number) => related(`p${number}`, "pivotTable", `../pivotTables/pivotTable${number}.xml`)),
      ),
      "xl/worksheets/_rels/sheet2.xml.rels": relationships(
        related("h", "threadedComment", "../threadedComments/threadedComment2.xml", `${MICROSOFT}/2017/10/relationships`),
        related("p", "printerSettings", "../printerSettings/printerSettings1.bin"),
        related("c", "comments", "../comments1.xml"),
      ),
      "xl/threadedComments/threadedComment1.xml":
        '<ThreadedComments><threadedComment ref="A1" personId="{1}"><text>dry</text></threadedComment></ThreadedComments>',
      "xl/threadedComments/threadedComment2.xml": `<ThreadedComments><threadedComment ref="A1" personId="{2}"><text>${SECRET}</text></threadedComment></ThreadedComments>`,
      "xl/printerSettings/printerSettings1.bin": SECRET,
      "xl/comments1.xml": `<comments><authors><author>${SECRET}</author></authors></comments>`,
      "xl/queryTables/queryTable1.xml": `<queryTable name="${SECRET}" connectionId="1"/>`,
      "xl/tables/tableSingleCells1.xml": `<singleXmlCells><singleXmlCell r="A1"><xmlCellPr id="1"><xmlPr mapId="1" xpath="/${SECRET}"/></xmlCellPr></singleXmlCell></singleXmlCells>`,
      "xl/tables/table1.xml": `<table id="1" name="woods" displayName="woods" ref="A1:B2" tableType="queryTable"><tableColumns count="2"><tableColumn id="1" name="oak" queryTableFieldId="1"><xmlColumnPr mapId="1" xpath="/${SECRET}"/></tableColumn><tableColumn id="2" name="25"/></tableColumns></table>`,
      "xl/tables/_rels/table1.xml.rels": relationships(related("q", "queryTable", "../queryTables/queryTable2.xml")),
      "xl/queryTables/queryTable2.xml": `<queryTable name="${SECRET}" connectionId="1"/>`,
      "xl/ctrlProps/ctrlProp1.xml": `<formControlPr objectType="Drop" fmlaLink="'${SECRET} tin'!$A$1" fmlaRange="Tray!$A$1:$A$2"/>`,
      "xl/drawings/vmlDrawing1.vml": `<xml xmlns:x="x"><x:ClientData><br><x:FmlaLink>'${SECRET} tin'!$A$1</x:FmlaLink><x:FmlaRange>Tray!$A$1:$A$2</x:FmlaRange></x:ClientData></xml>`,
      "xl/drawings/drawing1.xml": `<wsDr xmlns:r="r" xmlns:a14="a">${shownBy("slicer", `${SECRET} 1`)}${shownBy("slicer", "wood")}${shownBy("timeslicer", `${SECRET} 2`)}<twoCellAnchor><sp textlink="'${SECRET} tin'!$A$1"/></twoCellAnchor><twoCellAnchor><sp textlink="Tray!$A$1"/></twoCellAnchor><twoCellAnchor><pic><ext><a14:cameraTool cellRange="'${SECRET} tin'!$A$1:$B$2"/></ext></pic></twoCellAnchor><twoCellAnchor><graphicFrame><c:chart xmlns:c="c" r:id="c"/></graphicFrame></twoCellAnchor></wsDr>`,
      "xl/drawings/_rels/drawing1.xml.rels": relationships(related("c", "chart", "../charts/chart1.xml"), outside("y", "hyperlink", "#Tray!A1")),
      "xl/charts/chart1.xml": `<c:chartSpace xmlns:c="c"><c:pivotSource><c:name>[runs.xlsx]${SECRET} tin!OfTin</c:name><c:fmtId val="0"/></c:pivotSource><c:chart><c:ser><c:val><c:numRef><c:f>'${SECRET} tin'!$B$1:$B$1</c:f><c:numCache><c:ptCount val="1"/><c:pt idx="0"><c:v>1</c:v></c:pt></c:numCache></c:numRef></c:val><c:extLst><c:ext><c15:datalabelsRange xmlns:c15="c"><c15:f>'${SECRET} tin'!$A$1</c15:f><c15:dlblRangeCache><c:pt idx="0"><c:v>${SECRET}</c:v></c:pt></c15:dlblRangeCache></c15:datalabelsRange></c:ext></c:extLst></c:ser></c:chart></c:chartSpace>`,
      "xl/charts/_rels/chart1.xml.rels": relationships(related("u", "chartUserShapes", "../drawings/drawing2.xml")),
      "xl/drawings/drawing2.xml": `<userShapes><relSizeAnchor><sp textlink="'${SECRET} tin'!$A$1"/></relSizeAnchor></userShapes>`,
    },
  });
