import { everyFunction } from "../../src/functions/catalogue";
import { cellFunction, tableFunction, type CellFunction } from "../../src/functions/cellFunction";
import type { CellInput, ColumnInput } from "../../src/inputs/Input";
import { mass } from "../../src/inputs/kinds/weighings";
import { allowance, attack, type Kind } from "./hostileCalls";

const LEFT_OUT = { "a 0": "most hosts hand a blank cell over as 0, and a blank optional input counts as left out (its help says so)" };
const ZERO_SHARE = { "a 0": "none of it is a share that occurs, so a blank cell counts as none (its help says so)" };

const ZERO_CELSIUS = "0 °C is a temperature";

const A_NAME = "any word or number can name a group";

/** Of the furnace, of energy and of pottery. */
const FURNACE_KINDS: Readonly<Record<string, Kind>> = {
  "a furnace temperature, 0 is a value": { takes: { "a 0": ZERO_CELSIUS, "a negative number": "a kiln in winter starts below zero" } },
  "a thermometer's reading, 0 is a value": {
    takes: { kelvin: "read to a hundredth, 293.15 °C is as ordinary as 293.14" },
  },
  "a temperature of heating": {},
  "a temperature of heating, 0 counts as left out": { takes: LEFT_OUT },
  "a column: a temperature in order": {
    takes: { "a negative number": "a kiln in winter starts below zero", kelvin: "the rate and the time of a step are the same in kelvin" },
  },
  // Two columns of one kind: a pair that is too far apart is refused under the other name.
  "a column: a calibration point": {
    takes: {
      "a 0": "ice, refused where the pair is far apart",
      "a negative number": "a freezing mixture, as above",
      kelvin: "an ordinary oven, as above",
    },
  },
  "a column: a heating rate": {},
  "a column: a holding time": {
    takes: { "a 0": "no hold there", "a blank cell": "no hold there", "empty text": "no hold there", spaces: "no hold there" },
  },
  "a set rate, 0 counts as left out": { takes: LEFT_OUT },
  "a ramp's rate, 0 counts as left out": {},
  "a molar mass": {},
  "a gas pressure, 0 counts as left out": { takes: LEFT_OUT },
  "a pressure over water": {},
  "a number of vessel volumes, 0 is a value": { takes: { "a 0": "nothing has flowed through yet" } },
  "a volume of gas": {},
  "a gas density": {},
  "a peak factor": {},
  "a pressure above the air, 0 counts as left out": { takes: LEFT_OUT },
  "a mass an hour": {},
  "a room volume": {},
  "a number of air changes, 0 is a value": { takes: { "a 0": "a closed room" } },
  "a heating value": {},
  "a specific heat, 0 counts as left out": { takes: LEFT_OUT },
  "a result, 0 is a value": { takes: { "a 0": "a result can be 0", "a negative number": "a change can be a loss" } },
  "a column: a group's name": {
    takes: {
      text: A_NAME,
      "a number with a decimal comma, as text": A_NAME,
      "a number with its unit, as text": A_NAME,
      "a negative number": A_NAME,
    },
  },
  "a length": {},
  "a volume of slip": {},
};

/**
 * The kinds of input: what a person may well mean by a value that is a slip elsewhere. Of a kind without a
 * line every hostile value must be refused, percentages included; only what it may take needs a line.
 */
const KINDS: Readonly<Record<string, Kind>> = {
  "a weighing": {},
  "a weighing, 0 counts as left out": { takes: { "a 0": "ash is weighed last, and the other shares are there before it" } },
  "a mass": {},
  "a mass, 0 counts as left out": { takes: LEFT_OUT },
  "a mass, 0 is a value": {
    takes: {
      "a 0": "an empty pan and an unchanged blank read 0",
      "a negative number": "an empty pan may read below zero, and a blank may gain",
    },
  },
  "a loss": {},
  "a column: a weighing": {},
  "a display step": {},
  "a display step, 0 counts as left out": { takes: LEFT_OUT },
  "a number above 0": {},
  "a limit": {},
  "a limit, 0 counts as left out": { takes: LEFT_OUT },
  "an uncertainty": {},
  "an uncertainty, 0 counts as left out": { takes: LEFT_OUT },
  "a standard deviation": {},
  "a standard deviation, 0 counts as left out": { takes: LEFT_OUT },
  "a coverage factor": { share: true },
  "a coverage factor, 0 counts as left out": { share: true, takes: LEFT_OUT },
  "a significance level": { share: true },
  "a significance level, 0 counts as left out": { share: true, takes: LEFT_OUT },
  "a column: a number": { takes: { "a negative number": "a replicate result may be negative, such as a loss less its blank" } },
  "a fraction": { share: true },
  "a fraction, 0 is a value": { share: true, takes: ZERO_SHARE },
  "a fraction, 0 counts as left out": { share: true, takes: LEFT_OUT },
  "a mass fraction, 0 counts as left out": { share: true, takes: LEFT_OUT },
  "a share of the air needed, 0 is a value": { share: true, takes: { "a 0": "just the air needed" } },
  "a moisture content, 0 is a value": { share: true, takes: { "a 0": "a dried sample holds no water" } },
  "a moisture content": { share: true },
  "a moisture content, 0 counts as left out": { share: true, takes: LEFT_OUT },
  "an ash content": { share: true },
  "an ash content, 0 counts as left out": { share: true },
  "a mass of oxygen": {},
  "a pressure": {},
  "a density": {},
  "a density, 0 counts as left out": { takes: LEFT_OUT },
  "a temperature, 0 is a value": { takes: { "a 0": "a sample may come in at 0 °C; no formula for the density of air holds there" } },
  "a temperature difference, 0 is a value": { takes: { "a 0": "a vessel as warm as the room" } },
  "a rate": {},
  "a rate, 0 counts as left out": { takes: LEFT_OUT },
  "a column: a time in minutes": {},
  "a time in minutes": {},
  "a time in minutes, 0 counts as left out": { takes: LEFT_OUT },
  "a time, 0 is a value": { takes: { "a 0": "the start" } },
  "a time": {},
  "a time, 0 counts as left out": {},
  "a chemical formula": {},
  "a chemical formula, 0 counts as left out": {},
  "a volume": {},
  "a volume, 0 counts as left out": { takes: LEFT_OUT },
  "a concentration": {},
  "a sample": {},
  "a dilution, 0 counts as left out": { takes: LEFT_OUT },
  "what leaves, 0 counts as left out": { takes: LEFT_OUT },
  "a word": {},
  "a word, 0 counts as left out": { takes: LEFT_OUT },
  "TRUE or FALSE, 0 counts as left out": { takes: { ...LEFT_OUT, TRUE: "one of its two values" } },
  ...FURNACE_KINDS,
  "a word or a number, 0 is a value": { share: true },
  "a word or a number": { share: true },
  "a word or a number, 0 counts as left out": { takes: LEFT_OUT },
};

test.each(everyFunction.map((definition) => [definition.name, definition] as const))(
  "%s answers a hostile value in any of its inputs with a problem that names that input",
  (_name, definition) => {
    expect(attack(definition, KINDS).failures).toEqual([]);
  },
);

test("no allowance stands here that no function needs, and every one has a reason", () => {
  const needed = new Set(everyFunction.flatMap((definition) => [...attack(definition, KINDS).needed]));
  const stated = Object.entries(KINDS).flatMap(([kind, { takes }]) => Object.keys(takes ?? {}).map((hostile) => `${kind}: ${hostile}`));
  expect([...needed].sort()).toEqual(stated.sort());
  expect(
    Object.values(KINDS)
      .flatMap(({ takes }) => Object.values(takes ?? {}))
      .filter((reason) => reason.length < 9),
  ).toEqual([]);
});

describe("a function that reads too loosely is found out", () => {
  const made = { summary: "Made for this test.", result: { about: "Something", unit: "" }, source: "made for this test" } as const;
  const loose = (called: string, unit: string, read: CellInput<number>["read"]): CellInput<number> => ({
    shape: "cell",
    about: "Anything.",
    called,
    unit,
    optional: false,
    zero: "nothing",
    isBlank: (value) => value === 0,
    read,
  });
  const oneInput = (input: CellInput<number>): CellFunction =>
    cellFunction({ ...made, name: "NAIVE", inputs: { x: input }, compute: ({ x }) => x, examples: [{ cell: "=RETORT.NAIVE(20)", gives: 20 }] });
  const found = (input: CellInput<number>): readonly string[] =>
    attack(oneInput(input), KINDS).failures.map((failure) => /^NAIVE\(x(?:: ([^)]*))?\)/.exec(failure)?.[1] ?? failure);

  test("a reader that takes whatever JavaScript makes a number of fails for each hostile value, and without a rule for its kind for percentages", () => {
    expect(found(loose("a weighing", "g", (value) => Number(typeof value === "symbol" ? 0 : value)))).toEqual([
      "a blank cell",
      "empty text",
      "spaces",
      "a 0",
      "text",
      "a number with a decimal comma, as text",
      "a number with its unit, as text",
      "TRUE",
      "a negative number",
      "infinity",
      "a huge number",
      "a percentage",
    ]);
  });

  test("a kind that nothing is said of is held to the strictest rule, and a failure says where to allow for a value", () => {
    const { read } = mass("");
    const unheardOf = oneInput(loose("a thing unheard of", "", read));
    expect(attack(unheardOf, KINDS)).toEqual({
      failures: [`NAIVE(x: a percentage) answers [[35]]; ${allowance("a thing unheard of")}`],
      needed: new Set(),
    });
    expect(attack(unheardOf, { ...KINDS, "a thing unheard of": {} }).failures).toEqual([]);
    expect(allowance("a thing")).toMatch(/ KINDS of tests\/functions\/hostile\.test\.ts$/);
  });

  test("a reader that takes every number takes percentages for fractions and kelvin for degrees Celsius", () => {
    const { read } = mass("");
    expect(found(loose("a fraction", "", read))).toEqual(["a percentage"]);
    expect(found(loose("a rate", "°C", read))).toEqual(["kelvin"]);
  });

  test("a reader that names another argument fails wherever it refuses, though not for the error cell, which is named before", () => {
    const other = found(loose("a weighing", "g", (value) => mass("").read(value, "y")));
    expect(other).toEqual([
      "a blank cell",
      "empty text",
      "spaces",
      "a 0",
      "text",
      "a number with a decimal comma, as text",
      "a number with its unit, as text",
      "TRUE",
      "a negative number",
      "infinity",
      "a huge number",
    ]);
  });

  test("a column that passes over what is no number fails for each such value", () => {
    const numbersOnly: ColumnInput<readonly number[]> = {
      shape: "column",
      about: "Weighings [g].",
      called: "a weighing",
      unit: "g",
      optional: false,
      zero: "nothing",
      read: (cells) => cells.filter((cell) => typeof cell === "number"),
    };
    const naive = tableFunction({
      ...made,
      name: "NAIVE",
      inputs: { weights: numbersOnly },
      computeTable: ({ weights }) => [["mean", weights.reduce((sum, weight) => sum + weight, 0) / weights.length]],
      examples: [{ cell: "=RETORT.NAIVE({3; 2; 1})", gives: [["mean", 2]] }],
    });
    const failures = attack(naive, KINDS).failures;
    expect(failures).toContain(`NAIVE(weights: text) answers [["mean",2]]; ${allowance("a column: a weighing")}`);
    expect(failures).toContain("NAIVE(weights: a blank cell) is an internal error");
    expect(failures.map((failure) => failure.split(")")[0])).toEqual([
      "NAIVE(weights: a blank cell",
      "NAIVE(weights: empty text",
      "NAIVE(weights: spaces",
      "NAIVE(weights: a 0",
      "NAIVE(weights: text",
      "NAIVE(weights: a number with a decimal comma, as text",
      "NAIVE(weights: a number with its unit, as text",
      "NAIVE(weights: TRUE",
      "NAIVE(weights: an error cell",
      "NAIVE(weights: a negative number",
      "NAIVE(weights: infinity",
      "NAIVE(weights: a huge number",
    ]);
  });

  test("a computation that breaks on what its reader lets through is an internal error", () => {
    const breaks = cellFunction({
      ...made,
      name: "NAIVE",
      inputs: { x: loose("a mass, 0 is a value", "g", (value) => value as number) },
      compute: ({ x }) => Math.sqrt(x),
      examples: [{ cell: "=RETORT.NAIVE(4)", gives: 2 }],
    });
    expect(attack(breaks, KINDS).failures).toContain("NAIVE(x: a negative number) is an internal error");
  });
});
