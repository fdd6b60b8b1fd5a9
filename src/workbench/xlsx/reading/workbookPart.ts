import { isOn, readXml } from "../../../xlsx/parts/readXml";
import { relationshipsOf } from "../../../xlsx/parts/relationships";
import { DamagedFile, type FileParts } from "../../../xlsx/parts/FileParts";
import { longer } from "../../../xlsx/parts/sharedTexts";
import type { Findings } from "./Findings";

export interface SheetEntry {
  readonly name: string;
  readonly part: string;
}

export interface NameEntry {
  readonly name: string;
  /** As the file holds it, without "=". */
  readonly refersTo: string;
  /** The one sheet that knows the name, counted from 0 among all sheets of the file; undefined where all do. */
  readonly sheet: string | undefined;
}

export interface WorkbookPart {
  readonly sheets: readonly SheetEntry[];
  readonly names: readonly NameEntry[];
  readonly from1904: boolean;
  /** True where the file itself says that its values may be from before (ECMA-376 Part 1, 18.2.2). */
  readonly isStale: boolean;
  /** The parts that serve all sheets; undefined where the file has none. */
  readonly styles: string | undefined;
  readonly texts: string | undefined;
}

const USUAL_PLACE = "xl/workbook.xml";
/** Names that the format keeps for print areas, filters and the like. */
const OWN_NAME = /^_xlnm\./i;

export async function workbookPart(parts: FileParts, findings: Findings): Promise<WorkbookPart> {
  const place = (await relationshipsOf(parts, "")).find(({ type }) => type === "officeDocument")?.target ?? USUAL_PLACE;
  const related = await relationshipsOf(parts, place);
  const listed: { name: string; id: string }[] = [];
  const names: { name: string; sheet: number | undefined; refersTo: string }[] = [];
  let from1904 = false;
  let isStale = false;
  let isInName = false;
  await readXml(parts, place, {
    open: (element, attributes) => {
      if (element === "sheet") {
        listed.push({ name: attributes.name ?? "", id: attributes.id ?? "" });
        if (attributes.state !== undefined && attributes.state !== "visible") findings.add("hiddenSheet", attributes.name ?? "");
      } else if (element === "workbookPr") from1904 = isOn(attributes.date1904);
      else if (element === "calcPr") isStale = isOn(attributes.fullCalcOnLoad) || ["0", "false"].includes(attributes.calcCompleted ?? "");
      else if (element === "workbookProtection" && [attributes.lockStructure, attributes.lockWindows].some(isOn)) findings.add("protection", "");
      else if (element === "definedName") {
        isInName = true;
        const { name = "", localSheetId } = attributes;
        names.push({ name, sheet: localSheetId === undefined ? undefined : Number(localSheetId), refersTo: "" });
      }
    },
    text: (text) => {
      const last = names.at(-1);
      if (isInName && last !== undefined) last.refersTo = longer(last.refersTo, text);
    },
    close: (element) => {
      if (element === "definedName") isInName = false;
    },
  });
  const targets = new Map(related.map((one) => [one.id, one]));
  const sheets = listed.flatMap(({ name, id }) => {
    const { type, target: part = "" } = targets.get(id) ?? {};
    if (type === undefined || (type === "worksheet" && !parts.has(part))) throw new DamagedFile(`no part for the sheet ${name}`);
    if (type === "worksheet") return [{ name, part }];
    findings.add("noCells", name);
    return [];
  });
  const twice = listed.find(({ name }, index) => listed.findIndex((one) => one.name.toLowerCase() === name.toLowerCase()) !== index);
  if (twice !== undefined) throw new DamagedFile(`two sheets are called ${twice.name}`, place);
  for (const { type } of related) if (type === "vbaProject") findings.add("macro", "");
  return {
    sheets,
    names: names
      .filter(({ name, refersTo }) => !OWN_NAME.test(name) && refersTo !== "")
      .map(({ name, sheet, refersTo }) => ({ name, refersTo, sheet: sheet === undefined ? undefined : listed[sheet]?.name })),
    from1904,
    isStale,
    styles: related.find(({ type }) => type === "styles")?.target,
    texts: related.find(({ type }) => type === "sharedStrings")?.target,
  };
}
