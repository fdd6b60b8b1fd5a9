// Names that are longer than their boxes ask for: the answer keeps its verdict, and what is printed keeps the name. The runs are invented.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import { SAMPLE_KINDS } from "../../../src/runsheet/options/RunSheetOptions";
import { plannedStyle } from "../../../src/xlsx/planned/plannedStyle";
import { plainRun, USUAL, type PlainRun } from "../plainRun";

// 63 letters.
const LONG = "prunings of the old plum trees at the south wall, winter of 2026";

function charring(grams: readonly number[], replicates = 1): PlainRun {
  const run = plainRun({ kind: "charring", replicates });
  run.type(run.sheet.setup.material, LONG);
  for (const sample of run.sheet.samples) {
    run.vessel(25, sample);
    run.weigh([65.2, 55.31, 51.21, 51.21], sample);
    run.fire("charring", grams, sample);
  }
  return run;
}

test("a material of 63 letters leaves the answer its verdict", () => {
  expect(charring([33, 32.9]).head()[1]).toBe(
    "At least 69.9 % of the dry prunings of the old plu… has left as vapour so far; charring is not shown finished.",
  );
  expect(charring([33, 32.54, 32.54]).head()[1]).toMatch(/of the dry prunings of the old plu… left as vapour; [\d.]+ % stayed\. 1 sample\.$/);
});

test("one of 24 letters, as many as its box asks for, stands whole", () => {
  const run = charring([33, 32.54, 32.54]);
  run.type(run.sheet.setup.material, "prunings of old plum tre");
  expect(run.head()[1]).toMatch(/of the dry prunings of old plum tre left as vapour/);
});

test("names of different samples are shortened where they share a line", () => {
  const run = charring([33, 32.54, 32.54], 3);
  run.type(run.sheet.setup.samplesAre, "different");
  run.type(run.sheet.setup.name(1), "tin with dent and lid");
  run.type(run.sheet.setup.name(2), "Bartholomew");
  expect(run.head()[1]).toMatch(/when dry: tin with de… 71\.2 %, Bartholomew 71\.2 %, 3 71\.2 %; weighing/);
});

test.each(SAMPLE_KINDS)("on a sheet of %s a name too wide for its box is printed smaller, and minutes held keep their decimals", (kind) => {
  const { sheet } = plainRun({ kind, replicates: 3 });
  const { cells } = buildRunSheet({ ...USUAL, kind, replicates: 3 });
  const looks = cells
    .filter(({ cell }) => sheet.samples.some((sample) => placeOf(sheet.setup.name(sample)).replaceAll("$", "") === cell))
    .map(plannedStyle);
  expect(looks.map(({ alignment }) => alignment?.shrinkToFit)).toEqual([true, true, true]);
  for (const table of sheet.fired) {
    const held = placeOf(table.fire(table.rows.fire.first).held);
    expect(cells.find(({ cell }) => cell === held)?.format).toBe("General");
  }
});
