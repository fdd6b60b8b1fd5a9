import { text, type Expression } from "../expressions/Expression";

/** Words of staged heating. */
export const stageWords = {
  fire: "2 STAGES: the fire",
  stage: (number: number): string => `Stage ${number}`,
  weighed: "2 weighed when cold",
  after: (number: number): string => `After stage ${number}, g`,
  total: "Left at the end, g",
  left: (sample: number): string => `${sample} left, %`,
  seen: "What left (name it)",
  seenBox: {
    title: "What left",
    prompt: "Your own name for what left in this stage, at most 17 letters: water of crystals. It stands in the results.",
    refusal: "",
  },
  set: { title: "Set to", prompt: "The temperature this stage is set to, no lower than the one before; the same again to hold a stage longer." },
  box: {
    title: "Vessel + what is left",
    about: "The same vessel and lid, cooled closed and cold. Weigh soon: what was dried or burnt takes up damp.",
  },
  temperature: (unit: "C" | "F"): string => `°${unit}, as measured or set`,
  chart: { title: "Left against temperature", x: (unit: "C" | "F"): string => `temperature, °${unit}`, y: "left, of the dry sample" },
  curves: "what is left against temperature; lines told apart by their markers",
  says: {
    notDry: "? not shown dry before",
    lost: (grams: Expression) => text`lost ${grams} g`,
    heldEnough: "held again: nothing more left",
    // Looked for by their text: without a mark, which a spreadsheet reads as any character.
    colder: "colder: hold again as hot",
    short: "short: hold again as long",
    stillLosing: (grams: Expression) => text`lost ${grams} g more: hold again`,
    after: (stages: Expression) => text`after stage ${stages}`,
  },
  workings: { done: "stages weighed, and all of them when over", left: "left, of the dry sample" },
} as const;
