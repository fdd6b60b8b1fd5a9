import { text, type Expression } from "../expressions/Expression";

/** Words of the set-up: what is weighed, by whom, and whether the samples are one material. */
export const setupWords = {
  heading: "SET UP",
  /** True of a copy with values too, in which there is nothing to fill in. */
  legend: "Left of the heavy line: by hand. Right of it: by the sheet.",
  labels: { date: "Date", material: "Material", oneSample: "Sample, its name", samples: "Samples, which are" },
  beside: {
    /** Beside the box of a name, which stands next to that of the date. */
    doneBy: "◄ done by",
    oven: (celsius: Expression, unit: string, interval: Expression) =>
      text`Oven ${celsius} °${unit}; rounds about ${interval} min apart (settings below).`,
    noOven: (interval: Expression) => text`Rounds about ${interval} min apart (settings below).`,
    repeats: (count: number) => `averaged: one material, weighed ${count} times`,
    different: "kept apart: never averaged",
    sayWhich: "say which: repeats or different",
    one: "one sample: no scatter can be seen",
  },
  date: {
    title: "Date",
    prompt: "The day of round 1. A date typed with a later clock time counts from here.",
    refusal: "Type the date alone, such as 21 Nov 2026. Who did it goes into the next box.",
  },
  operator: { title: "Done by", prompt: "Who weighs and heats.", refusal: "" },
  material: { title: "Material", prompt: "What it is, in at most 24 letters: plum prunings. It stands in the answer above.", refusal: "" },
  samplesAre: {
    title: "Samples, which are",
    prompt: "repeats: one material, weighed more than once; they are averaged. different: several materials; they are kept apart.",
    refusal: "Choose repeats or different.",
  },
  name: { title: "Sample", prompt: "The name or mark of this sample, so that it can be found again.", refusal: "" },
} as const;
