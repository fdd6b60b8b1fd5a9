// Runs in which sample or balance turned out otherwise than planned, and runs in which not. Prunings of an orchard, invented.
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { runSheet, type RunSheet } from "../../../src/runsheet/sheet/RunSheet";
import type { TypedSlip } from "../slips/timeSlips";

const UNPLANNED: RunSheetOptions = { kind: "charring", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 3 };
const PLANNED: RunSheetOptions = { ...UNPLANNED, plan: { moistGrams: 45, dryGrams: 30, wantedUncertainty: 0.01 } };
const VESSEL = 25;

type Typed = TypedSlip["typed"][number];
type Typing = (sheet: RunSheet) => readonly Typed[];

/** Each sample so many grams, moist. */
const weighedIn =
  (...grams: readonly number[]): Typing =>
  ({ columns, rows, drying }) =>
    grams.flatMap((moist, index): Typed[] => [
      [columns.box(rows.drying.vessel, index + 1), VESSEL],
      [drying.box(rows.drying.first, index + 1), VESSEL + moist],
    ]);
const setting =
  (name: "readability" | "repeatability" | "wanted", value: number): Typing =>
  ({ settings }) => [[settings[name], value]];
/** As if shown dry, which takes calls of ours. */
const dry =
  (sample: number, grams: number): Typing =>
  ({ drying }) => [[drying.net(sample), grams]];

const slip = (title: string, says: (sheet: RunSheet) => string, options: RunSheetOptions, ...typings: readonly Typing[]): TypedSlip => {
  const sheet = runSheet(checkOptions(options));
  return { title, options, typed: typings.flatMap((typing) => typing(sheet)), check: "fine", says: says(sheet) };
};

const NOTHING = (): string => "";
const offPlan =
  (percent: string, grams: string) =>
  ({ settings }: RunSheet): string =>
    `? B${settings.readability.row} on: balance or wanted ± not as planned: 45.00 g give about ± ${percent} %. Take ${grams} g or more.`;
const all = weighedIn(45, 45.2, 45.01);

/** u of one weighing is d / sqrt(6) without, and sqrt(s^2 + d^2 / 6) with a repeatability s: 0.00408 g as planned. */
export const planSlips: readonly TypedSlip[] = [
  slip("all as planned", NOTHING, PLANNED, all),
  slip("a step ten times the planned one", offPlan("10.00", "450"), PLANNED, all, setting("readability", 0.1)),
  slip("the same before anything is weighed", offPlan("10.00", "450"), PLANNED, setting("readability", 0.1)),
  // sqrt(0.02^2 + 0.01^2 / 6) is five times 0.01 / sqrt(6).
  slip("a repeatability of two steps that was not planned", offPlan("5.00", "230"), PLANNED, all, setting("repeatability", 0.02)),
  // 45 g * 1 % / 0.47 % = 95.7 g.
  slip("more wanted than planned", offPlan("1.00", "96"), PLANNED, all, setting("wanted", 0.0047)),
  slip("less wanted than planned", NOTHING, PLANNED, all, setting("wanted", 0.02)),
  slip("a finer balance", NOTHING, PLANNED, all, setting("readability", 0.001)),
  slip("twice the step, and more than twice the sample", NOTHING, PLANNED, weighedIn(91, 95, 120), setting("readability", 0.02)),
  slip(
    "twice the step, and one sample that is not twice as large",
    offPlan("2.00", "90"),
    PLANNED,
    weighedIn(92, 60, 92),
    setting("readability", 0.02),
  ),
  // 1 % * 30 g / 20 g.
  slip("a sample much wetter than planned", () => "? Sample 2: 20.00 g dry, 30.00 g planned: the ± will be about 1.50 %. Start with more.", PLANNED, all, dry(2, 20)), // prettier-ignore
  slip("dry within a step of the plan", NOTHING, PLANNED, all, dry(1, 29.995), dry(2, 31)),
  // 2 sqrt(2) * 0.00408 g / 1 % = 1.15 g.
  slip("no plan, and little left dry", () => "? Sample 1: too little is left dry for this balance and the wanted ±, below 1.2 g. Start with more.", UNPLANNED, all, dry(1, 1.1)), // prettier-ignore
  slip("no plan, and enough left dry", NOTHING, UNPLANNED, all, dry(1, 1.2)),
  slip("no plan, and another balance", NOTHING, UNPLANNED, all, setting("readability", 0.1)),
];
