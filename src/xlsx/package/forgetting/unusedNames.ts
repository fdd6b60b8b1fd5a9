import { tokenize, tokenTypes } from "@borgar/fx";
import type { EditableParts } from "../parts/EditableParts";
import { childNamed, removal } from "../parts/markup";
import { holdsFormulas, mendFormulas } from "../besideCells/mendFormulas";
import { reachable } from "../parts/namedParts";
import { workbookOutline } from "../workbookOutline";

// What a program keeps for itself, such as the printed area.
const OWN = /^_xlnm\./i;

/** Takes defined names out that nothing of the file reads any more: a name may hold what is not to be handed on. */
export async function forgetUnusedNames(parts: EditableParts): Promise<void> {
  const { part, root, names } = await workbookOutline(parts);
  const used = new Set<string>();
  const look = (formula: string): string => {
    for (const { type, value } of tokenize(`=${formula}`))
      if (type === tokenTypes.REF_NAMED || type === tokenTypes.FUNCTION) used.add(value.slice(value.lastIndexOf("!") + 1).toUpperCase());
    return formula;
  };
  for (const one of await reachable(parts)) if (holdsFormulas(one)) await mendFormulas(parts, one, look, (sheet) => sheet);
  const kept = new Set(names.filter(({ name }) => OWN.test(name)));
  for (const { refersTo } of kept) look(refersTo);
  // Names may stand for other names.
  for (let known = -1; known < kept.size;) {
    known = kept.size;
    for (const one of names)
      if (!kept.has(one) && used.has(one.name.toUpperCase())) {
        kept.add(one);
        look(one.refersTo);
      }
  }
  const list = childNamed(root, "definedNames");
  if (list === undefined || kept.size === names.length) return;
  await parts.edit(part, kept.size === 0 ? [removal(list)] : names.filter((one) => !kept.has(one)).map(({ element }) => removal(element)));
}
