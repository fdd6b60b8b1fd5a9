import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { SAMPLE_KINDS, type RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { openRunSheet } from "./openRunSheet";

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
      // Minutes held, one a firing where nothing is typed, keep the firings in their order.
      // Curves of stages begin at the temperature of a room, with all of the sample, and stand there until a stage is weighed.
      const stages = sheet.sheet.stages?.rows;
      const standing =
        stages === undefined ? [] : Array.from({ length: stages.last - stages.first + 2 }, () => [...sheet.sheet.samples.map(() => 1), 20]);
      const held = phases.flatMap(({ rows }) => Array.from({ length: rows.last - rows.first + 1 }, (_row, index) => index + 1));
      // zero and load each rounded to 0.01 g: sqrt(2 / 12) * 0.01; two steps of change mean nothing
      expect([numbers.get(placeOf(u)), numbers.get(placeOf(explained))]).toEqual([expect.closeTo(0.00408248, 8), expect.closeTo(0.02, 8)]);
      expect(next).toBe(sheet.sheet.rows.drying.vessel);
      // A chart of a blank sheet has its axes from one point of the workings: to the last round as planned, and from below 0 up, or from 0
      // to as hot as furnaces reach.
      const { columns, rows } = sheet.sheet;
      const frame = (place: number): (number | undefined)[] =>
        (["x", "y"] as const).map((axis) => numbers.get(placeOf(columns.frame(rows.curves.first + place, axis))));
      const second = stages !== undefined ? [1000, undefined] : phases.length > 0 ? [-1, -1] : [undefined, undefined];
      expect([frame(0), frame(1)]).toEqual([[(options.weighIns - 1) * options.intervalMinutes, -1], second]);
      const frames = [0, 1].flatMap((place) => (["x", "y"] as const).map((axis) => placeOf(columns.frame(rows.curves.first + place, axis))));
      const others = [...numbers].filter(([place]) => !frames.includes(place)).map(([, value]) => value);
      expect(others.slice(3)).toEqual([...held, ...standing.flat()]);
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
