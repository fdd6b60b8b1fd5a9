import { tokenize, tokenTypes } from "@borgar/fx";
import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, elementsOf, elementsThat, removal, type Element } from "../parts/markup";
import { holdsFormulas, mendFormulas } from "../besideCells/mendFormulas";
import { reachable, sweepUnreachable, unname } from "../parts/namedParts";
import { workbookOutline } from "../workbookOutline";

/** Another workbook as a reference names it, by its place in a list from 1: "[2]Tray!A1", "'[2]Tray 1'!A1", "[2]!vessel". */
const ANOTHER = /^('?)\[(\d+)\]([^!]*)!/;

/** Sheets of other workbooks that something reads, by the workbook's number, in capitals; "" for what reads no sheet by its name. */
type Read = Map<number, Set<string>>;

/**
 * Takes the links to other workbooks out of the file that nothing reads any more, and the cells that it keeps of sheets which nothing reads. Formulas
 * count the links, so that they count anew.
 */
export async function forgetOtherWorkbooks(parts: EditableParts): Promise<void> {
  const { part, root } = await workbookOutline(parts);
  const list = childNamed(root, "externalReferences");
  if (list === undefined) return;
  const read: Read = new Map();
  const everywhere = [part, ...[...(await reachable(parts))].filter(holdsFormulas)];
  const look = (formula: string): string => {
    for (const [, number, sheets] of othersIn(formula)) read.set(number, new Set([...(read.get(number) ?? []), ...sheets]));
    return formula;
  };
  for (const one of everywhere) await mendFormulas(parts, one, look, (sheet) => sheet);
  const links = childrenNamed(list, "externalReference");
  const targets = new Map((await relationshipsOf(parts, part)).map(({ id, target }) => [id, target]));
  const staying = links.flatMap((_link, place) => (read.has(place + 1) ? [place + 1] : []));
  for (const number of staying) await forgetOtherCells(parts, targets.get(idOf(links[number - 1])) ?? "", read.get(number) ?? new Set());
  const going = links.filter((_link, place) => !read.has(place + 1));
  if (going.length === 0) return;
  const now = new Map(staying.map((number, place) => [number, place + 1]));
  for (const one of everywhere) await mendFormulas(parts, one, (formula) => countedAnew(formula, now), (sheet) => sheet); // prettier-ignore
  const written = childNamed((await workbookOutline(parts)).root, "externalReferences");
  const stays = new Set(staying.map((number) => idOf(links[number - 1])));
  const edits = written === undefined ? [] : stays.size === 0 ? [written] : written.children.filter((one) => !stays.has(idOf(one)));
  await parts.edit(part, edits.map(removal)); // prettier-ignore
  await sweepUnreachable(parts, () => unname(parts, part, new Set(going.map(idOf))));
}

const idOf = (link: Element | undefined): string => (link && attributeOf(link, "id")) ?? "";

const othersIn = (formula: string): (readonly [token: string, number: number, sheets: readonly string[]])[] =>
  tokenize(`=${formula}`).flatMap(({ type, value }) => {
    const found = type === tokenTypes.STRING ? null : ANOTHER.exec(value);
    if (found === null) return [];
    const [, quote, number, written = ""] = found;
    const sheets = (quote === "" ? written : written.replace(/'$/, "").replaceAll("''", "'")).toUpperCase();
    // Those between the first and the last of several are told nowhere.
    return [[value, Number(number), [sheets.includes(":") ? "" : sheets]] as const];
  });

const countedAnew = (formula: string, now: ReadonlyMap<number, number>): string =>
  othersIn(formula).length === 0
    ? formula
    : tokenize(`=${formula}`)
        .map(({ type, value }) => {
          const number = type === tokenTypes.STRING ? undefined : ANOTHER.exec(value)?.[2];
          return number === undefined ? value : value.replace(`[${number}]`, `[${now.get(Number(number)) ?? number}]`);
        })
        .join("")
        .slice(1);

/** @param read sheets that something reads, in capitals */
async function forgetOtherCells(parts: EditableParts, link: string, read: ReadonlySet<string>): Promise<void> {
  if (read.has("") || !parts.has(link)) return;
  const root = elementsOf(link, await parts.text(link));
  const names = elementsThat(root, ({ name }) => name === "sheetName").map((one) => (attributeOf(one, "val") ?? "").toUpperCase());
  const isRead = (held: Element): boolean => read.has(names[Number(attributeOf(held, "sheetId") ?? 0)] ?? "");
  const lists = elementsThat(root, ({ name }) => name === "sheetDataSet");
  const gone = lists.flatMap((list) => (list.children.some(isRead) ? list.children.filter((held) => !isRead(held)) : [list]));
  await parts.edit(link, gone.map(removal)); // prettier-ignore
}
