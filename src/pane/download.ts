const FILE_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands a workbook file to the browser to put where it puts downloads. */
export function download(fileName: string, content: Uint8Array<ArrayBuffer>): void {
  const address = URL.createObjectURL(new Blob([content], { type: FILE_TYPE }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  URL.revokeObjectURL(address);
}
