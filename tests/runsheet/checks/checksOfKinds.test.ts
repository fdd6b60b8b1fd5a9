// What the checks of the further kinds of run find, on plain values, finding by finding and at its boundary. The runs are invented.
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import type { CheckName } from "../../../src/runsheet/sheet/layout";
import type { FireColumn } from "../../../src/runsheet/sheet/Weighed";
import { clock, plainRun, type PlainRun } from "../plainRun";
import type { Plain } from "../../../src/explanation/runSheet/Plain";

type Fill = (run: PlainRun) => void;
type Row = readonly [check: CheckName, title: string, fills: readonly Fill[], says: string, options?: Partial<RunSheetOptions>];

const NOT_YET = "· not yet";
const FINE = "✓ in order";

const dried: Fill = (run) => {
  run.vessel(25);
  run.weigh([65.2, 51.22, 51.21]);
};
const charred: Fill = (run) => run.fire("charring", [32.54, 32.53]);
const parts =
  (...weights: (readonly [Plain, Plain])[]): Fill =>
  (run) =>
    run.caught(weights);
const caught = parts([55.2, 55.41], [80.11, 81.02], [120.5, 130.25]);
const ledger =
  (given: Partial<Record<"gas" | "water" | "fed" | "known", Plain>>): Fill =>
  (run) => {
    for (const [name, content] of Object.entries(given)) if (run.sheet.caught) run.type(run.sheet.caught.box(name as "gas", 1), content);
  };
const again =
  (mass: Plain): Fill =>
  (run) =>
    run.sheet.end && run.type(run.sheet.end.vessel(1), mass);
const setting =
  (name: keyof PlainRun["sheet"]["settings"], content: Plain): Fill =>
  (run) =>
    run.type(run.sheet.settings[name], content);

const LIQUIDS: readonly Row[] = [
  ["caught", "nothing", [], NOT_YET],
  ["caught", "parts weighed empty, before the fire", [dried, parts([55.2, null], [null, null], [120.5, null])], FINE],
  ["caught", "all weighed twice", [dried, charred, caught], FINE],
  [
    "caught",
    "the trap not weighed again, once another part was",
    [dried, charred, parts([55.2, 55.41], [80.11, null], [120.5, 130.25])],
    "? C49 was weighed empty and not again: the liquids wait. Weigh it, or clear it.",
  ],
  [
    "caught",
    "nothing weighed again, once the vessel was",
    [dried, charred, parts([null, null], [null, null], [120.5, null]), again(25)],
    "? C50 was weighed empty and not again: the liquids wait. Weigh it, or clear it.",
  ],
  [
    "caught",
    "a part that was never weighed empty",
    [dried, charred, parts([null, 55.41], [null, null], [120.5, 130.25])],
    "? C48 was not weighed before the fire: its gain is not known. Clear its weight, note it below.",
  ],
  ["caught", "text for a weight", [dried, parts(["clean", null])], "? C44 is text, not a number. Type it as a plain number, in grams or percent."],
  ["caught", "text for the gas", [dried, ledger({ gas: "none" })], "? C52 is text, not a number. Type it as a plain number, in grams or percent."],
  ["caught", "a tube lighter by what two readings explain", [dried, charred, parts([55.2, 55.18], [null, null], [120.5, 130.25])], FINE],
  [
    "caught",
    "a tube lighter by more",
    [dried, charred, parts([55.2, 55.17], [null, null], [120.5, 130.25])],
    "? C48 is lighter than before the fire. Dust or wet lost, or another part? Weigh it again.",
  ],
  [
    "caught",
    "nothing caught",
    [dried, charred, parts([55.2, 55.2], [80.11, 80.11], [120.5, 120.52])],
    "? Sample 1: nothing was caught that counts. Cold enough, and tight? Look for a leak.",
  ],
  ["order", "a receiver lighter than empty by what two readings explain", [dried, charred, parts([null, null], [null, null], [120.5, 120.48])], FINE],
  [
    "order",
    "a receiver lighter by more",
    [dried, charred, parts([null, null], [null, null], [130.25, 120.5])],
    "▲ Sample 1: receiver lighter with its liquid, C50, than empty, C46. Swapped? Weigh again.",
  ],
  [
    "order",
    "a receiver full before the run counted twice: products above the feed",
    [dried, charred, parts([null, null], [null, null], [120.5, 139.3])],
    "▲ Sample 1: products, 26.33 g, exceed the 26.21 g fed by more than the weighing ±. Weigh all again.",
  ],
  ["ledger", "nothing", [], NOT_YET],
  ["ledger", "gas by difference", [dried, charred, caught], FINE],
  // (26.21 - 7.53 - 10.87 - 7.55) / 26.21 = 0.26 / 26.21 = 0.99 %; wanted 1 %
  ["ledger", "as much unaccounted as wanted", [dried, charred, caught, ledger({ gas: 7.55 })], FINE],
  [
    "ledger",
    "more unaccounted than wanted",
    [dried, charred, caught, ledger({ gas: 7.5 })],
    "? Sample 1: 1.2 % of the dry feed unaccounted for, more than wanted. A leak, liquid in the tube, a slip?",
  ],
  ["ledger", "no wanted ± to hold it against", [dried, charred, caught, ledger({ gas: 7.5 }), setting("wanted", null)], FINE],
  [
    "ledger",
    "a fraction for the water content",
    [dried, charred, caught, ledger({ water: 0.68 })],
    "? C53: typed as a fraction? Type percent, such as 70 for 0.70.",
  ],
  ["order", "nothing but water in the liquids", [dried, charred, caught, ledger({ water: 100 })], FINE],
  ...([101, 120, 1e4] as const).map((water): Row => [
    "order",
    `${water} % water in the liquids`,
    [dried, charred, caught, ledger({ water })],
    "▲ Sample 1: C53 is above 100 %: more water than liquids cannot be. Type percent, such as 70, or clear it.",
  ]),
  // With D = (1 - 1.2) 40.2 g below 0 the vessel, 25 g twice, is not to blame.
  ...([100, 120] as const).map((fed): Row => [
    "order",
    `fed with ${fed} % water`,
    [(run) => run.vessel(25), (run) => run.weigh([65.2]), charred, caught, again(25), ledger({ fed })],
    "▲ Sample 1: C54 is 100 % or more: nothing dry would be left. Type percent of the moist weight, such as 12.",
  ]),
  [
    "ledger",
    "fed with more water than is charred",
    [(run) => run.vessel(25), (run) => run.weigh([65.2]), ledger({ fed: 90.5 })],
    "? C54: a sample of more than 90 % water is none that is charred. A slip?",
  ],
  ["ledger", "percent known to 20 %", [dried, charred, caught, ledger({ water: 60, known: 20 })], FINE],
  ...([21, 200] as const).map((known): Row => [
    "ledger",
    `percent known to ${known} %`,
    [dried, charred, caught, ledger({ water: 60, known })],
    "? C55: percent known to no more than ± 20 % tell nothing. Type percentage points, such as 1.",
  ]),
  [
    "ledger",
    "dried, and said to be fed moist",
    [dried, charred, caught, ledger({ fed: 34 })],
    "? C54 says fed moist, and the sample was shown dry. Clear one: the dried sample counts.",
  ],
  [
    "ledger",
    "less water caught than fed",
    [(run) => run.vessel(25), (run) => run.weigh([65.2]), charred, parts([null, null], [null, null], [120.5, 134]), ledger({ fed: 34.8, water: 90 })],
    "? Sample 1: less water in the liquids than was fed. Look at its moisture and C53; or water escaped.",
  ],
  ["dryness", "charred moist, with its moisture typed", [(run) => run.vessel(25), (run) => run.weigh([65.2]), ledger({ fed: 34.8 }), charred], FINE],
  [
    "dryness",
    "charred moist, its moisture not known",
    [(run) => run.vessel(25), (run) => run.weigh([65.2]), charred],
    "? Sample 1: charred, row 26, before it was shown dry. A slip in C12 or above? If not, no share follows.",
  ],
  [
    "typedOver",
    "a gain typed over",
    [(run) => run.sheet.caught && run.type(run.sheet.caught.gain(0, 1), 3)],
    "? F48 was typed over: its formula is gone. Undo, or press Mend formulas in the task pane.",
  ],
];

const salts: Fill = (run) => {
  run.vessel(20);
  run.weigh([30.02, 30, 30]);
};
const stage =
  (number: number, noted: Partial<Record<FireColumn, Plain>>): Fill =>
  (run) => {
    const table = run.sheet.stages;
    if (table === undefined) throw new Error("a staged run");
    const row = table.fire(table.rows.fire.first + number - 1);
    for (const [column, content] of Object.entries(noted)) run.type(row[column as FireColumn], content);
  };
const set = (...degrees: Plain[]): Fill => (run) => degrees.forEach((one, index) => stage(index + 1, { set: one })(run)); // prettier-ignore
const left = (...grams: Plain[]): Fill => (run) => run.fire("stages", grams); // prettier-ignore

const STAGED: readonly Row[] = [
  ["rising", "nothing", [], NOT_YET],
  ["rising", "temperatures that rise or stay", [salts, set(60, 120, 120, 250), left(28.56)], FINE],
  [
    "rising",
    "a stage below the one before",
    [salts, set(120, 60)],
    "? C23 is set below the stage before: what left earlier is counted there. Heat upwards, or mend the figure.",
  ],
  [
    "rising",
    "measured below the one before, where nothing was set",
    [salts, stage(1, { measured: 120 }), stage(2, { measured: 60 })],
    "? C23 is set below the stage before: what left earlier is counted there. Heat upwards, or mend the figure.",
  ],
  ["rising", "measured a little lower at the same setting", [salts, set(120, 120), stage(1, { measured: 121 }), stage(2, { measured: 118 })], FINE],
  [
    "rising",
    "weighed without a temperature",
    [salts, set(60), left(28.56, 27.12)],
    "? Row 23: weighed without a temperature, set or measured. Type one.",
  ],
  ["rising", "measured 100 °C off what was set", [salts, set(700), stage(1, { measured: 600 })], FINE],
  [
    "rising",
    "measured further off",
    [salts, set(700), stage(1, { measured: 599 })],
    "? D22 is far from what was set. Measured elsewhere, or a slip? Look at both.",
  ],
  ["rising", "180 °F off what was set", [salts, set(1200), stage(1, { measured: 1020 })], FINE, { degrees: "F" }],
  ["stageHeld", "no stage held again", [salts, set(60, 120), left(28.56, 27.12)], NOT_YET],
  ["stageHeld", "held again without a loss that two readings cannot explain", [salts, set(60, 60), left(28.56, 28.54)], FINE],
  [
    "stageHeld",
    "held again and still losing",
    [salts, set(60, 60), left(28.56, 28.53)],
    "? Row 28: held again at the same temperature it still lost. Hold it there until nothing more leaves.",
  ],
  ["stageHeld", "still losing, then held once more", [salts, set(60, 60, 60), left(28.56, 28.4, 28.4)], FINE],
  ["gain", "a stage heavier by what two readings explain", [salts, set(60, 120), left(28.56, 28.58)], FINE],
  [
    "gain",
    "a stage heavier by more",
    [salts, set(60, 120), left(28.56, 28.59)],
    "? C28 is heavier than the stage before: air or damp taken up, or a slip in either. Weigh again, cold.",
  ],
  [
    "gain",
    "a stage heavier than the dry sample",
    [salts, set(60), left(30.05)],
    "? C27 is heavier than the stage before: air or damp taken up, or a slip in either. Weigh again, cold.",
  ],
  [
    "order",
    "less left than the vessel weighs",
    [salts, set(60), left(19.9)],
    "▲ Sample 1: what is left, C27, is below the empty vessel, C11. Weigh both again, cold.",
  ],
  [
    "rows",
    "a stage left out",
    [salts, set(60, 120), left(28.56, null, 27.1)],
    "? C28 is empty above a filled row. Type its weight, or clear what stands below it.",
  ],
  ["rows", "text for a weight", [salts, left("lost")], "? C27 is text, not a weight. Type grams as a plain number."],
  [
    "dryness",
    "heated before it was dry",
    [(run) => run.vessel(20), (run) => run.weigh([30.02]), left(28.56)],
    "? Sample 1: heated, row 27, before it was shown dry. A slip in C12 or above? If not, no share follows.",
  ],
  [
    "opened",
    "opened early",
    [salts, stage(1, { quiet: clock(13), opened: clock(13, 20) })],
    "? G22: opened 20 min after the vent fell quiet, sooner than 60 min. Warm, it reads light, and air gets in.",
  ],
  [
    "material",
    "hotter than the vessel stands",
    [salts, set(60, 500), setting("material", "tinned steel")],
    "? C23: 500 °C is above the 230 °C that tinned steel stands. Change vessel or programme.",
  ],
  [
    "times",
    "a bare number for a clock",
    [salts, stage(1, { lit: 9.3 })],
    "? B22 is no clock time. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30, not 9.30 or 900.",
  ],
];

describe.each([
  ["liquids", LIQUIDS],
  ["staged", STAGED],
] as const)("On a sheet of kind %s", (kind, rows) => {
  it.each(rows.map((row) => [row[0], row[1], row] as const))("the check %s, on %s", (check, _title, [, , fills, says, options]) => {
    const run = plainRun({ kind, ...options });
    fills.forEach((fill) => fill(run));
    const [verdict, finding] = run.check(check);
    const isQuiet = says === NOT_YET || says === FINE;
    expect([verdict, finding]).toEqual(isQuiet ? [says, ""] : [says.startsWith("▲") ? "▲ wrong" : "? doubt", says]);
    expect(String(finding).length).toBeLessThanOrEqual(108);
  });
});

describe("The next step once what was caught is weighed", () => {
  const next = (...weights: Parameters<typeof parts>): unknown => {
    const run = plainRun({ kind: "liquids" });
    [dried, charred, parts(...weights), again(25)].forEach((fill) => fill(run));
    return run.head()[0];
  };

  it("asks for no second weight where only a first one lacks, which its check tells", () => {
    expect(next([null, null], [null, null], [null, 130.25])).toBe("Run complete: all weighings are in");
    expect(next([55.2, 55.41], [80.11, 81.02], [null, 130.25])).toBe("Run complete: all weighings are in");
  });

  it("asks for the second weights that lack", () => {
    expect(next([55.2, null], [80.11, 81.02], [null, 130.25])).toBe("► Next: weigh what was caught, row 48 on");
    expect(next([55.2, 55.41], [80.11, 81.02], [120.5, null])).toBe("► Next: weigh what was caught, row 48 on");
    expect(next([null, null], [null, null], [null, null])).toBe("► Next: weigh what was caught, row 48 on");
  });
});
