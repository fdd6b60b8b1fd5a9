import { badArgument } from "../HostError";
import type { HostObject } from "../HostObject";
import type { SheetState } from "../SheetState";

const MARGINS = ["LeftMargin", "RightMargin", "TopMargin", "BottomMargin", "HeaderMargin", "FooterMargin"];
const FOOTERS = ["LeftFooter", "CenterFooter", "RightFooter"];

/** The printed page of a sheet. What was set is kept under the client's own names. */
export function pageLayoutObject(sheet: SheetState): HostObject {
  const set = (name: string) => (value: unknown) => void (sheet.page[name.charAt(0).toLowerCase() + name.slice(1)] = value);
  const writes = (names: readonly string[]) => Object.fromEntries(names.map((name) => [name, set(name)]));
  return {
    kind: "PageLayout",
    writes: writes(["Orientation", "Zoom", "CenterHorizontally", ...MARGINS]),
    parts: {
      HeadersFooters: () => ({
        kind: "HeaderFooterGroup",
        parts: { DefaultForAllPages: () => ({ kind: "HeaderFooter", writes: writes(FOOTERS) }) },
      }),
    },
    methods: {
      SetPrintArea: (range: string) => void (sheet.page.printArea = range),
      SetPrintTitleRows: (rows: string) => {
        if (!/^\$\d+:\$\d+$/.test(rows)) throw badArgument(rows);
        sheet.page.printTitleRows = rows;
      },
    },
  };
}

export const pageBreaksObject = (sheet: SheetState): HostObject => ({
  kind: "PageBreakCollection",
  methods: {
    Add: (cell: string) => {
      sheet.pageBreaks.push(cell);
      return { kind: "PageBreak" };
    },
  },
});

/** Looks under a condition, of one range. */
export function conditionalFormatsObject(sheet: SheetState, range: string): HostObject {
  return {
    kind: "ConditionalFormatCollection",
    methods: {
      Add: (type: string) => {
        if (type !== "Custom") throw badArgument(type);
        const state: SheetState["conditionalFormats"][number] = { range, look: {} };
        sheet.conditionalFormats.push(state);
        const set = (name: string) => (value: unknown) => void (state.look[name] = value);
        const part = (kind: string, name: string, ...properties: string[]): HostObject => ({
          kind,
          writes: Object.fromEntries(properties.map((property) => [property, set(`${name}.${property.toLowerCase()}`)])),
        });
        const format: HostObject = {
          kind: "ConditionalRangeFormat",
          parts: { Fill: () => part("ConditionalRangeFill", "fill", "Color"), Font: () => part("ConditionalRangeFont", "font", "Color", "Bold") },
        };
        const custom: HostObject = {
          kind: "CustomConditionalFormat",
          parts: {
            Rule: () => ({ kind: "ConditionalFormatRule", writes: { Formula: (formula: string) => (state.formula = formula) } }),
            Format: () => format,
          },
        };
        return {
          kind: "ConditionalFormat",
          identity: () => ({ Id: String(sheet.conditionalFormats.length) }),
          parts: { CustomOrNullObject: () => custom, Custom: () => custom },
        };
      },
    },
  };
}
