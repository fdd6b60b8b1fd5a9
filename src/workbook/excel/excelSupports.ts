/** Versions of the ExcelApi requirement set above the manifest's floor that something here uses when it can. */
export type ExcelApiVersion = "1.9" | "1.12" | "1.20";

/** True when this Excel has the version; what needs it is left out where it is missing. */
export const excelSupports = (version: ExcelApiVersion): boolean => Office.context.requirements.isSetSupported("ExcelApi", version);
