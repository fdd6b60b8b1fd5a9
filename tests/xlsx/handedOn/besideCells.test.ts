import { readBook } from "../../../src/command/book/Book";
import { plainFile } from "../../../src/xlsx/handedOn/plainFile";
import { valuesFile } from "../../../src/xlsx/handedOn/valuesFile";
import { textOf } from "../package/partsIn";
import { packageOf } from "../../workbench/xlsx/packageOf";

jest.setTimeout(60_000);

const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const related = (id: string, type: string, target: string, mode = ""): string =>
  `<Relationship Id="${id}" Type="${RELATIONSHIPS}/${type}" Target="${target}"${mode}/>`;
const colouring = (area: string, formula: string): string =>
  `<conditionalFormatting sqref="${area}"><cfRule type="expression" priority="1"><formula>${formula}</formula></cfRule></conditionalFormatting>`;
const list = (area: string, formula: string): string =>
  `<dataValidation type="list" sqref="${area}"><formula1>${formula}</formula1></dataValidation>`;
const sparkline = (cell: string, formula: string): string => `<x14:sparkline><xm:f>${formula}</xm:f><xm:sqref>${cell}</xm:sqref></x14:sparkline>`;
const numbers = (formula: string, cache = ""): string => `<c:numRef><c:f>${formula}</c:f>${cache}</c:numRef>`;

const sheet = [
  '<worksheet xmlns:r="r"><sheetData><row r="1"><c r="B1"><v>25</v></c><c r="C1"><f>Tin!B1*2</f><v>50</v></c></row></sheetData>',
  colouring("B1:B3", "B1&gt;Tin!$B$1"),
  colouring("C1:C3", "C1&gt;vess*2"),
  colouring("D1:D3", "D1&gt;Tin!B1"),
  colouring("E1:E3", "RETORT.MOISTURE.WET(vess,35,31.5)&gt;B1"),
  colouring("F1:F3", "F1&gt;$B$1"),
  `<dataValidations count="3">${list("B2", "Tin!$A$1:$A$2")}${list("B3", "Tin!$B$1:$B$2")}${list("B4", "kinds")}</dataValidations>`,
  '<hyperlinks><hyperlink ref="G1" location="Tin!A1"/><hyperlink ref="G2" location="Tray!A1"/><hyperlink ref="G3" r:id="h"/></hyperlinks>',
  '<drawing r:id="d"/>',
  '<extLst><ext xmlns:x14="x" uri="u"><x14:sparklineGroups xmlns:xm="m"><x14:sparklineGroup><x14:sparklines>',
  `${sparkline("H1", "Tin!B1:B3")}${sparkline("H2", "Tray!B1:B3")}`,
  "</x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext></extLst></worksheet>",
].join("");

const series = [
  `<c:ser><c:tx><c:strRef><c:f>Tin!$A$1</c:f></c:strRef></c:tx><c:val>${numbers("Tin!$B$1:$B$3")}</c:val></c:ser>`,
  `<c:ser><c:tx><c:v>kept</c:v></c:tx><c:val>${numbers("Tray!$B$1:$B$3")}</c:val></c:ser>`,
  `<c:ser><c:val>${numbers("vess")}</c:val></c:ser>`,
  `<c:ser><c:val>${numbers("(Tin!$B$1,Tin!$B$3)", '<c:numCache><c:ptCount val="2"/><c:pt idx="1"><c:v>7</c:v></c:pt></c:numCache>')}</c:val></c:ser>`,
  `<c:ser><c:val>${numbers("(Tin!$B$1,Tin!$B$2)")}</c:val></c:ser>`,
].join("");

const content = packageOf({
  sheets: {
    Tray: sheet,
    Tin: '<row r="1"><c r="A1" t="str"><v>oak</v></c><c r="B1"><v>25</v></c></row><row r="2"><c r="A2" t="str"><v>hazel</v></c><c r="B2"><v>65.5</v></c></row>',
  },
  after: '<definedNames><definedName name="kinds">Tin!$A$1:$A$2</definedName><definedName name="vess">Tin!$B$1</definedName></definedNames>',
  further: {
    "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships>${related("d", "drawing", "../drawings/drawing1.xml")}${related("h", "hyperlink", "#Tin!A1", ' TargetMode="External"')}</Relationships>`,
    "xl/drawings/drawing1.xml": '<d><sp textlink="Tin!$A$1"><hlinkClick r:id="k"/><t>oak</t></sp><sp textlink="Tray!$A$1"/></d>',
    "xl/drawings/_rels/drawing1.xml.rels": `<Relationships>${related("c", "chart", "../charts/chart1.xml")}${related("k", "hyperlink", "#Tin!A1", ' TargetMode="External"')}</Relationships>`,
    "xl/charts/chart1.xml": `<c:chartSpace xmlns:c="c"><c:title><c:tx><c:strRef><c:f>Tin!$A$2</c:f></c:strRef></c:tx></c:title>${series}</c:chartSpace>`,
  },
});

async function made(as: "values" | "plain"): Promise<{ taken: string[]; sheet: string; chart: string; drawing: string; all: string }> {
  const sheets = (await readBook(content)).sheets.filter(({ name }) => name === "Tray").map(({ reading }) => reading);
  const file = await (as === "values" ? valuesFile : plainFile)(content, { sheets, date: "2027-01-15" });
  const [one, chart, drawing] = await Promise.all(
    ["xl/worksheets/sheet1.xml", "xl/charts/chart1.xml", "xl/drawings/drawing1.xml"].map((part) => textOf(file.content, part)),
  );
  const text = { sheet: one ?? "", chart: chart ?? "", drawing: drawing ?? "" };
  return { ...text, taken: file.takenOut.map(({ what, where, why }) => `${what} ${where} ${why}`), all: Object.values(text).join() };
}

describe.each(["values", "plain"] as const)("beside the cells of a sheet taken out alone as %s", (as) => {
  let file: Awaited<ReturnType<typeof made>>;
  beforeAll(async () => void (file = await made(as)));

  test("nothing leads to what is not there, and nothing is an error", () => {
    expect(file.all).not.toMatch(/#REF!|Tin!|vess\b|kinds/);
  });

  test("rules hold the values that they read, and those that cannot are told", () => {
    const formulas = [...file.sheet.matchAll(/<formula>(.*?)<\/formula>/g)].map(([, formula]) => formula);
    // In plain cells C1 is fixed, and the rule that reads it holds no more once that says so.
    const reads = "C1&gt;(25)*2";
    expect(formulas.slice(0, 2)).toEqual(["B1&gt;25", as === "values" ? reads : `IF(MAX('Tray changes'!C1)=2,FALSE,${reads})`]);
    expect(formulas.at(-1)).toBe("F1&gt;$B$1");
    // The call of ours is written in built-in functions.
    expect(formulas).toHaveLength(4);
    expect(formulas[2]).toMatch(/^(?!.*RETORT).*25.*35.*31\.5.*&gt;B1$/);
    expect(file.taken.filter((one) => /colouring|entry/.test(one))).toEqual([
      "colouring Tray!D1:D3 notShared",
      ...(as === "values" ? [] : ["entry Tray!B3 notShared"]),
    ]);
  });

  test("lists for entries stand in the rule, where it is one", () => {
    const lists = [...file.sheet.matchAll(/<formula1>(.*?)<\/formula1>/g)].map(([, formula]) => formula);
    expect(lists).toEqual(as === "values" ? [] : ['"oak,hazel"', '"oak,hazel"']);
  });

  test("links and small charts that read another sheet are told by their cells; the others stay", () => {
    expect(file.taken.filter((one) => /link|smallChart/.test(one))).toEqual([
      "link Tray!G1 notShared",
      "link Tray!G3 notShared",
      "smallChart Tray!H1 notShared",
      "link Tray notShared",
    ]);
    expect(file.sheet).toContain('<hyperlinks><hyperlink ref="G2" location="Tray!A1"/></hyperlinks>');
    expect(file.sheet).toContain("<x14:sparklines><x14:sparkline><xm:f>Tray!B1:B3</xm:f><xm:sqref>H2</xm:sqref></x14:sparkline></x14:sparklines>");
    expect(file.drawing).toBe('<d><sp><t>oak</t></sp><sp textlink="Tray!$A$1"/></d>');
  });

  test("a chart is drawn from values of its own: those of the cells, or else those it has kept", () => {
    const literal = (count: number, points: string): string => `<c:val><c:numLit><c:ptCount val="${count}"/>${points}</c:numLit></c:val></c:ser>`;
    const point = (index: number, value: number): string => `<c:pt idx="${index}"><c:v>${value}</c:v></c:pt>`;
    expect(file.chart).toContain(`<c:ser><c:tx><c:v>oak</c:v></c:tx>${literal(3, point(0, 25) + point(1, 65.5))}`);
    expect(file.chart).toContain(`<c:ser>${literal(1, point(0, 25))}`);
    expect(file.chart).toContain(`<c:ser>${literal(2, point(1, 7))}`);
    expect(file.chart).toMatch(/<c:title><c:tx><c:rich>.*<a:t>hazel<\/a:t>/);
    expect(file.chart).toContain("<c:f>Tray!$B$1:$B$3</c:f>");
    expect(file.chart.match(/<c:ser>/g)).toHaveLength(4);
    expect(file.taken.at(-1)).toBe("series Tray notShared");
  });
});
