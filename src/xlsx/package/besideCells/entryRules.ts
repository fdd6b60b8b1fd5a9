import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childrenNamed, elementsOf, readMarkup, removal, type Element, type Tag } from "../parts/markup";
import type { Edit } from "../parts/partText";
import { withoutCells } from "./withoutCells";

/** A rule for entries, with the areas it holds for: "B4:B9 D4". */
export interface EntryRuleInFile {
  /** "list", "decimal", "custom" and others (ECMA-376 Part 1, 18.18.21); "none" for a prompt alone. */
  readonly kind: string;
  readonly areas: readonly string[];
}

const RULES = "dataValidations";

/** Takes a sheet's rules for entries out, prompts, lists and messages with them. @returns what they were */
export async function takeEntryRules(parts: EditableParts, part: string): Promise<readonly EntryRuleInFile[]> {
  const text = await parts.text(part);
  const found: EntryRuleInFile[] = [];
  const edits: Edit[] = [];
  const open: Tag[] = [];
  let areas = "";
  if (text.includes("dataValidation"))
    readMarkup(part, withoutCells(text), {
      open: (tag) => {
        open.push(tag);
        if (tag.name === "dataValidation") {
          areas = attributeOf(tag, "sqref") ?? "";
          // Later versions of the format name the areas in an element.
          found.push({ kind: attributeOf(tag, "type") ?? "none", areas: areas.split(/\s+/).filter((area) => area !== "") });
        }
      },
      text: (said) => {
        const last = found.at(-1);
        if (open.at(-1)?.name === "sqref" && last?.areas.length === 0) found.splice(-1, 1, { ...last, areas: said.trim().split(/\s+/) });
      },
      close: (name, { end }) => {
        const tag = open.pop();
        if (name !== RULES || tag === undefined) return;
        // An extension that held nothing else goes with them: it may not be empty.
        const around = open.at(-1)?.name === "ext" ? open.at(-1) : undefined;
        edits.push({ from: around?.start ?? tag.start, to: around === undefined ? end : text.indexOf(">", end) + 1, text: "" });
      },
    });
  await parts.edit(part, edits);
  await dropEmptyExtensions(parts, part);
  return found;
}

/** A list of extensions without any is not one that the format knows. */
export async function dropEmptyExtensions(parts: EditableParts, part: string): Promise<void> {
  const text = await parts.text(part);
  if (!/<(?:\w+:)?extLst\s*>\s*<\/(?:\w+:)?extLst>/.test(text)) return;
  const empty = (element: Element): Element[] => [
    ...childrenNamed(element, "extLst").filter(({ children }) => children.length === 0),
    ...element.children.filter(({ name }) => name !== "sheetData").flatMap(empty),
  ];
  await parts.edit(part, empty(elementsOf(part, text)).map(removal));
}
