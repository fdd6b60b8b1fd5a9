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
  ...["heating rate", "expected loss", "drying time", "start temperature", "oven temperature", "kiln temperature", "wanted uncertainty"],
  ...["char firings", "ash firings", "temperature at the balance"],
  // A criterion of CONSTANTWEIGHT, and what is looked for in what was noted.
  ...["per hour", "*white edge*", "*no white edge*"],
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
    const printed = buildRunSheet({ ...USUAL, kind }).cells.filter(({ style, content }) => style === "runCaution" && content !== undefined);
    expect(printed.map(({ content }) => content)).toEqual(cautions[kind]);
  }
});

describe("What a sheet prints", () => {
  const plan = buildRunSheet({ ...USUAL, replicates: 2, weighIns: 3, panZeros: true, temperatures: true });
  const rowOf = (at: string): number => Number(at.replace(/\D/g, ""));
  const inColumn = (column: string): unknown[] =>
    plan.cells
      .filter(({ cell: at, content }) => at.replace(/\d/g, "") === column && content !== undefined)
      .sort((one, other) => rowOf(one.cell) - rowOf(other.cell))
      .map(({ content }) => content);

  it("is called by its labels, from top to bottom", () => {
    const rounds = ["Empty vessel, g", "Round 1: moist, g", "Round 2, g", "Round 3, g"];
    const after = (count: number): string[] => Array.from({ length: count }, (_, index) => `After firing ${index + 1}, g`);
    const firings = (count: number): string[] => Array.from({ length: count }, (_, index) => `Firing ${index + 1}`);
    expect(inColumn("A")).toEqual([
      ...["Drying, charring, ashing", "SET UP", "Date; who", "Material", "Samples, which are"],
      ...["1 DRYING", ...rounds, "Dry sample, g", "balance and room", ...rounds],
      ...["2 CHARRING: the fire", ...firings(3), "2 weighed when cold", ...after(3), "Char, g", "balance and room", ...after(3)],
      ...["CAUTIONS", ...cautions.ashing],
      ...["3 ASHING: the fire", ...firings(2), "3 weighed when cold", ...after(2), "Ash, g", "balance and room", ...after(2)],
      ...["4 AT THE END", "Empty vessel again, g", "balance and room", "Empty vessel, g", "Notes"],
      ...["RESULTS (shares)", "Water, of moist sample", "Water, to dry sample", "Left as vapour, of dry", "Stayed as char, of dry"],
      ...["Char without its ash", "Ash, of dry", "CHECKS", "1  Vessel and sample", "2  Times in order", "3  No row left out"],
      ...["4  No gain on heating", "5  Order of weights", "6  Shown dry", "7  Opened when cold", "8  Charring finished", "9  Ashing finished"],
      ...["10  No air got in", "11  Vessel at the end", "12  Samples agree", "13  Balance fine enough", "14  Usual range", "15  Vessel stands it"],
      ...["16  Analysis", "17  Pan zeros", "18  Cold when weighed", "19  Nothing typed over"],
      ...["SETTINGS", "Balance step, g", "Repeatability, g", "Wanted ±, 95 %", "Rounds apart, min", "Criterion", "Limit", "Oven, °C"],
      ...["Vessel", "Vessel made of", "Closed after quiet, min", "Method's own s"],
      ...["OPEN FIRE", "Carbon, %", "Hydrogen, %", "Oxygen, %", "Nitrogen, %", "Sulfur, %", "Each known to ±, %", "Formula instead"],
      ...["CURVES", "VESSELS", "soda-lime glass", "borosilicate glass 3.3", "fused quartz", "glazed porcelain", "sintered alumina", "tinned steel"],
      ...["mild steel", "stainless steel 18/8", "aluminium", "nickel", "graphite"],
      "For a sound vessel, heated and cooled slowly. The maker's own figure comes first; molten salts, alkali and reducing gas lower it.",
    ]);
  });

  it("has its tables under these headings", () => {
    const headings = (label: string): unknown[] => {
      const row = rowOf(plan.cells.find(({ content }) => content === label)?.cell ?? "");
      const band = plan.cells.filter(({ cell: at, style, content }) => rowOf(at) === row && style?.includes("Band") && content !== undefined);
      return band.map(({ content }) => content).slice(1);
    };
    const samples = ["Sample 1", "Sample 2"];
    expect(headings("1 DRYING").sort()).toEqual(["Clock", ...samples, "1 lost, g", "2 lost, g", "What the sheet says"].sort());
    expect(headings("balance and room")).toEqual(["Zero before, g", "Zero after, g", "Room, °C", "Sample, °C", "taken off, g", "Cold enough"]);
    expect(headings("2 CHARRING: the fire")).toEqual([
      "Lit (clock)",
      "Set to, °C",
      "At sample, °C",
      "Held, min",
      "Vent quiet",
      "Opened, cold",
      "Seen (smoke, edges)",
    ]);
    expect(headings("2 weighed when cold").sort()).toEqual([...samples, "1 lost, g", "2 lost, g", "What the sheet says"].sort());
    expect(headings("4 AT THE END").sort()).toEqual([...samples, "1 gain, g", "2 gain, g", "What the sheet says"].sort());
    expect(headings("RESULTS (shares)").sort()).toEqual(["Trust", ...samples, "1 ± 95 %", "2 ± 95 %", "Together"].sort());
    expect(headings("CHECKS")).toEqual(["Verdict", "What was found, where, and what to do"]);
    expect(headings("OPEN FIRE").sort()).toEqual(
      ["Of dry, %", "from an analysis, or type a formula", "1 grams", "2 grams", "What the sheet says"].sort(),
    );
  });

  it("says beside each setting what it is for", () => {
    const from = rowOf(plan.cells.find(({ content }) => content === "SETTINGS")?.cell ?? "");
    const help = plan.cells.filter(
      ({ cell: at, style, content }) =>
        style === "runBeside" && rowOf(at) > from && rowOf(at) <= from + 11 && content !== undefined && content !== "",
    );
    expect(help.map(({ content }) => content)).toEqual([
      "smallest step of the display",
      "scatter of one weight put on ten times; blank: the ± is rounding only",
      "of the share that left; weighing and scatter are held against it",
      "as planned; a round far off it is questioned",
      "what dry, and fired to the end, are judged by",
      "largest change that counts as none: display steps, or as the criterion says",
      "what the oven is set to",
      "held against the temperatures; list at the foot of the sheet",
      "shortest time closed after the vent went quiet; local practice",
      "scatter of repeats in earlier work; blank if not known",
    ]);
  });

  it.each([
    ["drying", "Drying run", "Drying"],
    ["charring", "Charring run", "Drying, charring"],
    ["ashing", "Ashing run", "Drying, charring, ashing"],
  ] as const)("names a run of %s", (kind, name, title) => {
    const own = buildRunSheet({ ...USUAL, kind });
    expect([own.name, own.frozenRows, own.startAt]).toEqual([name, 3, "C11"]);
    expect(own.cells.find(({ cell: at }) => at === "A1")?.content).toBe(title);
    expect(own.cells.filter(({ content }) => content === "Boxes left of the heavy line: you. Right of it: the sheet.")).toHaveLength(1);
    expect(own.charts?.[0]).toMatchObject({ title: "Drying", xTitle: "minutes since round 1", yTitle: "vessel and sample, g" });
  });
});
