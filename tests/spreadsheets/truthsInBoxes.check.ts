// A truth in a box of a filled run sheet in plain cells: the answer is withheld, the head names that box, and nothing accuses another.
import JSZip from "jszip";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { filledRuns } from "./filledRuns";
import { plainCopyWithoutAnswers } from "./plainCopy";
import { recalculatedBy } from "./recalculated";

jest.setTimeout(900_000);

const RUN = "charring run of one sample";
/** An empty vessel, a weight while drying and after a firing, a clock time, degrees, minutes held, the vessel at the end, and two settings. */
const BOXES = ["C11", "C14", "C26", "B13", "D22", "E21", "C30", "B67", "B70"] as const;

/** The truth with the format of its box, of which LibreOffice makes a formula that shows 1, and without, as typed there. */
const AS = [(look: string) => look, () => ""] as const;

async function planted(copy: Uint8Array, box: string, as: (look: string) => string): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync(copy);
  const sheets = Object.keys(zip.files).filter((one) => one.startsWith("xl/worksheets/sheet"));
  const read = await Promise.all(sheets.map(async (one) => [one, (await zip.file(one)?.async("string")) ?? ""] as const));
  // The sheet with cells that stands before those of its record and workings.
  const [name, markup] = read.find(([, text]) => text.includes("<f>")) ?? ["", ""];
  const cell = new RegExp(`<c r="${box}"( s="\\d+")?[^>]*>.*?</c>`, "s");
  expect(markup).toMatch(cell);
  zip.file(
    name,
    markup.replace(cell, (_, look = "") => `<c r="${box}"${as(String(look))} t="b"><v>1</v></c>`),
  );
  return zip.generateAsync({ type: "uint8array" });
}

test("LibreOffice withholds the answer for a truth in any box, and names the box", async () => {
  const sheet = await filledRuns[RUN]?.();
  if (sheet === undefined) throw new Error(RUN);
  const { name } = sheet;
  const saved = new Uint8Array((await saveXlsx(sheet.engine)).buffer);
  sheet.close();
  const copy = await plainCopyWithoutAnswers(saved);
  const found: (readonly unknown[])[] = [];
  for (const [index, box] of BOXES.entries()) {
    const back = (await recalculatedBy("LibreOffice", await planted(copy, box, AS[index % 2] ?? AS[0]))).getWorksheet(name);
    const head = [2, 3].map((row) => back?.getCell(row, 1).result as unknown);
    const accused: string[] = [];
    back?.eachRow((row, number) => {
      const says = row.getCell(3).result as unknown;
      if (number > 40 && typeof says === "string" && says.startsWith("▲")) accused.push(says.slice(2, 2 + box.length));
    });
    found.push([box, head[0], String(head[1]).includes(`${box} holds TRUE or FALSE`), accused]);
  }
  expect(found).toEqual(BOXES.map((box) => [box, expect.stringMatching(/^▲ Answer withheld/), true, [box]]));
});
