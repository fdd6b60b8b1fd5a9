import {
  appendTo,
  attributeOf,
  childNamed,
  childrenNamed,
  elementsOf,
  escapedAttribute,
  escapedText,
  withAttributes,
  withoutEnd,
  type Element,
} from "./parts/markup";
import type { Edit } from "./parts/partText";

/** The lists of looks, in the order the format wants them (ECMA-376 Part 1, 18.8.39). */
const ORDER = ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs", "tableStyles", "colors", "extLst"] as const;
type ListName = (typeof ORDER)[number];

/** The first number of a format that is not built in (18.8.30). */
const FIRST_OWN_FORMAT = 164;

// The first two fills are fixed, whatever a file says (18.8.20, as spreadsheets take it).
const FIRST: Readonly<Partial<Record<ListName, readonly string[]>>> = {
  fonts: ['<font><sz val="11"/><name val="Calibri"/><family val="2"/></font>'],
  fills: ['<fill><patternFill patternType="none"/></fill>', '<fill><patternFill patternType="gray125"/></fill>'],
  borders: ["<border><left/><right/><top/><bottom/><diagonal/></border>"],
  cellXfs: ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>'],
};

/** An element as its markup, under another prefix. */
export function markupOf(element: Element, prefix: string): string {
  const attributes = Object.entries(element.attributes).map(([name, value]) => ` ${name}="${escapedAttribute(value)}"`);
  const inside = escapedText(element.text.trim()) + element.children.map((child) => markupOf(child, prefix)).join("");
  const tag = `${prefix}${element.name}`;
  return inside === "" ? `<${tag}${attributes.join("")}/>` : `<${tag}${attributes.join("")}>${inside}</${tag}>`;
}

/** A file's looks, with further ones behind those it has, so that no number of a look changes. Each is added once. */
export class StylesPart {
  readonly root: Element;
  private readonly added = new Map<ListName, { readonly before: number; readonly markup: Map<string, number> }>();
  private readonly formats = new Map<string, number>();
  private nextFormat = FIRST_OWN_FORMAT;

  constructor(
    part: string,
    private readonly text: string,
  ) {
    this.root = elementsOf(part, text);
    for (const format of this.items("numFmts")) {
      const id = Number(attributeOf(format, "numFmtId"));
      this.formats.set(attributeOf(format, "formatCode") ?? "", id);
      this.nextFormat = Math.max(this.nextFormat, id + 1);
    }
  }

  get prefix(): string {
    return this.root.prefix;
  }

  items(list: ListName): readonly Element[] {
    const element = childNamed(this.root, list);
    return element === undefined ? [] : element.children;
  }

  /** @returns the item's place in its list */
  add(list: Exclude<ListName, "numFmts">, markup: string): number {
    const known = this.added.get(list) ?? this.begun(list);
    this.added.set(list, known);
    const place = known.markup.get(markup) ?? known.before + known.markup.size;
    known.markup.set(markup, place);
    return place;
  }

  /** A list that the file lacks begins with what number 0 stands for. */
  private begun(list: ListName): { readonly before: number; readonly markup: Map<string, number> } {
    const before = this.items(list).length;
    const first = before > 0 ? [] : (FIRST[list] ?? []);
    return { before, markup: new Map(first.map((markup, place) => [markup.replace(/<(\/?)/g, `<$1${this.prefix}`), place])) };
  }

  /** @returns the number that cells name the format by */
  format(code: string): number {
    const known = this.formats.get(code);
    if (known !== undefined) return known;
    const id = this.nextFormat++;
    this.formats.set(code, id);
    const list = this.added.get("numFmts") ?? { before: this.items("numFmts").length, markup: new Map<string, number>() };
    this.added.set("numFmts", list);
    list.markup.set(`<${this.prefix}numFmt numFmtId="${id}" formatCode="${escapedAttribute(code)}"/>`, id);
    return id;
  }

  edits(): Edit[] {
    return ORDER.flatMap((name) => {
      const added = this.added.get(name);
      return added === undefined ? [] : this.grown(name, [...added.markup.keys()], added.before);
    });
  }

  private grown(name: ListName, markup: readonly string[], before: number): Edit[] {
    const list = childNamed(this.root, name);
    const count = String(before + markup.length);
    if (list === undefined) {
      const tag = `${this.prefix}${name}`;
      const at = this.placeFor(name);
      const whole = `<${tag} count="${count}">${markup.join("")}</${tag}>`;
      return this.root.isEmpty ? [appendTo(this.text, this.root, whole)] : [{ from: at, to: at, text: whole }];
    }
    const open = withAttributes(this.text, list, { count });
    const inside = markup.join("");
    if (!list.isEmpty) return [open, appendTo(this.text, list, inside)];
    return [{ ...open, text: `${withoutEnd(open.text)}>${inside}</${list.prefix}${name}>` }];
  }

  /** Behind the last of the lists that come before. */
  private placeFor(name: ListName): number {
    const before = ORDER.slice(0, ORDER.indexOf(name)) as readonly string[];
    return this.root.children.filter((child) => before.includes(child.name)).at(-1)?.close.end ?? this.root.end;
  }
}

/** What of a look is to be another one; what is left out stays. Colours are #RRGGBB. */
export interface LookChange {
  /** "General" for none. */
  readonly format?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** Points. */
  readonly size?: number;
  readonly colour?: string;
  /** "" for none. */
  readonly fill?: string;
  readonly border?: Readonly<
    Partial<Record<"left" | "right" | "top" | "bottom", { readonly style: "thin" | "medium" | "dotted"; readonly colour: string } | null>>
  >;
  readonly align?: "left" | "right" | "center" | "general";
  readonly wrap?: boolean;
  readonly indent?: number;
}

/** The number of a look that differs from another one in these things alone. */
export function changedLook(styles: StylesPart, base: number, change: LookChange): number {
  const x = styles.prefix;
  const xf = styles.items("cellXfs")[base];
  const given: Record<string, string> = { numFmtId: "0", fontId: "0", fillId: "0", borderId: "0", ...xf?.attributes };
  if (change.format !== undefined) {
    given.numFmtId = String(change.format === "General" ? 0 : styles.format(change.format));
    given.applyNumberFormat = "1";
  }
  const { bold, italic, size, colour } = change;
  if (bold !== undefined || italic !== undefined || size !== undefined || colour !== undefined) {
    given.fontId = String(styles.add("fonts", changedFont(styles.items("fonts")[Number(given.fontId)], x, change)));
    given.applyFont = "1";
  }
  if (change.fill !== undefined) {
    const solid = `<${x}fill><${x}patternFill patternType="solid"><${x}fgColor rgb="${opaque(change.fill)}"/><${x}bgColor indexed="64"/></${x}patternFill></${x}fill>`;
    given.fillId = change.fill === "" ? "0" : String(styles.add("fills", solid));
    given.applyFill = "1";
  }
  if (change.border !== undefined) {
    given.borderId = String(styles.add("borders", changedBorder(styles.items("borders")[Number(given.borderId)], x, change.border)));
    given.applyBorder = "1";
  }
  const alignment = changedAlignment(xf && childNamed(xf, "alignment"), x, change);
  if (alignment !== undefined) given.applyAlignment = "1";
  const attributes = Object.entries(given).map(([name, value]) => ` ${name}="${escapedAttribute(value)}"`).join(""); // prettier-ignore
  const children = (xf?.children ?? []).map((child) => (child.name === "alignment" && alignment !== undefined ? "" : markupOf(child, x)));
  const inside = (alignment ?? "") + children.join("");
  return styles.add("cellXfs", inside === "" ? `<${x}xf${attributes}/>` : `<${x}xf${attributes}>${inside}</${x}xf>`);
}

const opaque = (colour: string): string => colour.toUpperCase().replace("#", "FF");

/** The order in which a font's properties are written (ECMA-376 Part 1, 18.8.22, as spreadsheets write it). */
const FONT_ORDER = [
  ...["b", "i", "strike", "condense", "extend", "outline", "shadow", "u", "vertAlign"],
  ...["sz", "color", "name", "family", "charset", "scheme"],
];

function changedFont(font: Element | undefined, x: string, { bold, italic, size, colour }: LookChange): string {
  const kept = new Map((font?.children ?? []).map((child) => [child.name, markupOf(child, x)]));
  const set = (name: string, markup: string | undefined): void => void (markup === undefined ? kept.delete(name) : kept.set(name, markup));
  if (bold !== undefined) set("b", bold ? `<${x}b/>` : undefined);
  if (italic !== undefined) set("i", italic ? `<${x}i/>` : undefined);
  if (size !== undefined) set("sz", `<${x}sz val="${size}"/>`);
  if (colour !== undefined) set("color", `<${x}color rgb="${opaque(colour)}"/>`);
  const inOrder = [...kept].sort(([one], [other]) => FONT_ORDER.indexOf(one) - FONT_ORDER.indexOf(other));
  return `<${x}font>${inOrder.map(([, markup]) => markup).join("")}</${x}font>`;
}

const SIDES = ["left", "right", "top", "bottom"] as const;

function changedBorder(border: Element | undefined, x: string, change: NonNullable<LookChange["border"]>): string {
  const sides = SIDES.map((side) => {
    const line = change[side];
    const standing = border && (childNamed(border, side) ?? childNamed(border, side === "left" ? "start" : side === "right" ? "end" : side));
    if (line === undefined) return standing === undefined ? `<${x}${side}/>` : markupOf(standing, x);
    return line === null ? `<${x}${side}/>` : `<${x}${side} style="${line.style}"><${x}color rgb="${opaque(line.colour)}"/></${x}${side}>`;
  });
  const diagonal = border && childrenNamed(border, "diagonal").map((child) => markupOf(child, x));
  return `<${x}border>${sides.join("")}${(diagonal ?? []).join("") || `<${x}diagonal/>`}</${x}border>`;
}

function changedAlignment(alignment: Element | undefined, x: string, { align, wrap, indent }: LookChange): string | undefined {
  if (align === undefined && wrap === undefined && indent === undefined) return undefined;
  const given: Record<string, string | undefined> = { ...alignment?.attributes };
  if (align !== undefined) given.horizontal = align === "general" ? undefined : align;
  if (wrap !== undefined) given.wrapText = wrap ? "1" : undefined;
  if (indent !== undefined) given.indent = indent === 0 ? undefined : String(indent);
  const attributes = Object.entries(given).flatMap(([name, value]) => (value === undefined ? [] : [` ${name}="${escapedAttribute(value)}"`]));
  return `<${x}alignment${attributes.join("")}/>`;
}
