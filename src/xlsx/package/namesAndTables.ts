import type { NameReading } from "../../sharing/plain/reading/PlainReading";
import type { TablePlace } from "../../sharing/plain/reading/Surroundings";
import { typedFormula } from "../formulas/storedFormula";
import { relationshipsOf } from "../parts/relationships";
import { tablePart } from "../parts/tablePart";
import type { EditableParts } from "./parts/EditableParts";
import { workbookOutline } from "./workbookOutline";

/** The file's defined names as typed; those that a program keeps for itself, and those that stand for nothing, are left out. */
export const definedNames = (parts: EditableParts): Promise<NameReading[]> => namesThat(parts, (name) => !KEPT_FOR_ITSELF.test(name));

/** Those that a program keeps for itself, such as for the printed area, which may stand for a formula too. */
export const namesOfPrograms = (parts: EditableParts): Promise<NameReading[]> => namesThat(parts, (name) => KEPT_FOR_ITSELF.test(name));

const KEPT_FOR_ITSELF = /^_xlnm\./i;

async function namesThat(parts: EditableParts, isWanted: (name: string) => boolean): Promise<NameReading[]> {
  const { names, sheets } = await workbookOutline(parts);
  return names
    .filter(({ name, refersTo }) => refersTo !== "" && isWanted(name))
    .map(({ name, refersTo, sheet }) => {
      const own = sheet === undefined ? undefined : sheets[sheet]?.name;
      return { name, formula: typedFormula(refersTo), ...(own === undefined ? {} : { sheet: own }) };
    });
}

/** Where the tables of the file stand. */
export async function tablesIn(parts: EditableParts): Promise<TablePlace[]> {
  const found: TablePlace[] = [];
  for (const { name: sheet, kind, part } of (await workbookOutline(parts)).sheets) {
    if (kind !== "worksheet") continue;
    for (const { type, target } of await relationshipsOf(parts, part)) {
      const table = type === "table" && parts.has(target) ? await tablePart(parts, target, sheet) : undefined;
      if (table === undefined) continue;
      const { name, area, headerRows, totalsRows, columns } = table;
      found.push({ name, sheet, area, headingRows: headerRows, totalsRows, columns });
    }
  }
  return found;
}
