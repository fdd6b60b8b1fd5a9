import path from "node:path";
import { Command } from "commander";
import { besideFile } from "../../src/command/files/bookFile";
import { runSheetOptions, withSheetOptions } from "../../src/command/sheet/sheetOptions";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import type { CarriedPlan, RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { layout } from "../../src/runsheet/sheet/layout";

test.each<[string, string]>([
  ["run.xlsx", "run values.xlsx"],
  ["./run.xlsx", "./run values.xlsx"],
  ["/srv/kiln/a.b/run.v2.xlsm", "/srv/kiln/a.b/run.v2 values.xlsm"],
])("beside %s stands %s", (file, beside) => expect(besideFile(file, " values", undefined, path.posix)).toBe(beside));

test.each<[string, string]>([
  ["C:\\Kiln\\Ana\\run.xlsx", "C:\\Kiln\\Ana\\run values.xlsx"],
  ["C:/Kiln/Ana/run.xlsx", "C:/Kiln/Ana/run values.xlsx"],
  ["C:run.xlsx", "C:run values.xlsx"],
  ["\\\\server\\share\\run.xlsx", "\\\\server\\share\\run values.xlsx"],
  ["\\\\?\\C:\\a\\run.xlsx", "\\\\?\\C:\\a\\run values.xlsx"],
  ["..\\RUN.XLSX", "..\\RUN values.XLSX"],
])("on Windows beside %s stands %s", (file, beside) => expect(besideFile(file, " values", undefined, path.win32)).toBe(beside));

// Every option of a run sheet, and what its word on the command line is; where the cautions stand and what was added is the sheet's own affair.
const WORDS: Readonly<Record<Exclude<keyof RunSheetOptions, "plan" | "cautionsAfter" | "addedSample"> | keyof CarriedPlan, string>> = {
  ...{ kind: "--kind", weighIns: "--weigh-ins", intervalMinutes: "--interval", readability: "--readability", vessel: "--vessel" },
  ...{ replicates: "--replicates", ovenCelsius: "--oven", panZeros: "--pan-zeros", temperatures: "--temperatures", receivers: "--receivers" },
  ...{ charFirings: "--char-firings", ashFirings: "--ash-firings", stages: "--stages", formula: "--formula", residue: "--residue" },
  ...{
    samplesAre: "--samples-are",
    degrees: "--degrees",
    timing: "--timing",
    moistGrams: "--moist-grams",
    dryGrams: "--dry-grams",
    repeatability: "--repeatability",
  },
  ...{ wantedUncertainty: "--wanted-uncertainty", methodScatter: "--method-scatter", vesselMaterial: "--vessel-material" },
  ...{ kilnSetPoint: "--kiln-set-point", heatingRate: "--heating-rate", holdMinutes: "--hold-minutes", coolingHours: "--cooling-hours" },
  ...{ expectedLoss: "--expected-loss", molarMass: "--molar-mass", expectedMoisture: "--expected-moisture", dryingHours: "--drying-hours" },
  ...{ bulkDensity: "--bulk-density", beginAt: "--begin-at" },
};

test("every option of a run sheet can be given on the command line", () => {
  const offered = withSheetOptions(new Command("sheet")).options.map(({ long }) => long);
  expect([...offered].sort()).toEqual(Object.values(WORDS).sort());
});

test("what is left out is as the page begins with, so that three samples of a char stand on two pages", () => {
  const command = withSheetOptions(new Command("sheet"));
  command.parse(["node", "sheet", "--kind", "charring", "--replicates", "3"]);
  const options = runSheetOptions(command.opts());
  expect([options.weighIns, options.intervalMinutes]).toEqual([8, 20]);
  for (const replicates of [1, 2, 3]) expect(layout(checkOptions({ ...options, replicates })).breaks).toHaveLength(1);
});

test("what a plan knew goes onto the sheet, a clock time read as one", () => {
  const command = withSheetOptions(new Command("sheet"));
  command.parse([
    ...["node", "sheet", "--kind", "charring", "--moist-grams", "45", "--wanted-uncertainty", "0.005", "--kiln-set-point", "450"],
    ...["--heating-rate", "5", "--hold-minutes", "60", "--cooling-hours", "2.5", "--expected-loss", "0.7", "--molar-mass", "25"],
    ...["--expected-moisture", "0.5", "--drying-hours", "3", "--bulk-density", "0.25", "--begin-at", "9:30"],
  ]);
  expect(runSheetOptions(command.opts()).plan).toEqual({
    ...{ moistGrams: 45, wantedUncertainty: 0.005, kilnSetPoint: 450, heatingRate: 5, holdMinutes: 60, coolingHours: 2.5, expectedLoss: 0.7 },
    ...{ molarMass: 25, expectedMoisture: 0.5, dryingHours: 3, bulkDensity: 0.25, beginAt: 570 },
  });
});

test("a part of a plan without what every plan has is refused instead of left out in silence", () => {
  const command = withSheetOptions(new Command("sheet"));
  command.parse(["node", "sheet", "--kind", "charring", "--cooling-hours", "2", "--moist-grams", "45"]);
  expect(() => runSheetOptions(command.opts())).toThrow(
    "--cooling-hours is from a plan, and every plan has --moist-grams and --wanted-uncertainty. Give both, or leave it out.",
  );
});

test.each([
  ["25:10", /"25:10" is no clock time: hours go from 0 to 23/],
  ["9:3", /"9:3" has one figure for the minutes\. Type two: 9:03 or 9:30\./],
  ["930", /"930" is a bare number, no clock time\. Type 9:30 if you mean that\./],
])("begin at %s is refused in words", (time, why) => {
  const command = withSheetOptions(new Command("sheet"))
    .exitOverride()
    .configureOutput({ writeErr: () => undefined });
  expect(() => command.parse(["node", "sheet", "--kind", "drying", "--begin-at", time])).toThrow(why);
});
