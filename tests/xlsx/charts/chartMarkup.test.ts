import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import type { RunKind } from "../../../src/runsheet/options/RunSheetOptions";
import { isInKey } from "../../../src/workbook/seriesLooks";
import type { PlannedChart } from "../../../src/workbook/SheetPlan";
import { chartMarkup } from "../../../src/xlsx/charts/chartMarkup";

const chartsOf = (kind: RunKind, replicates: number): readonly PlannedChart[] =>
  buildRunSheet({ kind, weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates }).charts ?? [];
const every = (text: string, pattern: RegExp): string[] => [...text.matchAll(pattern)].map((found) => found[1] ?? "");

describe.each([
  ["drying", 2],
  ["charring", 1],
  ["ashing", 3],
  ["liquids", 2],
  ["staged", 3],
  ["salt", 2],
  ["balance", 1],
] as const)(
  // prettier-ignore
  "The charts of a %s sheet for %i, as a part of a file,",
  (kind, replicates) => {
    const charts = chartsOf(kind, replicates).map((chart) => ({ chart, markup: chartMarkup(chart, (range) => `Run!${range}`, () => []) })); // prettier-ignore

    test("have a key with every line that was weighed, and what is beside them once", () => {
      for (const { chart, markup } of charts) {
        const names = every(markup, /<c:tx><c:v>(.*?)<\/c:v><\/c:tx>/g);
        const deleted = every(markup, /<c:legendEntry><c:idx val="(\d+)"\/><c:delete val="1"\/><\/c:legendEntry>/g).map(Number);
        expect(deleted).toEqual(chart.series.flatMap((one, index) => (isInKey(one) ? [] : [index])));
        const shown = names.filter((_, index) => !deleted.includes(index));
        expect(shown.filter((name) => name === "(axes)" || name.endsWith("upper edge"))).toEqual([]);
        expect(new Set(shown).size).toBe(shown.length);
      }
    });
  },
);

test("a firing's band has two edges over the same minutes, of char and ash as of char alone", () => {
  for (const kind of ["charring", "ashing"] as const) {
    const firing = chartsOf(kind, 1)[1];
    const markup = firing === undefined ? "" : chartMarkup(firing, (range) => range, () => []); // prettier-ignore
    const series = every(markup, /(<c:ser>.*?<\/c:ser>)/g).filter((one) => one.includes("finished if the next falls in here"));
    const [lower, upper] = series.map((one) => every(one, /<c:f>(.*?)<\/c:f>/g));
    expect(lower?.[0]).toMatch(/^O\d+:O\d+$/);
    expect(upper?.[0]).toBe(lower?.[0]);
    expect(upper?.[1]).not.toBe(lower?.[1]);
    for (const one of series) expect(one).toContain('<a:prstDash val="sysDash"/>');
  }
});
