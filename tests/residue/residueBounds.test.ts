import { ashFraction } from "../../src/residue/ashFraction";
import { charYield } from "../../src/residue/charYield";
import { convertBasis } from "../../src/residue/convertBasis";
import { fixedCarbon } from "../../src/residue/fixedCarbon";
import { volatileMatter } from "../../src/residue/volatileMatter";

// Each bound from both sides: binary rounding of a share passes, more does not.

test("FIXEDCARBON is 0 where the other shares come to 1, rounding included, and refuses more", () => {
  expect(fixedCarbon(0.1, 0.7, 0.2)).toBeCloseTo(0, 12);
  expect(fixedCarbon(0.1, 0.7, 0.2 + 5e-13)).toBe(0);
  expect(() => fixedCarbon(0.1, 0.7, 0.2 + 2e-12)).toThrow("come to more than 1");
});

test("ASHFRACTION takes ash and moisture that come to the whole sample, and refuses more", () => {
  expect(ashFraction(0, 1, 0.3, 0.7)).toBeCloseTo(1, 12);
  expect(ashFraction(0, 1, 0.3 + 5e-13, 0.7)).toBe(1);
  expect(() => ashFraction(0, 1, 0.3 + 2e-12, 0.7)).toThrow("come to more than the sample");
});

test("VOLATILEMATTER is 0 where the loss is moisture alone, rounding included, and refuses more moisture than loss", () => {
  expect(volatileMatter(0, 1, 0.9, 0.1)).toBeCloseTo(0, 12);
  expect(volatileMatter(0, 1, 0.9, 0.1 + 5e-13)).toBe(0);
  expect(() => volatileMatter(0, 1, 0.9, 0.1 + 2e-12)).toThrow("is more than the whole loss on heating");
});

test("BASIS.CONVERT refuses a result of 1 or more, and takes one just below", () => {
  expect(convertBasis(0.899999, "as received", "dry", { moistureReceived: 0.1 })).toBeCloseTo(0.999998889, 8);
  expect(() => convertBasis(0.9, "as received", "dry", { moistureReceived: 0.1 })).toThrow("no share is 1 or more");
  expect(() => convertBasis(1, "dry", "dry", {})).toThrow("no share is 1 or more");
});

// Water is 11.19 % hydrogen: a tenth of water holds 0.0112 of it (ASTM D3180).
test("BASIS.CONVERT refuses less hydrogen than the moisture holds, and takes exactly that", () => {
  const given = { moistureReceived: 0.1 };
  expect(convertBasis((0.1 * 2.016) / 18.015, "as received", "dry", given, "hydrogen")).toBeCloseTo(0, 12);
  expect(() => convertBasis(0.0111, "as received", "dry", given, "hydrogen")).toThrow("is less hydrogen than the moisture alone holds");
});

test("CHARYIELD takes ash of all the char and refuses it above the char, below the vessel, or of all the sample", () => {
  expect(charYield(25, 35, 27.5, 27.5)).toBe(0);
  expect(charYield(25, 35, 27.5, 25)).toBe(0.25);
  expect(() => charYield(25, 35, 27.5, 27.501)).toThrow("ash: 27.501 g");
  expect(() => charYield(25, 35, 27.5, 24.999)).toThrow("ash: 24.999 g");
  expect(() => charYield(25, 35, 35, 35 - 5e-10)).toThrow("ash: ");
  expect(charYield(25, 35, 35, 35 - 2e-9)).toBe(1);
});
