// The runs here are invented: prunings and shells of a community orchard, and a salts class.
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { LocalWorkbook } from "./localWorkbook";
import { RunSheetOnPage } from "./RunSheetOnPage";

jest.setTimeout(180_000);

let local: LocalWorkbook;
beforeAll(async () => {
  local = await LocalWorkbook.open();
});
afterAll(() => local?.close());

const sheetNames = () => local.page.evaluate(() => (window as WorkbenchWindow).retortWorkbench?.workbook.sheetNames());

const NOTHING_YET = "No answer yet: nothing has been weighed.";

test("drying only: a blank sheet asks for its vessel, then follows the sample to constant weight", async () => {
  const run = await RunSheetOnPage.insert(local, "Drying only");
  expect((await run.head()).slice(0, 2)).toEqual(["► Next: weigh the empty vessels, row 11", NOTHING_YET]);
  expect(await run.errors()).toEqual([]);
  await local.picture("run-drying-blank");
  await run.vessel("18.42");
  await run.round(1, "10:00", "30.47");
  expect(await run.says("Round 1: moist, g")).toBe("all in; into the oven");
  await run.round(2, "10:30", "28.61");
  expect([await run.reckoned("Round 2, g"), await run.says("Round 2, g")]).toEqual(["1.86", "still losing 1.86 g"]);
  expect(await run.shown("Water, of moist sample")).toBe("");
  await run.round(3, "11:00", "28.60");
  expect(await run.says("Dry sample, g")).toBe("✓ dry since round 3");
  // (30.47 - 28.60) / (30.47 - 18.42) = 1.87 / 12.05 and 1.87 / (28.60 - 18.42) = 1.87 / 10.18
  expect([await run.shown("Water, of moist sample"), await run.shown("Water, to dry sample")]).toEqual(["15.52%", "18.37%"]);
  expect((await run.head())[1]).toBe("15.519 % ± 0.089 % (95 %) of the moist sample was water; 84.481 % stayed dry. 1 sample.");
  await local.picture("run-drying-filled");
});

test("slips of the hand: a bare number for a time and a formula typed over are refused, swapped weighings withhold the answer", async () => {
  const run = await RunSheetOnPage.insert(local, "Drying and charring", "2");
  expect(await run.errors()).toEqual([]);
  await run.vessel("21.30", 1);
  await run.vessel("21.30", 2);
  for (const sample of [1, 2])
    for (const [index, grams] of ["41.80", "39.11", "39.10"].entries()) await run.round(index + 1, `${9 + index}:00`, grams, sample);
  const clock = run.cellOf("Round 4, g", 1);
  await local.type(clock, "9.30");
  await local.page.keyboard.press("Escape");
  expect((await local.read(clock)).value).toBeNull();
  const lost = run.cellOf("Round 3, g", 5);
  const { formula } = await local.read(lost);
  await local.type(lost, "3");
  await local.page.keyboard.press("Escape");
  expect((await local.read(lost)).formula).toBe(formula);
  await run.fire(2, 1, "26.41");
  await run.fire(2, 2, "93.10");
  expect((await run.head()).slice(1, 3)).toEqual([
    "▲ Answer withheld: two weights contradict each other. Put right what the next line names.",
    expect.stringMatching(/^▲ \d of 16 checks: Sample 1: char, C\d+, is above the dry sample, C14\. Swapped\? Weigh again, cold\.$/),
  ]);
  expect(await run.shown("Left as vapour, of dry")).toBe("withheld");
  // The pane says the same in the same words.
  const pane = RunSheetOnPage.pane(local);
  await pane.getByRole("tab", { name: "Run sheet" }).click();
  await pane.getByText("▲ Answer withheld: two weights contradict each other. Put right what the next line names.").waitFor();
  await local.picture("run-charring-wrong");
  await run.fire(2, 2, "26.40");
  // (39.10 - 26.40) / (39.10 - 21.30) = 12.70 / 17.80
  expect(await run.shown("Left as vapour, of dry")).toBe("71.35%");
  expect(await run.errors()).toEqual([]);
});

test("a synthetic run of known truth and noise: each share stands within its own stated ± of the truth, or half as much again", async () => {
  const run = await RunSheetOnPage.insert(local, "Drying, charring and ashing");
  await run.fillIn("Repeatability, g", "0.01");
  await run.fillIn("Limit", "8");
  const [vessel, dry] = [31.2, 20];
  const truth = { moisture: 0.25, volatile: 0.7, ash: 0.03 };
  // Noise of one display step drawn once from a normal distribution, then rounded to the 0.01 g the balance shows.
  const noise = [0.008, -0.013, 0.004, -0.006, 0.011, -0.002, 0.005, -0.009];
  const read = (grams: number, index: number): string => (grams + (noise[index] ?? 0)).toFixed(2);
  await run.vessel(read(vessel, 0));
  await run.round(1, "9:00", read(vessel + dry / (1 - truth.moisture), 1));
  await run.round(2, "10:00", read(vessel + dry, 2));
  await run.round(3, "11:00", read(vessel + dry, 3));
  await run.fire(2, 1, read(vessel + dry * (1 - truth.volatile), 6));
  await run.fire(2, 2, read(vessel + dry * (1 - truth.volatile), 4));
  await run.fire(3, 1, read(vessel + dry * truth.ash, 7));
  await run.fire(3, 2, read(vessel + dry * truth.ash, 5));
  const shares = [
    ["Water, of moist sample", truth.moisture],
    ["Left as vapour, of dry", truth.volatile],
    ["Stayed as char, of dry", 1 - truth.volatile],
    ["Ash, of dry", truth.ash],
  ] as const;
  for (const [label, share] of shares) {
    const stated =
      /^([\d.]+) % ± ([\d.]+) %$/
        .exec(await run.says(label))
        ?.slice(1)
        .map(Number) ?? [];
    const [percent = NaN, plusMinus = NaN] = stated;
    expect(plusMinus).toBeGreaterThan(0);
    // 1.5 times the ± at 95 % is three standard uncertainties.
    expect([label, Math.abs(percent - 100 * share) <= 1.5 * plusMinus]).toEqual([label, true]);
  }
});

describe("drying, charring and ashing: the run of the README", () => {
  let run: RunSheetOnPage;

  test("gives what the README reckons by hand", async () => {
    run = await RunSheetOnPage.insert(local, "Drying, charring and ashing");
    expect((await run.head())[1]).toBe(NOTHING_YET);
    await local.picture("run-ashing-blank");
    await run.vessel("25.00");
    const weighings = [
      ["9:00", "65.20"],
      ["9:20", "56.30"],
      ["9:40", "52.86"],
      ["10:00", "51.72"],
      ["10:20", "51.33"],
      ["10:40", "51.22"],
      ["11:00", "51.21"],
    ] as const;
    for (const [index, [clock, grams]] of weighings.entries()) await run.round(index + 1, clock, grams);
    expect(await run.says("Round 6, g")).toBe("still losing 0.11 g");
    expect(await run.says("Dry sample, g")).toBe("✓ dry since round 7");
    await local.picture("run-ashing-half");
    for (const [index, grams] of ["32.90", "32.54", "32.53"].entries()) await run.fire(2, index + 1, grams);
    for (const [index, grams] of ["25.41", "25.40"].entries()) await run.fire(3, index + 1, grams);
    await run.vesselAgain("25.00");
    await run.fillIn("Formula instead", "C6H10O5");
    expect(await run.shown("Water, of moist sample")).toContain("34.8");
    expect(await run.shown("Water, to dry sample")).toContain("53.38");
    expect(await run.shown("Left as vapour, of dry")).toContain("71.27");
    expect(await run.shown("Stayed as char, of dry")).toContain("28.73");
    expect(await run.shown("Ash, of dry")).toContain("1.5");
    // Oxygen taken up, and gases sent away, stand beside carbon and oxygen.
    expect([await run.reckoned("Carbon, %"), await run.reckoned("Oxygen, %")]).toEqual(["30.56", "56.37"]);
    expect((await run.head())[0]).toBe("Run complete: all weighings are in");
    expect(await run.errors()).toEqual([]);
    await local.picture("run-ashing-filled");
  });

  test("its drying and firing curves stand in the pane, each with a table for those who cannot see it", async () => {
    const pane = RunSheetOnPage.pane(local);
    await pane.getByRole("tab", { name: "Run sheet" }).click();
    await pane.getByText(`Weighings on sheet "${run.name}".`).waitFor();
    for (const chart of ["Drying", "Firing"]) {
      const figure = pane.locator("figure", { hasText: `${chart} as a table` });
      await figure.locator("canvas").waitFor();
      await figure.locator("table").waitFor({ state: "attached" });
    }
    await local.picture("run-chart");
  });

  test("a shared copy holds the same values without one formula, beside a record of every calculation", async () => {
    const before = (await run.calculated()).map(({ cell, shown }) => [cell, shown]);
    const pane = RunSheetOnPage.pane(local);
    await pane.getByRole("tab", { name: "Share" }).click();
    await pane.getByLabel(/Sheet/).selectOption(run.name);
    const names = (await sheetNames()) ?? [];
    await pane.getByLabel(/^This workbook/).check();
    await pane.getByRole("button", { name: "Share as values" }).click();
    await pane.getByText(/^Made "/).waitFor();
    await pane.getByRole("button", { name: "Show the copy" }).click();
    await local.settled();
    const added = ((await sheetNames()) ?? []).filter((name) => !names.includes(name));
    expect(added).toHaveLength(2);
    const [copy = "", record = ""] = added;
    const read = (sheet: string) => local.page.evaluate((name) => (window as WorkbenchWindow).retortWorkbench?.workbook.readUsed(name), sheet);
    const cells = ((await read(copy))?.rows ?? []).flat();
    expect(cells.filter(({ formula }) => formula !== "")).toEqual([]);
    const shownAt = (cell: string | undefined): string | undefined => cells.find((one) => one.cell === cell)?.shown;
    // What is next means nothing on a copy; in its place stands what the copy is.
    expect(shownAt("D1")).toMatch(/^Values of \d{4}-\d\d-\d\d; does not recalculate$/);
    for (const [cell, shown] of before) if (cell !== "D1") expect([cell, shownAt(cell)]).toEqual([cell, shown]);
    const recorded = ((await read(record))?.rows ?? []).flat().map(({ value }) => String(value ?? ""));
    expect(recorded.some((text) => text.includes("RETORT.CONSTANTWEIGHT("))).toBe(true);
    expect(recorded.some((text) => text.includes("CIAAW 2021"))).toBe(true);
    await local.picture("shared-copy");
    await local.page.evaluate((sheet) => (window as WorkbenchWindow).retortWorkbench?.workbook.select({ sheet, cell: "A1" }), record);
    await local.picture("shared-record");
  });
});

test("nothing was asked of another origin or complained of on the way", () => {
  expect(local.complaints).toEqual([]);
});
