import type ExcelJs from "exceljs";

/** The .xlsx library. Its build for pages and its build for Node hand themselves over in different ways. */
export async function fileLibrary(): Promise<typeof ExcelJs> {
  const library = (await import("exceljs")) as unknown as { default?: typeof ExcelJs } & typeof ExcelJs;
  return library.default ?? library;
}
