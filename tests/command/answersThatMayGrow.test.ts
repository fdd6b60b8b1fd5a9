import { rulesLines, sizedCells } from "../../src/command/words/shareWords";
import { WHY_FIXED } from "../../src/problems/sharing/plainCellProblems";
import { plainBanner, plainBannerBeside, takenOutStale } from "../../src/problems/sharing/sharedCopyWords";
import { readBook } from "../../src/command/book/Book";
import { oddBook, type OddCell } from "../sharing/odd/oddBook";
import { CommandFolder, DAY, ran } from "./inFolder";

jest.setTimeout(60_000);

const WET = "_xldudf_RETORT_MOISTURE_WET(A1:A4,B1:B4,C1:C4)";
const weighed = Object.fromEntries([1, 2, 3, 4].flatMap((row) => [[`A${row}`, 25], [`B${row}`, 35 + row], [`C${row}`, 31]])); // prettier-ignore
const cells: Record<string, OddCell> = {
  ...weighed,
  D1: 1,
  E1: { xml: `<c r="E1" cm="1"><f t="array" ref="E1">IF(D1=1,0.3,${WET})</f><v>0.3</v></c>` },
  G1: { xml: `<c r="G1" cm="1"><f t="array" ref="G1">IF(D1=1,0.3,${WET})</f><v>0.3</v></c>` },
  H1: { formula: "G2*100", value: 0 },
};

test("the report, its JSON and the banner tell of answers that may come to fill other cells; the banner takes none of their cells", async () => {
  const files = new CommandFolder();
  const book = files.put("in.xlsx", oddBook({ sheets: [{ name: "Tray", cells }] }));
  const said = await ran("share", book, "--as", "plain-cells", "-o", files.at("out.xlsx"));
  expect(said).toMatchObject({ code: 0, answer: expect.stringContaining(sizedCells(["Tray!G1"]).join("\n")) as string });
  const json = await ran("share", book, "--as", "plain-cells", "--json", "--overwrite", "-o", files.at("out.xlsx"));
  expect(JSON.parse(json.answer)).toMatchObject({ keepingSize: ["Tray!G1"], fixed: [] });
  const held = (await readBook(files.read("out.xlsx"))).sheets[0]?.cells ?? [];
  expect(held.filter(({ value }) => value === plainBanner(DAY, 0, 1))).toHaveLength(1);
  expect(held.find(({ cell }) => cell === "E1")).toMatchObject({ fills: "E1:E4", spills: false });
  files.remove();
});

test("what is said of sizes and guarded rules", () => {
  expect(plainBanner(DAY, 1, 2)).toBe(`Plain cells of ${DAY}; lives without Retort; 1 cell fixed, 2 more once the size of an answer changes`);
  expect(plainBannerBeside("Drying", DAY, 0, 1)).toBe(`Drying: plain cells of ${DAY}, none fixed, 1 with their size`);
  expect(sizedCells([])).toEqual([]);
  expect(sizedCells(["T!A1"])).toEqual([
    "1 answer may come to fill other cells and is fixed from then on, with all that is calculated from it:",
    "  T!A1",
  ]);
  expect(sizedCells(["T!A1", "T!B1"])[0]).toBe(
    "2 answers may come to fill other cells and are fixed from then on, with all that is calculated from them:",
  );
  expect(rulesLines({ rewritten: 0, guarded: 1, takenOut: [{ what: "entry", where: "T!C1", why: WHY_FIXED.ruleStale }] })).toEqual([
    "1 rule for colouring or entries holds for nothing once a cell that it reads is fixed",
    "1 reads a cell that may come to be fixed and was taken out:",
    `  T!C1 (checks entries): ${WHY_FIXED.ruleStale}`,
  ]);
  expect(takenOutStale([])).toBe("");
  expect(takenOutStale(["T!C1 (checks entries)"])).toBe(
    "Taken out, because it compares entries with a cell that may come to be fixed: T!C1 (checks entries).",
  );
});
