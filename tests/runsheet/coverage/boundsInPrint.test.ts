// Figures that a run sheet prints or holds entries against, each with where it comes from. Any edit of one fails here.
import { CRUCIBLE_RATE } from "../../../src/balance/hotWeighing";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { optionBounds } from "../../../src/runsheet/options/optionBounds";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { degreesShown, VESSEL_MATERIALS } from "../../../src/runsheet/words/vesselMaterials";
import { stripWords } from "../../../src/runsheet/words/stripWords";
import { USUAL } from "../plainRun";

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
    ["stainless steel 18/8", 800, "Type 304: up to 1700 °F (925 °C) by the industry (SSINA); lower on and off, our margin. Scale is weight."],
    ["aluminium", 350, "From memory: melts at 660 °C, alloys lower, and goes soft long before."],
    ["nickel", 550, "From memory: oxidises in air above about 600 °C, and gains weight."],
    ["graphite", 400, "From memory: burns in air above about 450 °C."],
  ])("has %s stand %s °C", (name, standsCelsius, source) => {
    const found = VESSEL_MATERIALS.find((material) => material.name === name);
    expect({ ...found, source: found?.source(degreesShown("C")) }).toEqual({ name, standsCelsius, source });
  });

  it("has no other, and stays at or below every temperature that its own source names", () => {
    expect(VESSEL_MATERIALS).toHaveLength(11);
    for (const { standsCelsius, source } of VESSEL_MATERIALS)
      for (const [, celsius] of source(degreesShown("C")).matchAll(/(?<!; )\b(\d+(?:\.\d+)?)(?= (?:to \d+ )?°C)/g))
        expect(standsCelsius).toBeLessThanOrEqual(Number(celsius));
  });

  it("has 1700 °F for 925 °C, as printed to the next 25", () => {
    expect(Math.abs(((1700 - 32) * 5) / 9 - 925)).toBeLessThan(12.5);
  });
});

// Own bounds, no source: more would not fit a bench or a page.
test("the bounds of what a run sheet can be made for", () => {
  expect(optionBounds).toEqual({
    ...{
      beginAt: { name: "begin", atLeast: 0, atMost: 1439, unit: "min" },
      bulkDensity: { name: "bulk density", atLeast: 0.01, atMost: 5, unit: "g/mL" },
      coolingHours: { name: "cooling", atLeast: 0, atMost: 240, unit: "h" },
      dryingHours: { name: "drying time", atLeast: 0, atMost: 720, unit: "h" },
      expectedLoss: { name: "expected loss", atLeast: 0, atMost: 1, unit: "" },
      expectedMoisture: { name: "expected moisture", atLeast: 0, atMost: 0.95, unit: "" },
      heatingRate: { name: "heating rate", atLeast: 0.01, atMost: 1000, unit: "°C/min" },
      holdMinutes: { name: "hold", atLeast: 0, atMost: 43_200, unit: "min" },
      molarMass: { name: "mean molar mass", atLeast: 2, atMost: 300, unit: "g/mol" },
    },
    weighIns: { name: "weigh-ins", atLeast: 3, atMost: 60, unit: "" },
    replicates: { name: "replicates", atLeast: 1, atMost: 6, unit: "" },
    charFirings: { name: "char firings", atLeast: 1, atMost: 4, unit: "" },
    receivers: { name: "receivers", atLeast: 1, atMost: 4, unit: "" },
    stages: { name: "stages", atLeast: 2, atMost: 12, unit: "" },
    ashFirings: { name: "ash firings", atLeast: 1, atMost: 4, unit: "" },
    balance: { name: "temperature at the balance", atLeast: -20, atMost: 1800, unit: "°C" },
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
  const CLOCK =
    "Type the time as hours 0 to 23, a colon, minutes 00 to 59: 9:30. A bare number such as 9.30 or 900 is no time, nor is 9-10 or 9/30, a date. With a date: 21 Nov 9:30.";
  const zero = (when: string): string =>
    `What the balance shows ${when} the weighings of this row, pan empty: 0 is a reading, so type it. With both zeros the weighings are corrected by their middle. In grams.`;
  const analysis =
    "From an ultimate analysis of the dry sample, ash included in the sample, moisture left out, in percent: 48.6. Leave blank when a formula is given.";
  const share = (atLeast: number, atMost: number) =>
    [atLeast, atMost, analysis, `Type percent of the dry sample as a number from ${atLeast} to ${atMost}, such as 48.6 for 48.6 %.`] as const;

  // Bounds: a drum scale of 1000 kg; 1000 display steps of 0.002 g.
  it.each<readonly [string, number, number, string, string]>([
    [
      "Balance step",
      1e-6,
      100,
      "The smallest step the balance shows, in grams, such as 0.01.",
      "Type the display step in grams as a number, such as 0.01.",
    ],
    [
      "Repeatability",
      1e-7,
      100,
      "Standard deviation of ten weighings of one load, put on and taken off each time, in grams. Blank: rounding alone is counted, and the sheet says so.",
      "Type the standard deviation in grams as a number, such as 0.01, or leave the box blank.",
    ],
    [
      "Wanted ±",
      1e-5,
      0.1,
      "How closely the share that left must be known at 95 %: 1% is one percentage point (common practice, no source). Blank: not judged.",
      "Type a fraction up to 0.1, such as 0.01 or 1%.",
    ],
    [
      "Rounds apart",
      1,
      1440,
      "Minutes between rounds. A weighing is compared with the latest one at least this long before it. 30 min is common practice, no source; standards ask 1 to 6 h.",
      "Type minutes as a number from 1 to 1440.",
    ],
    [
      "Oven",
      20,
      300,
      "Most standards dry at 103 to 105 °C (217 to 221 °F); about 120 °C is common practice, no source. Gypsum, hydrates and sugary samples need less. In °C.",
      "Type degrees Celsius as a number from 20 to 300.",
    ],
    [
      "Limit",
      0,
      1000,
      "Largest change that still counts as none, in the unit of the criterion. Two display steps: ASTM D4442 method A. 0.001 of last: EN 322, EN 13183-1.",
      "Type the limit as a number in the unit of the criterion: 2 display steps, or 0.001 for 0.1 %.",
    ],
    [
      "Closed after the vent went quiet",
      0,
      14_400,
      "Shortest time that the vessel stays closed after the vent went quiet, in minutes, so that it is cold. Local practice, no source.",
      "Type minutes as a number from 0 to 14400.",
    ],
    [
      "Method's own s",
      1e-6,
      1,
      "Standard deviation of the share that left between repeats, from earlier work: 0.3% or 0.003. Blank: repeats are held against the wanted ± alone.",
      "Type a fraction such as 0.003 or 0.3%, or leave the box blank.",
    ],
    ["Round 1: moist", 0.002, 1e6, "The vessel with the moist sample, before the oven, with the same lid. In grams.", MASS],
    ["Vessel + sample", 0.002, 1e6, "The vessel with the sample, cold, with the same lid, on the same balance. Fill row by row. In grams.", MASS],
    ["Vessel + char", 0.002, 1e6, "The same vessel and lid with the char, cold. Weigh soon: char takes up water from the air. In grams.", MASS],
    ["Vessel + ash", 0.002, 1e6, "The same vessel and lid with the ash, cold, once no dark specks are left. In grams.", MASS],
    [
      "Empty vessel again",
      -2,
      1e6,
      "The same vessel and lid, emptied and brushed out, cold. Scale that grew on it is then allowed for; a tared balance shows it as it is. In grams.",
      MASS,
    ],
    ["Pan zero before", -2, 2, zero("before"), ZERO],
    ["Pan zero after", -2, 2, zero("after"), ZERO],
    ["Set to", 20, 1800, "The temperature the kiln is set to. In °C.", "Type degrees Celsius as a number from 20 to 1800."],
    [
      "At the sample",
      20,
      1800,
      "The highest temperature measured beside the vessel; a set-point is not a temperature. In °C.",
      "Type degrees Celsius as a number from 20 to 1800.",
    ],
    ["Held", 0, 10_000, "Minutes at that temperature.", "Type the minutes held as a number from 0 to 10000."],
    ["Room", -20, 1800, "Temperature beside the balance. In °C.", "Type degrees Celsius as a number from -20 to 1800."],
    ["Sample when weighed", -20, 1800, `${stripWords.warmth.prompt} In °C.`, "Type degrees Celsius as a number from -20 to 1800."],
    ["Carbon in the dry sample", ...share(1, 100)],
    ["Hydrogen in the dry sample", ...share(0.1, 26)],
    ["Oxygen in the dry sample", ...share(0, 90)],
    ["Nitrogen in the dry sample", ...share(0, 85)],
    ["Sulfur in the dry sample", ...share(0, 50)],
    [
      "Each known to ±",
      0,
      5,
      "How far each share may be off, percent of the dry sample at 95 %: 0.5 is common practice, no source; your laboratory knows better. Blank: the analysis is taken as exact.",
      "Type percent of the dry sample as a number from 0 to 5, such as 0.5.",
    ],
  ])("%s takes a number from %s to %s", (title, atLeast, atMost, prompt, refusal) => {
    const own = entryRules.filter(({ promptTitle }) => promptTitle === title);
    expect(own.length).toBeGreaterThan(0);
    for (const rule of own) expect(rule).toMatchObject({ allow: { kind: "number", atLeast, atMost }, prompt, refusal });
  });

  // A clock time is a part of a day to the minute, which no count of minutes is likely to be: 0.3958333 for 9:30, but not 0.5 or 0.25.
  it("takes minutes from 0 to a quarter of a year where rounds are timed so, and no clock time", () => {
    const rule = buildRunSheet({ ...USUAL, timing: "minutes" }).entryRules.find(({ promptTitle }) => promptTitle === "Minutes");
    expect(rule).toMatchObject({
      allow: { kind: "condition", condition: expect.stringMatching(/^=IF\(ISNUMBER\(B12\),AND\(B12>=0,B12<=131400,.*=0\),FALSE\)$/) as unknown },
      refusal: "Type minutes since round 1 as a number, such as 30; a clock time such as 9:30 is none on this sheet.",
    });
  });

  // 36526 is 2000-01-01: what lies between a clock time, below 1, and a date of our days is a bare number such as 9.30 or 900.
  it.each([
    ["Clock", "The time of this round with a colon: 9:30. Midnight is understood. For gaps of half a day or more type the date too: 21 Nov 9:30."],
    ["Lit", "When the kiln was switched on or lit, vessel closed and vent open: 13:20."],
    ["Vent quiet", "When no more vapour was seen at the vent: 14:25."],
    ["Opened, cold", "When the vessel, cooled closed, was cold and was opened: 16:05."],
  ])("%s takes a clock time or a date with one, and no bare number", (title, prompt) => {
    const own = entryRules.filter(({ promptTitle }) => promptTitle === title);
    expect(own.length).toBeGreaterThan(0);
    for (const rule of own) {
      const at = rule.range.split(":")[0] ?? "";
      expect(rule).toMatchObject({
        allow: { kind: "condition", condition: `=IF(ISNUMBER(${at}),IF(${at}<1,${at}>=0,AND(${at}>=36526,MOD(${at},1)>0)),FALSE)` },
        prompt,
        refusal: CLOCK,
      });
    }
  });

  it("has a vessel's box take a weight or the word tared, and a date no bare number", () => {
    const vessel = entryRules.find(({ promptTitle }) => promptTitle === "Empty vessel");
    const step = cells.find(({ content }) => content === "Balance step, g")?.cell.replace("A", "$B$");
    expect(vessel).toMatchObject({
      allow: { kind: "condition", condition: `=IF(ISNUMBER(C11),AND(C11>=${step},C11<=1000000),C11="tared")` },
      prompt:
        "Weigh the empty, cold vessel with all that stays on it, lid included, in grams. Or type tared, where the balance is zeroed with the vessel on it.",
      refusal:
        "Type the weight in grams as a plain number, such as 41.86, or the word tared. The decimal mark is the one your spreadsheet is set to: 212.4 in some, 212,4 in others.",
    });
    expect(entryRules.find(({ promptTitle }) => promptTitle === "Date")).toMatchObject({
      allow: { kind: "condition", condition: "=IF(ISNUMBER(B7),B7>=36526,FALSE)" },
      prompt: "The day of round 1. A date typed with a later clock time counts from here.",
      refusal: "Type the date alone, such as 21 Nov 2026. Who did it goes into the next box.",
    });
  });

  it.each([
    ["Done by", "Who weighs and heats."],
    ["Material", "What it is, in at most 24 letters: plum prunings. It stands in the answer above."],
    ["Sample", "The name or mark of this sample, so that it can be found again."],
    ["Vessel", "Mark the vessels, and weigh each with its lid each time or without it each time."],
    ["Seen", "Colour of the smoke, white or grey edges on the char, cracks, a lid that moved."],
    ["Notes", "Anything seen: weather, smell, a draught, a spill."],
    [
      "Formula of what burns",
      "The part that burns, without ash, such as C6H10O5 for cellulose or CH1.44O0.66 for wood. Then leave the analysis blank.",
    ],
  ])("%s takes anything", (title, prompt) => {
    expect(entryRules.find(({ promptTitle }) => promptTitle === title)).toMatchObject({ allow: { kind: "anything" }, prompt, refusal: "" });
  });

  it.each([
    [
      "Vessel made of",
      [...VESSEL_MATERIALS.map(({ name }) => name), "none of these"],
      "What vessel and lid are made of, whichever stands less heat. Held against oven, kiln and furnace; the figures stand at the foot of the sheet. If it is none of them, choose none of these.",
      "Choose a material from the list, or its last, none of these.",
    ],
    [
      "Criterion",
      ["absolute", "of last", "of initial", "of total loss", "per gram", "per hour", "readability"],
      "What the limit is measured in: absolute (g), of last, of initial or of total loss (fraction, 0.1%), per gram (g per g), per hour (fraction per hour), readability (steps).",
      "Choose one of: absolute, of last, of initial, of total loss, per gram, per hour, readability.",
    ],
    [
      "Samples, which are",
      ["repeats", "different"],
      "repeats: one material, weighed more than once; they are averaged. different: several materials; they are kept apart.",
      "Choose repeats or different.",
    ],
  ])("%s takes one of a list", (title, words, prompt, refusal) => {
    expect(entryRules.find(({ promptTitle }) => promptTitle === title)).toMatchObject({ allow: { kind: "words", words }, prompt, refusal });
  });

  it("prompts for the sample's temperature with the rate that the flag is worked out by", () => {
    // 0.19 mg a degree: Blade, "Differential Temperature Error in Weighing", Analytical Chemistry.
    expect(CRUCIBLE_RATE * 1000).toBeCloseTo(0.19, 12);
    expect(stripWords.warmth.prompt).toContain(`up to ${CRUCIBLE_RATE * 1000} mg a degree C`);
  });

  it("come filled in with two display steps as the limit (ASTM D4442 method A), one percentage point wanted, an hour closed (common practice, no source)", () => {
    const beside = (label: string) => {
      const at = cells.find(({ content, style }) => content === label && style === "runLabel")?.cell.replace("A", "B");
      const found = cells.find(({ cell }) => cell === at);
      return [found?.content, found?.format];
    };
    expect(["Limit", "Criterion", "Wanted ±, 95 %", "Closed after quiet, min", "Each known to ±, %"].map(beside)).toEqual([
      [2, undefined],
      ["readability", undefined],
      [0.01, "0.0##%"],
      [60, undefined],
      [0.5, undefined],
    ]);
    expect([beside("Date")[1], beside("Firing 1")[1], beside("Round 2, g")[1]]).toEqual(["yyyy-mm-dd", "hh:mm", "hh:mm"]);
  });
});

describe("The number formats", () => {
  const formatIn = (options: Partial<RunSheetOptions>, label: string, column: string): string | undefined => {
    const { cells } = buildRunSheet({ ...USUAL, ...options });
    const row = cells.find(({ content }) => content === label)?.cell.slice(1) ?? "";
    return cells.find(({ cell }) => cell === `${column}${row}`)?.format;
  };

  it.each([
    [{}, "Empty vessel, g", "C", "0.00"],
    [{}, "Round 2, g", "C", "0.00"],
    [{}, "Round 2, g", "F", "0.00"],
    [{}, "Round 2, g", "O", "0"],
    [{}, "Dry sample, g", "F", "0.00"],
    [{}, "After firing 2, g", "F", "0.00"],
    // Half a step can lie between two zeros.
    [{ panZeros: true }, "Round 2, g", "C", "0.00"],
    [{ panZeros: true }, "Round 2, g", "F", "0.000"],
    [{ panZeros: true }, "Dry sample, g", "F", "0.000"],
    [{ panZeros: true, readability: 0.002 }, "Round 2, g", "F", "0.000"],
    [{}, "Left as vapour, of dry", "C", "0.00%"],
    [{}, "Left as vapour, of dry", "F", "0.000%"],
    [{}, "Carbon, %", "F", "0.00"],
  ])("of a sheet with %j show %s in column %s as %s", (options, label, column, format) => {
    expect(formatIn(options, label, column)).toBe(format);
  });

  it.each([
    [0.01, "0.0000"],
    [0.0001, "0.000000"],
    [0.000001, "0.0000000"],
    [100, "0"],
  ])("of a balance that reads to %s g show the uncertainty of a weighing as %s, two figures more", (readability, format) => {
    const { cells } = buildRunSheet({ ...USUAL, readability });
    expect(cells.find(({ cell }) => cell === "L2")?.format).toBe(format);
  });
});
