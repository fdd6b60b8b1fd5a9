import { RUN_KINDS, type RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { openRunSheet } from "./openRunSheet";

const usual: RunSheetOptions = { kind: "drying", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 1 };
const sheets: RunSheetOptions[] = [
  ...RUN_KINDS.flatMap((kind) => [1, 3].map((replicates) => ({ ...usual, kind, replicates }))),
  { ...usual, kind: "ashing", replicates: 6, weighIns: 60 },
  { ...usual, kind: "drying", panZeros: true },
  { ...usual, kind: "charring", temperatures: true },
  { ...usual, kind: "ashing", replicates: 3, panZeros: true, temperatures: true },
];

const title = ({ kind, replicates, weighIns, panZeros, temperatures }: RunSheetOptions): string =>
  `${kind}, ${replicates} samples, ${weighIns} weigh-ins${panZeros ? ", pan zeros" : ""}${temperatures ? ", temperatures" : ""}`;

describe("A run sheet just inserted", () => {
  it("works out one thing already: how well one weighing is known, from the readability it was made for", async () => {
    const sheet = await openRunSheet(usual);
    // zero and load each rounded to 0.01 g: sqrt(2 / 12) * 0.01
    expect((await sheet.calculated()).map(({ value }) => value)).toEqual([expect.closeTo(0.00408248, 8)]);
    sheet.close();
  });

  it.each(sheets.map((options) => [title(options), options] as const))(
    "shows no error and no other calculated value: %s",
    async (_, options) => {
      const sheet = await openRunSheet(options);
      expect((await sheet.calculated()).map(({ cell, error }) => [cell, error])).toEqual([[await sheet.cellOf("One weighing, ± (g), k = 1"), ""]]);
      const formulas = (await sheet.workbook.readUsed(sheet.name)).rows.flat().filter(({ formula }) => formula !== "");
      expect(formulas.length).toBeGreaterThan(options.replicates * options.weighIns);
      sheet.close();
    },
    60_000,
  );
});
