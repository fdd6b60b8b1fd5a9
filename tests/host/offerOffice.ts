import type { ExcelHost } from "./ExcelHost";

/**
 * What office.js adds once the Excel client library is there. Office.context is a fixed accessor of the library, hence
 * the derived object.
 */
export function offerOffice(global: Record<string, unknown>, host: ExcelHost): void {
  const requirements = {
    isSetSupported: (set: string, version = "1.1") => set !== "ExcelApi" || minor(version) <= minor(host.book.apiVersion),
  };
  const info = { host: "Excel", platform: "OfficeOnline" };
  global.Office = Object.create(global.Office as object, {
    context: { value: { ...info, requirements, document: host.file.document }, enumerable: true },
    HostType: { value: { Excel: "Excel" }, enumerable: true },
    FileType: { value: { Compressed: "compressed" }, enumerable: true },
    AsyncResultStatus: { value: { Succeeded: "succeeded", Failed: "failed" }, enumerable: true },
    onReady: { value: () => Promise.resolve(info), enumerable: true },
  }) as unknown;
}

const minor = (version: string): number => Number(version.split(".")[1]);
