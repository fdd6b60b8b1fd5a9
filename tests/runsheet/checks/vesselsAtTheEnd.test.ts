// The empty vessels weighed again, of some samples and of all. The runs are invented.
import { cell } from "../../../src/runsheet/expressions/Expression";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import { plainRun, type PlainRun } from "../plainRun";

const PHASE = { charring: "charring", ashing: "charring", liquids: "charring", staged: "stages", salt: "heating" } as const;
type Kind = keyof typeof PHASE;

function run(kind: Kind, replicates: number): PlainRun {
  const run = plainRun({ kind, replicates, samplesAre: "repeats", stages: 2, receivers: 1 });
  for (const sample of run.sheet.samples) {
    run.vessel(40, sample);
    run.weigh([70, 60.01, 60], sample);
    if (kind === "liquids") run.caught([[50, null], [60, null], [70, null]], sample); // prettier-ignore
    run.fire(PHASE[kind], [46, 46], sample);
    if (kind === "ashing") run.fire("ashing", [40.4, 40.4], sample);
    if (kind === "liquids") run.caught([[50, 50.1], [60, 60.1], [70, 75]], sample); // prettier-ignore
  }
  return run;
}

describe.each(Object.keys(PHASE) as Kind[])("%s", (kind) => {
  test.each([2, 3, 6])("of %i samples asks for each vessel, and is complete with the last", (replicates) => {
    const made = run(kind, replicates);
    const { end } = made.sheet;
    if (end === undefined) throw new Error("no vessel at the end");
    const asked = `► Next: weigh the empty vessels again, row ${end.vessel(1).row}`;
    const next = [made.head()[0]];
    for (const sample of made.sheet.samples) {
      made.type(end.vessel(sample), 40);
      next.push(made.head()[0]);
    }
    expect(next).toEqual([...made.sheet.samples.map(() => asked), "Run complete: all weighings are in"]);
  });

  test("marks a mean of samples with their scale taken off and one without", () => {
    const made = run(kind, 3);
    const { end, rows } = made.sheet;
    for (const sample of [1, 3]) if (end) made.type(end.vessel(sample), 40.02);
    const place = rows.checks.lines.findIndex(({ check }) => check === "vesselAgain") + 1;
    const headline = ({ staged: "lostInAll", salt: "lossOnHeating" } as Partial<Record<Kind, "lostInAll" | "lossOnHeating">>)[kind] ?? "volatile";
    expect(made.check("vesselAgain")[1]).toMatch(/^\? Sample 2: D\d+ is blank and others are not: scale is taken off those alone\./);
    expect(made.value(cell(rows.results.shares[headline] ?? 0, CLOCK))).toBe(`? check ${place}`);
    made.type(made.sheet.setup.samplesAre, "different");
    expect(made.check("vesselAgain")[0]).toBe("✓ in order");
  });
});
