// Answers that fill other cells after sharing than they did, calculated anew by two independent spreadsheets: each cell is what the functions give, blank
// where they fill nothing, or says that it is fixed.
import JSZip from "jszip";
import { DAY } from "../command/inFolder";
import { oddBook, type OddCell } from "../sharing/odd/oddBook";
import { plainCopyWithoutAnswers } from "./plainCopy";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(300_000);

const FIXED = `fixed on ${DAY}: inputs changed`;
const WET = "_xldudf_RETORT_MOISTURE_WET(A1:A4,B1:B4,C1:C4)";
const PROXIMATE = "_xldudf_RETORT_PROXIMATE(25,35,31.5,28,25.2)";
/** (wet - dry) / (wet - vessel) of the rows below. */
const WETS = [3.5 / 10, 6 / 11, 4 / 12, 3.5 / 10];

const spilling = (cell: string, formula: string, fills: string, value: string | number): OddCell => ({
  xml: `<c r="${cell}" cm="1"${typeof value === "string" ? ' t="str"' : ""}><f t="array" ref="${fills}">${formula.replaceAll('"', "&quot;").replaceAll("<", "&lt;").replaceAll(">", "&gt;")}</f><v>${value}</v></c>`,
});

const cells: Record<string, OddCell> = {
  ...{ A1: 25, B1: 35, C1: 31.5, A2: 25, B2: 36, C2: 30, A3: 25, B3: 37, C3: 33, A4: 24, B4: 34, C4: 30.5, D1: 1 },
  E1: spilling("E1", `IF(D1=1,"",${WET})`, "E1", ""),
  F1: spilling("F1", `IF(D1=1,${WET},0.3)`, "F1:F4", 0.35),
  ...Object.fromEntries(WETS.slice(1).map((wet, index) => [`F${index + 2}`, wet])),
  G1: spilling("G1", `IF(D1=1,"",${WET})`, "G1", ""),
  H1: spilling("H1", `IF(D1=1,"",${PROXIMATE})`, "H1", ""),
  A10: { formula: "SUM(E1:E4)", value: 0 },
  A11: { formula: "SUM(F1:F4)", value: 0.35 + 6 / 11 + 1 / 3 + 0.35 },
  A12: { formula: 'IF(COUNT(F1:F4)=4,"all four done","some missing")', value: "all four done" },
  A13: { formula: 'IF(G2>0.3,"moist","in order")', value: "in order" },
  A14: { formula: "G3*100", value: 0 },
  A15: { formula: "SUM(I2:I6)", value: 0 },
};

async function withCell(content: Uint8Array, cell: string, value: number): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync(content);
  const part = "xl/worksheets/sheet1.xml";
  const markup = (await zip.file(part)?.async("string")) ?? "";
  zip.file(part, markup.replace(new RegExp(`<c r="${cell}"[^>]*>.*?</c>`), `<c r="${cell}"><v>${value}</v></c>`));
  return zip.generateAsync({ type: "uint8array" });
}

const near = (wanted: number): unknown => expect.closeTo(wanted, 11);

test.each(PROGRAMS)("%s fills what an answer comes to fill, leaves blank what it leaves, and else says that it is fixed", async (program) => {
  const plain = await plainCopyWithoutAnswers(oddBook({ sheets: [{ name: "Tray", cells }] }));
  const shown = async (content: Uint8Array): Promise<(...of: readonly string[]) => unknown[]> => {
    const sheet = (await recalculatedBy(program, content)).getWorksheet("Tray");
    return (...of) => of.map((cell) => sheet?.getCell(cell).result ?? sheet?.getCell(cell).value ?? null);
  };
  const before = await shown(plain);
  expect(before("F1", "F2", "F3", "F4", "A10", "A11", "A12", "A13", "A14", "A15")).toEqual(
    [...WETS.map(near), 0, near(0.35 + 6 / 11 + 1 / 3 + 0.35), "all four done", "in order", 0, 0], // prettier-ignore
  );
  const after = await shown(await withCell(plain, "D1", 2));
  expect(after("E1", "E2", "E3", "E4", "A10")).toEqual([...WETS.map(near), near(0.35 + 6 / 11 + 1 / 3 + 0.35)]);
  expect(after("F1", "A11", "A12")).toEqual([near(0.3), near(0.3), "some missing"]);
  expect(after("F2", "F3", "F4").map((value) => (value === null || value === "" ? "blank" : value))).toEqual(["blank", "blank", "blank"]);
  expect(after("G1", "A13", "A14")).toEqual([FIXED, FIXED, FIXED]);
  expect(after("H2", "I2", "A15")).toEqual(["Moisture", near(0.35), near(2)]);
});
