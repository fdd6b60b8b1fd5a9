import type ExcelJs from "exceljs";

// What the library has and its types leave out.
declare module "exceljs" {
  interface Worksheet {
    readonly conditionalFormattings?: readonly ConditionalFormattingOptions[];
    readonly dataValidations: { readonly model: Readonly<Record<string, DataValidation>>; add(range: string, rule: DataValidation): void };
  }
  /** A formula that fills an area. */
  interface CellFormulaValue {
    readonly shareType?: "array";
    readonly ref?: string;
  }
  interface CellModel {
    readonly shareType?: string;
    readonly ref?: string;
  }
}

/** The .xlsx library. Its build for pages and its build for Node hand themselves over in different ways. */
export async function fileLibrary(): Promise<typeof ExcelJs> {
  const library: typeof ExcelJs & { readonly default?: typeof ExcelJs } = await import("exceljs");
  return library.default ?? library;
}
