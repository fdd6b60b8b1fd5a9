import { BLANK } from "../../src/inputs/CellValue";
import { vesselMass } from "../../src/inputs/kinds/weighings";
import { omittable } from "../../src/inputs/optional";

const vessel = omittable(vesselMass("Empty vessel [g]."));

test("omittable reads a left-out argument as undefined", () => {
  expect(vessel.read(BLANK, "vessel")).toBeUndefined();
});

test("omittable refuses the 0 that a reference to an empty cell arrives as", () => {
  expect(() => vessel.read(0, "vessel")).toThrow(
    'vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  );
});

test("omittable passes what is given on to its input", () => {
  expect(vessel.read(25, "vessel")).toBe(25);
  expect(vessel.read("Tared", "vessel")).toBe(0);
});
