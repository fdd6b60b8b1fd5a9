import { DamagedFile } from "../parts/FileParts";
import { isOn } from "../parts/readXml";
import { relationshipsOf } from "../parts/relationships";
import type { EditableParts } from "./parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, elementsOf, type Element } from "./parts/markup";

/** A sheet as the workbook lists it. */
export interface ListedSheet {
  readonly name: string;
  readonly part: string;
  /** "worksheet", or that of a sheet without cells. */
  readonly kind: string;
  readonly id: string;
  readonly isHidden: boolean;
  readonly element: Element;
}

/** A name as the workbook defines it. */
export interface DefinedName {
  readonly name: string;
  readonly refersTo: string;
  /** Counted from 0 among all sheets; undefined for a name that every sheet knows. */
  readonly sheet: number | undefined;
  readonly element: Element;
}

/** What the workbook's own part says of the rest. */
export interface Outline {
  readonly part: string;
  readonly text: string;
  readonly root: Element;
  readonly sheets: readonly ListedSheet[];
  readonly names: readonly DefinedName[];
  readonly from1904: boolean;
  /** True for the stricter of the two kinds of the format, which has namespaces of its own (ECMA-376 Part 1). */
  readonly isStrict: boolean;
  readonly hasMacros: boolean;
}

const USUAL_PLACE = "xl/workbook.xml";
const STRICT = "http://purl.oclc.org/ooxml/";

export async function workbookOutline(parts: EditableParts): Promise<Outline> {
  const part = (await relationshipsOf(parts, "")).find(({ type }) => type === "officeDocument")?.target ?? USUAL_PLACE;
  const text = await parts.text(part);
  const root = elementsOf(part, text);
  const related = new Map((await relationshipsOf(parts, part)).map((one) => [one.id, one]));
  const list = childNamed(root, "sheets");
  const sheets = list === undefined ? [] : childrenNamed(list, "sheet");
  const names = sheets.map((element) => attributeOf(element, "name") ?? "");
  const letters = names.map((name) => name.toLowerCase());
  const twice = names.find((_, place) => letters.indexOf(letters[place] ?? "") !== place);
  // Programs take names that differ in capitals alone for one.
  if (twice !== undefined) throw new DamagedFile(`two sheets are called ${twice}`, part);
  const properties = childNamed(root, "workbookPr");
  return {
    part,
    text,
    root,
    sheets: sheets.map((element): ListedSheet => {
      // The relationship's id has a prefix; the sheet's own number is another attribute, sheetId.
      const [name = "", id = "", state = "visible"] = [attributeOf(element, "name"), attributeOf(element, "id"), attributeOf(element, "state")];
      const target = related.get(id);
      if (target === undefined) throw new DamagedFile(`no part for the sheet ${name}`, part);
      return { name, part: target.target, kind: target.type, id, isHidden: state !== "visible", element };
    }),
    names: childrenNamed(childNamed(root, "definedNames") ?? { ...root, children: [] }, "definedName").map((element) => {
      const sheet = attributeOf(element, "localSheetId");
      return { name: attributeOf(element, "name") ?? "", refersTo: element.text, sheet: sheet === undefined ? undefined : Number(sheet), element };
    }),
    from1904: isOn(properties && attributeOf(properties, "date1904")),
    isStrict: Object.values(root.attributes).some((value) => value.startsWith(STRICT)),
    hasMacros: [...related.values()].some(({ type }) => type === "vbaProject"),
  };
}

/** The namespaces that markup of ours names, as the stricter kind of the format has them. */
export const inStrict = (markup: string): string =>
  markup
    .replaceAll("http://schemas.openxmlformats.org/spreadsheetml/2006/main", `${STRICT}spreadsheetml/main`)
    .replaceAll("http://schemas.openxmlformats.org/officeDocument/2006/relationships", `${STRICT}officeDocument/relationships`)
    .replaceAll("http://schemas.openxmlformats.org/drawingml/2006/main", `${STRICT}drawingml/main`)
    .replaceAll("http://schemas.openxmlformats.org/drawingml/2006/chart", `${STRICT}drawingml/chart`)
    .replaceAll("http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing", `${STRICT}drawingml/spreadsheetDrawing`);

export const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
export const SPREADSHEET = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

/** The address that stands for a kind of relationship. */
export const relationshipType = ({ isStrict }: Pick<Outline, "isStrict">, kind: string): string =>
  isStrict ? inStrict(`${RELATIONSHIPS}/${kind}`) : `${RELATIONSHIPS}/${kind}`;
