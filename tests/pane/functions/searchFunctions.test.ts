import { catalogue, everyFunction, type Family } from "../../../src/functions/catalogue";
import type { CellFunction } from "../../../src/functions/cellFunction";
import type { Phrases } from "../../../src/pane/functions/phrases/Phrases";
import { searchFunctions } from "../../../src/pane/functions/search/searchFunctions";

const made = (name: string, summary: string, about = "Something."): CellFunction => ({
  gives: "value",
  compute: () => 0,
  name,
  summary,
  inputs: { amount: { shape: "cell", called: "a mass", about, unit: "g", optional: false, zero: "nothing", isBlank: () => false, read: () => 0 } },
  result: { about: "", unit: "" },
  examples: [],
  source: "",
});

const families: readonly Family[] = [
  {
    heading: "Drying",
    functions: [made("MOISTURE.WET", "Water lost per gram of moist sample."), made("CONSTANTWEIGHT", "Whether a drying series holds.")],
  },
  { heading: "Residue", functions: [made("ASHFRACTION", "Ash left.", "Dry sample [g]."), made("CHARYIELD", "Char left per gram of dry sample.")] },
];

const named = (query: string, within: readonly Family[], phrases?: Phrases): string[] =>
  searchFunctions(within, query, phrases).found.map(({ definition }) => definition.name);

/** Without the everyday phrases, which have tests of their own. */
const names = (query: string, within = families): string[] => named(query, within, {});

describe("searchFunctions(families, query)", () => {
  test("puts a function that bears the name first", () => {
    expect(names("charyield")[0]).toBe("CHARYIELD");
    expect(names("char")).toEqual(["CHARYIELD"]);
  });

  test("takes a name with the namespace before it", () => {
    expect(names("retort.moisture.wet")).toEqual(["MOISTURE.WET"]);
  });

  test("finds by the summary, the heading and what an input is, in that order of weight", () => {
    expect(names("gram")).toEqual(["MOISTURE.WET", "CHARYIELD"]);
    // CONSTANTWEIGHT says it twice, in its summary and its heading.
    expect(names("dry")).toEqual(["CONSTANTWEIGHT", "MOISTURE.WET", "CHARYIELD", "ASHFRACTION"]);
    expect(names("residue")).toEqual(["ASHFRACTION", "CHARYIELD"]);
    expect(names("water")).toEqual(["MOISTURE.WET"]);
  });

  test("finds a word by its stem", () => {
    expect(names("weights")).toEqual(["CONSTANTWEIGHT"]);
    expect(names("dried")).toEqual(names("dry"));
    expect(names("grams")).toEqual(["MOISTURE.WET", "CHARYIELD"]);
  });

  test("finds by another word for the same thing, after the word itself", () => {
    expect(names("damp")).toEqual(["MOISTURE.WET"]);
    expect(names("mass")).toEqual(["CONSTANTWEIGHT"]);
    expect(names("charcoal")).toEqual(["CHARYIELD"]);
    const both = [{ heading: "", functions: [made("ONE", "A weight."), made("OTHER", "A mass.")] }];
    expect(names("mass", both)).toEqual(["OTHER", "ONE"]);
  });

  test("puts the function that holds every word first", () => {
    expect(names("dry char")[0]).toBe("CHARYIELD");
  });

  test("falls back to those that hold any, most words first", () => {
    expect(names("char moonlight")).toEqual(["CHARYIELD"]);
    // A name tells more than words that several functions share.
    expect(names("constantweight gram sample moonlight")).toEqual(["CONSTANTWEIGHT", "MOISTURE.WET", "CHARYIELD"]);
  });

  test("ignores words that carry no meaning", () => {
    expect(names("how much of the water is in it")).toEqual(["MOISTURE.WET"]);
  });

  test.each(["zeppelin", "the of", "   ", "%%%"])("finds nothing for %j", (query) => {
    expect(names(query)).toEqual([]);
  });
});

describe("searchFunctions over the catalogue", () => {
  test.each(everyFunction.map(({ name }) => [name]))("finds %s first by its own name", (name) => {
    expect(named(name, catalogue)[0]).toBe(name);
  });

  test.each([
    ["moisture", "MOISTURE.WET"],
    ["water lost", "MOISTURE.WET"],
    ["left as smoke", "VOLATILEFRACTION"],
    ["is it done", "CONSTANTWEIGHT"],
  ])("finds by what it does: %s", (query, name) => {
    expect(named(query, catalogue)).toContain(name);
  });
});
