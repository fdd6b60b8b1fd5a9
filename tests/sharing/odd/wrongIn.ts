import { readBook } from "../../../src/command/book/Book";
import { cellArea, covers, wholeLines } from "../../../src/workbook/cellArea";
import type { CellInFile } from "../../../src/xlsx/package/cells/readCells";
import { partsIn } from "../../xlsx/package/partsIn";

/** A copy and what it was made of. */
export interface Made {
  readonly before: Uint8Array<ArrayBuffer>;
  readonly after: Uint8Array<ArrayBuffer>;
  /** The names of shared sheets, and those of their copies. */
  readonly copies: ReadonlyMap<string, string>;
  readonly says: RegExp;
  /** How far values may differ from those saved: 0 where they were not calculated anew. */
  readonly tolerance: number;
  /** True where cells without a value, or with that of a function not loaded, have one now. */
  readonly isCalculated?: boolean;
  /** What the first copy's part has to hold, and cells of the records. */
  readonly keeps?: readonly RegExp[];
  readonly records?: readonly RegExp[];
  readonly keepsParts?: readonly string[];
}

/** A call of ours in a formula of a cell, rule, column or name, or in the bound of a scale. */
const CALLS = /<(?:\w+:)?(?:f|formula\d?|calculatedColumnFormula|definedName)(?: [^>]*)?>[^<]*retort|<(?:\w+:)?cfvo [^>]*retort/i;

type Cells = ReadonlyMap<string, CellInFile>;

/** Everything that is not as promised in a copy with values; none where all is well. */
export async function wrongInValues(made: Made): Promise<string[]> {
  const [before, after] = [await sheetsOf(made.before), await sheetsOf(made.after)];
  const wrong: string[] = [];
  for (const [sheet, copy] of made.copies) {
    const [own, held] = [before.get(sheet), after.get(copy)];
    if (own === undefined || held === undefined) {
      wrong.push(`no copy of ${sheet}`);
      continue;
    }
    for (const [cell, was] of own.cells) {
      const now = held.cells.get(cell);
      if (says(now, made.says)) wrong.push(...(was.value === null || was.value === "" ? [] : [`banner over ${sheet}!${cell}`]));
      else if (!isAsSaved(was.value === "" ? null : was.value, now?.value ?? null, made))
        wrong.push(`${sheet}!${cell}: ${shown(was)} is now ${shown(now)}`);
    }
    for (const [cell, { formulaKind }] of held.cells) if (formulaKind !== "none") wrong.push(`formula in ${cell}`);
    wrong.push(...bannerWrong(held, own.cells, made.says), ...layoutWrong(own.text, held.text));
  }
  wrong.push(...saysWrong(made, after));
  const records = [...after.keys()].filter((name) => ![...made.copies.values()].includes(name));
  if (records.length !== made.copies.size) wrong.push(`sheets ${[...after.keys()].join(", ")}`);
  for (const [part, text] of await textsIn(made.after)) {
    if (CALLS.test(text)) wrong.push(`a call in ${part}`);
    if (/dataValidation/.test(text)) wrong.push(`rules for entries in ${part}`);
    if (/SECRET/.test(text)) wrong.push(`another workbook's cells in ${part}`);
    if (/calculatedColumnFormula|totalsRowFunction/.test(text)) wrong.push(`a table that calculates in ${part}`);
  }
  return [...wrong, ...(await partsWrong(made)), ...(await packageWrong(made.after))];
}

/** Everything that is not as promised in a copy of plain cells. */
export async function wrongInPlain(made: Made): Promise<string[]> {
  const [before, after] = [await sheetsOf(made.before), await sheetsOf(made.after)];
  const wrong: string[] = [];
  for (const [sheet, own] of before) {
    const held = after.get(made.copies.get(sheet) ?? "");
    if (held === undefined) continue;
    for (const [cell, was] of own.cells) {
      const now = held.cells.get(cell);
      if (says(now, made.says)) wrong.push(...(was.value === null || was.value === "" ? [] : [`banner over ${sheet}!${cell}`]));
      else if (!isAsSaved(was.value, now?.value ?? null, made)) wrong.push(`${sheet}!${cell}: ${shown(was)} is now ${shown(now)}`);
      if (was.formulaKind !== "none" && now?.formulaKind === "none") wrong.push(`formula lost in ${sheet}!${cell}`);
    }
    wrong.push(...layoutWrong(own.text, held.text));
    if ([...held.cells.values()].some((one) => says(one, made.says))) wrong.push(...bannerWrong(held, own.cells, made.says));
  }
  wrong.push(...saysWrong(made, after));
  for (const name of before.keys()) if (made.copies.has(name) && !after.has(made.copies.get(name) ?? "")) wrong.push(`${name} is gone`);
  for (const [part, text] of await textsIn(made.after)) {
    if (CALLS.test(text)) wrong.push(`a call in ${part}`);
    for (const [, formula = ""] of text.matchAll(/<(?:\w+:)?f(?: [^>]*)?>([^<]*)</g)) {
      const typed = unescaped(formula);
      if (typed.length > 8192) wrong.push(`a formula of ${typed.length} characters in ${part}`);
      if ([...typed.matchAll(/"((?:[^"]|"")*)"/g)].some(([, text255 = ""]) => text255.length > 255))
        wrong.push(`a text of more than 255 characters in a formula of ${part}`);
    }
  }
  return [...wrong, ...(await partsWrong(made)), ...(await packageWrong(made.after))];
}

async function partsWrong({ before, after, keepsParts = [] }: Made): Promise<string[]> {
  const [was, now] = [await partsIn(before), await partsIn(after)];
  return keepsParts.filter((part) => was.get(part)?.equals(now.get(part) ?? Buffer.alloc(0)) !== true).map((part) => `${part} is not as it was`);
}

function saysWrong({ copies, keeps = [], records = [] }: Made, after: ReadonlyMap<string, SheetHeld>): string[] {
  const [first = ""] = [...copies.values()];
  const texts = [...after].flatMap(([name, { cells }]) => (name.includes("record") ? [...cells.values()].map(({ value }) => String(value)) : []));
  return [
    ...keeps.flatMap((kept) => (kept.test(after.get(first)?.text ?? "") ? [] : [`${kept.source} is not kept`])),
    ...records.flatMap((said) => (texts.some((text) => said.test(text)) ? [] : [`no record says ${said.source}`])),
  ];
}

interface SheetHeld {
  readonly cells: Cells;
  readonly text: string;
}

async function sheetsOf(content: Uint8Array<ArrayBuffer>): Promise<ReadonlyMap<string, SheetHeld>> {
  const { sheets } = await readBook(content.slice());
  const parts = await partsIn(content);
  const texts = [...parts].map(([name, bytes]): [string, string] => [name.toLowerCase(), bytes.toString("utf8")]);
  const workbook = texts.find(([name]) => name === "xl/workbook.xml")?.[1] ?? "";
  const relations = texts.find(([name]) => name === "xl/_rels/workbook.xml.rels")?.[1] ?? "";
  const listed = [...workbook.matchAll(/<(?:\w+:)?sheet [^>]*>/g)].map(([tag]) => ({
    name: unescaped(/ name="([^"]*)"/.exec(tag)?.[1] ?? ""),
    id: / r:id="([^"]*)"/.exec(tag)?.[1] ?? "",
  }));
  return new Map(
    sheets.map(({ name, cells }): [string, SheetHeld] => {
      const id = listed.find((one) => one.name === name)?.id ?? "";
      const target = [...relations.matchAll(/<Relationship [^>]*>/g)].map(([tag]) => tag).find((tag) => tag.includes(`Id="${id}"`)) ?? "";
      const part = (/ Target="([^"]*)"/.exec(target)?.[1] ?? "").replace(/^\/?(xl\/)?/, "xl/").toLowerCase();
      return [name, { cells: new Map(cells.map((one) => [one.cell, one])), text: texts.find(([one]) => one === part)?.[1] ?? "" }];
    }),
  );
}

const unescaped = (text: string): string =>
  text
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&amp;/g, "&");

async function textsIn(content: Uint8Array<ArrayBuffer>): Promise<[string, string][]> {
  return [...(await partsIn(content))].filter(([name]) => name.endsWith(".xml")).map(([name, bytes]) => [name, bytes.toString("utf8")]);
}

const says = (cell: CellInFile | undefined, words: RegExp): boolean => typeof cell?.value === "string" && words.test(cell.value);

const shown = (cell: CellInFile | undefined): string => JSON.stringify(cell?.value ?? null).slice(0, 60);

function isAsSaved(was: CellInFile["value"], now: CellInFile["value"], { tolerance, isCalculated = false }: Made): boolean {
  if (isCalculated && typeof now === "number" && (was === null || (typeof was === "object" && was.error === "#NAME?"))) return true;
  if (typeof was === "number" && typeof now === "number") return Math.abs(was - now) <= tolerance * Math.max(1, Math.abs(was));
  return JSON.stringify(was) === JSON.stringify(now);
}

/** The line that says what a copy is stands where somebody sees it, once, on the sheet. */
function bannerWrong({ cells, text }: SheetHeld, before: Cells, words: RegExp): string[] {
  const [banner, ...more] = [...cells.values()].filter((cell) => says(cell, words));
  if (banner === undefined || more.length > 0) return [banner === undefined ? "no banner" : "two banners"];
  const wrong: string[] = [];
  const { row, column } = banner;
  if (column >= 16_384 || row >= 1_048_576) wrong.push(`banner off the sheet at ${banner.cell}`);
  const was = before.get(banner.cell);
  if (was !== undefined && was.formulaKind !== "none") wrong.push(`banner in a formula cell ${banner.cell}`);
  for (const [, ref = ""] of text.matchAll(/<(?:\w+:)?mergeCell ref="([^"]*)"/g)) {
    const area = cellArea(ref) ?? wholeLines(ref);
    if (area !== undefined && covers(area, row, column) && !(area.row === row && area.column === column))
      wrong.push(`banner under merged cells ${ref}`);
  }
  const line = new RegExp(`<(?:\\w+:)?row [^>]*r="${row + 1}"[^>]*>`).exec(text)?.[0] ?? "";
  if (/hidden="1"| ht="0"/.test(line)) wrong.push(`banner in a hidden row ${row + 1}`);
  for (const [tag] of text.matchAll(/<(?:\w+:)?col [^>]*hidden="1"[^>]*>/g)) {
    const [min, max] = [Number(/min="(\d+)"/.exec(tag)?.[1]), Number(/max="(\d+)"/.exec(tag)?.[1])];
    if (column + 1 >= min && column + 1 <= max) wrong.push(`banner in a hidden column of ${banner.cell}`);
  }
  return wrong;
}

/** Everything of the sheet's part beside its cells, with rules for entries and what is chosen left out. */
const besideCells = (text: string): string =>
  text
    .replace(/<(\w+:)?sheetData>.*<\/(\w+:)?sheetData>|<(\w+:)?sheetData\/>/s, "")
    .replace(/<(\w+:)?dataValidations.*?<\/(\w+:)?dataValidations>/gs, "")
    .replace(/<extLst>.*?<\/extLst>/gs, (list) => (/conditionalFormattings|dataValidations|uri="\{78C0D931/.test(list) ? "" : list))
    .replace(/ tabSelected="[^"]*"/g, "")
    .replace(/<(\w+:)?dimension [^>]*>/g, "");

/** Lengths of rows and what stands between cells may not change. */
const rowsOf = (text: string): string =>
  [...text.matchAll(/<(?:\w+:)?row ([^>]*?)\/?>/g)].map(([, attributes = ""]) => attributes.replace(/spans="[^"]*"/, "").trim()).filter((one) => /hidden|ht=|outline/.test(one)).join("|"); // prettier-ignore

function layoutWrong(was: string, now: string): string[] {
  const wrong: string[] = [];
  if (
    besideCells(was).replace(/<conditionalFormatting.*?<\/conditionalFormatting>/gs, "") !==
    besideCells(now).replace(/<conditionalFormatting.*?<\/conditionalFormatting>/gs, "")
  )
    wrong.push("what stands beside the cells changed");
  if (rowsOf(was) !== rowsOf(now)) wrong.push("rows changed");
  return wrong;
}

/** What makes programs call a file damaged, as far as it shows without a schema. */
async function packageWrong(content: Uint8Array<ArrayBuffer>): Promise<string[]> {
  const wrong: string[] = [];
  const parts = await partsIn(content);
  const names = [...parts.keys()].map((name) => name.toLowerCase());
  for (const [part, text] of await textsIn(content)) {
    // eslint-disable-next-line no-control-regex
    if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffd]/.test(text)) wrong.push(`a broken character in ${part}`);
    for (const [, height = ""] of text.matchAll(/<(?:\w+:)?row [^>]* ht="([^"]*)"/g))
      if (Number(height) > 409.5) wrong.push(`a row of ${height} points in ${part}`);
  }
  for (const [part, bytes] of parts) {
    if (!part.endsWith(".rels")) continue;
    const folder = part.replace(/_rels\/[^/]*$/, "");
    for (const [tag] of bytes.toString("utf8").matchAll(/<Relationship [^>]*>/g)) {
      const target = / Target="([^"]*)"/.exec(tag)?.[1] ?? "";
      if (tag.includes('TargetMode="External"')) continue;
      const steps: string[] = [];
      for (const step of (target.startsWith("/") ? target : folder + target).split("/")) {
        if (step === "..") steps.pop();
        else if (step !== "") steps.push(step);
      }
      if (!names.includes(steps.join("/").toLowerCase())) wrong.push(`${part} names ${target}, which is not there`);
    }
  }
  return wrong;
}
