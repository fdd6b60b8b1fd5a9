import { endOfDrying } from "../../src/drying/end/endOfDrying";
import { rememberedEnd } from "../../src/functions/drying/rememberedEnd";

const run = (last: number) => ({ times: [0, 20, 40, 60, 80], weights: [35, 34.2, 33.8, 33.6, last], vessel: 25, readability: 0.001 });

test("a run asked for again gives the very answer it gave, and another run its own, also after many others", () => {
  const first = rememberedEnd(run(33.5));
  expect(first).toEqual(endOfDrying(run(33.5)));
  expect(rememberedEnd(run(33.5))).toBe(first);
  for (const last of Array.from({ length: 20 }, (_, index) => 33.5 + index / 1000)) expect(rememberedEnd(run(last))).toEqual(endOfDrying(run(last)));
});

test("a run without an answer is refused each time in the same words", () => {
  const gaining = { ...run(33.5), weights: [33, 34, 35, 36, 37] };
  const said = (): string => {
    try {
      rememberedEnd(gaining);
      return "";
    } catch (problem) {
      return String(problem);
    }
  };
  expect(said()).not.toBe("");
  expect(said()).toBe(said());
});
