import { nameJustTaken } from "../../../problems/workbook/workbookProblems";
import { WorkbookProblem } from "../../../workbook/Workbook";
import { DamagedFile } from "../../parts/FileParts";
import { relationshipsOf } from "../../parts/relationships";
import { sharedTexts } from "../../parts/sharedTexts";
import { freeSheetName } from "../../../workbook/freeSheetName";
import { inlineText } from "../cells/cellMarkup";
import { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, escapedAttribute, escapedText, appendTo, readMarkup, tagWith } from "../parts/markup";
import { nameIn, sayContentType } from "../parts/namedParts";
import { edited, type Edit } from "../parts/partText";
import { markupOf, StylesPart } from "../StylesPart";
import {
  inStrict,
  RELATIONSHIPS,
  relationshipType,
  SPREADSHEET,
  workbookOutline,
  type DefinedName,
  type ListedSheet,
  type Outline,
} from "../workbookOutline";

const SHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
const STYLES = "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";

/**
 * Adds every sheet of another workbook file behind the last one, with its looks and its own names. The other file is one of ours: its sheets
 * name no further parts.
 * @throws WorkbookProblem where a name is taken
 */
export async function addSheetsOf(parts: EditableParts, content: Uint8Array<ArrayBuffer>): Promise<void> {
  const other = await EditableParts.of(content);
  const from = await workbookOutline(other);
  const looks = await Looks.between(parts, other);
  const texts = await sharedTexts(other, (await relationshipsOf(other, from.part)).find(({ type }) => type === "sharedStrings")?.target);
  for (const [index, sheet] of from.sheets.entries()) {
    const outline = await workbookOutline(parts);
    const { name } = sheet;
    if (freeSheetName(name, outline.sheets.map((one) => one.name)) !== name) throw new WorkbookProblem(nameJustTaken); // prettier-ignore
    if ((await relationshipsOf(other, sheet.part)).length > 0) throw new DamagedFile("it names further parts", sheet.part);
    const part = parts.freeName("xl/worksheets/sheet", ".xml");
    const text = await other.text(sheet.part);
    const markup = edited(text, sheetEdits(sheet, text, looks, texts.map((one) => one.text))); // prettier-ignore
    parts.put(part, outline.isStrict ? inStrict(markup) : markup);
    await sayContentType(parts, part, SHEET);
    await listSheet(parts, outline, { name, part, names: from.names.filter((one) => one.sheet === index) });
  }
  await looks.write();
}

/** Where the sheet names a look or a shared text by its number. */
function sheetEdits({ part }: ListedSheet, text: string, looks: Looks, texts: readonly string[]): Edit[] {
  const edits: Edit[] = [];
  let shared: { readonly start: number; readonly end: number } | undefined;
  let value = "";
  readMarkup(part, text, {
    open: (tag) => {
      const { name, attributes } = tag;
      const given: Record<string, string> = {};
      if (name === "c" && attributes.s !== undefined) given.s = String(looks.of(Number(attributes.s)));
      if (name === "row" && attributes.s !== undefined) given.s = String(looks.of(Number(attributes.s)));
      if (name === "col" && attributes.style !== undefined) given.style = String(looks.of(Number(attributes.style)));
      if (name === "cfRule" && attributes.dxfId !== undefined) given.dxfId = String(looks.conditional(Number(attributes.dxfId)));
      // A sheet that is shown beside others would be changed together with them.
      if (name === "sheetView" && attributes.tabSelected !== undefined) given.tabSelected = "0";
      if (name === "c" && attributes.t === "s") {
        given.t = "inlineStr";
        shared = { start: tag.start, end: tag.end };
      }
      if (Object.keys(given).length > 0) edits.push({ from: tag.start, to: tag.end, text: tagWith(text, tag, given) });
      if (shared !== undefined && name === "v") {
        shared = { start: tag.start, end: tag.end };
        value = "";
      }
    },
    text: (said) => void (value += said),
    close: (name, at) => {
      if (shared !== undefined && name === "v") {
        const inline = inlineText("", texts[Number(value)] ?? "");
        edits.push({ from: shared.start, to: at.end, text: inline });
        shared = undefined;
      }
    },
  });
  return edits;
}

/** Lists a sheet in the workbook, with names that it alone knows. */
async function listSheet(
  parts: EditableParts,
  outline: Outline,
  sheet: { name: string; part: string; names: readonly DefinedName[] },
): Promise<void> {
  const { part, text, root } = outline;
  const id = await nameIn(parts, part, relationshipType(outline, "worksheet"), sheet.part);
  const list = childNamed(root, "sheets");
  if (list === undefined) throw new DamagedFile("it lists no sheets", part);
  const number = Math.max(0, ...list.children.map((one) => Number(attributeOf(one, "sheetId") ?? 0))) + 1;
  const space = outline.isStrict ? inStrict(RELATIONSHIPS) : RELATIONSHIPS;
  const x = root.prefix;
  const entry = `<${x}sheet xmlns:r="${space}" name="${escapedAttribute(sheet.name)}" sheetId="${number}" r:id="${id}"/>`;
  const names = outline.sheets.some((one) => FORBIDDEN_NAME.test(one.name)) ? [] : sheet.names;
  await parts.edit(part, [appendTo(text, list, entry), ...nameEdits(outline, outline.sheets.length, names)]);
}

/**
 * Names that Excel and LibreOffice forbid for a sheet, and other programs write. LibreOffice leaves such a sheet out and counts on without it; it then
 * does not open a file that has a name of its own for the last sheet.
 */
const FORBIDDEN_NAME = /[[\]*?:/\\]|^'|'$/;

/** What stands in the workbook's part before its names (ECMA-376 Part 1, 18.2.27). */
const BEFORE_NAMES = [
  "fileVersion",
  "fileSharing",
  "workbookPr",
  "workbookProtection",
  "bookViews",
  "sheets",
  "functionGroups",
  "externalReferences",
];

function nameEdits({ text, root }: Outline, sheet: number, names: readonly DefinedName[]): Edit[] {
  if (names.length === 0) return [];
  const x = root.prefix;
  const markup = names
    .map(
      ({ name, refersTo }) => `<${x}definedName name="${escapedAttribute(name)}" localSheetId="${sheet}">${escapedText(refersTo)}</${x}definedName>`,
    )
    .join("");
  const list = childNamed(root, "definedNames");
  if (list !== undefined) return [appendTo(text, list, markup)];
  const at = root.children.filter(({ name }) => BEFORE_NAMES.includes(name)).at(-1)?.close.end ?? root.close.start;
  return [{ from: at, to: at, text: `<${x}definedNames>${markup}</${x}definedNames>` }];
}

/** The looks of one file as those of another, which gets what it lacks. */
class Looks {
  private readonly known = new Map<number, number>();
  private readonly conditions = new Map<number, number>();

  private constructor(
    private readonly parts: EditableParts,
    private readonly part: string,
    private readonly own: StylesPart,
    private readonly theirs: StylesPart,
  ) {}

  static async between(parts: EditableParts, other: EditableParts): Promise<Looks> {
    const theirs = await openStyles(other);
    const own = await openStyles(parts);
    return new Looks(parts, own.part, own.styles, theirs.styles);
  }

  of(look: number): number {
    const known = this.known.get(look);
    if (known !== undefined) return known;
    const x = this.own.prefix;
    const xf = this.theirs.items("cellXfs")[look];
    const copied = (list: "fonts" | "fills" | "borders", id: string | undefined): string => {
      const item = this.theirs.items(list)[Number(id ?? 0)];
      return String(item === undefined ? 0 : this.own.add(list, markupOf(item, x)));
    };
    const { numFmtId, fontId, fillId, borderId, xfId, ...further } = xf?.attributes ?? {};
    const hasNamed = this.own.items("cellStyleXfs").length > 0;
    const given: Record<string, string> = {
      ...{ numFmtId: String(this.format(numFmtId ?? "0")), fontId: copied("fonts", fontId), fillId: copied("fills", fillId) },
      ...{ borderId: copied("borders", borderId), ...(hasNamed && xfId !== undefined ? { xfId: "0" } : {}), ...further },
    };
    const attributes = Object.entries(given).map(([name, value]) => ` ${name}="${escapedAttribute(value)}"`).join(""); // prettier-ignore
    const inside = (xf?.children ?? []).map((child) => markupOf(child, x)).join("");
    const place = this.own.add("cellXfs", inside === "" ? `<${x}xf${attributes}/>` : `<${x}xf${attributes}>${inside}</${x}xf>`);
    this.known.set(look, place);
    return place;
  }

  conditional(look: number): number {
    const item = this.theirs.items("dxfs")[look];
    const place = this.conditions.get(look) ?? (item === undefined ? 0 : this.own.add("dxfs", markupOf(item, this.own.prefix)));
    this.conditions.set(look, place);
    return place;
  }

  async write(): Promise<void> {
    await this.parts.edit(this.part, this.own.edits());
  }

  /** Numbers below 164 are built in; the others stand for what their own file says. */
  private format(id: string): number {
    const own = this.theirs.items("numFmts").find((one) => attributeOf(one, "numFmtId") === id);
    return own === undefined ? Number(id) : this.own.format(attributeOf(own, "formatCode") ?? "");
  }
}

const USUAL_STYLES = "xl/styles.xml";

/** The looks of a file; one without gets those that every file has. */
export async function openStyles(parts: EditableParts): Promise<{ part: string; styles: StylesPart }> {
  const outline = await workbookOutline(parts);
  const known = (await relationshipsOf(parts, outline.part)).find(({ type }) => type === "styles")?.target;
  if (known !== undefined && parts.has(known)) return { part: known, styles: new StylesPart(known, await parts.text(known)) };
  // Some programs look for it nowhere else.
  const part = known ?? (parts.has(USUAL_STYLES) ? parts.freeName("xl/styles", ".xml") : USUAL_STYLES);
  const markup = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<styleSheet xmlns="${SPREADSHEET}">${LEAST}</styleSheet>`;
  parts.put(part, outline.isStrict ? inStrict(markup) : markup);
  if (known === undefined) await nameIn(parts, outline.part, relationshipType(outline, "styles"), part);
  await sayContentType(parts, part, STYLES);
  return { part, styles: new StylesPart(part, await parts.text(part)) };
}

// The first two fills are fixed, whatever a file says (ECMA-376 Part 1, 18.8.20, as spreadsheets take it).
const LEAST =
  '<fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>' +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>';
