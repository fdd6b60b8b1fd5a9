import { zipOf } from "../../workbench/xlsx/packageOf";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATED = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** A part that another one names. */
export interface BesidePart {
  readonly part: string;
  /** The last word of the kind of relationship. */
  readonly kind: string;
  readonly type: string;
  readonly content: string | Uint8Array;
  /** The whole kind, where it is none of the format's own. */
  readonly wholeKind?: string;
}

export interface OddSheet {
  readonly name: string;
  readonly state?: "hidden" | "veryHidden";
  /** Cells by address, or rows as they stand in the part. */
  readonly cells: Readonly<Record<string, OddCell>> | string;
  /** What stands in the part before its cells, and behind them. */
  readonly before?: string;
  readonly behind?: string;
  /** Attributes of rows by their numbers. */
  readonly rows?: Readonly<Record<number, string>>;
  /** Named rId1 and so on in their order. */
  readonly beside?: readonly BesidePart[];
  readonly kind?: "worksheet" | "chartsheet";
}

/** A number, text or truth value; or a formula with the value saved beside it, null for none; or markup as it stands. */
export type OddCell =
  | number
  | string
  | boolean
  | { readonly formula: string; readonly value: number | string | boolean | null | { readonly error: string }; readonly about?: string }
  | { readonly error: string }
  | { readonly xml: string }
  | { readonly look: number; readonly text: string };

export interface OddBook {
  readonly sheets: readonly OddSheet[];
  /** What stands in the workbook's part before its sheets, behind them, and behind its names. */
  readonly before?: string;
  readonly behind?: string;
  readonly calculation?: string;
  readonly beside?: readonly BesidePart[];
  readonly type?: string;
}

export const xml = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

/** A whole workbook file, with the looks that tests need: 1 is a text with an apostrophe in front, 2 a day, 3 a box to fill in. */
export const oddBook = (book: OddBook): Uint8Array<ArrayBuffer> => zipOf(oddParts(book));

export function oddParts({
  sheets,
  before = "",
  behind = "",
  calculation = "",
  beside = [],
  type = `${TYPES}.sheet.main+xml`,
}: OddBook): Record<string, string | Uint8Array> {
  const parts: Record<string, string | Uint8Array> = {};
  const overrides = [
    ["xl/workbook.xml", type],
    ["xl/styles.xml", `${TYPES}.styles+xml`],
  ];
  const relations = (list: readonly string[]): string => `${HEAD}<Relationships xmlns="${PACKAGE}/relationships">${list.join("")}</Relationships>`;
  const relation = (id: string, kind: string, target: string): string =>
    `<Relationship Id="${id}" Type="${kind.includes("/") ? kind : `${RELATED}/${kind}`}" Target="${target}"/>`;
  const put = (one: BesidePart): void => {
    parts[one.part] = one.content;
    overrides.push([one.part, one.type]);
  };
  const listed = sheets.map(({ name, state }, place) => {
    const hidden = state === undefined ? "" : ` state="${state}"`;
    return `<sheet name="${xml(name)}" sheetId="${place + 1}"${hidden} r:id="s${place + 1}"/>`;
  });
  const named = sheets.map(({ kind = "worksheet" }, place) => relation(`s${place + 1}`, kind, `/xl/${kind}s/sheet${place + 1}.xml`));
  beside.forEach(put);
  const further = beside.map(({ kind, wholeKind, part }, place) => relation(`b${place + 1}`, wholeKind ?? kind, `/${part}`));
  parts["xl/workbook.xml"] =
    `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${RELATED}">${before}<sheets>${listed.join("")}</sheets>${behind}${calculation}</workbook>`;
  parts["xl/_rels/workbook.xml.rels"] = relations([...named, ...further, relation("look", "styles", "/xl/styles.xml")]);
  parts["xl/styles.xml"] = STYLES;
  sheets.forEach((sheet, place) => {
    const kind = sheet.kind ?? "worksheet";
    const part = `xl/${kind}s/sheet${place + 1}.xml`;
    const data = typeof sheet.cells === "string" ? sheet.cells : rowsOf(sheet.cells, sheet.rows ?? {});
    const inside = kind === "chartsheet" ? "" : `<sheetData>${data}</sheetData>`;
    parts[part] = `${HEAD}<${kind} xmlns="${MAIN}" xmlns:r="${RELATED}">${sheet.before ?? ""}${inside}${sheet.behind ?? ""}</${kind}>`;
    overrides.push([part, `${TYPES}.${kind}+xml`]);
    (sheet.beside ?? []).forEach(put);
    if (sheet.beside !== undefined)
      parts[`xl/${kind}s/_rels/sheet${place + 1}.xml.rels`] = relations(
        sheet.beside.map((one, index) => relation(`rId${index + 1}`, one.wholeKind ?? one.kind, `/${one.part}`)),
      );
  });
  const types = overrides.map(([part, is]) => `<Override PartName="/${part}" ContentType="${is}"/>`).join("");
  const defaults =
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>';
  return {
    "[Content_Types].xml": `${HEAD}<Types xmlns="${PACKAGE}/content-types">${defaults}${types}</Types>`,
    "_rels/.rels": relations([relation("w", "officeDocument", "xl/workbook.xml")]),
    ...parts,
  };
}

const PLACE = /^([A-Z]+)(\d+)$/;
const columnNumber = (letters: string): number => [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);

function rowsOf(cells: Readonly<Record<string, OddCell>>, rows: Readonly<Record<number, string>>): string {
  const byRow = new Map<number, [column: number, markup: string][]>();
  for (const row of Object.keys(rows)) byRow.set(Number(row), []);
  for (const [at, cell] of Object.entries(cells)) {
    const [, letters = "", row = ""] = PLACE.exec(at) ?? [];
    const here = byRow.get(Number(row)) ?? [];
    here.push([columnNumber(letters), cellMarkup(at, cell)]);
    byRow.set(Number(row), here);
  }
  return [...byRow]
    .sort(([one], [other]) => one - other)
    .map(([row, here]) => {
      const inside = here.sort(([one], [other]) => one - other).map(([, markup]) => markup);
      return `<row r="${row}"${rows[row] ?? ""}>${inside.join("")}</row>`;
    })
    .join("");
}

function cellMarkup(at: string, cell: OddCell): string {
  if (typeof cell === "number") return `<c r="${at}"><v>${cell}</v></c>`;
  if (typeof cell === "boolean") return `<c r="${at}" t="b"><v>${cell ? 1 : 0}</v></c>`;
  if (typeof cell === "string") return `<c r="${at}" t="inlineStr"><is><t>${xml(cell)}</t></is></c>`;
  if ("xml" in cell) return cell.xml;
  if ("look" in cell) return `<c r="${at}" s="${cell.look}" t="inlineStr"><is><t>${xml(cell.text)}</t></is></c>`;
  if ("error" in cell) return `<c r="${at}" t="e"><v>${cell.error}</v></c>`;
  const { formula, value, about = "" } = cell;
  const f = `<f${about}>${xml(formula)}</f>`;
  if (value === null) return `<c r="${at}">${f}</c>`;
  if (typeof value === "object") return `<c r="${at}" t="e">${f}<v>${value.error}</v></c>`;
  if (typeof value === "string") return `<c r="${at}" t="str">${f}<v>${xml(value)}</v></c>`;
  if (typeof value === "boolean") return `<c r="${at}" t="b">${f}<v>${value ? 1 : 0}</v></c>`;
  return `<c r="${at}">${f}<v>${value}</v></c>`;
}

const XF = 'numFmtId="0" fontId="0" fillId="0" borderId="0"';
const STYLES = `${HEAD}<styleSheet xmlns="${MAIN}"><fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts><fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><patternFill patternType="solid"><fgColor rgb="FFFFF8DC"/></patternFill></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf ${XF}/></cellStyleXfs><cellXfs count="4"><xf ${XF} xfId="0"/><xf ${XF} xfId="0" quotePrefix="1"/><xf ${XF.replace('numFmtId="0"', 'numFmtId="14"')} xfId="0" applyNumberFormat="1"/><xf ${XF.replace('fillId="0"', 'fillId="2"')} xfId="0" applyFill="1"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles><dxfs count="1"><dxf><font><b/></font></dxf></dxfs></styleSheet>`;
