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

/** What a blank sheet already knows: the uncertainty of one weighing, from the readability chosen in the pane. */
const onlyTheBalance = [expect.objectContaining({ error: "", value: expect.closeTo(0.01 / Math.sqrt(6), 6) })];

const sheetNames = () => local.page.evaluate(() => (window as WorkbenchWindow).retortWorkbench?.workbook.sheetNames());

test("drying only: a blank sheet shows nothing calculated, then follows the sample to constant weight", async () => {
  const run = await RunSheetOnPage.insert(local, "Drying only");
  expect(await run.calculated()).toEqual(onlyTheBalance);
  await local.picture("run-drying-blank");
  await run.fillIn("Empty vessel (g)", "18.42");
  await run.weighIn(1, "10:00", "30.47");
  expect(await run.inTable("Sample (g)", 1)).toBe("12.05");
  await run.weighIn(2, "10:30", "28.61");
  expect(await run.inTable("Steady yet", 2)).toBe("not yet");
  expect(await run.shown("Moisture, wet basis")).toBe("");
  await run.weighIn(3, "11:00", "28.60");
  expect(await run.inTable("Steady yet", 3)).toBe("steady");
  // (30.47 - 28.60) / (30.47 - 18.42) = 1.87 / 12.05 and 1.87 / (28.60 - 18.42) = 1.87 / 10.18
  expect(await run.shown("Moisture, wet basis")).toContain("15.5");
  expect(await run.shown("Moisture, dry basis")).toContain("18.4");
  await local.picture("run-drying-filled");
});

test("drying and charring: swapped weighings show an error whose sentence the pane explains", async () => {
  const run = await RunSheetOnPage.insert(local, "Drying and charring", "2");
  expect(await run.calculated()).toEqual(onlyTheBalance);
  await run.fillIn("Empty vessel (g)", "21.30", 1);
  await run.weighIn(1, "9:00", "41.80");
  await run.weighIn(2, "9:30", "39.11");
  await run.weighIn(3, "10:00", "39.10");
  await run.fillIn("Vessel + char (g)", "93.10", 1);
  const pane = RunSheetOnPage.pane(local);
  await pane.getByRole("tab", { name: "This cell" }).click();
  const [wrong] = (await run.calculated()).filter(({ error }) => error !== "");
  expect(wrong?.error).toBe("#VALUE!");
  await local.goTo(wrong?.cell ?? "");
  await pane
    .getByText(/93\.1 g is more than .*39\.1 g\. Check for swapped cells or regained moisture\./)
    .first()
    .waitFor();
  await local.picture("run-charring-wrong");
  await run.fillIn("Vessel + char (g)", "26.41", 1);
  expect((await run.calculated()).filter(({ error }) => error !== "")).toEqual([]);
  // (39.10 - 26.41) / (39.10 - 21.30) = 12.69 / 17.80
  expect(await run.shown("Volatile fraction of dry sample")).toContain("71.3");
});

test("a synthetic run of known truth and noise: each share stands within three of its own stated uncertainties of the truth", async () => {
  const run = await RunSheetOnPage.insert(local, "Drying, charring and ashing");
  await run.fillIn("Balance repeatability (g)", "0.01");
  const [vessel, dry] = [31.2, 20];
  const truth = { moisture: 0.25, volatile: 0.7, ash: 0.03 };
  // Noise of one display step drawn once from a normal distribution, then rounded to the 0.01 g the balance shows.
  const noise = [0.008, -0.013, 0.004, -0.006, 0.011, -0.002];
  const read = (grams: number, index: number): string => (grams + (noise[index] ?? 0)).toFixed(2);
  await run.fillIn("Empty vessel (g)", read(vessel, 0));
  await run.weighIn(1, "9:00", read(vessel + dry / (1 - truth.moisture), 1));
  await run.weighIn(2, "10:00", read(vessel + dry, 2));
  await run.weighIn(3, "11:00", read(vessel + dry, 3));
  await run.fillIn("Vessel + char (g)", read(vessel + dry * (1 - truth.volatile), 4));
  await run.fillIn("Vessel + ash (g)", read(vessel + dry * truth.ash, 5));
  const shares = [
    ["Moisture, wet basis", truth.moisture],
    ["Volatile fraction of dry sample", truth.volatile],
    ["Char yield of dry sample", 1 - truth.volatile],
    ["Ash of dry sample", truth.ash],
  ] as const;
  for (const [label, share] of shares) {
    const stated =
      /^([\d.]+) % ± ([\d.]+) %$/
        .exec(await run.shownBelow(label))
        ?.slice(1)
        .map(Number) ?? [];
    const [percent = NaN, uncertainty = NaN] = stated;
    expect(uncertainty).toBeGreaterThan(0);
    expect([label, Math.abs(percent - 100 * share) <= 3 * uncertainty]).toEqual([label, true]);
  }
});

describe("drying, charring and ashing: the run of the README", () => {
  let run: RunSheetOnPage;

  test("gives what the README reckons by hand", async () => {
    run = await RunSheetOnPage.insert(local, "Drying, charring and ashing");
    expect(await run.calculated()).toEqual(onlyTheBalance);
    await local.picture("run-ashing-blank");
    await run.fillIn("Empty vessel (g)", "25.00");
    const weighings = [
      ["9:00", "65.20"],
      ["9:20", "56.30"],
      ["9:40", "52.86"],
      ["10:00", "51.72"],
      ["10:20", "51.33"],
      ["10:40", "51.22"],
      ["11:00", "51.21"],
    ] as const;
    for (const [index, [clock, grams]] of weighings.entries()) await run.weighIn(index + 1, clock, grams);
    expect(await run.inTable("Sample (g)", 1)).toBe("40.20");
    expect(await run.inTable("Steady yet", 6)).toBe("not yet");
    expect(await run.shown("Steady since weigh-in")).toBe("7");
    await run.fillIn("Vessel + char (g)", "32.53");
    await run.fillIn("Vessel + ash (g)", "25.40");
    await run.fillIn("Formula of what burns", "C6H10O5");
    expect(await run.shown("Moisture, wet basis")).toContain("34.8");
    expect(await run.shown("Moisture, dry basis")).toContain("53.4");
    expect(await run.shown("Volatile fraction of dry sample")).toContain("71.3");
    expect(await run.shown("Char yield of dry sample")).toContain("28.7");
    expect(await run.shown("Ash of dry sample")).toContain("1.5");
    expect(await run.shown("Open: oxygen taken up (g)")).toBe("30.56");
    expect(await run.shown("Open: gases leaving (g)")).toBe("56.37");
    expect((await run.calculated()).filter(({ error }) => error !== "")).toEqual([]);
    await local.picture("run-ashing-filled");
  });

  test("its drying chart stands in the pane, with a table for those who cannot see it", async () => {
    const pane = RunSheetOnPage.pane(local);
    await pane.getByRole("tab", { name: "Run sheet" }).click();
    await pane.getByText(`Weighings on sheet "${run.name}".`).waitFor();
    await pane.locator("figure canvas").waitFor();
    await pane.locator("figure table").waitFor({ state: "attached" });
    await local.picture("run-chart");
  });

  test("a shared copy holds the same values without one formula, beside a record of every calculation", async () => {
    const before = (await run.calculated()).map(({ cell, shown }) => [cell, shown]);
    const pane = RunSheetOnPage.pane(local);
    await pane.getByRole("tab", { name: "Share" }).click();
    await pane.getByLabel(/Sheet/).selectOption(run.name);
    const names = (await sheetNames()) ?? [];
    await pane.getByRole("button", { name: "Make a copy with values" }).click();
    await pane.getByText(/^Made "/).waitFor();
    await pane.getByRole("button", { name: "Show the copy" }).click();
    await local.settled();
    const added = ((await sheetNames()) ?? []).filter((name) => !names.includes(name));
    expect(added).toHaveLength(2);
    const [copy = "", record = ""] = added;
    const read = (sheet: string) => local.page.evaluate((name) => (window as WorkbenchWindow).retortWorkbench?.workbook.readUsed(name), sheet);
    const cells = ((await read(copy))?.rows ?? []).flat();
    expect(cells.filter(({ formula }) => formula !== "")).toEqual([]);
    for (const [cell, shown] of before) expect([cell, cells.find((one) => one.cell === cell)?.shown]).toEqual([cell, shown]);
    const recorded = ((await read(record))?.rows ?? []).flat().map(({ value }) => String(value ?? ""));
    expect(recorded.some((text) => text.includes("RETORT.MOISTURE.WET("))).toBe(true);
    expect(recorded.some((text) => text.includes("CIAAW 2021"))).toBe(true);
    await local.picture("shared-copy");
    await local.page.evaluate((sheet) => (window as WorkbenchWindow).retortWorkbench?.workbook.select({ sheet, cell: "A1" }), record);
    await local.picture("shared-record");
  });
});

test("nothing was asked of another origin or complained of on the way", () => {
  expect(local.complaints).toEqual([]);
});
