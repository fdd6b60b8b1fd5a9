import type { OddCase } from "./oddCases";
import { xml, type OddBook, type OddSheet } from "./oddBook";

// Rules for colouring and for entries, defined names and charts that call us: nothing of them may stay half-live, or go without a word.

const X14 = "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main";
const XM = "http://schemas.microsoft.com/office/excel/2006/main";
const CALL = "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)";
const RUN = { A1: 25, B1: 35, C1: 31.5, D1: { formula: CALL, value: 0.35 } };
const NOTHING_ELSE = { A1: 25, B1: 35, C1: 31.5, D1: { formula: CALL, value: 0.35 }, E1: "CaCO3" };
const MASS = "_xldudf_RETORT_MOLARMASS(E1)";

const book = (behind: string, further: Partial<OddBook> = {}, cells: OddSheet["cells"] = NOTHING_ELSE): OddBook => ({
  sheets: [{ name: "Tray", cells, behind }],
  ...further,
});
const colouring = (formula: string, sqref = "D1"): string =>
  `<conditionalFormatting sqref="${sqref}"><cfRule type="expression" dxfId="0" priority="1"><formula>${xml(formula)}</formula></cfRule></conditionalFormatting>`;
const entry = (formula: string, sqref = "F1:F9"): string =>
  `<dataValidation type="custom" sqref="${sqref}"><formula1>${xml(formula)}</formula1></dataValidation>`;
const entries = (...rules: readonly string[]): string => `<dataValidations count="${rules.length}">${rules.join("")}</dataValidations>`;
const later = (inside: string): string => `<extLst><ext xmlns:x14="${X14}" uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}">${inside}</ext></extLst>`;
const names = (...defined: readonly (readonly [name: string, refersTo: string])[]): string =>
  `<definedNames>${defined.map(([name, refersTo]) => `<definedName name="${name}">${xml(refersTo)}</definedName>`).join("")}</definedNames>`;
const END = "INDEX(_xldudf_RETORT_DRYING_END(Tray!$A$1:$A$9,Tray!$B$1:$B$9),1,2)";

export const ruleCases: readonly OddCase[] = [
  {
    name: "a what-if table over a call",
    book: {
      sheets: [
        {
          name: "Tray",
          cells: {
            ...RUN,
            G1: { formula: "D1", value: 0.35 },
            F2: 35,
            F3: 36,
            G2: { xml: '<c r="G2"><f t="dataTable" ref="G2:G3" dt2D="0" dtr="0" r1="B1"/><v>0.35</v></c>' },
            G3: 0.40909090909,
          },
        },
      ],
    },
  },
  {
    name: "a rule for colouring that calls",
    book: book(colouring(`${CALL}>0.3`)),
    keeps: [/<cfRule type="expression"[^>]*><formula>\(?IF\(IF\(ISNUMBER\(A1\)/],
    records: { values: [/^=RETORT\.MOISTURE\.WET\(A1,B1,C1\)>0\.3$/], plain: [/^=RETORT\.MOISTURE\.WET\(A1,B1,C1\)>0\.3$/] },
  },
  {
    name: "rules for colouring, of which one calls and one does not",
    book: book(
      `<conditionalFormatting sqref="D1:D9 F2"><cfRule type="expression" dxfId="0" priority="2"><formula>$A1&gt;24</formula></cfRule><cfRule type="cellIs" operator="between" dxfId="0" priority="1"><formula>0.1</formula><formula>${xml(MASS)}</formula></cfRule></conditionalFormatting>`,
    ),
    keeps: [
      /<conditionalFormatting sqref="D1:D9 F2"><cfRule type="expression" dxfId="0" priority="2"><formula>\$A1&gt;24<\/formula><\/cfRule><\/conditionalFormatting>/,
    ],
    records: { values: [/^taken out: these arguments have no form/], plain: [/^taken out: these arguments have no form/] },
  },
  {
    name: "a rule for colouring by the compound that a cell names",
    book: book(colouring(`${MASS}>50`)),
    records: { values: [/^taken out: /, /^D1$/], plain: [/^taken out: /, /^colours cells$/] },
  },
  {
    name: "a rule for colouring over arrays",
    book: book(colouring("SUM(_xldudf_RETORT_MOISTURE_WET(A1:A2,B1:B2,C1:C2))>0.3")),
    records: { values: [/^taken out: it has no form in one formula as a rule may hold it$/], plain: [/^taken out: it has no form in one formula/] },
  },
  {
    name: "a scale of colours whose bound calls",
    book: book(
      `<conditionalFormatting sqref="D1:D9"><cfRule type="colorScale" priority="1"><colorScale><cfvo type="formula" val="${xml(CALL.replaceAll("1", "$1").replace(/([ABC])\$/g, "$$$1$$"))}"/><cfvo type="max"/><color rgb="FFFFFFFF"/><color rgb="FF00FF00"/></colorScale></cfRule></conditionalFormatting>`,
    ),
    keeps: [/<cfvo type="formula" val="\(?IF\(IF\(ISNUMBER\(\$A\$1\)/],
  },
  {
    name: "a rule for colouring in the later form of the format, with its older half",
    book: book(
      `<conditionalFormatting sqref="D1:D9"><cfRule type="dataBar" priority="1"><dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF638EC6"/></dataBar><extLst><ext xmlns:x14="${X14}" uri="{B025F937-C7B1-47D3-B67F-A62EFF666E3E}"><x14:id>{00000000-0001-0000-0000-000000000001}</x14:id></ext></extLst></cfRule></conditionalFormatting>${later(
        `<x14:conditionalFormattings><x14:conditionalFormatting xmlns:xm="${XM}"><x14:cfRule type="dataBar" id="{00000000-0001-0000-0000-000000000001}"><x14:dataBar><x14:cfvo type="formula"><xm:f>${xml(MASS)}</xm:f></x14:cfvo><x14:cfvo type="autoMax"/></x14:dataBar></x14:cfRule><xm:sqref>D1:D9</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings>`,
      )}`,
    ),
    records: { values: [/^taken out: /], plain: [/^taken out: /] },
  },
  {
    name: "a rule for colouring in the later form alone, which asks another sheet",
    book: {
      sheets: [
        {
          name: "Tray",
          cells: RUN,
          behind: later(
            `<x14:conditionalFormattings><x14:conditionalFormatting xmlns:xm="${XM}"><x14:cfRule type="expression" priority="1" id="{00000000-0001-0000-0000-000000000002}"><xm:f>_xldudf_RETORT_MOISTURE_WET(Limits!A1,B1,C1)&gt;Limits!B1</xm:f><x14:dxf><font><b/></font></x14:dxf></x14:cfRule><xm:sqref>D1</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings>`,
          ),
        },
        { name: "Limits", cells: { A1: 25, B1: 0.3 } },
      ],
    },
  },
  {
    name: "a rule for entries that calls",
    book: book(entries(entry("_xldudf_RETORT_MOISTURE_WET(A1,F1,C1)>0"))),
    records: { plain: [/^checks entries$/, /^=\(IF\(.*ISNUMBER\(F1\)/] },
  },
  {
    name: "rules for entries, of which one calls what has no form in a rule",
    book: book(entries(entry(`${MASS}>F1`), entry("F1>0", "G1:G9"))),
    records: { plain: [/^taken out: /, /^F1:F9$/] },
  },
  {
    name: "a rule for entries in the later form of the format",
    book: book(
      later(
        `<x14:dataValidations xmlns:xm="${XM}" count="1"><x14:dataValidation type="custom"><x14:formula1><xm:f>${xml(MASS)}&gt;F1</xm:f></x14:formula1><xm:sqref>F1:F9</xm:sqref></x14:dataValidation></x14:dataValidations>`,
      ),
    ),
    records: { plain: [/^taken out: /, /^F1:F9$/] },
  },
  {
    name: "a rule for colouring that uses a name which calls",
    book: book(colouring("wet>0.3"), { behind: names(["wet", "_xldudf_RETORT_MOISTURE_WET(Tray!$A$1,Tray!$B$1,Tray!$C$1)"]) }),
    keeps: [/<formula>wet&gt;0\.3<\/formula>/],
  },
  {
    name: "names that call and have no plain form, in cells, in a rule and in another name",
    book: book(
      colouring("ended*1>3"),
      { behind: names(["ended", `${END}+0`], ["twice", "ended*2"], ["here", "_xldudf_RETORT_MOISTURE_WET(Tray!A1,Tray!B1,Tray!C1)"]) },
      { ...NOTHING_ELSE, G1: { formula: "IF(A1=25,7,twice)", value: 7 } },
    ),
    records: {
      values: [/^taken out: /, /^ended$/, /^twice$/, /^here$/, /^taken out: it uses a defined name that goes$/],
      plain: [/^taken out: /, /^ended$/, /^twice$/, /^here$/, /^taken out: it uses a defined name that goes$/],
    },
  },
];
