import { catalogue } from "../../../src/functions/catalogue";
import { everyPhrase } from "../../../src/pane/functions/phrases/everyPhrase";
import { functionTexts } from "../../../src/pane/functions/search/functionTexts";
import { isMaterial, namesApart } from "../../../src/pane/functions/search/materials";
import { queryParts } from "../../../src/pane/functions/search/queryParts";
import { searchFunctions } from "../../../src/pane/functions/search/searchFunctions";
import { namedIn } from "../../../src/pane/functions/search/substanceNamed";
import { searchWords } from "../../../src/pane/functions/searchWords";

const texts = functionTexts(catalogue, everyPhrase);
const first = (query: string): string | undefined => searchFunctions(catalogue, query).found[0]?.definition.name;

/** What each part of a search weighs, by its first stem. */
const weights = (query: string): Record<string, number | undefined> => {
  const { parts, weights: each } = queryParts(texts, query);
  return Object.fromEntries(parts.map(([part], at) => [part?.[0] ?? "", each[at]]));
};

describe("a name weighs half of a word that asks", () => {
  test("of an element", () => {
    expect(weights("uncertainty of nitrogen")).toEqual({ certain: 1, nitrogen: 0.5, "{element}": 1 });
  });

  test("of a material", () => {
    expect(weights("moisture of clay")).toEqual({ moistur: 1, clay: 0.5 });
    expect(weights("moisture of hemp")).toEqual({ moistur: 1 });
  });

  test.each(["rye", "hemp", "coconut", "anthracite", "guano", "lignite", "sludge", "linen", "rice husks", "coal", "barley straw"])(
    "so that %s decides no quantity",
    (material) => {
      expect(material.split(" ").every(isMaterial)).toBe(true);
      expect(["ash content of", "moisture content of", "char yield of", "fixed carbon of"].map((asks) => first(`${asks} ${material}`))).toEqual([
        "ASHFRACTION",
        "MOISTURE.WET",
        "CHARYIELD",
        "FIXEDCARBON",
      ]);
    },
  );
});

describe("the words of a longer name", () => {
  const everyday = (spoken: readonly string[]) => ({ isWord: () => true, isSpoken: (stems: readonly string[]) => spoken.includes(stems.join(" ")) });

  test("say nothing by themselves", () => {
    expect(namedIn(["hydrated", "lime", "left"], everyday([]))).toMatchObject({ otherWords: ["left"], nameWords: [] });
  });

  test("tell as a name's where phrases hold the whole name", () => {
    const { otherWords, nameWords } = namedIn(["carbon", "dioxide", "left"], everyday(["carbon dioxid"]));
    expect([otherWords, nameWords]).toEqual([
      ["carbon", "dioxide", "left"],
      ["carbon", "dioxide"],
    ]);
    expect(texts.isSpoken(["carbon", "dioxid"])).toBe(true);
    expect(texts.isSpoken(["dioxid", "carbon"])).toBe(false);
  });

  test("tell where the name is one word", () => {
    expect(namedIn(["lime", "left"], everyday([]))).toMatchObject({ otherWords: ["lime", "left"], nameWords: ["lime"] });
  });

  test.each([
    ["purity of pearl ash", "PURITY.FROMLOSS"],
    ["molar mass of bone ash", "MOLARMASS"],
    ["carbon monoxide in my shed", "ROOM.PPM"],
  ])("so that %s finds %s", (query, name) => {
    expect(first(query)).toBe(name);
  });
});

test("substances share the weight of their kinds", () => {
  expect(weights("witherite")["{mineral}"]).toBe(1);
  expect(weights("witherite and borax")).toMatchObject({ "{mineral}": 0.5, "{hydrate}": 0.5, "{two}": 1 });
});

describe("materials compared", () => {
  test.each([
    ["alder and larch", 2],
    ["barley straw", 1],
    ["barley straw or rice husks", 2],
    ["elm or elm", 1],
    ["borax", 0],
  ])("%s names %d", (words, count) => {
    expect(namesApart(words.split(" "))).toBe(count);
  });

  test.each(["is alder different from larch", "difference between hemp and jute", "compare barley straw with rice husks"])(
    "%s compares groups",
    (query) => {
      expect(first(query)).toBe("COMPARE.GROUPS");
    },
  );

  test("two that are not compared ask for no comparison", () => {
    expect(weights("moisture of hemp and jute")).toEqual({ moistur: 1 });
  });

  test("are called two materials", () => {
    expect(searchWords.foundBy("difference between {materials}", { substances: [], elements: [] })).toBe(
      "Found by: difference between two materials",
    );
  });
});

test.each(["how much of my oyster shell is calcium carbonate", "is this epsomite really magnesium sulphate"])(
  "%s, one substance by two names, asks for its purity",
  (query) => {
    expect(first(query)).toBe("PURITY.FROMLOSS");
  },
);

test("a phrase about one substance by two names says its name, or that it is one", () => {
  const findings = searchFunctions(catalogue, "how much of my whiting is really calcium carbonate");
  expect(searchWords.foundBy(findings.found[0]?.phrase ?? "", findings)).toBe("Found by: how much of it is really whiting");
  expect(searchWords.foundBy("how much of it is really {same}", { substances: [], elements: [] })).toBe(
    "Found by: how much of it is really the substance",
  );
});

test.each([
  ["how many hydrogens in glucose", "ATOMS"],
  ["how much hydrogen in glucose", "MASSFRACTION"],
])("%s finds %s: many are counted, much is weighed", (query, name) => {
  expect(first(query)).toBe(name);
});
