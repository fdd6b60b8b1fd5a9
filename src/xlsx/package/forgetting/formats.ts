import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, elementsOf, elementsThat, withAttributes, type Element } from "../parts/markup";
import { reachable } from "../parts/namedParts";
import { workbookOutline } from "../workbookOutline";

const FOR_CELLS = /^xl\/(worksheets|tables|pivottables)\/[^/]*\.xml$/i;

/** Forgets the number formats that nothing of the file uses any more, for a format may hold words: each keeps its number and shows numbers as they are. */
export async function forgetFormats(parts: EditableParts): Promise<void> {
  const { part } = await workbookOutline(parts);
  const styles = (await relationshipsOf(parts, part)).find(({ type, target }) => type === "styles" && parts.has(target))?.target;
  if (styles === undefined) return;
  const text = await parts.text(styles);
  const root = elementsOf(styles, text);
  const [looks, differences] = [new Set([0]), numbersIn(text, /[dD]xfId="(\d+)"/g)];
  for (const one of await reachable(parts)) {
    if (!FOR_CELLS.test(one)) continue;
    const said = await parts.text(one);
    for (const look of numbersIn(said, / (?:s|style)="(\d+)"/g)) looks.add(look);
    for (const difference of numbersIn(said, /[dD]xfId="(\d+)"/g)) differences.add(difference);
  }
  const [cells, bases] = ["cellXfs", "cellStyleXfs"].map((name) => childNamed(root, name)?.children ?? []) as [Element[], Element[]];
  const used = cells.filter((_, place) => looks.has(place));
  const usedBases = new Set([0, ...used.map((one) => Number(attributeOf(one, "xfId") ?? 0))]);
  const formats = new Set([...used, ...bases.filter((_, place) => usedBases.has(place))].map((one) => attributeOf(one, "numFmtId")));
  const unused = [
    ...(childNamed(root, "numFmts")?.children ?? []).filter((one) => !formats.has(attributeOf(one, "numFmtId"))),
    ...(childNamed(root, "dxfs")?.children ?? []).flatMap((one, place) => (differences.has(place) ? [] : childrenNamed(one, "numFmt"))),
  ];
  await parts.edit(styles, unused.flatMap((one) => elementsThat(one, ({ name }) => name === "numFmt")).map((one) => withAttributes(text, one, { formatCode: "General" }))); // prettier-ignore
}

const numbersIn = (text: string, pattern: RegExp): Set<number> => new Set([...text.matchAll(pattern)].map(([, number]) => Number(number)));
