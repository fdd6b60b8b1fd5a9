import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import JSZip from "jszip";
import { readPdf, type PrintedPage } from "../pdf/readPdf";

/** Sizes of paper by their codes in a file (ECMA-376 Part 1, 18.3.1.63). */
export const PAPERS = { A4: 9, Letter: 1 } as const;
export type Paper = keyof typeof PAPERS;

const WITHIN_MS = 200_000;

/** What LibreOffice prints of each file, all in one start of it and in a profile of its own. */
export async function printed(files: ReadonlyMap<string, Uint8Array>): Promise<ReadonlyMap<string, readonly PrintedPage[]>> {
  const executable = process.env.RETORT_SOFFICE;
  if (executable === undefined) throw new Error("These checks need LibreOffice. Run them with npm run check:spreadsheets.");
  const folder = mkdtempSync(path.join(tmpdir(), "retort-printed-"));
  try {
    const names = [...files.keys()];
    for (const [index, name] of names.entries()) writeFileSync(path.join(folder, `${index}.xlsx`), files.get(name) ?? new Uint8Array());
    execFileSync(
      executable,
      [
        `-env:UserInstallation=${pathToFileURL(path.join(folder, "profile")).href}`,
        ...["--headless", "--convert-to", "pdf", "--outdir", folder, ...names.map((_, index) => path.join(folder, `${index}.xlsx`))],
      ],
      { stdio: "ignore", timeout: WITHIN_MS },
    );
    return new Map(names.map((name, index) => [name, readPdf(readFileSync(path.join(folder, `${index}.pdf`)))]));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The same workbook for a printer with that paper; a run sheet leaves the size to its reader. */
export async function onPaper(file: Uint8Array, paper: Paper): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync(file);
  const sheets = Object.keys(zip.files).filter((name) => /^xl\/worksheets\/sheet\d+\.xml$/.test(name));
  for (const name of sheets) {
    const xml = (await zip.file(name)?.async("string")) ?? "";
    zip.file(name, xml.replace(/<pageSetup /, `<pageSetup paperSize="${PAPERS[paper]}" `));
  }
  return zip.generateAsync({ type: "uint8array" });
}
