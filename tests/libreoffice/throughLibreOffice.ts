import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { Workbook } from "exceljs";

const EXECUTABLE = process.env.RETORT_SOFFICE;
const FILTER = "xlsx:Calc MS Excel 2007 XML";
const WITHIN_MS = 120_000;

/**
 * The workbook opened and saved again by LibreOffice in a profile of its own. By its defaults LibreOffice keeps the value a
 * formula cell comes with and calculates those that come without.
 */
export async function throughLibreOffice(file: Workbook): Promise<Workbook> {
  if (EXECUTABLE === undefined) throw new Error("These checks need LibreOffice. Run them with npm run check:libreoffice.");
  const folder = mkdtempSync(path.join(tmpdir(), "retort-libreoffice-"));
  try {
    writeFileSync(path.join(folder, "given.xlsx"), new Uint8Array((await file.xlsx.writeBuffer()) as ArrayBuffer));
    const profile = pathToFileURL(path.join(folder, "profile")).href;
    const converted = path.join(folder, "converted");
    execFileSync(
      EXECUTABLE,
      [`-env:UserInstallation=${profile}`, "--headless", "--convert-to", FILTER, "--outdir", converted, path.join(folder, "given.xlsx")],
      { stdio: "ignore", timeout: WITHIN_MS },
    );
    const read = new Workbook();
    await read.xlsx.load(new Uint8Array(readFileSync(path.join(converted, "given.xlsx"))).buffer);
    return read;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
