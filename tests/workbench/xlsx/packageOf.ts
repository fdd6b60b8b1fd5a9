import { gzipSync } from "node:zlib";

const EMPTY_SHEET = "<worksheet><sheetData/></worksheet>";
const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** A zip archive of the parts, each deflated, as other programs write them. */
export function zipOf(parts: Readonly<Record<string, string | Uint8Array>>): Uint8Array<ArrayBuffer> {
  const files: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const [name, content] of Object.entries(parts)) {
    const raw = typeof content === "string" ? Buffer.from(content) : content;
    // What gzip makes is the same, between 10 bytes before it and 8 behind it, of which the first are the checksum (RFC 1952, 2.3).
    const zipped = gzipSync(raw);
    const data = zipped.subarray(10, -8);
    const sizes = Buffer.alloc(12);
    sizes.writeUInt32LE(zipped.readUInt32LE(zipped.length - 8), 0);
    sizes.writeUInt32LE(data.length, 4);
    sizes.writeUInt32LE(raw.length, 8);
    const named = Buffer.from(name);
    const lengths = Buffer.alloc(4);
    lengths.writeUInt16LE(named.length, 0);
    const start = Buffer.from([20, 0, 0, 0, 8, 0, 0, 0, 0, 0]);
    const file = Buffer.concat([Buffer.from("PK\u0003\u0004"), start, sizes, lengths, named, data]);
    const place = Buffer.alloc(14);
    place.writeUInt32LE(at, 10);
    directory.push(Buffer.concat([Buffer.from("PK\u0001\u0002"), Buffer.from([20, 0]), start, sizes, lengths, place, named]));
    files.push(file);
    at += file.length;
  }
  const end = Buffer.alloc(22);
  end.write("PK\u0005\u0006");
  end.writeUInt16LE(files.length, 8);
  end.writeUInt16LE(files.length, 10);
  end.writeUInt32LE(Buffer.concat(directory).length, 12);
  end.writeUInt32LE(at, 16);
  return new Uint8Array(Buffer.concat([...files, ...directory, end]));
}

export interface SmallWorkbook {
  /** The XML of each sheet by its name, or of its sheetData alone. */
  readonly sheets: Readonly<Record<string, string>>;
  /** What stands in workbook.xml before and after the list of sheets. */
  readonly before?: string;
  readonly after?: string;
  /** Further parts, and parts in place of the ones made here. */
  readonly further?: Readonly<Record<string, string | Uint8Array>>;
}

/** The smallest .xlsx file with these sheets; a sheet's part is xl/worksheets/sheet1.xml and so on. */
export const packageOf = (workbook: SmallWorkbook): Uint8Array<ArrayBuffer> => zipOf(partsOf(workbook));

export function partsOf({ sheets, before = "", after = "", further = {} }: SmallWorkbook): Record<string, string | Uint8Array> {
  const names = Object.keys(sheets);
  const related = (id: string, type: string, target: string): string =>
    `<Relationship Id="${id}" Type="${RELATIONSHIPS}/${type}" Target="${target}"/>`;
  const listed = names.map((name, index) => `<sheet name="${name}" sheetId="${index + 1}" r:id="s${index + 1}"/>`).join("");
  return {
    "[Content_Types].xml": "<Types/>",
    "_rels/.rels": `<Relationships>${related("w", "officeDocument", "xl/workbook.xml")}</Relationships>`,
    "xl/workbook.xml": `<workbook>${before}<sheets>${listed}</sheets>${after}</workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships>${names
      .map((_, index) => related(`s${index + 1}`, "worksheet", `worksheets/sheet${index + 1}.xml`))
      .join("")}${related("t", "sharedStrings", "sharedStrings.xml")}${related("y", "styles", "styles.xml")}</Relationships>`,
    ...Object.fromEntries(
      Object.values(sheets).map((xml, index) => [
        `xl/worksheets/sheet${index + 1}.xml`,
        xml.includes("<worksheet") ? xml : EMPTY_SHEET.replace("<sheetData/>", `<sheetData>${xml}</sheetData>`),
      ]),
    ),
    ...further,
  };
}
