import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, elementsOf, elementsThat, removal } from "../parts/markup";
import { reachable } from "../parts/namedParts";
import { workbookOutline } from "../workbookOutline";

const CHART = /^xl\/charts\/chart[^/]*\.xml$/i;

/** Makes charts drawn from pivot tables that are no longer there charts like any others (ECMA-376 Part 1, 21.2.2.144). */
export async function forgetPivotCharts(parts: EditableParts): Promise<void> {
  const there = new Set<string>();
  for (const { name, part } of (await workbookOutline(parts)).sheets)
    for (const { type, target } of await relationshipsOf(parts, part))
      if (type === "pivotTable" && parts.has(target)) there.add(keyOf(name, attributeOf(elementsOf(target, await parts.text(target)), "name") ?? ""));
  for (const part of [...(await reachable(parts))].filter((one) => CHART.test(one))) {
    const text = await parts.text(part);
    if (!text.includes("pivotSource")) continue;
    const root = elementsOf(part, text);
    const source = childNamed(root, "pivotSource");
    if (source === undefined || there.has(keyNamed(childNamed(source, "name")?.text ?? ""))) continue;
    const options = childrenNamed(root, "extLst").filter((list) => elementsThat(list, ({ name }) => /^pivotOptions/.test(name)).length > 0);
    await parts.edit(part, [source, ...options].map(removal)); // prettier-ignore
  }
}

const keyOf = (sheet: string, name: string): string => `${sheet}!${name}`.toLowerCase();

/** Of "[Runs.xlsx]Tray!PivotTable1", the file's name apart. */
function keyNamed(source: string): string {
  const within = source.replace(/^'?\[[^\]]*\]/, "");
  const mark = within.lastIndexOf("!");
  return keyOf(within.slice(0, mark).replace(/'$/, "").replace(/^'/, "").replaceAll("''", "'"), within.slice(mark + 1));
}
