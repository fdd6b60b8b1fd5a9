import { convertMoisture, isWetterThanWood } from "../../src/drying/moisture";
import { workingIn } from "../functions/call";

// USDA FoodData Central, from memory: watermelon 91.4 % of water, cucumber 95.2 %, lettuce 95.6 %.
test.each([
  [4, 0.8],
  [9, 0.9],
  [0.914 / 0.086, 0.914],
  [0.952 / 0.048, 0.952],
  [0.956 / 0.044, 0.956],
  [24, 0.96],
  [49, 0.98],
])("convertMoisture takes %d on the dry basis, as fruit, sludge and peat have it", (dry, wet) => {
  expect(convertMoisture(dry, "dry", "wet")).toBeCloseTo(wet, 12);
});

test.each([49.0001, 54, 110, 250])("convertMoisture refuses %d on the dry basis as a percentage", (moisture) => {
  for (const to of ["wet", "dry"] as const) expect(() => convertMoisture(moisture, "dry", to)).toThrow("on the dry basis would be 9");
});

test("the refusal says how wet that would be and what to type", () => {
  expect(() => convertMoisture(110, "dry", "wet")).toThrow(
    "moisture: 110 on the dry basis would be 99.1 % water, a liquid. Type 110 % as 1.1 or 110%; give a liquid on the wet basis.",
  );
});

// Sapwood of western redcedar, 249 % (Wood Handbook, from memory), is wood.
test.each([
  [2.49, false],
  [4, false],
  [4 + 1e-13, false],
  [4.001, true],
  [12, true],
])("%d on the dry basis is wetter than wood: %s", (moisture, expected) => {
  expect(isWetterThanWood(moisture)).toBe(expected);
});

test("This cell says how wet it is where wood is not, and what to type for a percentage", () => {
  const said = "12 g of water per g dry is 92.3 % water, as in fruit, sludge or peat. If 12 % was meant, type 0.12 or 12%.";
  expect(workingIn('=RETORT.MOISTURE.CONVERT(12, "dry", "wet")')).toEqual(["moisture, wet basis = 12 / (1 + 12) = 0.9230769", said]);
  expect(workingIn('=RETORT.MOISTURE.CONVERT(12, "dry", "dry")')).toEqual(["moisture, dry basis = 12, as given", said]);
  expect(workingIn('=RETORT.MOISTURE.CONVERT(1.2, "dry", "wet")')).toHaveLength(1);
});

test("convertMoisture gives a dry-basis moisture however large", () => {
  expect(convertMoisture(0.95, "wet", "dry")).toBeCloseTo(19, 12);
});

test("convertMoisture takes 0 as a moisture", () => {
  expect(convertMoisture(0, "wet", "dry")).toBe(0);
  expect(convertMoisture(0, "dry", "wet")).toBe(0);
});

test("binary rounding at the bound finds its way back", () => {
  for (const wet of [0.8, 0.98]) expect(convertMoisture(convertMoisture(wet, "wet", "dry"), "dry", "wet")).toBeCloseTo(wet, 12);
  expect(convertMoisture(49 + 1e-13, "dry", "wet")).toBeCloseTo(0.98, 12);
});

test("convertMoisture refuses a wet-basis moisture of 1, and takes what is just below", () => {
  expect(convertMoisture(0.999, "wet", "dry")).toBeCloseTo(999, 6);
  expect(() => convertMoisture(1, "wet", "wet")).toThrow("moisture: 1");
});
