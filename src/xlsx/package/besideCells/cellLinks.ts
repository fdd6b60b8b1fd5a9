import type { Tag } from "../parts/markup";

/**
 * Attributes that name cells: of shapes and pictures that show what a cell holds (ECMA-376 Part 1, 20.5.2.29; [MS-ODRAWXML], camera tool), and of
 * controls that read or write one (ECMA-376 Part 1, 18.3.1.20; [MS-XLSX], form control properties).
 */
const LINKS: ReadonlySet<string> = new Set([
  "textlink",
  "cellRange",
  "fmlaLink",
  "fmlaRange",
  "fmlaGroup",
  "fmlaTxbx",
  "linkedCell",
  "listFillRange",
]);

/** The names of a tag's attributes that name cells. */
export const cellLinks = ({ attributes }: Pick<Tag, "attributes">): string[] =>
  Object.keys(attributes).filter((name) => LINKS.has(name) && attributes[name] !== "");

/** The same in shapes of the older kind (ECMA-376 Part 4, 19.4.2): their prefix and name, and what they name. */
export const FORMULAS_OF_SHAPES = /<(x:)?(FmlaLink|FmlaRange|FmlaGroup|FmlaTxbx|FmlaPict)>([^<]*)<\/\1?\2>/g;
