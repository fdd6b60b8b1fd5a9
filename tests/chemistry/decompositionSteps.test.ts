import { createHash } from "node:crypto";
import { KNOWN_STEPS, SOLID_NAMES } from "../../src/chemistry/decompositionSteps";
import { decompositionSteps } from "../../src/decomposition/decompositionSteps";

test("the table of steps is the one whose sources were looked at", () => {
  const lines = KNOWN_STEPS.flatMap(({ start, steps }) => steps.map((step) => [start, ...step].join(" | ")));
  const checksum = createHash("sha256").update(lines.join("\n")).digest("hex");
  expect(lines).toHaveLength(38);
  expect(checksum).toBe("b07b5f167de0ed02fd71f49fb21c2f65a19aaa66f94bd21d70106f3d89022f82");
});

test("a temperature is a range, or what one slow measurement gave, with its source", () => {
  const temperatures = KNOWN_STEPS.flatMap(({ steps }) => steps.map(([, , temperature = ""]) => temperature)).filter((one) => one !== "");
  expect(temperatures.length).toBeGreaterThan(8);
  for (const temperature of temperatures) expect(temperature).toMatch(/(\d+ to \d+ °C|^near \d+ °C, heated as slowly as it loses; ).* \(.{10,}\)$/);
});

test("no carbonate has a temperature", () => {
  for (const { start, steps } of KNOWN_STEPS.filter((one) => /CO3/.test(one.start) && !/HCO3|OH/.test(one.start)))
    expect([start, steps.map(([, , temperature]) => temperature)]).toEqual([start, steps.map(() => undefined)]);
});

test("every name is a listed solid's or that of one between steps", () => {
  for (const name of Object.keys(SOLID_NAMES)) expect(decompositionSteps(name).length).toBeGreaterThan(0);
  expect(Object.keys(SOLID_NAMES).filter((name) => name !== name.toLowerCase())).toEqual([]);
});
