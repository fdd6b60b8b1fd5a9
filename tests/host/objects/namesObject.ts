import { badArgument, HostError, unmodelled } from "../HostError";
import type { HostObject } from "../HostObject";
import type { SheetState } from "../SheetState";

const TEXT = /^="((?:[^"]|"")*)"$/;

/** The names that belong to the workbook or to one sheet. Only names of a text can be added. */
export function namesObject(sheet: Pick<SheetState, "names">): HostObject {
  const item = (name: string): HostObject => {
    const named = sheet.names.get(name);
    if (named === undefined) throw new HostError("ItemNotFound", `no name ${name}`);
    return {
      kind: "NamedItem",
      reads: { Name: () => name, Formula: () => named.formula, Value: () => (TEXT.exec(named.formula)?.[1] ?? "").replaceAll('""', '"') },
      writes: { Visible: (visible: boolean) => (named.visible = visible) },
      methods: { Delete: () => void sheet.names.delete(name) },
    };
  };
  return {
    kind: "NamedItemCollection",
    items: () => [...sheet.names.keys()].map(item),
    item,
    methods: {
      Add: (name: string, formula: unknown) => {
        if (typeof formula !== "string" || !TEXT.test(formula)) throw unmodelled("a name of anything but a text");
        if (sheet.names.has(name)) throw new HostError("ItemAlreadyExists", `the name ${name} is taken`);
        if (!/^[A-Z_]\w*$/i.test(name)) throw badArgument(name);
        sheet.names.set(name, { formula, visible: true });
        return item(name);
      },
      GetItemOrNullObject: (name: string) => (sheet.names.has(name) ? item(name) : null),
    },
  };
}
