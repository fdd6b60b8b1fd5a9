import JSZip from "jszip";
import { CommandFolder, ran } from "../command/inFolder";

/** The plain copy of a workbook without any stored answer. The file library would not keep names that stand for formulas, so the file stays one. */
export async function plainCopyWithoutAnswers(content: Uint8Array): Promise<Uint8Array> {
  const files = new CommandFolder();
  try {
    const done = await ran("share", files.put("in.xlsx", content), "--as", "plain-cells", "--keep-errors", "-o", files.at("out.xlsx"));
    expect(done).toMatchObject({ code: 0 });
    const zip = await JSZip.loadAsync(files.read("out.xlsx"));
    for (const name of Object.keys(zip.files).filter((one) => one.startsWith("xl/worksheets/sheet"))) {
      const markup = (await zip.file(name)?.async("string")) ?? "";
      const without = (_: string, cell: string, formula: string): string => `${cell.replace(/ t="\w+"/, "")}${formula}`;
      zip.file(name, markup.replace(/(<c [^>]*>)(<f[^>]*>[^<]*<\/f>)<v>[^<]*<\/v>/g, without));
    }
    return await zip.generateAsync({ type: "uint8array" });
  } finally {
    files.remove();
  }
}
