import path from "node:path";
import { Command } from "commander";
import { besideFile } from "../../src/command/files/bookFile";
import { withSheetOptions } from "../../src/command/sheet/sheetOptions";
import type { CarriedPlan, RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";

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
  kilnSetPoint: "--kiln-set-point",
};

test("every option of a run sheet can be given on the command line", () => {
  const offered = withSheetOptions(new Command("sheet")).options.map(({ long }) => long);
  expect([...offered].sort()).toEqual(Object.values(WORDS).sort());
});
