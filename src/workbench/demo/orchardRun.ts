import { buildRunSheet } from "../../runsheet/buildRunSheet";
import { cell, type Cell } from "../../runsheet/expressions/Expression";
import { placeOf } from "../../runsheet/expressions/formulaText";
import { checkOptions } from "../../runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../runsheet/options/RunSheetOptions";
import type { Fired } from "../../runsheet/sheet/Weighed";
import { gatherWords } from "../../runsheet/words/gatherWords";
import { runSheet } from "../../runsheet/sheet/RunSheet";
import type { PlannedCell, SheetPlan } from "../../workbook/SheetPlan";

// A run of three tins from an orchard that does not exist; every weighing is made up.
const OPTIONS: RunSheetOptions = {
  kind: "charring",
  weighIns: 6,
  intervalMinutes: 30,
  readability: 0.01,
  vessel: "lidded steel tin",
  replicates: 3,
  ovenCelsius: 105,
};
const TINS = [
  { name: "tree 4", vessel: 41.86, rounds: [72.14, 65.92, 63.31, 62.76, 62.72, 62.71], firings: [48.02, 47.86, 47.85], again: 41.87 },
  { name: "tree 4", vessel: 42.13, rounds: [71.88, 65.8, 63.17, 62.61, 62.58, 62.58], firings: [48.12, 47.95, 47.94], again: 42.13 },
  { name: "tree 7", vessel: 41.57, rounds: [72.41, 66.31, 63.6, 63.02, 62.98, 62.98], firings: [47.84, 47.69, 47.68], again: 41.57 },
];
// 21 November 2026, as spreadsheets count days.
const DATE = 46_347;
const MINUTES_PER_DAY = 1440;
const clock = (hours: number, minutes: number): number => (hours * 60 + minutes) / MINUTES_PER_DAY;
const STARTED = clock(9, 0);
const FIRINGS = [
  { lit: clock(12, 20), set: 450, measured: 436, held: 60, quiet: clock(13, 25), opened: clock(15, 5), seen: "white smoke 40 min" },
  { lit: clock(15, 20), set: 450, measured: 441, held: 30, quiet: clock(15, 30), opened: clock(16, 40), seen: "no smoke" },
  { lit: clock(16, 50), set: 450, measured: 440, held: 30, quiet: clock(16, 55), opened: clock(18, 0), seen: "no smoke" },
] as const;

const sheet = runSheet(checkOptions(OPTIONS));

/** What stands in each box, typed as at the bench. */
function entries(charring: Fired): readonly (readonly [at: Cell, content: string | number])[] {
  const { setup, settings, drying, columns, rows, end, composition } = sheet;
  return [
    [setup.date, DATE],
    [setup.operator, "orchard crew"],
    [setup.material, "plum prunings"],
    [settings.repeatability, 0.01],
    [settings.material, "mild steel"],
    ...TINS.flatMap(({ name, vessel, rounds, firings, again }, index) => {
      const sample = index + 1;
      return [
        [setup.name(sample), name] as const,
        [columns.box(rows.drying.vessel, sample), vessel] as const,
        ...rounds.map((grams, round) => [drying.box(rows.drying.first + round, sample), grams] as const),
        ...firings.map((grams, firing) => [charring.box(charring.rows.first + firing, sample), grams] as const),
        ...(end === undefined ? [] : [[end.vessel(sample), again] as const]),
      ];
    }),
    ...(TINS[0]?.rounds ?? []).map(
      (_, round) => [cell(rows.drying.first + round, 1), STARTED + (round * OPTIONS.intervalMinutes) / MINUTES_PER_DAY] as const,
    ),
    ...FIRINGS.flatMap((noted, firing) => {
      const boxes = charring.fire(charring.rows.fire.first + firing);
      return Object.entries(noted).map(([column, content]) => [boxes[column as keyof typeof noted], content] as const);
    }),
    ...(composition === undefined
      ? []
      : ([[composition.carbon, 48.6], [composition.hydrogen, 6], [composition.oxygen, 42.8], [composition.nitrogen, 0.5]] as const)), // prettier-ignore
    [cell(rows.end.notes.first, 1), gatherWords.demoNote],
  ];
}

function filled(plan: SheetPlan, charring: Fired): SheetPlan {
  const contents = new Map(entries(charring).map(([at, content]) => [placeOf(at), content]));
  const cells = plan.cells.map((planned): PlannedCell => {
    const content = contents.get(planned.cell);
    return content === undefined ? planned : { ...planned, content };
  });
  return { ...plan, name: "Orchard run", cells };
}

const plan = buildRunSheet(OPTIONS);

/** A finished run on a run sheet as the pane inserts it. */
export const demoRun: SheetPlan = sheet.charring === undefined ? plan : filled(plan, sheet.charring);
