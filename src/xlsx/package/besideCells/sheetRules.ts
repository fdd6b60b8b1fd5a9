import type { RuleReading } from "../../../sharing/plain/reading/RuleReading";
import { storedFormula, typedFormula } from "../../formulas/storedFormula";
import type { EditableParts } from "../parts/EditableParts";
import { dropEmptyExtensions } from "./entryRules";
import { attributeOf, childNamed, childrenNamed, elementsOf, escapedText, removal, withAttributes, type Element } from "../parts/markup";
import type { Edit } from "../parts/partText";
import { withoutCells } from "./withoutCells";

type RuleInFile = Omit<RuleReading, "sheet">;

/** What is to become of a rule: other formulas, as many as before; "out"; undefined where it stays as it is. */
export type RuleChange = (rule: RuleInFile) => readonly string[] | "out" | undefined;

interface Found {
  readonly rule: RuleInFile;
  readonly element: Element;
  readonly formulas: readonly Element[];
  /** What goes with the last of its rules, the smallest first. */
  readonly around: readonly Element[];
  /** What ties a rule to its other half in later versions of the format. */
  readonly id: string | undefined;
}

/**
 * Changes the formulas of a sheet's rules for colouring and for entries, those of later versions of the format among them (ECMA-376 Part 1, 18.3.1.10
 * and 18.3.1.32; [MS-XLSX] 2.6.3), or takes rules out. Everything else of the part stays.
 */
export async function changeSheetRules(parts: EditableParts, part: string, change: RuleChange): Promise<void> {
  const text = await parts.text(part);
  if (!/<(?:\w+:)?(?:conditionalFormatting|dataValidation)[ >]/.test(text)) return;
  const found = rulesIn(elementsOf(part, withoutCells(text)));
  const edits: Edit[] = [];
  const out = new Set<Found>();
  for (const one of found) {
    const now = change(one.rule);
    if (now === "out") out.add(one);
    else if (now !== undefined) one.formulas.forEach((element, place) => edits.push(...rewritten(text, element, now[place] ?? "")));
  }
  const ids = new Set([...out].flatMap(({ id }) => id ?? []));
  for (const one of found) if (one.id !== undefined && ids.has(one.id)) out.add(one);
  await parts.edit(part, [...edits.filter(({ from }) => ![...out].some(({ element }) => from >= element.start && from < element.close.end)), ...goneOf(found, out, text)]); // prettier-ignore
  if (out.size > 0) await dropEmptyExtensions(parts, part);
}

function rulesIn(sheet: Element): Found[] {
  const extensions = childrenNamed(sheet, "extLst").flatMap(({ children }) => children);
  const colouring = [
    ...childrenNamed(sheet, "conditionalFormatting").map((one) => ({ one, around: [one] })),
    ...extensions.flatMap((ext) =>
      childrenNamed(ext, "conditionalFormattings").flatMap((list) =>
        childrenNamed(list, "conditionalFormatting").map((one) => ({ one, around: [one, list, ext] })),
      ),
    ),
  ];
  const entries = [
    ...childrenNamed(sheet, "dataValidations").map((list) => ({ list, around: [list] })),
    ...extensions.flatMap((ext) => childrenNamed(ext, "dataValidations").map((list) => ({ list, around: [list, ext] }))),
  ];
  return [
    ...colouring.flatMap(({ one, around }) => childrenNamed(one, "cfRule").map((rule) => foundRule("colouring", rule, areasOf(one), around))),
    ...entries.flatMap(({ list, around }) => childrenNamed(list, "dataValidation").map((rule) => foundRule("entry", rule, areasOf(rule), around))),
  ];
}

function foundRule(kind: RuleReading["kind"], element: Element, areas: readonly string[], around: readonly Element[]): Found {
  const formulas = formulasIn(element);
  const type = attributeOf(element, "type") ?? "";
  const isList = kind === "entry" && type === "list";
  const says: RuleReading["says"] = SCALES.has(type) || isList ? undefined : COMPARED.has(type) ? "compared" : "holds";
  const rule = {
    kind,
    areas,
    formulas: formulas.map((one) => typedFormula(formulaOf(one))),
    ...(isList && { isList }),
    ...(says && { says }),
  };
  return { rule, element, formulas, around, id: attributeOf(element, "id") ?? idIn(element) };
}

// ECMA-376 Part 1, 18.18.12 and 18.18.21: the kinds whose formulas are not what the rule asks.
const SCALES: ReadonlySet<string> = new Set(["colorScale", "dataBar", "iconSet"]);
const COMPARED: ReadonlySet<string> = new Set(["cellIs", "whole", "decimal", "date", "time", "textLength"]);

/** Later versions of the format name the areas in an element. */
const areasOf = (element: Element): string[] =>
  (attributeOf(element, "sqref") ?? childNamed(element, "sqref")?.text ?? "").split(/\s+/).filter((area) => area !== "");

const FORMULA = /^(f|formula|formula1|formula2)$/;

/** The elements that hold a formula: those for one, and the bounds of scales, bars and icons, which hold it in an attribute. */
function formulasIn(element: Element): Element[] {
  return element.children.flatMap((child) => {
    if (FORMULA.test(child.name) && child.children.length === 0) return child.text.trim() === "" ? [] : [child];
    if (child.name === "cfvo" && child.children.length === 0) return isFormulaBound(child) ? [child] : [];
    return formulasIn(child);
  });
}

const isFormulaBound = (bound: Element): boolean => !/^-?[\d.]*(?:E[+-]?\d+)?$/i.test(attributeOf(bound, "val") ?? "");

const formulaOf = (element: Element): string => (element.name === "cfvo" ? (attributeOf(element, "val") ?? "") : element.text);

function rewritten(text: string, element: Element, formula: string): Edit[] {
  const stored = storedFormula(formula);
  if (stored === formulaOf(element)) return [];
  return [
    element.name === "cfvo"
      ? withAttributes(text, element, { val: stored })
      : { from: element.end, to: element.close.start, text: escapedText(stored) },
  ];
}

const idIn = (element: Element): string | undefined => element.children.map((child) => (child.name === "id" && child.text !== "" ? child.text : idIn(child))).find((id) => id !== undefined); // prettier-ignore

/** A list of rules goes with the last of them; one that stays says how many it has. */
function goneOf(found: readonly Found[], out: ReadonlySet<Found>, text: string): Edit[] {
  const left = new Map<Element, number>();
  for (const one of found) for (const list of one.around) left.set(list, (left.get(list) ?? 0) + (out.has(one) ? 0 : 1));
  const gone = new Set([...out].map((one) => [...one.around].reverse().find((list) => left.get(list) === 0) ?? one.element));
  const lists = new Set([...out].flatMap(({ around }) => around).filter((list) => list.attributes.count !== undefined && left.get(list) !== 0));
  return [...[...gone].map(removal), ...[...lists].map((list) => withAttributes(text, list, { count: String(left.get(list)) }))];
}
