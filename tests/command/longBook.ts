import JSZip from "jszip";

const CELLS_IN_A_ROW = 5;
const [VESSEL, WET, DRY] = [25, 35, 31.5];
const WATER = (WET - DRY) / (WET - VESSEL);

/** A workbook file of many cells with calls of ours, with the values they give, as spreadsheets write it. */
export async function longBook(cells: number, further = ""): Promise<Uint8Array<ArrayBuffer>> {
  const rows = Array.from({ length: cells / CELLS_IN_A_ROW }, (_, index) => row(index + 1)).join("");
  return bookOf([["Trays", `<sheetData>${rows}</sheetData>${further}`]]);
}

function row(number: number): string {
  const call = `_xldudf_RETORT_MOISTURE_WET(A${number},B${number},C${number})`;
  const calls = [call, `${call}*100`, `1-${call}`, `IF(B${number}="","",${call})`, `ROUND(${call},3)`];
  const values = [WATER, WATER * 100, 1 - WATER, WATER, Number(WATER.toFixed(3))];
  const inputs = [VESSEL, WET, DRY].map((value, column) => `<c r="${"ABC"[column]}${number}"><v>${value}</v></c>`);
  const formulas = calls.map((formula, index) => {
    const text = formula.replaceAll('"', "&quot;");
    return `<c r="${"DEFGH"[index]}${number}"><f>${text}</f><v>${values[index]}</v></c>`;
  });
  return `<row r="${number}">${inputs.join("")}${formulas.join("")}</row>`;
}

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATED = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/"/g, "&quot;").replace(/</g, "&lt;");

export interface BesideSheets {
  /** Attributes and elements put into the workbook's part. */
  readonly calculation?: string;
  readonly names?: string;
  readonly properties?: string;
  readonly hidden?: readonly string[];
}

/** A workbook file from the insides of its sheets' parts. */
export async function bookOf(
  sheets: readonly (readonly [name: string, inside: string])[],
  beside: BesideSheets = {},
): Promise<Uint8Array<ArrayBuffer>> {
  const zip = new JSZip();
  const { calculation = "", names = "", properties = "", hidden = [] } = beside;
  zip.file(
    "[Content_Types].xml",
    `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPES}.sheet.main+xml"/>${sheets.map((_, index) => `<Override PartName="/xl/worksheets/sheet${index + 1}.xml" ContentType="${TYPES}.worksheet+xml"/>`).join("")}</Types>`,
  );
  const relations = (list: string): string =>
    `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${list}</Relationships>`;
  zip.file("_rels/.rels", relations(`<Relationship Id="rId1" Type="${RELATED}/officeDocument" Target="xl/workbook.xml"/>`));
  const state = (name: string): string => (hidden.includes(name) ? ' state="hidden"' : "");
  const listed = sheets.map(([name], index) => `<sheet name="${escaped(name)}" sheetId="${index + 1}"${state(name)} r:id="rId${index + 1}"/>`);
  zip.file(
    "xl/workbook.xml",
    `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${RELATED}">${properties}<sheets>${listed.join("")}</sheets>${names}${calculation}</workbook>`,
  );
  const targets = sheets.map(
    (_, index) => `<Relationship Id="rId${index + 1}" Type="${RELATED}/worksheet" Target="worksheets/sheet${index + 1}.xml"/>`,
  );
  zip.file("xl/_rels/workbook.xml.rels", relations(targets.join("")));
  sheets.forEach(([, inside], index) => zip.file(`xl/worksheets/sheet${index + 1}.xml`, `${HEAD}<worksheet xmlns="${MAIN}">${inside}</worksheet>`));
  return new Uint8Array(await zip.generateAsync({ type: "arraybuffer", compression: "DEFLATE" }));
}
