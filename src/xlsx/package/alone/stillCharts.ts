import { plainNumber } from "../../../problems/quoted";
import type { EditableParts } from "../parts/EditableParts";
import type { FileValue } from "../cells/CellChange";
import { childNamed, childrenNamed, elementsOf, escapedText, removal, type Element } from "../parts/markup";
import type { Edit } from "../parts/partText";

/** What a chart reads, and what that held, where it is to be had from the cells. */
export interface ChartSource {
  readonly isGone: (formula: string) => boolean;
  /** The values of a range, row by row; undefined for what is no such one. */
  readonly valuesOf: (formula: string) => readonly FileValue[] | undefined;
}

const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/main";
/** A series goes on without its labels, its name and its bars of uncertainty. */
const SPARED: readonly string[] = ["cat", "tx", "errBars"];
const REFERENCES: readonly string[] = ["numRef", "strRef", "multiLvlStrRef"];

/**
 * Writes into a chart the values that it is drawn from where they stand on what goes, as numbers and texts of its own (ECMA-376 Part 1, 21.2.2.102,
 * 21.2.2.201): those of the cells, or else those the chart has kept of them.
 * @returns how many series had neither, and were taken out
 */
export async function stillChart(parts: EditableParts, part: string, source: ChartSource): Promise<number> {
  const text = await parts.text(part);
  const edits: Edit[] = [];
  let without = 0;
  const walk = (element: Element, around: readonly Element[]): boolean => {
    if (element.name === "ext" && readsIn(element, source)) {
      edits.push(removal(element));
      return true;
    }
    if (REFERENCES.includes(element.name) && source.isGone(childNamed(element, "f")?.text ?? "")) {
      const markup = stillMarkup(text, element, around, source);
      if (markup !== undefined) edits.push({ from: element.start, to: element.close.end, text: markup });
      return markup !== undefined;
    }
    const before = edits.length;
    const isWhole = element.children.map((child) => walk(child, [...around, element])).every(Boolean);
    if (isWhole || (element.name !== "ser" && !SPARED.includes(element.name))) return isWhole;
    edits.splice(before);
    edits.push(removal(element));
    if (element.name === "ser") without++;
    return true;
  };
  const root = elementsOf(part, text);
  walk(root, []);
  await parts.edit(part, edits);
  return without;
}

/** What later versions of the format add to a series names cells too. */
const readsIn = (element: Element, source: ChartSource): boolean =>
  ((element.name === "f" || element.name === "sqref") && source.isGone(element.text)) || element.children.some((child) => readsIn(child, source));

function stillMarkup(text: string, reference: Element, around: readonly Element[], source: ChartSource): string | undefined {
  const { prefix } = reference;
  const points = pointsOf(reference, source);
  if (points === undefined) return undefined;
  const [parent, grandparent] = [around.at(-1), around.at(-2)];
  if (parent?.name === "tx") {
    const said = escapedText(points.map(([, value]) => value).join(" "));
    if (grandparent?.name === "ser") return `<${prefix}v>${said}</${prefix}v>`;
    return `<${prefix}rich><a:bodyPr xmlns:a="${DRAWING}"/><a:p xmlns:a="${DRAWING}"><a:r><a:t>${said}</a:t></a:r></a:p></${prefix}rich>`;
  }
  const isNumbers = reference.name === "numRef";
  const format = childNamed(childNamed(reference, "numCache") ?? reference, "formatCode");
  const inside = [
    format === undefined ? "" : text.slice(format.start, format.close.end),
    `<${prefix}ptCount val="${points.count}"/>`,
    ...points.map(([index, value]) => `<${prefix}pt idx="${index}"><${prefix}v>${escapedText(value)}</${prefix}v></${prefix}pt>`),
  ].join("");
  const name = `${prefix}${isNumbers ? "numLit" : "strLit"}`;
  return `<${name}>${inside}</${name}>`;
}

type Points = (readonly [index: number, value: string])[] & { count?: number };

/** Points of numbers hold numbers alone; a blank cell is none. */
function pointsOf(reference: Element, source: ChartSource): (Points & { count: number }) | undefined {
  const isNumbers = reference.name === "numRef";
  const values = reference.name === "multiLvlStrRef" ? undefined : source.valuesOf(childNamed(reference, "f")?.text ?? "");
  if (values !== undefined) {
    const points: Points = values.flatMap((value, index) => {
      const shown = isNumbers ? (typeof value === "number" ? String(value) : "") : textOf(value);
      return shown === "" ? [] : [[index, shown] as const];
    });
    return Object.assign(points, { count: values.length });
  }
  const cache = reference.children.find(({ name }) => name.endsWith("Cache"));
  // Of several lines of labels, the first is the nearest to the axis.
  const held = cache && (reference.name === "multiLvlStrRef" ? childNamed(cache, "lvl") : cache);
  if (held === undefined) return undefined;
  const points: Points = childrenNamed(held, "pt").map((pt) => [Number(pt.attributes.idx ?? 0), childNamed(pt, "v")?.text ?? ""] as const);
  const count = Number(childNamed(cache ?? held, "ptCount")?.attributes.val ?? points.length);
  return Object.assign(points, { count });
}

const textOf = (value: FileValue): string =>
  typeof value === "number" ? plainNumber(value) : typeof value === "object" ? (value?.error ?? "") : String(value).replace(/^(?:true|false)$/, (one) => one.toUpperCase()); // prettier-ignore
