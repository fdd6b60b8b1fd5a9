// Each kind of run is walked through by the one box of the pane alone, through the local workbook's engine. The runs are invented: plum
// prunings and resin of a community orchard, blue crystals of a salts class, the orchard's balance.
import { WeighIn, type Outcome } from "../../../../src/pane/runSheet/weighIn/WeighIn";
import { buildRunSheet } from "../../../../src/runsheet/buildRunSheet";
import type { RunSheetOptions } from "../../../../src/runsheet/options/RunSheetOptions";
import { growRunSheet } from "../../../../src/runsheet/growing/growRunSheet";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

// Each reading is calculated by the engine.
jest.setTimeout(240_000);

const usual = { weighIns: 4, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 1 } as const;

let open: HeadlessWorkbook;
let name = "";
let weighIn: WeighIn;
afterEach(() => open.close());

async function opened(options: Partial<RunSheetOptions> & Pick<RunSheetOptions, "kind">): Promise<void> {
  open = await openHeadlessWorkbook();
  name = await open.workbook.addSheet(buildRunSheet({ ...usual, ...options }));
  weighIn = new WeighIn(open.workbook);
  await weighIn.look(name);
}

const next = (): string => weighIn.next?.name ?? "";
const noon = new Date(2026, 10, 21, 12, 0, 10);
const enter = (typed: string, now = noon, time = "", allTheSame = false): Promise<Outcome> => weighIn.enter(typed, time, now, allTheSame);
const held = async (place: string) => (await open.workbook.read(name, place)).rows[0]?.[0]?.value;

/** Enters each text into the box that is next; "-" leaves it blank, and "!…" takes the choice of that name. @returns what each box was called */
async function walk(...typed: readonly string[]): Promise<string[]> {
  const asked: string[] = [];
  for (const one of typed) {
    asked.push(next());
    const skip = one.startsWith("!") ? weighIn.next?.skips.find(({ words }) => words === one.slice(1)) : undefined;
    if (one === "-") weighIn.pass();
    else if (skip !== undefined) weighIn.skip(skip);
    else expect([asked.at(-1), one, await enter(one)]).toEqual([asked.at(-1), one, { told: expect.any(String) as string }]);
  }
  return asked;
}

const fire = (row: string): string[] => ["lit", "set to", "at the sample", "held", "vent quiet", "opened, cold"].map((one) => `${one}, ${row}`);
const toWeighing = "!Straight to the weighing";

/** Rounds an hour apart, so that nothing is doubted. */
async function dried(...grams: readonly string[]): Promise<void> {
  for (const [index, one] of grams.entries()) await enter(one, new Date(2026, 10, 21, 8, 30 * index));
}

test("char and ash: each firing's fire, then its weighing", async () => {
  await opened({ kind: "ashing" });
  await dried("25", "65.2", "51.21", "51.21");
  expect(await walk("12:00", "450", "441", "60", "13:10", "15:00", "32.53", toWeighing, "32.53")).toEqual([
    ...fire("firing 1"),
    "vessel + char, after firing 1",
    "lit, firing 2",
    "vessel + char, after firing 2",
  ]);
  expect(next()).toBe("lit, firing 1");
  expect(await walk(toWeighing, "25.8", toWeighing, "25.8", "25")).toEqual([
    "lit, firing 1",
    "vessel + ash, after firing 1",
    "lit, firing 2",
    "vessel + ash, after firing 2",
    "empty vessel again",
  ]);
  expect([next(), weighIn.rest]).toEqual(["", "Run complete: all weighings are in"]);
});

test("with liquids caught: each sample's apparatus empty before the fire, and what it caught after the last firing", async () => {
  await opened({ kind: "liquids", replicates: 2, receivers: 2 });
  const before = (part: string, sample: number): string => `before the fire, ${part}, sample ${sample}`;
  const after = (part: string, sample: number): string => `after the fire, ${part}, sample ${sample}`;
  await dried("41.86", "tared");
  for (const round of [
    ["72.14", "40.2"],
    ["62.71", "27.61"],
    ["62.71", "27.61"],
  ])
    // prettier-ignore
    for (const grams of round) await enter(grams, new Date(2026, 10, 21, 9, 30 * Number(weighIn.next?.at.row ?? 0) - 360));
  expect(await walk("55.2", "-", "120.5", "98.72", "54.1", "79.3", "121.4", "-")).toEqual(
    [1, 2].flatMap((sample) => ["tube and lid", "trap", "receiver 1", "receiver 2"].map((part) => before(part, sample))),
  );
  expect(await walk("13:00", toWeighing, "47.85", "7.8", toWeighing, "47.85", "7.8")).toEqual([
    "lit, firing 1",
    "set to, firing 1",
    "vessel + char, after firing 1, sample 1",
    "vessel + char, after firing 1, sample 2",
    "lit, firing 2",
    "vessel + char, after firing 2, sample 1",
    "vessel + char, after firing 2, sample 2",
  ]);
  expect(next()).toBe(after("tube and lid", 1));
  expect(await enter("54.9")).toEqual({
    doubt: "Before it is entered: it is 0.30 g lighter than before the fire. Weigh it again, and look which part it is.",
  });
  expect(await enter("55.41")).toEqual({
    told: `After the fire, tube and lid, sample 1: 55.41 g, in C${(weighIn.next?.at.row ?? 0) - 2}. Caught 0.21 g. The sheet says: not all weighed yet; waits for a second weight.`,
  });
  // What was not weighed empty is not asked for.
  expect(await walk("127.9", "99.65", "54.4", "80.4", "131.11")).toEqual([
    after("receiver 1", 1),
    after("receiver 2", 1),
    after("tube and lid", 2),
    after("trap", 2),
    after("receiver 1", 2),
  ]);
  expect(await walk("5.3", "68", "1", "-", "!Leave gas, water and ± blank", "41.86", "0")).toEqual([
    "gas measured, sample 1",
    "water in the liquids, sample 1",
    "each % known to ±, sample 1",
    "gas measured, sample 2",
    "water in the liquids, sample 2",
    "empty vessel again, sample 1",
    "empty vessel again, sample 2",
  ]);
  expect([next(), weighIn.rest]).toEqual(["", "Run complete: all weighings are in"]);
});

test("of apparatus, what the ledger needs is asked for until the char is weighed, the rest until the fire is lit", async () => {
  await opened({ kind: "liquids", receivers: 1 });
  await dried("41.86", "72.14", "62.71", "62.71");
  expect(await walk("-", "-")).toEqual(["before the fire, tube and lid", "before the fire, trap"]);
  expect([next(), weighIn.next?.isOptional]).toEqual(["before the fire, receiver 1", false]);
});

test("staged heating: heat, hold, cool, weigh, name what left, until there are no more stages", async () => {
  await opened({ kind: "staged", stages: 4, readability: 0.001 });
  await dried("21.5", "26.504", "26.5", "26.5");
  expect(await walk("", "120", "116", "45", "", "-")).toEqual(fire("stage 1"));
  expect(await enter("25.78")).toEqual({
    told: `Vessel + what is left, after stage 1: 25.780 g, in C${(await place("After stage 1, g")).row}. Left: 85.60 % of the dry sample. The sheet says: lost 0.720 g; after stage 1.`,
  });
  expect(await walk("crystal water")).toEqual(["what left, stage 1"]);
  expect(await held(`H${(await place("Stage 1")).row}`)).toBe("crystal water");
  expect(await walk("-", "250")).toEqual(["lit, stage 2", "set to, stage 2"]);
});

test("staged heating refuses to fall unasked, and ends where the person says so", async () => {
  await opened({ kind: "staged", stages: 4, readability: 0.001 });
  await dried("21.5", "26.504", "26.5", "26.5");
  await walk("-", "120", toWeighing, "25.78", "-", "-");
  expect(next()).toBe("set to, stage 2");
  expect(await enter("110")).toMatchObject({ doubt: expect.stringMatching(/^Before it is entered: [?▲] /) as string });
  expect(await walk("250", toWeighing, "25.06", "-", "!No more stages", "21.5")).toEqual([
    "set to, stage 2",
    "at the sample, stage 2",
    "vessel + what is left, after stage 2",
    "what left, stage 2",
    "lit, stage 3",
    "empty vessel again",
  ]);
  expect(next()).toBe("");
  expect(weighIn.rest).toBe("Run complete: all weighings are in");
});

test("staged heating asks for no notes any more once the sheet says that all weighings are in", async () => {
  await opened({ kind: "staged", stages: 2, readability: 0.001 });
  await dried("21.5", "26.504", "26.5", "26.5");
  await walk("-", "120", toWeighing, "25.78", "-", "-", "250", toWeighing, "25.06");
  expect(next()).toBe("what left, stage 2");
  await open.type(name, `C${(await place("Empty vessel again, g")).row}`, 21.5);
  await open.settled();
  await weighIn.look(name);
  expect([next(), weighIn.rest]).toEqual(["", "Run complete: all weighings are in"]);
});

test("a table that is full and not dry says what to do, and a round added from the pane is the next box", async () => {
  await opened({ kind: "drying", weighIns: 3 });
  await dried("25", "65", "55", "48");
  expect([next(), weighIn.rest]).toEqual(["", "► Full, not dry: add a round (task pane), or insert a copy of row 14 below it"]);
  expect(await growRunSheet(open.workbook, name, "weighIns")).toBe("Added: round 4. Everything typed stands.");
  await weighIn.look(name);
  expect(next()).toBe("vessel + sample, round 4");
  expect([await held("C12"), await held("C13"), await held("C14"), await held("C15")]).toEqual([65, 55, 48, null]);
});

test("stages and receivers added while the work goes on come next, and nothing typed moves away from its label", async () => {
  await opened({ kind: "liquids", receivers: 1 });
  await dried("41.86", "72.14", "62.71", "62.71");
  await walk("55.2", "-", "120.5");
  expect(next()).toBe("lit, firing 1");
  expect(await growRunSheet(open.workbook, name, "receivers")).toMatch(/^Added: receiver 2\. Everything typed stands\./);
  await weighIn.look(name);
  expect(next()).toBe("before the fire, receiver 2");
  const { row } = await place("Receiver 1, g");
  expect(await held(`C${row}`)).toBe(120.5);
});

test("a salt: heated as weighed in, once a round is in", async () => {
  await opened({ kind: "salt", readability: 0.001, formula: "CuSO4·5H2O", residue: "CuSO4" });
  const { row } = await place("Surface water");
  await open.type(name, `B${row}`, "as weighed");
  await weighIn.look(name);
  await dried("20.112", "22.512");
  expect(await walk(toWeighing, "21.648", toWeighing, "21.648", "20.112")).toEqual([
    "lit, firing 1",
    "vessel + what is left, after firing 1",
    "lit, firing 2",
    "vessel + what is left, after firing 2",
    "empty vessel again",
  ]);
});

test("a balance check: the weight, its rounds on their days, zeros after, and the corners once", async () => {
  await opened({ kind: "balance", weighIns: 10 });
  expect(await walk("200", "0.01")).toEqual(["check weight", "known to ±"]);
  expect([next(), weighIn.timed, weighIn.asksForTime, weighIn.stamp(noon)]).toEqual(["check weight, round 1", "day", true, "2026-11-21"]);
  expect(await enter("200.01")).toEqual({
    told: "Check weight, round 1: 200.01 g on 2026-11-21, in C13. 0.01 g above the weight's value. The sheet says: begins the history.",
  });
  expect(await held("B13")).toBe(46_347);
  expect(await walk("0", "70")).toEqual(["zero after, round 1", "corners, centre"]);
  expect(await enter("69.93")).toMatchObject({ told: expect.stringContaining("0.07 g below the centre.") as string });
  expect(await walk("70", "70.01", "70", "70")).toEqual(["front right", "back left", "back right", "centre again"].map((one) => `corners, ${one}`));
  const week = new Date(2026, 10, 28, 9, 5);
  expect(await enter("100", week)).toMatchObject({ doubt: expect.stringContaining("another weight, or a slip. Weigh again") as string });
  expect(await enter("200", week, "27.11.")).toEqual({ refused: "Type the day as 21 Nov 2026 or 2026-11-21. Left blank, it is today.", of: "time" });
  expect(await enter("200", week, "20 Nov 2026")).toMatchObject({
    doubt: expect.stringContaining("B14 is before B13, the round above it") as string,
  });
  expect(await enter("200", week, "27 Nov 2026")).toMatchObject({
    told: expect.stringContaining("200.00 g on 2026-11-27, in C14. As the weight's value.") as string,
  });
  expect(await weighIn.takeBack()).toEqual({
    told: "Check weight, round 2, C14: taken back. Correct it and press Enter.",
    reading: "200",
    time: "2026-11-27",
  });
  expect([await held("B14"), await held("C14")]).toEqual([null, null]);
  await enter("200.02", week);
  await walk("-");
  // A second round on one day has its time, so that rounds stay in order.
  expect(await enter("200", new Date(2026, 10, 28, 16, 30))).toMatchObject({ told: expect.stringContaining("on 2026-11-28 16:30") as string });
});

test("corners may wait for another day, and a full table says what to do", async () => {
  await opened({ kind: "balance", weighIns: 3 });
  await walk("200", "-", "200.01", "-", "!No corners this time");
  for (const round of [2, 3]) {
    expect(next()).toBe(`check weight, round ${round}`);
    await enter("200", new Date(2026, 10, 21 + round, 9));
    weighIn.pass();
  }
  expect([next(), weighIn.rest]).toEqual(["", "► Full: add a round (task pane), or insert a copy of row 15 below it"]);
});

/** Where a label stands in the first column. */
async function place(label: string): Promise<{ row: number }> {
  const { rows } = await open.workbook.readUsed(name);
  const found = rows.findIndex(([first]) => first?.value === label);
  if (found === -1) throw new Error(`no ${label}: ${rows.map(([first]) => String(first?.value)).join("; ")}`);
  return { row: found + 1 };
}
