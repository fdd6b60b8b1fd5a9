import { lastSheetStays, macrosNameSheets, sheetNotInFile } from "../../../problems/files/packageProblems";
import { WorkbookProblem } from "../../../workbook/Workbook";
import { relationshipsOf } from "../../parts/relationships";
import type { CellChange } from "../cells/CellChange";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, elementsOf, readMarkup, removal, withAttributes } from "../parts/markup";
import { holdsFormulas, mendFormulas } from "../besideCells/mendFormulas";
import { reachable, sweepUnreachable, unname } from "../parts/namedParts";
import { goneWith } from "../alone/goneWith";
import { goneSources } from "../alone/takePivotsOfGone";
import { readsGone, withoutGone, type Gone } from "./namedSheets";
import type { Edit } from "../parts/partText";
import { takeChoosers } from "../forgetting/choosers";
import { forgetPivotData } from "../forgetting/pivots";
import type { WorkbookPackage } from "../WorkbookPackage";
import { workbookOutline, type ListedSheet, type Outline } from "../workbookOutline";
import { dropCalculationChain } from "../cells/calculationChain";

/** Takes every sheet but the named ones out of the file. @returns the cells that keep a value in place of their formula */
export async function keepSheets(file: Pick<WorkbookPackage, "parts" | "readCells" | "changeCells">, names: readonly string[]): Promise<string[]> {
  const { parts } = file;
  const outline = await workbookOutline(parts);
  const wanted = new Set(names.map((name) => name.toLowerCase()));
  const isKept = ({ name }: ListedSheet): boolean => wanted.has(name.toLowerCase());
  for (const name of names)
    if (!outline.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase())) throw new WorkbookProblem(sheetNotInFile(name));
  const [kept, going] = [outline.sheets.filter(isKept), outline.sheets.filter((sheet) => !isKept(sheet))];
  if (kept.length === 0) throw new WorkbookProblem(lastSheetStays);
  if (going.length === 0) return [];
  if (outline.hasMacros) throw new WorkbookProblem(macrosNameSheets);
  const gone = goneWith(outline, going);
  const frozen = await freeze(file, kept, gone);
  const isSourceGone = await goneSources(parts, (source) => readsGone(source, gone), (name) => wanted.has(name.toLowerCase())); // prettier-ignore
  await sweepUnreachable(parts, async () => {
    await unname(parts, outline.part, new Set(going.map(({ id }) => id)));
    await parts.edit(outline.part, workbookEdits(outline, kept, gone));
  });
  for (const part of await reachable(parts)) if (holdsFormulas(part)) await mendFormulas(parts, part, (formula) => withoutGone(formula, gone));
  await takeChoosers(parts, (await workbookOutline(parts)).sheets);
  await forgetPivotData(parts, isSourceGone);
  await forgetTexts(parts, outline, kept);
  await forgetTitles(parts);
  await dropCalculationChain(parts, await workbookOutline(parts));
  return frozen;
}

/** Takes defined names out of the file; whatever reads one shows an error from then on, as where a spreadsheet takes it out. */
export async function takeNames(parts: EditableParts, isTaken: (name: string, sheet: string | undefined) => boolean): Promise<void> {
  const { part, root, names, sheets } = await workbookOutline(parts);
  const sheetOf = (place: number | undefined): string | undefined => (place === undefined ? undefined : sheets[place]?.name);
  const taken = names.filter(({ name, sheet }) => isTaken(name, sheetOf(sheet)));
  if (taken.length === 0) return;
  const list = childNamed(root, "definedNames");
  await parts.edit(part, list !== undefined && taken.length === names.length ? [removal(list)] : taken.map(({ element }) => removal(element)));
  const left = new Set((await workbookOutline(parts)).names.map(({ name }) => name.toUpperCase()));
  const gone = { sheets: new Set<string>(), names: new Set(taken.map(({ name }) => name.toUpperCase()).filter((name) => !left.has(name))) };
  for (const one of [part, ...(await reachable(parts))])
    if (one === part || holdsFormulas(one)) await mendFormulas(parts, one, (formula) => withoutGone(formula, gone));
}

/** A formula that reads what goes would make the file a damaged one, or show an error in place of what it showed. */
async function freeze(file: Pick<WorkbookPackage, "readCells" | "changeCells">, kept: readonly ListedSheet[], gone: Gone): Promise<string[]> {
  const frozen: string[] = [];
  for (const { name, kind } of kept) {
    if (kind !== "worksheet") continue;
    const changes: CellChange[] = [];
    await file.readCells(name, ({ cell, formula, formulaKind, value }) => {
      if (formulaKind === "none" || formulaKind === "dataTable" || !readsGone(formula, gone)) return;
      changes.push({ cell, content: { kind: "value", value } });
      frozen.push(`${name}!${cell}`);
    });
    await file.changeCells(name, changes);
  }
  return frozen;
}

function workbookEdits({ text, root, sheets }: Outline, kept: readonly ListedSheet[], gone: Gone): Edit[] {
  const listed = new Set(kept.map(({ name }) => name));
  const edits: Edit[] = sheets.filter(({ name }) => !listed.has(name)).map(({ element }) => removal(element));
  // A workbook shows at least one sheet.
  const [first] = kept;
  if (first !== undefined && kept.every(({ isHidden }) => isHidden)) edits.push(withAttributes(text, first.element, { state: undefined }));
  for (const view of childNamed(root, "bookViews")?.children ?? [])
    edits.push(withAttributes(text, view, { activeTab: undefined, firstSheet: undefined }));
  const names = childNamed(root, "definedNames");
  const left = (names?.children ?? []).flatMap((element) => nameLeft(text, element, { sheets, kept, gone }));
  if (names !== undefined && left.every(({ isGone }) => isGone)) edits.push(removal(names));
  else edits.push(...left.flatMap(({ edit }) => edit ?? []));
  const views = childNamed(root, "customWorkbookViews");
  return views === undefined ? edits : [...edits, removal(views)];
}

interface Left {
  readonly isGone: boolean;
  readonly edit?: Edit;
}

/** A sheet's own names count the sheets, so they are counted anew. */
function nameLeft(
  text: string,
  element: ReturnType<typeof elementsOf>,
  { sheets, kept, gone }: { readonly sheets: readonly ListedSheet[]; readonly kept: readonly ListedSheet[]; readonly gone: Gone },
): Left {
  const own = attributeOf(element, "localSheetId");
  const sheet = own === undefined ? undefined : sheets[Number(own)]?.name;
  const place = kept.findIndex(({ name }) => name === sheet);
  const isGone = (own !== undefined && place === -1) || readsGone(element.text, gone);
  if (isGone) return { isGone, edit: removal(element) };
  return own === undefined ? { isGone } : { isGone, edit: withAttributes(text, element, { localSheetId: String(place) }) };
}

/** Blanks the shared texts that no cell of the sheets that stay shows: whoever gets these sheets is not to get the others' texts. */
async function forgetTexts(parts: EditableParts, { part }: Outline, kept: readonly ListedSheet[]): Promise<void> {
  const list = (await relationshipsOf(parts, part)).find(({ type }) => type === "sharedStrings")?.target;
  if (list === undefined || !parts.has(list)) return;
  const used = new Set<number>();
  for (const sheet of kept) {
    if (sheet.kind !== "worksheet") continue;
    let isShared = false;
    let value = "";
    readMarkup(sheet.part, await parts.text(sheet.part), {
      open: (tag) => {
        if (tag.name === "c") isShared = tag.attributes.t === "s";
        value = "";
      },
      text: (said) => void (value += said),
      close: (name) => void (isShared && name === "v" && used.add(Number(value))),
    });
  }
  const text = await parts.text(list);
  const root = elementsOf(list, text);
  const unused = root.children.filter(({ name }) => name === "si").flatMap((item, index) => (used.has(index) || item.isEmpty ? [] : [item])); // prettier-ignore
  await parts.edit(list, unused.map((item) => ({ from: item.end, to: item.close.start, text: `<${item.prefix}t/>` }))); // prettier-ignore
}

/** Takes the names of all sheets and names out of the document's properties, where they are for show. */
async function forgetTitles(parts: EditableParts): Promise<void> {
  const part = (await relationshipsOf(parts, "")).find(({ type }) => type === "extended-properties")?.target;
  if (part === undefined || !parts.has(part)) return;
  const text = await parts.text(part);
  const root = elementsOf(part, text);
  await parts.edit(part, root.children.filter(({ name }) => name === "HeadingPairs" || name === "TitlesOfParts").map(removal)); // prettier-ignore
}
