import type { EditableParts } from "./EditableParts";
import { elementsOf, removal, type Element } from "./markup";

const ANCHORS: readonly string[] = ["twoCellAnchor", "oneCellAnchor", "absoluteAnchor"];

/** An anchor, or what chooses between anchors by what a program knows. */
const anchorIn = (element: Element): boolean => ANCHORS.includes(element.name) || (element.name === "AlternateContent" && element.children.some((one) => one.children.some(anchorIn))); // prettier-ignore

/** Takes those things out of a drawing, each with its place, in which there is such an element. */
export async function takeAnchors(parts: EditableParts, drawing: string, isSo: (element: Element) => boolean): Promise<void> {
  const holds = (element: Element): boolean => isSo(element) || element.children.some(holds);
  const { children } = elementsOf(drawing, await parts.text(drawing));
  await parts.edit(drawing, children.filter((one) => anchorIn(one) && holds(one)).map(removal)); // prettier-ignore
}
