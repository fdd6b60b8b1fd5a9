import { cell } from "../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import { ROWS_OF_DRYING } from "../../../src/runsheet/formulas/curves/curves";
import { SAMPLE_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { areaNamed } from "../../../src/workbook/areaNamed";
import { openRunSheet } from "../openRunSheet";

const usual: RunSheetOptions = { kind: "drying", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 1 };
const sheets: RunSheetOptions[] = [
  ...SAMPLE_KINDS.flatMap((kind) => [1, 3].map((replicates) => ({ ...usual, kind, replicates }))),
  { ...usual, kind: "ashing", replicates: 6, weighIns: 60 },
  { ...usual, kind: "drying", panZeros: true },
  { ...usual, kind: "charring", temperatures: true },
  { ...usual, kind: "ashing", replicates: 3, panZeros: true, temperatures: true },
];

const title = ({ kind, replicates, weighIns, panZeros, temperatures }: RunSheetOptions): string =>
  `${kind}, ${replicates} samples, ${weighIns} weigh-ins${panZeros ? ", pan zeros" : ""}${temperatures ? ", temperatures" : ""}`;

describe("A run sheet just inserted", () => {
  it.each(sheets.map((options) => [title(options), options] as const))(
    "shows no error, no number but those of its balance, and otherwise only what comes next: %s",
    async (_, options) => {
      const sheet = await openRunSheet(options);
      const shown = await sheet.calculated();
      expect(shown.filter(({ error }) => error !== "")).toEqual([]);
      const { u, explained } = sheet.sheet.working;
      const numbers = new Map(shown.flatMap(({ cell, value }) => (typeof value === "number" && value !== 0 ? [[cell, value]] : [])));
      const next = numbers.get(placeOf(sheet.sheet.working.next));
      const phases = [sheet.sheet.charring, sheet.sheet.ashing, sheet.sheet.heating].flatMap((table) => (table === undefined ? [] : [table]));
      // Curves of stages begin at the temperature of a room, with all of the sample, and stand there until a stage is weighed.
      const stages = sheet.sheet.stages?.rows;
      const standing =
        stages === undefined ? [] : Array.from({ length: stages.last - stages.first + 2 }, () => [...sheet.sheet.samples.map(() => 1), 20]);
      // zero and load each rounded to 0.01 g: sqrt(2 / 12) * 0.01; two steps of change mean nothing
      expect([numbers.get(placeOf(u)), numbers.get(placeOf(explained))]).toEqual([expect.closeTo(0.00408248, 8), expect.closeTo(0.02, 8)]);
      expect(next).toBe(sheet.sheet.rows.drying.vessel);
      // A chart of a blank sheet has its axes from its bands, which lie below 0 and are not seen: to the last round as planned, and in the firings'
      // chart both edges apart, for an axis without numbers. That of stages has a point of its own, as hot as furnaces reach.
      const { columns, rows, samples } = sheet.sheet;
      const expected = new Map<string, number>();
      const corners = (first: number, belowZero: number, minutes: number): void => {
        for (const sample of samples) for (let row = first; row < first + belowZero; row++) expected.set(placeOf(columns.working(row, sample)), -1);
        for (const row of [first, first + 1]) expected.set(placeOf(cell(row, columns.elapsed)), minutes);
      };
      corners(rows.curves.first, 4, (options.weighIns - 1) * options.intervalMinutes);
      if (phases.length > 0 && stages === undefined) corners(rows.curves.first + ROWS_OF_DRYING, 2, -1);
      if (stages !== undefined) expected.set(placeOf(columns.frame(rows.curves.first, "x")), 1000);
      const isOfCurves = (at: string): boolean => areaNamed(at).row + 1 >= rows.curves.first;
      expect(new Map([...numbers].filter(([at]) => isOfCurves(at)).sort())).toEqual(new Map([...expected].sort()));
      const others = [...numbers].filter(([at]) => !isOfCurves(at)).map(([, value]) => value);
      // Which firings prove that nothing more leaves, as powers of two from the first on: all, as long as none was colder or shorter.
      const proving = sheet.sheet.fired.flatMap(({ rows: { first, last } }) => (stages === undefined ? [2 ** (last - first + 2) - 2] : []));
      expect(others.slice(3).sort()).toEqual([...standing.flat(), ...proving].sort());
      const printed = shown.filter(({ cell, value }) => typeof value === "string" && value !== "" && (cell.match(/^[A-Z]+/)?.[0] ?? "").length === 1);
      expect(printed.map(({ value }) => value)).toEqual(
        expect.arrayContaining([
          `► Next: weigh the empty vessels, row ${sheet.sheet.rows.drying.vessel}`,
          "No answer yet: nothing has been weighed.",
        ]),
      );
      const formulas = (await sheet.workbook.readUsed(sheet.name)).rows.flat().filter(({ formula }) => formula !== "");
      expect(formulas.length).toBeGreaterThan(options.weighIns);
      sheet.close();
    },
    60_000,
  );
});
