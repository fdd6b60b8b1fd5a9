import { AtomCounts } from "../../../../src/chemistry/notation/counts/AtomCounts";

const water = [
  ["H", 2],
  ["O", 1],
] as const;
const counts = new AtomCounts(["H", "O"], [2, 1]);
const map: ReadonlyMap<string, number> = new Map(water);

test.each(["H", "O", "C", ""])("AtomCounts answers get(%j) and has(%j) as a Map does", (symbol) => {
  expect(counts.get(symbol)).toBe(map.get(symbol));
  expect(counts.has(symbol)).toBe(map.has(symbol));
});

test("AtomCounts gives its atoms in order, in each way a Map does", () => {
  expect(counts.size).toBe(map.size);
  expect([...counts]).toEqual(water);
  expect([...counts.entries()]).toEqual(water);
  expect([...counts.keys()]).toEqual([...map.keys()]);
  expect([...counts.values()]).toEqual([...map.values()]);
  const visited: [string, number][] = [];
  counts.forEach((count, symbol) => visited.push([symbol, count]));
  expect(visited).toEqual(water);
});
