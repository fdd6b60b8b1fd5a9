// Figures that a run sheet prints or holds entries against, each with where it comes from. Any edit of one fails here.
import { CRUCIBLE_RATE } from "../../src/balance/hotWeighing";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { optionBounds } from "../../src/runsheet/options/optionBounds";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { VESSEL_MATERIALS } from "../../src/runsheet/words/vesselMaterials";
import { weighInWords } from "../../src/runsheet/words/weighInWords";
import { USUAL } from "./plainRun";

describe("The list of vessel materials", () => {
  // Printed figure: ITS-90 fixed point of tin (Preston-Thomas, Metrologia 27 (1990) 3), 231.928 °C; strain point of borosilicate
  // glass 3.3, 515 °C (ISO 3585 glass makers' data); type 304 in continuous service, 925 °C (SSINA). The rest from memory.
  it.each([
    ["soda-lime glass", 110, "Cracks by thermal shock; low figure from memory, no source."],
    ["borosilicate glass 3.3", 515 - 65, "Strain point 515 °C (ISO 3585 glass makers' data); 65 °C below it, our margin."],
    ["fused quartz", 1000, "From memory: makers give 1000 to 1100 °C for long use."],
    ["glazed porcelain", 1000, "From memory: makers give about 1000 to 1100 °C, where the glaze softens."],
    ["sintered alumina", 1500, "From memory: makers give about 1700 °C."],
    ["tinned steel", 230, "Tin melts at 231.9 °C (fixed point of the ITS-90 scale), and its coating is weighed with the vessel."],
    ["mild steel", 450, "From memory: scales fast in air above about 500 °C, and gains weight."],
    [
      "stainless steel 18/8",
      800,
      "Type 304: up to 1700 °F (925 °C) by the stainless steel industry (SSINA); lower on and off, our margin. Scale is weight.",
    ],
    ["aluminium", 350, "From memory: melts at 660 °C, alloys lower, and goes soft long before."],
    ["nickel", 550, "From memory: oxidises in air above about 600 °C, and gains weight."],
    ["graphite", 400, "From memory: burns in air above about 450 °C."],
  ])("has %s stand %s °C", (name, standsCelsius, source) => {
    expect(VESSEL_MATERIALS.find((material) => material.name === name)).toEqual({ name, standsCelsius, source });
  });

  it("has no other, and stays at or below every temperature that its own source names", () => {
    expect(VESSEL_MATERIALS).toHaveLength(11);
    for (const { standsCelsius, source } of VESSEL_MATERIALS)
      for (const [, celsius] of source.matchAll(/(?<!; )\b(\d+(?:\.\d+)?)(?= (?:to \d+ )?°C)/g))
        expect(standsCelsius).toBeLessThanOrEqual(Number(celsius));
  });

  it("has 1700 °F for 925 °C, as printed to the next 25", () => {
    expect(Math.abs(((1700 - 32) * 5) / 9 - 925)).toBeLessThan(12.5);
  });
});

// Own bounds, no source: more would not fit a bench or a page.
test("the bounds of what a run sheet can be made for", () => {
  expect(optionBounds).toEqual({
    weighIns: { name: "weigh-ins", atLeast: 3, atMost: 60, unit: "" },
    replicates: { name: "replicates", atLeast: 1, atMost: 6, unit: "" },
    interval: { name: "interval", atLeast: 1, atMost: 24 * 60, unit: "min" },
    readability: { name: "readability", atLeast: 1e-6, atMost: 100, unit: "g" },
    oven: { name: "oven temperature", atLeast: 20, atMost: 300, unit: "°C" },
    kiln: { name: "kiln temperature", atLeast: 20, atMost: 1800, unit: "°C" },
    wanted: { name: "wanted uncertainty", atLeast: 1e-5, atMost: 0.1, unit: "" },
  });
});

describe("The boxes of a run sheet", () => {
  const options: RunSheetOptions = { ...USUAL, replicates: 2, panZeros: true, temperatures: true, readability: 0.002 };
  const { entryRules, cells } = buildRunSheet(options);
  const MASS =
    "Type the weight in grams as a plain number, 0.002 or more, without a unit. The decimal mark is the one your spreadsheet is set to: 212.4 in some, 212,4 in others.";
  const ZERO = "Type what the empty pan shows, in grams, such as 0 or -0.01; far from 0, zero the balance and weigh again.";
  const CLOCK = "Type a clock time such as 14:30, or a date and a clock time.";
  const zero = (when: string): string =>
    `What the balance shows ${when} this weighing, pan empty: 0 is a reading, so type it. Blank is no reading. With both zeros the weighing is corrected by their middle. In grams.`;
  const analysis =
    "From an ultimate analysis of the dry sample, ash included in the sample, without the moisture: 0.488 or 48.8%. Leave blank when a formula is given.";
  const fraction = [0, 1, analysis, "Type a fraction from 0 to 1, such as 0.488 or 48.8%."] as const;

  // Bounds: a drum scale of 1000 kg; 9999-12-31, day 2,958,465 (Excel specifications and limits); 1000 display steps of 0.002 g.
  it.each<readonly [string, number, number, string, string]>([
    [
      "Readability",
      1e-6,
      100,
      "The smallest step the balance shows, in grams, such as 0.01.",
      "Type the display step in grams as a number, such as 0.01.",
    ],
    [
      "Repeatability",
      1e-7,
      100,
      "Standard deviation of ten weighings of one load, put on and taken off each time, in grams. Leave blank if not known: rounding alone is counted then.",
      "Type the standard deviation in grams as a number, such as 0.01, or leave the box blank.",
    ],
    [
      "Wanted uncertainty",
      1e-5,
      0.1,
      "How closely each share must be known, plus or minus, at about 95 %: 0.5% is half a percentage point (common practice, no source). Blank: not judged.",
      "Type a fraction up to 0.1, such as 0.005 or 0.5%.",
    ],
    [
      "Planned interval",
      1,
      1440,
      "Minutes between weighings. A weighing is compared with the latest one at least this long before it. 30 min is common practice, no source; standards ask 1 to 6 h.",
      "Type minutes as a number from 1 to 1440.",
    ],
    [
      "Oven temperature",
      20,
      300,
      "Most standards dry at 103 to 105 °C; about 120 °C is common practice, no source. Gypsum, hydrates and sugary samples need less.",
      "Type degrees Celsius as a number from 20 to 300.",
    ],
    [
      "Drying limit",
      0,
      1000,
      "Largest change that still counts as dry, in the unit of the criterion. Two display steps: ASTM D4442 method A. 0.001 of last: EN 322, EN 13183-1.",
      "Type the limit as a number in the unit of the criterion: 2 display steps, or 0.001 for 0.1 %.",
    ],
    [
      "Repeatability s",
      1e-6,
      1,
      "Standard deviation of this share between replicates, from earlier work with this method: 0.3% or 0.003. Blank: the replicates are not judged; their own s cannot do that.",
      "Type a fraction such as 0.003 or 0.3%, or leave the box blank.",
    ],
    ["Empty vessel", 0.002, 1e6, "Weigh the empty, cold vessel with everything that stays on it, lid included. In grams.", MASS],
    [
      "Vessel + sample",
      0.002,
      1e6,
      "Weigh-in 1 is the moist sample before the oven. Weigh cold each time, with the same lid, on the same balance. Fill row by row. In grams.",
      MASS,
    ],
    ["Vessel + char", 0.002, 1e6, "The same vessel and lid with the char, cold. Weigh soon: char takes up water from the air. In grams.", MASS],
    ["Vessel + ash", 0.002, 1e6, "The same vessel and lid with the ash, cold, once no dark specks are left. In grams.", MASS],
    ["Pan zero before", -2, 2, zero("before"), ZERO],
    ["Pan zero after", -2, 2, zero("after"), ZERO],
    [
      "Clock",
      0,
      2_958_465,
      "The time of this weighing, such as 14:30; midnight is understood. For gaps of a day or more type date and time in every row.",
      CLOCK,
    ],
    ["Heating started", 0, 2_958_465, "When the kiln was switched on, vessel closed and vent open.", CLOCK],
    ["Vent stopped smoking", 0, 2_958_465, "When no more vapour was seen at the vent.", CLOCK],
    ["Cold, vessel opened", 0, 2_958_465, "When the vessel, cooled closed, was cold and was opened.", CLOCK],
    ["Kiln set", 20, 1800, "The temperature the kiln is set to. In degrees Celsius.", "Type degrees Celsius as a number from 20 to 1800."],
    [
      "Ashing furnace set",
      20,
      1800,
      "The temperature at which the char is burned to ash. In degrees Celsius.",
      "Type degrees Celsius as a number from 20 to 1800.",
    ],
    ["Room", -20, 1800, "Temperature beside the balance, in degrees Celsius.", "Type degrees Celsius as a number from -20 to 1800."],
    ["Sample when weighed", -20, 1800, weighInWords.warmth.prompt, "Type degrees Celsius as a number from -20 to 1800."],
    ...["Carbon", "Hydrogen", "Oxygen", "Nitrogen", "Sulfur"].map((element) => [`${element} in the dry sample`, ...fraction] as const),
  ])("%s takes a number from %s to %s", (title, atLeast, atMost, prompt, refusal) => {
    const own = entryRules.filter(({ promptTitle }) => promptTitle === title);
    expect(own.length).toBeGreaterThan(0);
    for (const rule of own) expect(rule).toMatchObject({ allow: { kind: "number", atLeast, atMost }, prompt, refusal });
  });

  it.each([
    ["Date", "The day of the first weigh-in."],
    ["Operator", "Who weighs and heats."],
    ["Sample", "What it is and where it came from, so that it can be found again."],
    ["Vessel", "Mark the vessel, and weigh it with its lid each time or without it each time."],
    [
      "Formula of what burns",
      "The part that burns, without ash, such as C6H10O5 for cellulose or CH1.44O0.66 for wood. Or leave it blank and give the fractions below.",
    ],
  ])("%s takes anything", (title, prompt) => {
    expect(entryRules.find(({ promptTitle }) => promptTitle === title)).toMatchObject({ allow: { kind: "anything" }, prompt, refusal: "" });
  });

  it.each([
    [
      "Vessel material",
      VESSEL_MATERIALS.map(({ name }) => name),
      "What vessel and lid are made of, whichever stands less heat. Held against oven, kiln and furnace; the figures stand at the foot of the sheet. Leave blank if it is none of these.",
      "Choose a material from the list, or leave the box blank.",
    ],
    [
      "Drying criterion",
      ["absolute", "of last", "of initial", "of total loss", "per gram", "per hour", "readability"],
      "What the limit is measured in: absolute (g), of last, of initial or of total loss (fraction, 0.1%), per gram (g per g), per hour (fraction per hour), readability (display steps).",
      "Choose one of: absolute, of last, of initial, of total loss, per gram, per hour, readability.",
    ],
  ])("%s takes one of a list", (title, words, prompt, refusal) => {
    expect(entryRules.find(({ promptTitle }) => promptTitle === title)).toMatchObject({ allow: { kind: "words", words }, prompt, refusal });
  });

  it("prompts for the sample's temperature with the rate that the flag is worked out by", () => {
    // 0.19 mg a degree: Blade, "Differential Temperature Error in Weighing", Analytical Chemistry.
    expect(CRUCIBLE_RATE * 1000).toBeCloseTo(0.19, 12);
    expect(weighInWords.warmth.prompt).toContain(`up to ${CRUCIBLE_RATE * 1000} mg a degree`);
  });

  it("come filled in with two display steps as the limit (ASTM D4442 method A) and half a percentage point wanted (common practice, no source)", () => {
    const beside = (label: string) => {
      const at = cells.find(({ content, style }) => content === label && style === "label")?.cell.replace("A", "B");
      const found = cells.find(({ cell }) => cell === at);
      return [found?.content, found?.format];
    };
    expect([beside("Drying limit"), beside("Drying criterion"), beside("Wanted uncertainty (k = 2)")]).toEqual([
      [2, undefined],
      ["readability", undefined],
      [0.005, "0.0##%"],
    ]);
    expect([beside("Date")[1], beside("Kiln set (°C)")[1], beside("Heating started (clock)")[1]]).toEqual(["yyyy-mm-dd", "0", "hh:mm"]);
  });
});

describe("The number formats", () => {
  const formatsOf = (options: Partial<RunSheetOptions>) => {
    const { cells } = buildRunSheet({ ...USUAL, ...options });
    return (heading: string): string | undefined => {
      const at = cells.find(({ content, style }) => content === heading && (style === "columnHeading" || style === "noteHeading"))?.cell ?? "";
      return cells.find(({ cell }) => cell === at.replace(/\d+/, (row) => String(Number(row) + 2)))?.format;
    };
  };

  it.each([
    [{}, "Clock", "hh:mm"],
    [{}, "Elapsed (min)", "0"],
    [{}, "Vessel + sample (g)", "0.00"],
    [{}, "Sample (g)", "0.00"],
    [{}, "Change since last (g)", "0.00"],
    [{}, "For the chart (g)", "0.00"],
    // Half a step can lie between two zeros.
    [{ panZeros: true }, "Pan zero before (g)", "0.00"],
    [{ panZeros: true }, "Pan zero after (g)", "0.00"],
    [{ panZeros: true }, "Vessel + sample (g)", "0.00"],
    [{ panZeros: true }, "Sample, drift-corrected (g)", "0.000"],
    [{ panZeros: true }, "Change since last (g)", "0.000"],
    [{ panZeros: true }, "Vessel + sample, drift-corrected (g)", "0.000"],
    [{ panZeros: true, readability: 0.002 }, "Sample, drift-corrected (g)", "0.000"],
    [{ temperatures: true }, "Room (°C)", "0.0"],
    [{ temperatures: true }, "Sample when weighed (°C)", "0.0"],
    [{ temperatures: true }, "Above the room (°C)", "0.0"],
  ])("of a sheet with %j show %s as %s", (options, heading, format) => {
    expect(formatsOf(options)(heading)).toBe(format);
  });

  it.each([
    [0.01, "0.0000"],
    [0.0001, "0.000000"],
    [0.000001, "0.0000000"],
    [100, "0"],
  ])("of a balance that reads to %s g show the uncertainty of a weighing as %s, two figures more", (readability, format) => {
    const { cells } = buildRunSheet({ ...USUAL, readability });
    const at = cells.find(({ content }) => content === "One weighing, ± (g), k = 1")?.cell.replace("A", "B");
    expect(cells.find(({ cell }) => cell === at)?.format).toBe(format);
  });

  it("show shares with a decimal of a percent, their uncertainty with six decimals, the comparison as the balance reads", () => {
    const { cells } = buildRunSheet({ ...USUAL, replicates: 2, panZeros: true });
    const inRowOf = (label: string) =>
      cells
        .filter(
          ({ cell, style }) =>
            cell.replace(/\D/g, "") === cells.find(({ content }) => content === label)?.cell.replace(/\D/g, "") && style !== "label",
        )
        .map(({ format }) => format);
    const share = ["0.0%", "0.0%", "0.000000", "0.000000", "0.0%", "0.0%"];
    expect([inRowOf("Moisture, wet basis"), inRowOf("Open: gases leaving (g)"), inRowOf("Vessel + dry sample (g)")]).toEqual(
      [[...share].sort(), ["0.00", "0.00"], ["0.000"]].map((formats) => expect.arrayContaining(formats)),
    );
    expect(inRowOf("Empty vessel, drift-corrected (g)")).toEqual(["0.000"]);
    expect(inRowOf("Carbon (fraction of dry)")).toEqual(["0.000"]);
  });
});
