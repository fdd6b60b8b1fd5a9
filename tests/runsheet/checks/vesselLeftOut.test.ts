// Samples that cannot be judged, one vessel left out among others or another gap: nothing is told of all of them then, and the next
// step is what is missing. The runs are invented: prunings in tins.
import { cell } from "../../../src/runsheet/expressions/Expression";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import type { RunKind } from "../../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import { withOneMore } from "../../../src/runsheet/growing/growths";
import { plainRun, USUAL, type PlainRun } from "../plainRun";

const DRIED = [30, 22, 20.01, 20];

function weighed(kind: RunKind, replicates: number, grams: readonly number[] = DRIED): PlainRun {
  const run = plainRun({ kind, replicates, weighIns: 6, samplesAre: "different" });
  for (const sample of run.sheet.samples) {
    run.vessel(40 + sample, sample);
    run.weigh(grams.map((net) => Math.round((40 + sample + net) * 100) / 100), sample); // prettier-ignore
  }
  return run;
}

const vesselBox = ({ sheet }: PlainRun, sample: number) => sheet.columns.box(sheet.rows.drying.vessel, sample);
const says = ({ sheet, value }: PlainRun, round: number) => value(sheet.drying.verdict(sheet.rows.drying.first + round - 1));

test.each<[RunKind, number, number]>([
  ["drying", 2, 2],
  ["charring", 2, 1],
  ["ashing", 6, 4],
  ["staged", 3, 3],
  ["liquids", 3, 2],
])("%s, %i samples, the vessel of sample %i blank: no loss that counts is claimed, and the vessel is asked for", (kind, replicates, sample) => {
  const run = weighed(kind, replicates);
  run.type(vesselBox(run, sample), null);
  expect(says(run, 4)).toBe("? vessel not weighed");
  // What was lost before stands as it is, without a verdict on it.
  expect([says(run, 2), says(run, 3)]).toEqual(["lost 8.00 g", "lost 1.99 g"]);
  const box = `${String.fromCharCode("B".charCodeAt(0) + sample)}11`;
  expect(run.head()[0]).toBe(`► First: type the weight of the empty vessel, ${box}`);
  expect(run.value(run.sheet.working.next)).toBe(11);
  run.type(vesselBox(run, sample), 41);
  expect([says(run, 3), says(run, 4)]).toEqual(["still losing 1.99 g", "no loss that counts"]);
});

test("of a vessel that is left out no more is claimed while all still lose", () => {
  const run = weighed("drying", 2, [30, 22]);
  expect(says(run, 2)).toBe("still losing 8.00 g");
  run.type(vesselBox(run, 1), null);
  expect(says(run, 2)).toBe("? vessel not weighed");
});

test.each<[string, (run: PlainRun) => void, string]>([
  ["a limit that is blank", (run) => run.type(run.sheet.settings.limit, null), "? settings missing"],
  ["a clock time above that is blank", (run) => run.type(cell(run.sheet.rows.drying.first + 1, CLOCK), null), "? a clock time is missing"],
  [
    "a weight of one sample left out further up",
    (run) => run.type(run.sheet.drying.box(run.sheet.rows.drying.first + 1, 2), null),
    "? a row is missing",
  ],
])("%s is said in place of a loss", (_, slip, said) => {
  const run = weighed("charring", 2);
  slip(run);
  expect(says(run, 4)).toBe(said);
});

test("a sample that is added comes next with its vessel, and a column that is not used is not asked for", () => {
  const before = weighed("charring", 2);
  const run = plainRun({ ...withOneMore(checkOptions({ ...USUAL, kind: "charring", replicates: 2, weighIns: 6 }), "replicates") });
  const unused = plainRun({ kind: "charring", replicates: 3, weighIns: 6 });
  for (const one of [run, unused])
    for (const sample of before.sheet.samples) {
      one.vessel(40 + sample, sample);
      one.weigh(DRIED.map((net) => 40 + sample + net), sample); // prettier-ignore
    }
  expect(run.head()[0]).toBe("► First: type the weight of the empty vessel, E11");
  expect(unused.head()[0]).toMatch(/^► Next: firing 1/);
  run.vessel(43, 3);
  expect(run.head()[0]).toMatch(/^► Next: round 1|^► First: fill row 12|^► Next: finish round 1/);
});
