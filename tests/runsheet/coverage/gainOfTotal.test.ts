// A mass below 0 in the row of a total is no gain of a weighing: the check of gains names boxes alone. The runs are invented.
import type { RunKind } from "../../../src/runsheet/options/RunSheetOptions";
import { plainRun } from "../plainRun";

test.each<[RunKind, "ashing" | "heating" | "drying", string]>([
  ["ashing", "ashing", "the ash below the vessel"],
  ["salt", "heating", "what stayed below the vessel"],
  ["drying", "drying", "the dry sample below the vessel"],
])("%s: a total below 0 in %s is told by its own check", (kind, table) => {
  const run = plainRun({ kind, replicates: 2, panZeros: false });
  const total = run.sheet[table]?.rows.total ?? 0;
  for (const sample of run.sheet.samples) {
    run.vessel(40, sample);
    run.weigh([60, 50, 50], sample);
  }
  if (kind === "ashing") run.fire("charring", [45, 45]);
  const net = run.sheet[table]?.net(1);
  if (net === undefined) throw new Error("no total");
  run.type(net, -3);
  expect(run.check("gain")[1]).toBe("");
  // A gain above is still told, by its box.
  const { rows, box } = run.sheet.drying;
  run.type(box(rows.first + 2, 1), 51);
  expect(run.check("gain")[1]).toContain(`C${rows.first + 2} is heavier than the weight before`);
  expect(run.check("gain")[1]).not.toContain(`C${total} `);
});
