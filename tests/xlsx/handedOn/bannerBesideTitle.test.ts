import { readBook } from "../../../src/command/book/Book";
import { plainBanner, plainBannerBeside } from "../../../src/problems/sharing/sharedCopyWords";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { RUN_KINDS } from "../../../src/runsheet/options/RunSheetOptions";
import { kindWords } from "../../../src/runsheet/words/kindWords";
import { plainFile } from "../../../src/xlsx/handedOn/plainFile";
import { newFileOf } from "../../../src/xlsx/planned/addPlanned";

jest.setTimeout(120_000);

const DATE = "2027-01-15";

test("says both in one cell", () => {
  expect(plainBannerBeside("Drying", DATE, 0)).toBe("Drying: plain cells of 2027-01-15, none fixed");
  expect(plainBannerBeside("Drying", DATE, 12)).toBe("Drying: plain cells of 2027-01-15, 12 fixed");
});

test.each(RUN_KINDS)(
  "a run sheet of the kind %s keeps its title where it stands in plain cells, in no more room than a banner takes",
  async (kind) => {
    const options = { kind, weighIns: 6, intervalMinutes: 20, readability: 0.01, vessel: "", replicates: 1 };
    const content = await newFileOf([buildRunSheet(options)], { calculateOnOpening: false });
    const sheets = (await readBook(content)).sheets.map(({ reading }) => reading);
    const { reading } = (await readBook((await plainFile(content, { sheets, date: DATE })).content)).sheets[0] ?? {};
    const said = String(reading?.rows.flat().find(({ cell }) => cell === "A1")?.value);
    expect(said).toMatch(new RegExp(`^${kindWords[kind].title}: plain cells of ${DATE}, (?:none|\\d+) fixed$`));
    expect(said.length).toBeLessThanOrEqual(plainBanner(DATE, 12).length);
  },
);
