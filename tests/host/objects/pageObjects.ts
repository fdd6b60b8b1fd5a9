import { cellArea, rangeOf, type CellArea } from "../../../src/workbook/cellArea";
import { badArgument, notFound } from "../HostError";
import type { HostObject } from "../HostObject";
import type { ConditionalFormatState, SheetState } from "../SheetState";

const MARGINS = ["LeftMargin", "RightMargin", "TopMargin", "BottomMargin", "HeaderMargin", "FooterMargin"];
const LINES = ["CenterHeader", "LeftFooter", "CenterFooter", "RightFooter"];

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
        parts: { DefaultForAllPages: () => ({ kind: "HeaderFooter", writes: writes(LINES) }) },
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
    RemovePageBreaks: () => void sheet.pageBreaks.splice(0),
    Add: (cell: string) => {
      sheet.pageBreaks.push(cell);
      return { kind: "PageBreak" };
    },
  },
});

/** Looks under a condition, of one range: all that touch it. */
export function conditionalFormatsObject(sheet: SheetState, area: CellArea): HostObject {
  const touching = (): ConditionalFormatState[] => sheet.conditionalFormats.filter(({ range }) => touch(cellArea(range), area));
  return {
    kind: "ConditionalFormatCollection",
    items: () => touching().map((state) => conditionalFormatObject(sheet, state)),
    item: (id: string) => {
      const state = sheet.conditionalFormats.find((one) => idOf(one) === id);
      if (state === undefined) throw notFound(id);
      return conditionalFormatObject(sheet, state);
    },
    methods: {
      Add: (type: string) => {
        if (type !== "Custom") throw badArgument(type);
        const state: ConditionalFormatState = { range: rangeOf(area), look: {} };
        sheet.conditionalFormats.push(state);
        return conditionalFormatObject(sheet, state);
      },
    },
  };
}

function conditionalFormatObject(sheet: SheetState, state: ConditionalFormatState): HostObject {
  const set = (name: string) => (value: unknown) => void (state.look[name] = value);
  const part = (kind: string, name: string, ...properties: string[]): HostObject => ({
    kind,
    writes: Object.fromEntries(properties.map((property) => [property, set(`${name}.${property.toLowerCase()}`)])),
  });
  const format: HostObject = {
    kind: "ConditionalRangeFormat",
    parts: { Fill: () => part("ConditionalRangeFill", "fill", "Color"), Font: () => part("ConditionalRangeFont", "font", "Color", "Bold") },
  };
  const rule: HostObject = {
    kind: "ConditionalFormatRule",
    reads: { Formula: () => state.formula ?? "" },
    writes: { Formula: (formula: string) => (state.formula = formula) },
  };
  const custom: HostObject = { kind: "CustomConditionalFormat", parts: { Rule: () => rule, Format: () => format } };
  const cellValue: HostObject = {
    kind: "CellValueConditionalFormat",
    reads: { Rule: () => state.cellValue },
    writes: { Rule: (written: NonNullable<ConditionalFormatState["cellValue"]>) => (state.cellValue = written) },
  };
  const isCustom = state.cellValue === undefined;
  return {
    kind: "ConditionalFormat",
    identity: () => ({ Id: idOf(state) }),
    reads: { Id: () => idOf(state), Type: () => (isCustom ? "Custom" : "CellValue") },
    parts: {
      CustomOrNullObject: () => (isCustom ? custom : null),
      Custom: () => custom,
      CellValueOrNullObject: () => (isCustom ? null : cellValue),
    },
    methods: {
      GetRanges: () => ({
        kind: "RangeAreas",
        reads: { Address: () => `'${sheet.name}'!${state.range}` },
        methods: { _KeepReference: () => undefined },
      }),
      Delete: () => void sheet.conditionalFormats.splice(sheet.conditionalFormats.indexOf(state), 1),
    },
  };
}

// What the sheet keeps is what a person sees; by which id the client knows it is the host's alone.
const ids = new WeakMap<ConditionalFormatState, string>();
const given = { count: 0 };
function idOf(state: ConditionalFormatState): string {
  const known = ids.get(state) ?? `look ${++given.count}`;
  ids.set(state, known);
  return known;
}

const touch = (one: CellArea | undefined, other: CellArea): boolean =>
  one !== undefined &&
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;
