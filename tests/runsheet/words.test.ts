import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { RUN_KINDS } from "../../src/runsheet/options/RunSheetOptions";
import { cautions } from "../../src/runsheet/words/cautions";
import { USUAL } from "./plainRun";

const ROOM = path.join(__dirname, "../../src/runsheet");
const others = readdirSync(ROOM, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => file.endsWith(".ts") && !file.startsWith("words/"));

/** Texts in quotation marks or backticks, without comments and import paths. */
function quotedIn(file: string): string[] {
  const code = readFileSync(path.join(ROOM, file), "utf8")
    .replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "")
    .replace(/^(?:import|export) .*from ".*";$|^} from ".*";$/gm, "");
  return [...code.matchAll(/"((?:[^"\\]|\\.)*)"|`((?:[^`\\]|\\.)*)`/g)].map(
    ([, plain = "", template = ""]) => plain + template.replace(/\$\{.*\}/s, ""),
  );
}

// What is quoted elsewhere is a name, a format, a unit or an argument: never two words with a space between.
const ARGUMENTS_AND_NAMES = [
  "heating rate",
  "expected loss",
  "drying time",
  "start temperature",
  "oven temperature",
  "kiln temperature",
  "wanted uncertainty",
  "char yield",
];

test.each(others)("%s holds no words of the sheet", (file) => {
  const sentences = quotedIn(file).filter((text) => /[A-Za-z]{2,}[^a-z]* [A-Za-z]/.test(text) && !ARGUMENTS_AND_NAMES.includes(text));
  expect(sentences).toEqual([]);
});

test("there are files to look at, and a sentence would be found", () => {
  expect(others.length).toBeGreaterThan(30);
  expect(quotedIn("words/materialWords.ts").some((text) => text.startsWith("For a sound vessel"))).toBe(true);
});

test("the cautions of each kind of run, in full", () => {
  const drying = [
    "Hot vessels burn: use tongs and gloves, and weigh cold. A warm vessel also reads light.",
    "Never oven-dry what is wet with solvent or fuel: its vapour can ignite.",
    "Salts with water of crystallisation spit and lose that water too: heat slowly, in a deep vessel, with eyes protected.",
  ];
  const charring = [
    "The vapours are toxic and flammable: work outdoors or under a ducted hood, beside a carbon monoxide alarm.",
    "Never seal the vessel and never block its vent. Keep flames and sparks away from the vent.",
    "Let it cool closed until it is cold: warm char can ignite by itself when air reaches it.",
    "No treated, painted or chlorinated material. No nitrates, peroxides or other oxidisers.",
  ];
  const ashing = "Burning the char to ash gives off carbon monoxide: ducted hood, open vessel, nothing flammable near.";
  const last = "Local codes, fire rules and the makers' instructions come first. If in doubt, ask a qualified person.";
  expect(cautions).toEqual({
    drying: [...drying, last],
    charring: [...drying, ...charring, last],
    ashing: [...drying, ...charring, ashing, last],
  });
  for (const kind of RUN_KINDS) {
    const printed = buildRunSheet({ ...USUAL, kind }).cells.filter(({ style, content }) => style === "caution" && content !== undefined);
    expect(printed.map(({ content }) => content)).toEqual(cautions[kind]);
  }
});

describe("What a sheet prints", () => {
  const plan = buildRunSheet({ ...USUAL, replicates: 2, panZeros: true, temperatures: true });
  const printed = (style: string) => plan.cells.filter((cell) => cell.style === style).flatMap(({ content }) => content ?? []);

  it("is called by its labels, from top to bottom", () => {
    const [details, results, checks] = [
      [
        "Date",
        "Operator",
        "Sample",
        "Vessel",
        "Vessel material",
        "Balance readability (g)",
        "Balance repeatability (g)",
        "Wanted uncertainty (k = 2)",
      ],
      [
        "Moisture, wet basis",
        "Moisture, dry basis",
        "Volatile fraction of dry sample",
        "Char yield of dry sample",
        "Char yield, ash-free",
        "Ash of dry sample",
      ],
      ["Vessel and sample", "Order of weights", "Gain while drying", "Steady", "Balance fine enough", "Typical range", "Vessel and temperature"],
    ];
    const sample = [
      ...["Pan zero before vessel (g)", "Empty vessel (g)", "Pan zero after vessel (g)", "Empty vessel, drift-corrected (g)"],
      ...[1, 2, 3, 4, 5, 6, 7, 8],
      ...["Still to dry (a prediction)", "Vessel + dry sample (g)", "Kiln set (°C)", "Heating started (clock)", "Vent stopped smoking (clock)"],
      ...[
        "Cold, vessel opened (clock)",
        "Pan zero before char (g)",
        "Vessel + char (g)",
        "Pan zero after char (g)",
        "Vessel + char, drift-corrected (g)",
      ],
      ...["Ashing furnace set (°C)", "Pan zero before ash (g)", "Vessel + ash (g)", "Pan zero after ash (g)", "Vessel + ash, drift-corrected (g)"],
    ];
    expect(printed("label")).toEqual([
      ...[...details, "Planned interval (min)", "Oven temperature (°C)", "Drying criterion", "Drying limit", "One weighing, ± (g), k = 1"],
      ...["Steady since weigh-in", ...results, ...results.map(() => "± standard uncertainty (k = 1)")],
      ...[...checks, "Closure against open burning", "Pan zeros", "Cold when weighed"],
      ...[...results, ...sample, ...sample],
      ...["Formula of what burns", "Carbon (fraction of dry)", "Hydrogen (fraction of dry)", "Oxygen (fraction of dry)"],
      ...["Nitrogen (fraction of dry)", "Sulfur (fraction of dry)", "Dry sample (g)", "Closed: char left (g)", "Closed: left as vapour (g)"],
      ...["Open: oxygen taken up (g)", "Open: air that brings it (g)", "Open: ash left (g)", "Open: gases leaving (g)"],
      ...["Open: not in the analysis (g)", "Open: sample and oxygen, in (g)", "Open: all together, out (g)"],
    ]);
  });

  it("stands under headings", () => {
    expect(printed("heading")).toEqual([
      "Cautions",
      "Run details",
      "Results, each with its ± standard uncertainty (k = 1)",
      "Checks",
      "Replicates",
      "Sample 1",
      "Sample 2",
      "Closed charring against open burning",
      "Vessel materials",
    ]);
    const table = [
      ...["Weigh-in", "Clock", "Elapsed (min)", "Pan zero before (g)", "Vessel + sample (g)", "Pan zero after (g)", "Room (°C)"],
      ...["Sample when weighed (°C)", "Sample, drift-corrected (g)", "Change since last (g)", "Steady yet", "Cold enough", "Notes"],
    ];
    expect(printed("columnHeading")).toEqual([
      ...["Share or count", "Sample 1", "Sample 2", "Mean", "Standard deviation"],
      ...["Share", "Finished, n", "Range", "Method's s, from earlier work", "Critical range, 95 %", "Verdict"],
      ...[...table, ...table, "For the weighed sample", "Sample 1", "Sample 2", "Material", "Stands up to (°C)", "Source"],
    ]);
    const working = ["For the chart (min)", "For the chart (g)", "Vessel + sample, drift-corrected (g)", "Above the room (°C)"];
    expect(printed("noteHeading")).toEqual(["Working, sample 1", "Working, sample 2", ...working, ...working]);
  });

  it.each([
    ["drying", "Drying run", "Run sheet: drying", "Dry a weighed sample to constant weight and read off its moisture."],
    [
      "charring",
      "Charring run",
      "Run sheet: drying and charring",
      "Dry a weighed sample to constant weight, char it without air, and read off what left as vapour and what stayed as char.",
    ],
    [
      "ashing",
      "Ashing run",
      "Run sheet: drying, charring and ashing",
      "Dry a weighed sample to constant weight, char it without air, burn the char to ash, and read off each share.",
    ],
  ] as const)("says what a run of %s is for", (kind, name, title, purpose) => {
    const own = buildRunSheet({ ...USUAL, kind });
    expect([own.name, own.frozenRows, own.startAt]).toEqual([name, 1, "B6"]);
    expect(own.cells.slice(0, 4).map(({ cell, content }) => [cell, content])).toEqual([
      ["A1", title],
      ["A2", purpose],
      ["A3", "Boxed: for you to fill in"],
      ["B3", "Plain: calculated; stays empty until its inputs are there"],
    ]);
    expect(own.cells.at(-1)?.content).toBe(
      "For a sound vessel, heated and cooled slowly. The maker's own figure comes first; molten salts, alkali and reducing gas lower it.",
    );
    expect(own.chart).toMatchObject({ title: "Drying", xTitle: "Elapsed (min)", yTitle: "Sample (g)", over: "D6:H18" });
  });
});
