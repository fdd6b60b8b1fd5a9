// A request may hold 5 MB on the web; four characters carry three bytes of the file.
const LARGEST_FILE = 3_500_000;

/** "too large" and "no answer" leave it to the caller to hand the file over in another way: Excel may have opened it all the same. */
export type Opening = "opened" | "too large" | "no answer";

/**
 * Opens a workbook file as a new workbook that was never saved (ExcelApi 1.8). The one that is open stays as it is. Fails where a policy of the
 * system forbids it (OfficeDev/office-js issue 3568).
 */
export async function openAsWorkbook(content: Uint8Array): Promise<Opening> {
  if (content.length > LARGEST_FILE) return "too large";
  try {
    await Excel.createWorkbook(base64(content));
    return "opened";
  } catch {
    return "no answer";
  }
}

// So many arguments a call takes.
const BYTES_AT_ONCE = 8190;

/** Pieces of a length that is a multiple of three join to the text of the whole. */
function base64(content: Uint8Array): string {
  let text = "";
  for (let at = 0; at < content.length; at += BYTES_AT_ONCE) text += btoa(String.fromCharCode(...content.subarray(at, at + BYTES_AT_ONCE)));
  return text;
}
