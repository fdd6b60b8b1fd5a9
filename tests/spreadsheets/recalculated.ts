import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { Workbook } from "exceljs";
import JSZip from "jszip";

/** The two judges: independent spreadsheets with engines of their own. */
export const PROGRAMS = ["LibreOffice", "Gnumeric"] as const;
export type Program = (typeof PROGRAMS)[number];

const EXECUTABLES: Readonly<Record<Program, string | undefined>> = {
  LibreOffice: process.env.RETORT_SOFFICE,
  Gnumeric: process.env.RETORT_SSCONVERT,
};
const FILTER = "xlsx:Calc MS Excel 2007 XML";
const WITHIN_MS = 800_000;

/**
 * The workbook opened, calculated and saved again by another program, LibreOffice in a profile of its own. By its defaults LibreOffice keeps
 * the value a formula cell comes with and calculates those that come without; Gnumeric calculates all.
 */
export async function recalculatedBy(program: Program, file: Workbook | Uint8Array): Promise<Workbook> {
  const executable = EXECUTABLES[program];
  if (executable === undefined) throw new Error(`These checks need ${program}. Run them with npm run check:spreadsheets.`);
  const folder = mkdtempSync(path.join(tmpdir(), "retort-spreadsheets-"));
  const [given, converted] = [path.join(folder, "given.xlsx"), path.join(folder, "converted")];
  try {
    writeFileSync(given, file instanceof Uint8Array ? file : new Uint8Array((await file.xlsx.writeBuffer()) as ArrayBuffer));
    const call = program === "LibreOffice" ? libreOffice(folder, given, converted) : ["--recalc", given, `${converted}.xlsx`];
    execFileSync(executable, call, { stdio: "ignore", timeout: WITHIN_MS });
    const read = new Workbook();
    const bytes = readFileSync(program === "LibreOffice" ? path.join(converted, "given.xlsx") : `${converted}.xlsx`);
    await read.xlsx.load(program === "LibreOffice" ? new Uint8Array(bytes).buffer : await withOwnTexts(bytes));
    return read;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const libreOffice = (folder: string, given: string, converted: string): string[] => [
  `-env:UserInstallation=${pathToFileURL(path.join(folder, "profile")).href}`,
  ...["--headless", "--convert-to", FILTER, "--outdir", converted, given],
];

/** Gnumeric keeps the text that a formula gives among the shared ones, where the file library does not look for it. */
async function withOwnTexts(bytes: Uint8Array): Promise<ArrayBuffer> {
  const zip = await JSZip.loadAsync(bytes);
  const shared = (await zip.file("xl/sharedStrings.xml")?.async("string")) ?? "";
  const texts = [...shared.matchAll(/<si>(.*?)<\/si>/gs)].map(([, inside = ""]) =>
    [...inside.matchAll(/<t[^>]*>([^<]*)<\/t>/g)].map(([, text = ""]) => text).join(""),
  );
  for (const name of Object.keys(zip.files).filter((one) => one.startsWith("xl/worksheets/sheet"))) {
    const xml = (await zip.file(name)?.async("string")) ?? "";
    zip.file(
      name,
      xml.replace(
        /(<c [^>]*)t="s"([^>]*>\s*<f[^>]*>[^<]*<\/f>\s*<v>)(\d+)(<\/v>)/g,
        (_, start: string, middle: string, index: string, end: string) => `${start}t="str"${middle}${texts[Number(index)] ?? ""}${end}`,
      ),
    );
  }
  return zip.generateAsync({ type: "arraybuffer" });
}

/** The same by LibreOffice alone. */
export const throughLibreOffice = (file: Workbook): Promise<Workbook> => recalculatedBy("LibreOffice", file);
