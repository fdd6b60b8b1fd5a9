// A book with a sheet whose name Excel and LibreOffice forbid, as other programs write it, opens once it is shared.
import { oddBook } from "../sharing/odd/oddBook";
import { plainCopyWithoutAnswers } from "./plainCopy";
import { recalculatedBy } from "./recalculated";

jest.setTimeout(300_000);

const dried = { formula: "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)", value: 0.35 };
const cells = { A1: 25, B1: 35, C1: 31.5, D1: dried };

test.each(["It's (a) [b]", "dry/char"])("LibreOffice opens the copy of a book with a sheet %s", async (name) => {
  const copy = await plainCopyWithoutAnswers(oddBook({ sheets: [{ name: "Tray", cells }, { name, cells }] })); // prettier-ignore
  const back = await recalculatedBy("LibreOffice", copy);
  expect(back.getWorksheet("Tray")?.getCell("D1").result).toBeCloseTo(0.35, 11);
});
