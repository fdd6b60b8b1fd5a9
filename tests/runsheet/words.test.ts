import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { RUN_KINDS, type RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
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
  ...["expected moisture", "scatter between samples", "mean molar mass", "bulk density"],
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
  const liquids = [
    "Condensed liquids are flammable and toxic, tar among them: gloves, eye protection, closed labelled bottles, no flame near, never a drain.",
    "Keep the gas path open from vessel to outlet: tar or a full receiver blocks it. Lead what gas is left outdoors, away from any flame.",
    "A cooling vessel draws back: keep the outlet above the liquid, and let neither liquid nor air reach hot char.",
    "Distilling the liquids is flammable, toxic and regulated: it is no part of this run. Ask what is allowed before you begin.",
  ];
  const staged = [
    "Know what leaves at each stage before you heat: some salts give off acid, toxic or flammable gas. Work under a ducted hood.",
    "Never seal the vessel: gas and steam must find a way out. Let it cool covered or in a desiccator, then weigh.",
    "No nitrates, peroxides, perchlorates, ammonium salts of oxidisers, cyanides, azides or unknown powders.",
  ];
  const salt = [
    "No nitrates, chlorates, perchlorates, peroxides, azides, cyanides, ammonium salts of oxidisers, mercury salts or unknown powders.",
    "Hydrates spit: fill a third at most, warm slowly, lid ajar. Overheated sulfates give off sulfur trioxide, which burns the lungs.",
    "Carbonates give off carbon dioxide: air the room well. Quicklime burns skin and eyes, and boils up with water: goggles, gloves.",
    "Never seal the crucible. Let it cool closed in a desiccator, then weigh soon: dry salts and quicklime take up damp.",
  ];
  const balance = [
    "A check is no calibration: trade, medicine and law have rules of their own, and they come first.",
    "Handle check weights with tweezers or clean gloves, never by hand: grease is weight. Heavy ones: mind back and toes.",
    "Let weight and balance stand beside each other until they are as warm as the room; level the balance, keep draughts off.",
  ];
  const last = "Local codes, fire rules and the makers' instructions come first. If in doubt, ask a qualified person.";
  expect(cautions).toEqual({
    drying: [...drying, last],
    charring: [...drying, ...charring, last],
    ashing: [...drying, ...charring, ashing, last],
    liquids: [...drying, ...charring, ...liquids, last],
    staged: [...drying, ...staged, last],
    salt: [...drying, ...salt, last],
    balance: [...balance, last],
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
      ...["Drying, charring, ashing", "SET UP", "Date", "Material", "Samples, which are"],
      ...["1 DRYING", ...rounds, "Dry sample, g", "balance and room", ...rounds],
      ...["2 CHARRING: the fire", ...firings(3), "2 weighed when cold", ...after(3), "Char, g", "balance and room", ...after(3)],
      ...["CAUTIONS", ...cautions.ashing],
      ...["3 ASHING: the fire", ...firings(2), "3 weighed when cold", ...after(2), "Ash, g", "balance and room", ...after(2)],
      ...["4 AT THE END", "Empty vessel again, g", "balance and room", "Empty vessel, g", "Notes"],
      ...["RESULTS (shares)", "Water, of moist sample", "Water, to dry sample", "Left as vapour, of dry", "Stayed as char, of dry"],
      ...["Char without its ash", "Ash, of dry", "CHECKS", "1  Vessel and sample", "2  Vessel at the end", "3  Times in order"],
      ...["4  No row left out", "5  No gain on heating", "6  Order of weights", "7  Shown dry", "8  Opened when cold", "9  No air got in"],
      ...["10  Charring finished", "11  Ashing finished", "12  Samples agree", "13  Balance fine enough", "14  Usual range", "15  Temperatures"],
      ...["16  Analysis", "17  Pan zeros", "18  Cold when weighed", "19  Nothing typed over"],
      ...["SETTINGS", "Balance step, g", "Repeatability, g", "Wanted ±, 95 %", "Rounds apart, min", "Criterion", "Limit", "Oven, °C"],
      ...["Vessel", "Vessel made of", "Closed after quiet, min", "Method's own s"],
      ...["OPEN FIRE", "Carbon, %", "Hydrogen, %", "Oxygen, %", "Nitrogen, %", "Sulfur, %", "Each known to ±, %", "Formula instead"],
      ...["CURVES", "VESSELS", "soda-lime glass", "borosilicate glass 3.3", "fused quartz", "glazed porcelain", "sintered alumina", "tinned steel"],
      ...["mild steel", "stainless steel 18/8", "aluminium", "nickel", "graphite"],
      "For a sound vessel, heated and cooled slowly. The maker's own figure comes first; molten salts, alkali and reducing gas lower it.",
    ]);
  });

  const labelsOf = (options: Partial<RunSheetOptions>): unknown[] => {
    const { cells } = buildRunSheet({ ...USUAL, weighIns: 3, ...options });
    const inA = cells.filter(({ cell: at, content }) => /^A\d/.test(at) && content !== undefined);
    return inA.sort((one, other) => rowOf(one.cell) - rowOf(other.cell)).map(({ content }) => content);
  };
  const between = (labels: readonly unknown[], from: string, to: string): unknown[] => labels.slice(labels.indexOf(from) + 1, labels.indexOf(to));

  it("calls what is caught, and the ledger, by these labels", () => {
    const labels = labelsOf({ kind: "liquids", receivers: 2, charFirings: 1 });
    const parts = ["Tube and lid, g", "Trap, g", "Receiver 1, g", "Receiver 2, g"];
    expect(between(labels, "3 CATCHING, empty", "3 after the fire")).toEqual(parts);
    expect(between(labels, "3 after the fire", "CAUTIONS")).toEqual([
      ...parts,
      "Liquids caught, g",
      "Gas measured, g",
      "Water in liquids, %",
      "Fed moist with, %",
      "Each % known to ±, %",
    ]);
    expect(between(labels, "RESULTS (shares)", "CHECKS")).toEqual([
      ...["Water, of moist sample", "Water, to dry sample", "Left as vapour, of dry", "Stayed as char, of dry"],
      ...[
        "Liquids, of dry feed",
        "Water formed, of dry",
        "Gas measured, of dry",
        "Gas, by difference",
        "Unaccounted, of dry",
        "Closure, of the feed",
      ],
      "Gas by difference holds every leak and slip: with it the sum is 1 by construction, so it is no closure.",
    ]);
    expect(between(labels, "CHECKS", "SETTINGS")).toEqual([
      ...["1  Vessel and sample", "2  Vessel at the end", "3  Times in order", "4  No row left out", "5  No gain on heating", "6  Order of weights"],
      ...["7  Shown dry", "8  Opened when cold", "9  No air got in", "10  Charring finished", "11  Caught, all weighed", "12  Products add up"],
      ...["13  Balance fine enough", "14  Usual range", "15  Temperatures", "16  Nothing typed over"],
    ]);
  });

  it("calls stages, and what is looked at there, by these labels", () => {
    const labels = labelsOf({ kind: "staged", stages: 2 });
    expect(between(labels, "2 STAGES: the fire", "3 AT THE END")).toEqual([
      ...["Stage 1", "Stage 2", "2 weighed when cold", "After stage 1, g", "After stage 2, g", "Left at the end, g"],
    ]);
    expect(between(labels, "RESULTS (shares)", "CHECKS")).toEqual([
      "Water, of moist sample",
      "Water, to dry sample",
      "Lost in all, of dry",
      "Left at the end",
    ]);
    expect(between(labels, "CHECKS", "SETTINGS").slice(6)).toEqual([
      ...["7  Shown dry", "8  Opened when cold", "9  Temperatures rise", "10  Held long enough", "11  Balance fine enough"],
      ...["12  Temperatures", "13  Nothing typed over"],
    ]);
    const own = buildRunSheet({ ...USUAL, kind: "staged" });
    expect([own.name, own.charts?.[1]?.title, own.charts?.[1]?.xTitle, own.charts?.[1]?.yTitle]).toEqual([
      "Staged run",
      "Left against temperature",
      "temperature, °C",
      "left, of the dry sample",
    ]);
  });

  it("calls what a salt or mineral is, its heating, and what is looked at there, by these labels", () => {
    const labels = labelsOf({ kind: "salt", charFirings: 2 });
    expect(between(labels, "WHAT IS HEATED", "CAUTIONS").filter((label) => !String(label).startsWith("Round"))).toEqual([
      ...["Formula", "What stays", "Surface water", "1 BEFORE HEATING", "Empty vessel, g", "Before heating, g"],
      ...["2 HEATING: the fire", "Firing 1", "Firing 2", "2 weighed when cold", "After firing 1, g", "After firing 2, g", "Stayed after heating, g"],
      ...["3 AT THE END", "Empty vessel again, g", "Notes"],
    ]);
    expect(between(labels, "RESULTS (shares)", "CHECKS").slice(0, 6)).toEqual([
      ...["Water, of moist sample", "Water, to dry sample", "Lost on heating", "Stayed after heating", "Loss, of theory", "n, H2O per residue"],
    ]);
    expect(between(labels, "CHECKS", "SETTINGS").slice(6)).toEqual([
      ...["7  Shown dry", "8  Opened when cold", "9  Heating finished", "10  Loss beside theory", "11  Balance fine enough"],
      ...["12  Temperatures", "13  Nothing typed over"],
    ]);
    const rules = buildRunSheet({ ...USUAL, kind: "salt" }).entryRules;
    const said = ["Formula of salt or mineral", "What stays", "Surface water"].map(
      (title) => rules.find(({ promptTitle }) => promptTitle === title)?.prompt,
    );
    expect(said).toEqual([
      "What it is before heating: CuSO4·5H2O, CaCO3, Ca(OH)2; CuSO4*5H2O will do. Leave blank where the water of a hydrate is to be found.",
      "The formula of what is left once nothing more leaves: CuSO4, CaO; several as CaCO3 + MgO.",
      "as weighed: taken as free of surface water, one round is enough. dried first: rounds at a gentle heat that leaves the crystal water, until the weight holds.",
    ]);
  });

  it("calls what a balance check has by these labels", () => {
    expect(labelsOf({ kind: "balance" })).toEqual([
      ...["Balance check", "SET UP", "Begun", "Balance, its mark", "Check weight, g", "Known to ±, g", "Balance step, g"],
      ...["1 ROUNDS", "Round 1", "Round 2", "Round 3", "All rounds, g"],
      ...["2 CORNERS", "Centre, g", "Front left, g", "Front right, g", "Back left, g", "Back right, g", "Centre again, g", "Largest off centre, g"],
      ...["3 NOTES", "Notes", "CAUTIONS", ...cautions.balance],
      ...["WHAT IT FINDS (g)", "Shows too much by, g", "Scatter s, g", "Largest corner, g", "Largest zero, g", "For run sheets, g"],
      "± of the first line: t s / √n for n rounds, rounding (0.82 of a step), and the weight's own ±, as root of the sum of squares.",
      ...["CHECKS", "1  Weight's value given", "2  Dates in order", "3  No round left out", "4  The same weight", "5  Newest as before"],
      ...["6  Shows its value", "7  Back at zero", "8  Corners", "9  Nothing typed over", "CURVES"],
    ]);
  });

  it("says at the boxes of the further kinds what is wanted and in which unit", () => {
    const prompts = (options: Partial<RunSheetOptions>): ReadonlyMap<string, readonly string[]> =>
      new Map(buildRunSheet({ ...USUAL, ...options }).entryRules.map(({ promptTitle, prompt, refusal }) => [promptTitle, [prompt, refusal]]));
    const liquids = prompts({ kind: "liquids" });
    expect(
      ["Before the fire", "After the fire", "Gas measured", "Water in the liquids", "Moisture, if charred moist", "Each % known to ±"].map(
        (name) => liquids.get(name)?.[0],
      ),
    ).toEqual([
      "Empty, clean, dry and cold, with its stopper. Leave blank what you do not use. The lid here only if it is not weighed with the vessel. In grams.",
      "The same part with all that it caught, cold, stoppered, wiped dry outside. In grams.",
      "In grams, where its volume was measured: litres times grams per litre. Blank: gas is the difference, and holds every leak.",
      "Percent of all that was caught that is water, as measured (titration, distilling trap): 70. Blank: water formed is not told.",
      "Only where the sample was charred without drying: its moisture, percent of the moist weight, measured on another part of it. Blank for a dried sample: its feed water is 0.",
      "How far those two percentages may be off, in percentage points at 95 %: 1. Blank: both are taken as exact.",
    ]);
    expect(["Gas measured", "Water in the liquids", "Moisture, if charred moist", "Each % known to ±"].map((name) => liquids.get(name)?.[1])).toEqual(
      [
        "Type the gas in grams as a number of 0 or more, or leave the box blank.",
        "Type percent as a number from 1 to 100, such as 70, or leave the box blank.",
        "Type percent of the moist weight as a number from 1 to 90, such as 12, or leave the box blank.",
        "Type percentage points as a number from 0 to 20, such as 1.",
      ],
    );
    const staged = prompts({ kind: "staged" });
    expect(["Set to", "What left", "Vessel + what is left"].map((name) => staged.get(name)?.[0])).toEqual([
      "The temperature this stage is set to, no lower than the one before; the same again to hold a stage longer. In °C.",
      "Your own name for what left in this stage, at most 17 letters: water of crystals. It stands in the results.",
      "The same vessel and lid, cooled closed and cold. Weigh soon: what was dried or burnt takes up damp. In grams.",
    ]);
    const balance = prompts({ kind: "balance" });
    expect(["Check weight", "Known to ±", "Date", "Zero after", "Corners"].map((name) => balance.get(name)?.[0])).toEqual([
      "Zero the balance, put the weight in the middle of the pan, wait until the figure stands. In grams.",
      "How far its value may be off, g, 95 %: from the certificate; without one the limit of its class (OIML R 111-1). Blank: taken as exact, and the sheet says so.",
      "The day of this round: 21 Nov 2026. With a time, should there be several a day: 21 Nov 2026 9:30.",
      "What the balance shows once the weight is off again: 0 is a reading, so type it. In grams.",
      "One load of about a third of what the balance carries, half way from the centre to each corner; zero before each. Once in a while, and after a move. In grams.",
    ]);
    expect(balance.get("Date")?.[1]).toBe("Type a date such as 21 Nov 2026, with a time if you like: 21 Nov 2026 9:30. A bare number is no date.");
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
      "made with 2 display steps; largest change that counts as none",
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
    ["liquids", "Liquids run", "Charring, liquids caught"],
  ] as const)("names a run of %s", (kind, name, title) => {
    const own = buildRunSheet({ ...USUAL, kind });
    expect([own.name, own.frozenRows, own.startAt]).toEqual([name, 3, "C11"]);
    expect(own.cells.find(({ cell: at }) => at === "A1")?.content).toBe(title);
    expect(own.cells.filter(({ content }) => content === "Left of the heavy line: by hand. Right of it: by the sheet.")).toHaveLength(1);
    expect(own.charts?.[0]).toMatchObject({ title: "Drying", xTitle: "minutes since round 1", yTitle: "with the vessel, g" });
  });
});
