// Invented runs of every further kind, as tests/runsheet/filledKinds fills them in; the points expected are its weighings less their vessels.
import type { Chart, Line } from "../../../src/report/chart/Chart";
import { chartsOn } from "../../../src/report/chart/chartsOn";
import { gatherRuns } from "../../../src/runsheet/gathering/gatherRuns";
import { filledKinds } from "../../runsheet/filledKinds";

jest.setTimeout(240_000);

/** "Sample 1: 5 weighed, look 0" */
const told = ({ name, points, draws, look, isApart }: Line): string =>
  `${name}: ${points.length} ${draws}${draws === "weighed" ? `, look ${look}` : ""}${isApart ? ", apart" : ""}`;
const titled = ({ title, x, y, unit }: Chart): string => `${title}: ${y}, against ${x} (${unit})`;
const rounded = (line: Line | undefined): number[][] => (line?.points ?? []).map(({ x, y }) => [x, Number(y.toFixed(3))]);

async function drawn(kind: string): Promise<readonly Chart[]> {
  const { workbook, name, close } = (await filledKinds[kind]?.()) ?? fail(`no ${kind}`);
  const charts = chartsOn(await workbook.readUsed(name));
  close();
  return charts;
}
const fail = (why: string): never => {
  throw new Error(why);
};

const DRYING = "Drying: sample without its vessel, g, against minutes since round 1 (g)";
const FIRING = "Firing: what is left, without its vessel, g, against minutes held so far; a firing without counts 1 (g)";
const finished = "finished if the next falls in here: 2 limit";
const dry = "dry if the next falls in here: 2 limit";

test("a run with liquids caught has its drying with the limit band, and its firings without their vessels", async () => {
  const [drying, firing, ...more] = await drawn("run with liquids caught, gas by difference");
  expect([drying, firing].map((chart) => chart && titled(chart))).toEqual([DRYING, FIRING]);
  expect(drying?.lines.map(told)).toEqual(["Sample 1: 6 weighed, look 0", dry, "Sample 2: 5 weighed, look 1", dry]);
  expect(firing?.lines.map(told)).toEqual(["Sample 1: 3 weighed, look 0", finished, "Sample 2: 3 weighed, look 1", finished]);
  // 48.90, 47.86 and 47.85 g in a vessel of 41.86 g after 60, 90 and 120 min held.
  expect(rounded(firing?.lines[0])).toEqual([[60, 7.04], [90, 6], [120, 5.99]]); // prettier-ignore
  // For another firing as long as the last, 30 min, two display steps of 0.01 g to either side of 5.99 g.
  const band = firing?.lines[1];
  expect(rounded(band)).toEqual([[120, 5.97], [150, 5.97]]); // prettier-ignore
  expect(rounded(band && { ...band, points: band.upper ?? [] })).toEqual([[120, 6.01], [150, 6.01]]); // prettier-ignore
  expect(more).toEqual([]);
});

test("staged heating has what is left against temperature, from all of it at room temperature on", async () => {
  const [, stages] = await drawn("run of staged heating, three samples");
  expect(stages && titled(stages)).toBe("Left against temperature: left, % of the dry sample, against temperature, °C (%)");
  expect(stages?.lines.map(told)).toEqual([1, 2, 3].map((sample) => `Sample ${sample}: 6 weighed, look ${sample - 1}`));
  // Measured 4 °C below what was set; not measured in stage 3.
  expect(rounded(stages?.lines[0]).map(([x]) => x)).toEqual([20, 56, 116, 120, 246, 746]);
  expect(rounded(stages?.lines[0])[0]).toEqual([20, 100]);
});

test("a salt that was weighed once before heating has its firings alone", async () => {
  const charts = await drawn("run of a salt, two samples");
  expect(charts.map(titled)).toEqual([FIRING]);
  // 21.702, 21.649 and 21.648 g in a vessel of 20.112 g.
  expect(rounded(charts[0]?.lines[0])).toEqual([[30, 1.59], [50, 1.537], [70, 1.536]]); // prettier-ignore
});

test("a balance check has its history, round by round, with mean and two standard deviations", async () => {
  const [history] = await drawn("balance check");
  expect(history && titled(history)).toBe("Check weight: check weight, g, against round (g)");
  expect(history?.lines.map(told)).toEqual(["reading: 8 weighed, look 0", "mean - 2 s: 2 foretold", "mean: 2 limit", "mean + 2 s: 2 foretold"]);
  expect(rounded(history?.lines[0])).toEqual([200.01, 200, 200.02, 200.01, 200, 200.01, 200.01, 200.06].map((grams, index) => [index + 1, grams]));
});

test("gathered runs have each sample in its row, unjoined, and the lines that the sheet draws", async () => {
  const { workbook, close } = (await filledKinds["run with liquids caught, gas by difference"]?.()) ?? fail("no such run");
  const { sheet } = await gatherRuns(workbook);
  const [gathered] = chartsOn(await workbook.readUsed(sheet));
  close();
  expect(gathered && titled(gathered)).toBe("Vapour by row: vapour, % of dry, against row of this sheet (%)");
  expect(gathered?.lines.map(told)).toEqual(["not counted: 2 weighed, look 1, apart"]);
  // 1 - 5.99 / 20.85 of the first sample, at its row.
  expect(rounded(gathered?.lines[0])[0]).toEqual([7, expect.closeTo(71.271, 3)]);
});
