import { zipOf } from "../../workbench/xlsx/packageOf";
import { ruleCases } from "./ruleCases";
import { oddBook, oddParts, type OddBook, type OddCell, type OddSheet } from "./oddBook";

/** What is to come of sharing: done, or refused with words that hold this. */
export type Outcome = "shared" | RegExp;

/** A workbook of a kind that sharing must not stumble over. */
export interface OddCase {
  readonly name: string;
  readonly book: OddBook | (() => Uint8Array<ArrayBuffer>);
  /** What the command makes of it. */
  readonly values?: Outcome;
  readonly plain?: Outcome;
  /** What the local workbook makes of it, where that differs: it opens the file and calculates it. */
  readonly local?: Outcome;
  /** What Excel makes of it, where that differs from the local workbook: it shows what was saved. "elsewhere" for what only a file can be. */
  readonly excel?: Outcome | "elsewhere";
  /** The way on after a refusal of the command. */
  readonly goOn?: readonly string[];
  /** What has to stand in the first sheet's part still, in both kinds of copy. */
  readonly keeps?: readonly RegExp[];
  /** Parts of the file that have to be there still, byte for byte. */
  readonly keepsParts?: readonly string[];
  /** What the records have to say, by the kind of copy. */
  readonly records?: { readonly values?: readonly RegExp[]; readonly plain?: readonly RegExp[] };
}

const CALL = "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)";
const at = (row: number, columns = "ABC"): string => `_xldudf_RETORT_MOISTURE_WET(${[...columns].map((one) => `${one}${row}`).join(",")})`;
const call = (formula = CALL, value: number | string | { error: string } | null = 0.35): OddCell => ({ formula, value });
const INPUTS = { A1: 25, B1: 35, C1: 31.5 };
// A drying run made up by 20 + 10 exp(-t/30), and what the function answers; a fit has no form in cells, so it is fixed in a plain copy.
const WEIGHINGS = [30, 25.13, 22.64, 21.35, 20.69, 20.36, 20.18, 20.09, 20.05];
const SERIES: Readonly<Record<string, number>> = Object.fromEntries(
  WEIGHINGS.flatMap((mass, index) => [
    [`J${index + 1}`, index * 20],
    [`K${index + 1}`, mass],
  ]),
);
const FIXED = "INDEX(_xldudf_RETORT_DRYING_END(J1:J9,K1:K9),1,2)";
const END = 19.99883193;
const RUN = { ...INPUTS, D1: call() };
const one = (cells: OddSheet["cells"], further: Partial<OddSheet> = {}): OddBook => ({ sheets: [{ name: "Tray", cells, ...further }] });

const LONG_TEXT = "x".repeat(32_767);
// 8,190 characters, and no deeper than formulas are in use.
const LONG_FORMULA = `${CALL}+SUM(${`${"0".repeat(39)},`.repeat(200)}0)`.padEnd(8190);
const SPREADSHEET_TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const MACROS = "application/vnd.ms-excel.sheet.macroEnabled.main+xml";
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

const days = { ...RUN, A3: { xml: '<c r="A3" s="2"><v>44000</v></c>' }, B3: { formula: "A3+1", value: 44_001, about: "" } };

/** A file with the bytes of a part changed. */
const spoilt = (book: OddBook, change: (content: Uint8Array<ArrayBuffer>) => Uint8Array<ArrayBuffer>) => (): Uint8Array<ArrayBuffer> =>
  change(oddBook(book));

export const oddCases: readonly OddCase[] = [
  // Merged cells.
  {
    name: "a call in the first cell of merged ones",
    book: one(RUN, { behind: '<mergeCells count="1"><mergeCell ref="D1:E2"/></mergeCells>' }),
    keeps: [/<mergeCell ref="D1:E2"/],
  },
  {
    name: "inputs inside merged cells",
    book: one(RUN, { behind: '<mergeCells count="3"><mergeCell ref="A1:A4"/><mergeCell ref="B1:B4"/><mergeCell ref="C1:C4"/></mergeCells>' }),
  },
  {
    name: "merged cells all over the top",
    book: one({ ...RUN, A6: 1 }, { behind: '<mergeCells count="1"><mergeCell ref="A2:XFD5"/></mergeCells>' }),
  },
  {
    name: "a heading merged over the columns",
    book: one({ A1: "Trays", A2: 25, B2: 35, C2: 31.5, D2: call(at(2)) }, { behind: '<mergeCells count="1"><mergeCell ref="A1:H1"/></mergeCells>' }),
  },
  // Out of view.
  { name: "hidden rows", book: one({ ...RUN, A9: 7 }, { rows: { 2: ' hidden="1"', 3: ' hidden="1"' } }), keeps: [/<row r="2"[^>]*hidden="1"/] },
  {
    name: "hidden columns",
    book: one({ ...RUN, C9: 7 }, { before: '<cols><col min="1" max="2" width="9" hidden="1" customWidth="1"/></cols>' }),
    keeps: [/hidden="1"/],
  },
  { name: "a row of no height", book: one({ ...RUN, A9: 7 }, { rows: { 2: ' ht="0" customHeight="1"' } }) },
  {
    name: "filtered rows",
    book: {
      sheets: [
        {
          name: "Tray",
          cells: { ...RUN, A2: 25, B2: 36, C2: 31.5, D2: call(at(2), 4.5 / 11) },
          rows: { 2: ' hidden="1"' },
          behind: '<autoFilter ref="A1:D2"><filterColumn colId="1"><filters><filter val="35"/></filters></filterColumn></autoFilter>',
        },
      ],
      behind: `<definedNames><definedName name="_xlnm._FilterDatabase" localSheetId="0" hidden="1">Tray!$A$1:$D$2</definedName></definedNames>`,
    },
    keeps: [/<autoFilter/, /<row r="2"[^>]*hidden="1"/],
  },
  { name: "grouped and collapsed rows", book: one({ ...RUN, A4: 1 }, { rows: { 2: ' outlineLevel="1" hidden="1"', 3: ' collapsed="1"' } }) },
  {
    name: "a hidden sheet that is only referred to",
    book: {
      sheets: [
        { name: "Tray", cells: { ...RUN, E1: { formula: "Held!A1", value: 9 } } },
        { name: "Held", state: "hidden", cells: { A1: 9 } },
      ],
    },
  },
  {
    name: "a very hidden sheet that is only referred to",
    book: {
      sheets: [
        { name: "Tray", cells: { ...INPUTS, D1: call("_xldudf_RETORT_MOISTURE_WET(Held!A1,B1,C1)") } },
        { name: "Held", state: "veryHidden", cells: { A1: 25 } },
      ],
    },
  },
  {
    name: "a hidden sheet with calls beside one in view",
    book: {
      sheets: [
        { name: "Tray", cells: RUN },
        { name: "Held", state: "hidden", cells: RUN },
        { name: "Deep", state: "veryHidden", cells: RUN },
      ],
    },
  },
  {
    name: "calls on hidden sheets alone",
    book: {
      sheets: [
        { name: "Front", cells: { A1: { formula: "Held!D1", value: 0.35 } } },
        { name: "Held", state: "hidden", cells: RUN },
      ],
    },
    values: /No sheet in view/,
  },
  // Protected.
  {
    name: "a protected sheet",
    book: one(RUN, { behind: '<sheetProtection sheet="1" objects="1" scenarios="1" password="CC1A"/>' }),
    keeps: [/<sheetProtection sheet="1"/],
  },
  { name: "a protected structure", book: { ...one(RUN), before: '<workbookProtection workbookPassword="CC1A" lockStructure="1"/>' } },
  { name: "a file recommended to be read only", book: { ...one(RUN), before: '<fileSharing readOnlyRecommended="1"/>' } },
  // Circles.
  {
    name: "a circle beside the calls",
    book: one({ ...RUN, F1: { formula: "G1+1", value: 0 }, G1: { formula: "F1+1", value: 0 } }),
    values: /Tray!F1 and Tray!G1 are calculated in a circle/,
    plain: /Tray!F1 and Tray!G1 are/,
    local: /F1 and G1 on "Tray" are calculated in a circle/,
    goOn: ["--keep-errors"],
  },
  {
    name: "a circle through a call",
    book: one({ A1: { formula: "D1*0", value: 0 }, B1: 35, C1: 31.5, D1: call(CALL, 0) }),
    values: /Tray!A1 and Tray!D1 are calculated in a circle/,
    plain: /Tray!A1 and Tray!D1 are/,
    local: /D1 on "Tray" is in error/,
    excel: /A1 and D1 on "Tray" are calculated in a circle/,
    goOn: ["--keep-errors"],
  },
  {
    name: "a circle that the file lets go round",
    book: { ...one({ ...RUN, F1: { formula: "F1*0.5+1", value: 2 } }), calculation: '<calcPr iterate="1"/>' },
    local: /F1 on "Tray" is calculated in a circle, from itself/,
  },
  // Long texts.
  { name: "an input text of 32,767 characters", book: one({ ...RUN, A3: LONG_TEXT }) },
  { name: "a result of 32,767 characters", book: one({ ...RUN, A3: { formula: 'REPT("x",32767)', value: LONG_TEXT } }) },
  {
    name: "a call whose result is 32,767 characters long",
    book: one({ ...RUN, E1: { formula: `REPT("x",32767)&IF(${CALL}>0,"","")`, value: LONG_TEXT } }),
  },
  {
    name: "a fixed call beside a long text it reads",
    book: one({ ...SERIES, A3: LONG_TEXT, D1: { formula: `LEFT(A3,900)&LEFT(${FIXED},0)`, value: LONG_TEXT.slice(0, 900) } }),
  },
  {
    name: "a fixed text of 32,767 characters",
    book: one({ ...SERIES, D1: { formula: `REPT("y",32767)&LEFT(${FIXED},0)`, value: "y".repeat(32_767) } }),
  },
  { name: "a fixed text of 300 characters", book: one({ ...SERIES, D1: { formula: `REPT("x",300)&LEFT(${FIXED},0)`, value: "x".repeat(300) } }) },
  { name: "a label of 32,767 characters", book: one({ A1: LONG_TEXT, B1: call("_xldudf_RETORT_MOISTURE_WET(25,35,31.5)") }) },
  { name: "a formula near 8,192 characters", book: one({ ...INPUTS, D1: call(LONG_FORMULA) }) },
  // Texts that read as formulas.
  {
    name: "texts beginning with = + - @",
    book: one({
      ...RUN,
      A3: "=1+1",
      A4: "+1",
      A5: "-1",
      A6: "@home",
      A7: { look: 1, text: "=cmd|' /C calc'!A0" },
      A8: { formula: '"=1+1"', value: "=1+1" },
    }),
    keeps: [/<c r="A7" s="1" t="inlineStr"/],
  },
  { name: "a call whose text begins with =", book: one({ ...INPUTS, D1: { formula: `"="&${CALL}`, value: "=0.35" } }) },
  { name: "a fixed text beginning with =", book: one({ ...SERIES, D1: { formula: `"=1+"&LEFT(${FIXED},1)`, value: "=1+1" } }) },
  {
    name: "labels beginning with = + - @",
    book: one({
      A1: "=label",
      B1: call("_xldudf_RETORT_MOISTURE_WET(25,35,31.5)"),
      A2: "@label",
      B2: call("_xldudf_RETORT_MOISTURE_WET(25,35,31.5)"),
    }),
  },
  {
    name: "spaces, breaks and marks in texts",
    book: one({
      ...RUN,
      A3: "  two spaces ",
      A4: "a_x0041_b",
      A5: "1 < 2 & 3",
      A6: { xml: '<c r="A6" t="inlineStr"><is><t xml:space="preserve">two\nlines</t></is></c>' },
    }),
  },
  // Days.
  { name: "days from 1904", book: { ...one(days), before: '<workbookPr date1904="1"/>' } },
  {
    name: "days from 1904 in a fixed call",
    book: { ...one({ ...days, ...SERIES, D1: { formula: `${FIXED}*0+A3`, value: 44_000 } }), before: '<workbookPr date1904="1"/>' },
  },
  // Errors that are meant.
  {
    name: "NA() for a chart and IFERROR around a call",
    book: one({ ...RUN, E1: { formula: "NA()", value: { error: "#N/A" } }, F1: { formula: `IFERROR(${CALL},"")`, value: 0.35 } }),
  },
  {
    name: "a call that rightly refuses",
    book: one({ ...RUN, A2: 25, B2: "wet", C2: 31, D2: call(at(2), { error: "#VALUE!" }) }),
    values: /Tray!D2 is in error \(#VALUE!\)/,
    plain: /Tray!D2 is in error/,
    local: /D2 on "Tray" is in error/,
    goOn: ["--keep-errors"],
  },
  {
    name: "a call in error caught elsewhere",
    book: one({ ...RUN, B2: "wet", D2: call(at(2), { error: "#VALUE!" }), E2: { formula: "IFERROR(D2,0)", value: 0 } }),
    values: /Tray!D2/,
    plain: /Tray!D2/,
    local: /D2/,
    goOn: ["--keep-errors"],
  },
  // Names of sheets.
  ...["SUM", "TRUE", "R1C1", "RC", "2026", "It's (a) {b", "VALUES", "🍐 pears, 7 & 8", "a!b", "#REF!", "=1+1"].map((name): OddCase => ({
    name: `a sheet named ${name}`,
    book: {
      sheets: [
        {
          name,
          cells: { ...RUN, ...SERIES, F1: { formula: FIXED, value: END }, G1: { formula: `'${name.replaceAll("'", "''")}'!F1*2`, value: END * 2 } },
        },
      ],
    },
  })),
  { name: "a sheet name of 31 characters that ends in a picture", book: { sheets: [{ name: `${"n".repeat(23)}🍐🍐🍐🍐`, cells: RUN }] } },
  {
    name: "sheet names alike in their first 31 characters",
    book: {
      sheets: [
        { name: `${"n".repeat(30)}1`, cells: RUN },
        { name: `${"n".repeat(30)}2`, cells: RUN },
      ],
    },
  },
  // What stands on sheets.
  { name: "an empty workbook", book: one({}), values: /No sheet in view/, plain: /holds a Retort function/ },
  {
    name: "a chart sheet",
    book: {
      sheets: [
        { name: "Tray", cells: RUN },
        { name: "Curve", kind: "chartsheet", cells: "", before: '<sheetViews><sheetView workbookViewId="0"/></sheetViews>' },
      ],
    },
  },
  {
    name: "a spill of a call",
    book: one({
      A1: 25,
      A2: 25,
      B1: 35,
      B2: 36,
      C1: 31.5,
      C2: 31.5,
      D1: { formula: "_xldudf_RETORT_MOISTURE_WET(A1:A2,B1:B2,C1:C2)", value: 0.35, about: ' t="array" ref="D1:D2"' },
      D2: 4.5 / 11,
    }),
  },
  {
    name: "an array formula over several cells",
    book: one({ ...RUN, F1: { formula: "A1:C1*2", value: 50, about: ' t="array" ref="F1:H1"' }, G1: 70, H1: 63 }),
  },
  {
    name: "a shared formula",
    book: one({
      ...RUN,
      A2: 25,
      B2: 36,
      C2: 31.5,
      D1: { formula: CALL, value: 0.35, about: ' t="shared" ref="D1:D2" si="0"' },
      D2: { xml: `<c r="D2"><f t="shared" si="0"/><v>${4.5 / 11}</v></c>` },
    }),
  },
  {
    name: "a calculated column of a table, with a total",
    book: one(
      {
        A1: "tin",
        B1: "moist",
        C1: "dry",
        D1: "wet basis",
        A2: 25,
        B2: 35,
        C2: 31.5,
        D2: call("_xldudf_RETORT_MOISTURE_WET(Trays[[#This Row],[tin]],Trays[[#This Row],[moist]],Trays[[#This Row],[dry]])"),
        D3: { formula: "SUBTOTAL(109,Trays[wet basis])", value: 0.35 },
      },
      {
        behind: '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
        beside: [
          {
            part: "xl/tables/table1.xml",
            kind: "table",
            type: `${SPREADSHEET_TYPES}.table+xml`,
            content: `<table xmlns="${MAIN}" id="1" name="Trays" displayName="Trays" ref="A1:D3" totalsRowCount="1"><autoFilter ref="A1:D2"/><tableColumns count="4"><tableColumn id="1" name="tin"/><tableColumn id="2" name="moist"/><tableColumn id="3" name="dry"/><tableColumn id="4" name="wet basis" totalsRowFunction="sum"><calculatedColumnFormula>_xldudf_RETORT_MOISTURE_WET(Trays[[#This Row],[tin]],Trays[[#This Row],[moist]],Trays[[#This Row],[dry]])</calculatedColumnFormula></tableColumn></tableColumns></table>`,
          },
        ],
      },
    ),
  },
  {
    name: "a list of entries from another sheet",
    book: {
      sheets: [
        {
          name: "Tray",
          cells: RUN,
          behind:
            '<dataValidations count="1"><dataValidation type="list" sqref="E1"><formula1>Lists!$A$1:$A$2</formula1></dataValidation></dataValidations>',
        },
        { name: "Lists", cells: { A1: "oak", A2: "pear" } },
      ],
    },
  },
  {
    name: "names of sheets' own",
    book: {
      sheets: [
        { name: "Tray", cells: { ...INPUTS, D1: call("_xldudf_RETORT_MOISTURE_WET(vessel,B1,C1)") } },
        { name: "Other", cells: { A1: 5 } },
      ],
      behind:
        '<definedNames><definedName name="vessel" localSheetId="1">Other!$A$1</definedName><definedName name="vessel" localSheetId="0">Tray!$A$1</definedName></definedNames>',
    },
  },
  {
    name: "a name that holds a call",
    book: {
      ...one({ ...INPUTS, D1: { formula: "wet*1", value: 0.35 }, E1: call() }),
      behind: `<definedNames><definedName name="wet">_xldudf_RETORT_MOISTURE_WET(Tray!$A$1,Tray!$B$1,Tray!$C$1)</definedName></definedNames>`,
    },
  },
  {
    name: "a link to another workbook",
    book: {
      ...one({ ...RUN, E1: { formula: "[1]Stock!A1", value: 12 } }),
      behind: '<externalReferences><externalReference r:id="b1"/></externalReferences>',
      beside: [
        {
          part: "xl/externalLinks/externalLink1.xml",
          kind: "externalLink",
          type: `${SPREADSHEET_TYPES}.externalLink+xml`,
          content: `<externalLink xmlns="${MAIN}"><externalBook xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="rId1"><sheetNames><sheetName val="Stock"/></sheetNames><sheetDataSet><sheetData sheetId="0"><row r="1"><cell r="A1"><v>12</v></cell><cell r="B1" t="str"><v>SECRET</v></cell></row></sheetData></sheetDataSet></externalBook></externalLink>`,
        },
      ],
    },
  },
  ...ruleCases,
  {
    name: "notes",
    book: one(RUN, {
      beside: [
        {
          part: "xl/comments1.xml",
          kind: "comments",
          type: `${SPREADSHEET_TYPES}.comments+xml`,
          content: `<comments xmlns="${MAIN}"><authors><author>us</author></authors><commentList><comment ref="D1" authorId="0"><text><t>look</t></text></comment></commentList></comments>`,
        },
      ],
    }),
  },
  {
    name: "threaded notes",
    book: {
      ...one(RUN, {
        beside: [
          {
            part: "xl/comments1.xml",
            kind: "comments",
            type: `${SPREADSHEET_TYPES}.comments+xml`,
            content: `<comments xmlns="${MAIN}"><authors><author>tc={00000000-0000-0000-0000-000000000001}</author></authors><commentList><comment ref="D1" authorId="0"><text><t>[Threaded comment] look</t></text></comment></commentList></comments>`,
          },
          {
            part: "xl/threadedComments/threadedComment1.xml",
            kind: "threadedComment",
            wholeKind: "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment",
            type: "application/vnd.ms-excel.threadedcomments+xml",
            content: `<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="D1" dT="2027-01-15T10:00:00.00" personId="{00000000-0000-0000-0000-000000000002}" id="{00000000-0000-0000-0000-000000000001}"><text>look</text></threadedComment></ThreadedComments>`,
          },
        ],
      }),
      beside: [
        {
          part: "xl/persons/person.xml",
          kind: "person",
          wholeKind: "http://schemas.microsoft.com/office/2017/10/relationships/person",
          type: "application/vnd.ms-excel.person+xml",
          content: `<personList xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><person displayName="us" id="{00000000-0000-0000-0000-000000000002}" userId="us" providerId="None"/></personList>`,
        },
      ],
    },
    keepsParts: ["xl/comments1.xml", "xl/threadedComments/threadedComment1.xml", "xl/persons/person.xml"],
  },
  { name: "a sheet filled to XFD", book: one({ ...RUN, XFD1: 1, A2: 1, XFD2: 1, A3: 1, XFD3: 1, A4: 1, XFD4: 1, A5: 1, XFD5: 1, A6: 1 }) },
  { name: "the last row of a sheet", book: one({ ...RUN, A1048576: 1 }), local: /more than the workbook takes at once/, excel: "elsewhere" },
  {
    name: "a pivot table of another sheet",
    book: {
      sheets: [
        { name: "Tray", cells: RUN },
        { name: "Stock", cells: { A1: "kind", A2: "SECRET" } },
      ],
      behind: '<pivotCaches><pivotCache cacheId="1" r:id="b1"/></pivotCaches>',
      beside: [
        {
          part: "xl/pivotCache/pivotCacheDefinition1.xml",
          kind: "pivotCacheDefinition",
          type: `${SPREADSHEET_TYPES}.pivotCacheDefinition+xml`,
          content: `<pivotCacheDefinition xmlns="${MAIN}" recordCount="0"><cacheSource type="worksheet"><worksheetSource ref="A1:A2" sheet="Stock"/></cacheSource><cacheFields count="1"><cacheField name="kind" numFmtId="0"><sharedItems><s v="SECRET"/></sharedItems></cacheField></cacheFields></pivotCacheDefinition>`,
        },
      ],
    },
  },
  {
    name: "a sheet hidden row by row unless shown",
    book: one({ ...RUN, A3: 1 }, { before: '<sheetFormatPr defaultRowHeight="15" zeroHeight="1"/>' }),
  },
  { name: "an input and a call in the last column", book: one({ ...INPUTS, XFD1: call() }) },
  { name: "many sheets", book: { sheets: Array.from({ length: 25 }, (_, index) => ({ name: `Tray ${index + 1}`, cells: RUN })) } },
  // How it was last calculated.
  { name: "manual calculation, calculated before it was saved", book: { ...one(RUN), calculation: '<calcPr calcMode="manual"/>' } },
  {
    name: "manual calculation, not calculated before it was saved",
    book: { ...one(RUN), calculation: '<calcPr calcMode="manual" calcOnSave="0"/>' },
    values: /may be from before/,
    plain: /may be from before/,
    excel: "elsewhere",
    goOn: ["--recalculate"],
  },
  {
    name: "cells never calculated",
    book: one({ ...RUN, E1: call(CALL, null), F1: { formula: "A1*2", value: null } }),
    values: /Tray!E1 and Tray!F1/,
    plain: /Tray!E1 and Tray!F1/,
    excel: "elsewhere",
    goOn: ["--recalculate"],
  },
  {
    name: "an array of which one cell was never calculated",
    book: one({ ...RUN, F1: { formula: "A1:C1*2", value: 50, about: ' t="array" ref="F1:H1"' }, G1: 70 }),
    values: /Tray!H1, which the cell formula of Tray!F1 fills/,
    plain: /Tray!H1, which the cell formula of Tray!F1 fills/,
    excel: "elsewhere",
    goOn: ["--recalculate"],
  },
  // Inputs of other kinds.
  {
    name: "a number typed with a decimal comma",
    book: one({ ...RUN, A2: "25,0", B2: 35, C2: 31.5, D2: call(at(2), { error: "#VALUE!" }) }),
    values: /Tray!D2/,
    plain: /Tray!D2/,
    local: /D2/,
    goOn: ["--keep-errors"],
  },
  {
    name: "truth values and errors as inputs",
    book: one({
      ...RUN,
      A2: true,
      B2: 35,
      C2: 31.5,
      D2: call(at(2), { error: "#VALUE!" }),
      A3: { error: "#DIV/0!" },
      B3: 35,
      C3: 31.5,
      D3: call(at(3), { error: "#DIV/0!" }),
    }),
    values: /Tray!D2 and Tray!D3/,
    plain: /Tray!D2 and Tray!D3/,
    local: /D2 and D3/,
    goOn: ["--keep-errors"],
  },
  {
    name: "the add-in not loaded",
    book: one({ ...RUN, E1: call(CALL, { error: "#NAME?" }) }),
    values: /saved as #NAME\?/,
    plain: /saved as #NAME\?/,
    local: "shared",
    excel: /E1 on "Tray" is shown as #NAME\?/,
    goOn: ["--recalculate"],
  },
  // Files.
  {
    name: "a file with macros",
    book: {
      ...one(RUN),
      type: MACROS,
      beside: [
        {
          part: "xl/vbaProject.bin",
          kind: "vbaProject",
          wholeKind: "http://schemas.microsoft.com/office/2006/relationships/vbaProject",
          type: "application/vnd.ms-office.vbaProject",
          content: new Uint8Array([1, 2, 3]),
        },
      ],
    },
    values: /macros/,
    plain: /has to end in \.xlsm/,
    local: /macros/,
    excel: "shared",
  },
  { name: "a template", book: { ...one(RUN), type: `${SPREADSHEET_TYPES}.template.main+xml` } },
  {
    name: "the strict kind of the format",
    book: () =>
      zipOf(
        Object.fromEntries(
          Object.entries(oddParts(one(RUN))).map(([part, content]) => [
            part,
            typeof content !== "string" || part.startsWith("[")
              ? content
              : content
                  .replaceAll("http://schemas.openxmlformats.org/spreadsheetml/2006/main", "http://purl.oclc.org/ooxml/spreadsheetml/main")
                  .replaceAll(
                    "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
                    "http://purl.oclc.org/ooxml/officeDocument/relationships",
                  ),
          ]),
        ),
      ),
  },
  {
    name: "a file with a password",
    book: () =>
      new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...[..."EncryptedPackage"].flatMap((letter) => [letter.charCodeAt(0), 0])]),
    values: /password/,
    plain: /password/,
    local: /password/,
  },
  {
    name: "a file cut short",
    book: spoilt(one(RUN), (content) => content.slice(0, content.length - 200)),
    values: /damaged/,
    plain: /damaged/,
    local: /damaged/,
  },
  {
    name: "a file with a damaged part",
    book: spoilt(one({ ...RUN, A2: "y".repeat(3000) }), (content) =>
      content.map((byte, place) => (place === Math.floor(content.length / 2) ? byte ^ 255 : byte)),
    ),
    values: /damaged/,
    plain: /damaged/,
    local: /damaged/,
  },
  {
    name: "a part that unpacks to more than a workbook holds",
    book: () => zipOf({ ...oddParts(one(RUN)), "xl/worksheets/sheet1.xml": Buffer.alloc(310_000_000, 32) }),
    values: /more than/,
    plain: /more than/,
    local: /more than/,
  },
];
