// A firing proves that nothing more leaves only where it was as hot as those before it, and held. The runs are invented.
import type { Cell } from "../../../src/runsheet/expressions/Expression";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { openRunSheet } from "../openRunSheet";
import { clock, plainRun, USUAL, type PlainRun } from "../plainRun";
import type { Plain } from "../../../src/explanation/runSheet/Plain";

jest.setTimeout(60_000);

/** Set, measured at the sample, minutes held. */
type Noted = readonly [set: Plain, measured: Plain, held: Plain];
type Phase = "charring" | "ashing" | "heating" | "stages";

const DONE = { charring: "charDone", ashing: "ashDone", heating: "heatDone", stages: "stageHeld" } as const;
const COMPLETE = "Run complete: all weighings are in";
const FINE = "✓ in order";

function tableOf({ sheet }: PlainRun, phase: Phase) {
  const table = sheet[phase];
  if (table === undefined) throw new Error(`this sheet has no ${phase}`);
  return table;
}

function note(run: PlainRun, phase: Phase, noted: readonly Noted[]): void {
  const table = tableOf(run, phase);
  for (const [index, [set, measured, held]] of noted.entries()) {
    const row = table.fire(table.rows.fire.first + index);
    for (const [at, content] of [[row.set, set], [row.measured, measured], [row.held, held]] as [Cell, Plain][]) run.type(at, content); // prettier-ignore
  }
}

/** Samples dried, and heated as often as was noted, with the last two weighings alike; the vessels weighed again. */
function heated(phase: "charring" | "ashing" | "heating", noted: readonly Noted[], options: Partial<RunSheetOptions> = {}): PlainRun {
  const kind = { charring: "charring", ashing: "ashing", heating: "salt" } as const;
  const firings = { charFirings: Math.max(2, noted.length), ashFirings: Math.max(2, noted.length) };
  const run = plainRun({ kind: kind[phase], samplesAre: "repeats", ...firings, ...options });
  const weights = (start: number): number[] => noted.map((_, index) => (index === 0 && noted.length > 1 ? start + 0.01 : start));
  for (const sample of run.sheet.samples) {
    run.vessel(25, sample);
    run.weigh([65, 51.01, 51], sample);
    if (phase === "ashing") run.fire("charring", [32.5, 32.5], sample);
    run.fire(phase, weights(phase === "ashing" ? 25.4 : 32.5), sample);
  }
  note(run, phase, noted);
  for (const sample of run.sheet.samples) if (run.sheet.end) run.type(run.sheet.end.vessel(sample), 25);
  return run;
}

/** Names of boxes of the fire: "D#2" is column D of the second firing. */
const placed = (run: PlainRun, phase: Phase, says: string): string =>
  says.replace(/#(\d)/g, (_, firing) => String(tableOf(run, phase).rows.fire.first + Number(firing) - 1));

const HOT: Noted = [480, 470, 45];
const colder = (at: string, hottest: string, what: string): string =>
  `? ${at} is colder than ${hottest}: no proof that ${what} is finished. Fire again as hot, and weigh.`;
const short = (at: string, what: string): string =>
  `? ${at}: held not at all, or far shorter than before: no proof that ${what} is finished. Fire again as long.`;

describe.each([1, 3, 6])("of %i samples, the last firing", (replicates) => {
  test.each<readonly [string, readonly Noted[], string]>([
    ["as hot and as long", [HOT, HOT], FINE],
    ["20 °C colder at the sample", [HOT, [480, 450, 45]], FINE],
    ["21 °C colder at the sample, whatever was set", [HOT, [480, 449, 45]], colder("D#2", "D#1", "charring")],
    ["cold", [HOT, [200, 205, 45]], colder("D#2", "D#1", "charring")],
    [
      "cold by the set-points alone",
      [
        [480, null, 45],
        [200, null, 45],
      ],
      colder("C#2", "C#1", "charring"),
    ],
    ["set lower and as hot at the sample", [HOT, [440, 468, 45]], FINE],
    [
      "measured 40 °C below what the first was set to",
      [
        [480, null, 45],
        [null, 440, 45],
      ],
      FINE,
    ],
    [
      "measured far below what the first was set to",
      [
        [480, null, 45],
        [null, 205, 45],
      ],
      colder("D#2", "C#1", "charring"),
    ],
    ["of a temperature nobody noted", [HOT, [null, null, 45]], FINE],
    ["of a temperature in text", [HOT, ["480 C", null, 45]], FINE],
    ["not held", [HOT, [480, 470, 0]], short("E#2", "charring")],
    ["held a fifth as long", [HOT, [480, 470, 9]], short("E#2", "charring")],
    [
      "held a quarter as long",
      [
        [480, 470, 40],
        [480, 470, 10],
      ],
      FINE,
    ],
    [
      "held an hour after ten",
      [
        [480, 470, 600],
        [480, 470, 60],
      ],
      FINE,
    ],
    ["held for a time nobody noted", [HOT, [480, 470, null]], FINE],
    [
      "held, the first not noted",
      [
        [480, 470, null],
        [480, 470, 5],
      ],
      FINE,
    ],
    [
      "not held, the first not noted either",
      [
        [null, null, null],
        [null, null, 0],
      ],
      short("E#2", "charring"),
    ],
    ["cold after a hot one that proves it", [HOT, HOT, [200, 205, 0]], FINE],
    ["hot after a cold one", [HOT, [200, 205, 0], HOT], FINE],
    ["cold after another cold one", [HOT, [200, 205, 45], [200, 205, 45]], colder("D#3", "D#1", "charring")],
  ] as [string, readonly Noted[], string][])("%s", (_, noted, says) => {
    const run = heated("charring", noted, { replicates });
    const [verdict, finding] = run.check("charDone");
    expect(finding === "" ? verdict : finding).toBe(placed(run, "charring", says));
    const { verdict: rowSays, rows } = tableOf(run, "charring");
    const last = run.value(rowSays(rows.first + noted.length - 1));
    if (says === FINE) {
      expect([last, run.head()[0]]).toEqual(["no loss that counts", COMPLETE]);
      return;
    }
    expect(last).toBe(says.includes("colder") ? "colder: fire again as hot" : "short: fire again as long");
    expect(run.head()[0]).not.toBe(COMPLETE);
    const counted = replicates === 1 ? "" : " All counted.";
    expect(run.head()[1]).toBe(`? In doubt: At least 71.2 % of the dry sample has left as vapour so far; charring is not shown finished.${counted}`);
    expect(run.value(run.sheet.share("volatile", 1))).toBeCloseTo(1 - 7.5 / 26, 12);
  });
});

test.each([
  [
    "ashing",
    [
      [550, 540, 60],
      [250, 245, 60],
    ],
    colder("D#2", "D#1", "ashing"),
  ],
  [
    "ashing",
    [
      [550, 540, 60],
      [550, 540, 0],
    ],
    short("E#2", "ashing"),
  ],
  [
    "ashing",
    [
      [550, 540, 60],
      [550, 540, 30],
    ],
    FINE,
  ],
  [
    "heating",
    [
      [900, 890, 60],
      [200, 205, 0],
    ],
    colder("D#2", "D#1", "heating"),
  ],
  [
    "heating",
    [
      [900, 890, 60],
      [900, 890, 0],
    ],
    short("E#2", "heating"),
  ],
  [
    "heating",
    [
      [900, 890, 60],
      [900, 890, 30],
    ],
    FINE,
  ],
] as ["ashing" | "heating", readonly Noted[], string][])("%s %j", (phase, noted, says) => {
  const run = heated(phase, noted);
  const [verdict, finding] = run.check(DONE[phase]);
  expect(finding === "" ? verdict : finding).toBe(placed(run, phase, says));
});

test("with liquids caught the char is judged the same", () => {
  const run = plainRun({ kind: "liquids", charFirings: 2 });
  run.vessel(25);
  run.weigh([65, 51.01, 51]);
  run.fire("charring", [32.51, 32.5]);
  note(run, "charring", [HOT, [480, 470, 0]]);
  expect(run.check("charDone")[1]).toMatch(/^\? E\d+: held not at all, or far shorter than before: no proof that charring is finished\./);
});

test("in °F 20 °C are 36 °F", () => {
  const last = (measured: number): Plain => heated("charring", [[900, 880, 45], [900, measured, 45]], { degrees: "F" }).check("charDone")[0]; // prettier-ignore
  expect([last(844), last(843)]).toEqual([FINE, "? doubt"]);
});

test("a first firing that was not held, and took nothing, proves nothing", () => {
  const run = heated("charring", [[480, 470, 0]], { charFirings: 2 });
  run.type(tableOf(run, "charring").box(tableOf(run, "charring").rows.first, 1), 51);
  expect(run.check("charDone")[1]).toBe(placed(run, "charring", short("E#1", "charring")));
});

test("one sample proved by a cold firing alone keeps all from being finished", () => {
  const run = heated("charring", [HOT, [200, 205, 45], HOT], { replicates: 2 });
  expect(run.check("charDone")[0]).toBe(FINE);
  const table = tableOf(run, "charring");
  // Sample 1 was not weighed after the last firing.
  run.type(table.box(table.rows.first + 2, 1), null);
  expect(run.check("charDone")[0]).toBe("? doubt");
});

test("a full table that proves nothing asks for one firing more, and its results are marked", () => {
  const run = heated("charring", [HOT, [200, 205, 45]]);
  if (run.sheet.end) run.type(run.sheet.end.vessel(1), null);
  expect(run.head()[0]).toBe("► Not finished: add a firing (task pane, Run sheet tab)");
  const row = run.sheet.rows.results.shares.volatile ?? 0;
  const place = run.sheet.rows.checks.lines.findIndex(({ check }) => check === "charDone") + 1;
  expect(run.value({ kind: "cell", row, column: 1, fixed: "nothing" })).toBe(`? check ${place}`);
});

describe("a stage held again", () => {
  const staged = (noted: readonly Noted[]): PlainRun => {
    const run = plainRun({ kind: "staged", stages: 4 });
    run.vessel(25);
    run.weigh([35, 29.01, 29]);
    run.fire("stages", noted.map((_, index) => 28.5 - 0.01 * index)); // prettier-ignore
    note(run, "stages", noted);
    return run;
  };
  test.each([
    [
      "as hot and as long",
      [
        [60, 58, 45],
        [60, 58, 45],
      ],
      FINE,
    ],
    [
      "colder at the sample",
      [
        [60, 58, 45],
        [60, 30, 45],
      ],
      "? Row 28: held again, but colder at the sample: no proof that nothing more leaves. Hold it again as hot.",
    ],
    [
      "not held",
      [
        [60, 58, 45],
        [60, 58, 0],
      ],
      "? Row 28: held again not at all, or far shorter: no proof that nothing more leaves. Hold it again as long.",
    ],
    [
      "a minute after none after long",
      [
        [60, 58, 45],
        [60, 58, 0],
        [60, 58, 1],
      ],
      "? Row 29: held again not at all, or far shorter: no proof that nothing more leaves. Hold it again as long.",
    ],
    [
      "properly after a short one",
      [
        [60, 58, 45],
        [60, 58, 0],
        [60, 58, 45],
      ],
      FINE,
    ],
    [
      "short of a longer stage that was set lower",
      [
        [60, 58, 600],
        [120, 118, 60],
        [120, 118, 30],
      ],
      FINE,
    ],
    [
      "of minutes nobody noted",
      [
        [60, 58, 45],
        [60, 58, null],
      ],
      FINE,
    ],
  ] as [string, readonly Noted[], string][])("%s", (_, noted, says) => {
    const [verdict, finding] = staged(noted).check("stageHeld");
    expect(finding === "" ? verdict : finding).toBe(says);
  });
});

test("the local workbook's engine says the same", async () => {
  const run = await openRunSheet({ ...USUAL, kind: "charring", charFirings: 2 });
  await run.vessel(25);
  for (const [index, grams] of [65, 51.01, 51].entries()) await run.round(index + 1, clock(9 + index), grams);
  await run.fire("charring", 1, 32.5, { set: 480, measured: 470, held: 45 });
  await run.fire("charring", 2, 32.5, { set: 200, measured: 205, held: 45 });
  const cold = await run.check("charDone");
  await run.fire("charring", 2, null, { set: 480, measured: 470, held: 0 });
  const unheld = await run.check("charDone");
  await run.fire("charring", 2, null, { held: 45 });
  const proved = await run.check("charDone");
  run.close();
  expect([cold[1], unheld[1], proved[0]]).toEqual([colder("D23", "D22", "charring"), short("E23", "charring"), FINE]);
});
