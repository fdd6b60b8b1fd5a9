import { answerOf, callLiteral, column } from "./call";

/** What it says of a value it can judge; what it refuses is pinned in refusals/sense.ts. */
const answers: readonly (readonly [cell: string, text: string])[] = [
  [
    '=RETORT.TYPICALRANGE("moisture", 0)',
    "inside: moisture of 0, wet basis, lies in the 0 to 0.7 of untreated plant matter (common practice, no source).",
  ],
  [
    '=RETORT.TYPICALRANGE("heating value", 19.8, "nut shells")',
    "inside: heating value of 19.8 MJ/kg, dry, lies in the 15 to 21.5 MJ/kg of untreated plant matter (span of the materials listed, widened; common practice, no source); for nut shells none is printed.",
  ],
  [
    '=RETORT.TYPICALRANGE("moisture", 0.2, "wood")',
    "outside: moisture of 0.2, wet basis, is below the 0.36 to 0.58 of most woods (MIL-HDBK-1003/6, table 12). Check tare and basis.",
  ],
  [
    '=RETORT.TYPICALRANGE(" Volatile  Matter ", 0.8, "Coconut Shell")',
    "inside: volatile matter of 0.8, dry, lies in the 0.6 to 0.9 of untreated plant matter (span of the materials listed, widened; common practice, no source); coconut shell is printed with 0.796 (Raveendran 1995).",
  ],
  [
    '=RETORT.TYPICALRANGE("ash", 0.02, "pine")',
    "inside: ash of 0.02, dry, lies in the 0.001 to 0.25 of untreated plant matter (span of the materials listed, widened; common practice, no source); for pine none is printed.",
  ],
  [
    '=RETORT.TYPICALRANGE("char yield", 0.5)',
    "outside: char yield of 0.5, dry, at 450 to 900 °C, is above the 0.1 to 0.45 of untreated plant matter (common practice, no source). Check tare, basis and air leak.",
  ],
  [
    '=RETORT.TYPICALRANGE("heating value", 18.0, "coir pith")',
    "inside: heating value of 18 MJ/kg, dry, lies in the 15 to 21.5 MJ/kg of untreated plant matter (span of the materials listed, widened; common practice, no source); for coir pith none is printed.",
  ],
  [
    '=RETORT.TYPICALRANGE("volatile matter", 0.5, "wood")',
    "outside: volatile matter of 0.5, dry, is below the 0.74 to 0.82 of most woods (MIL-HDBK-1003/6, table 12). Check tare, basis and air leak.",
  ],
  [
    '=RETORT.TYPICALRANGE("nitrogen", 0.02, "nut shells")',
    "outside: nitrogen of 0.02, dry, is above the 0.005 to 0.016 of nut shells (Energy Sources 24 (2002) 215). Check tare and basis.",
  ],
];

test.each(answers)("%s answers %s", (cell, text) => {
  expect(callLiteral(cell)).toBe(text);
});

test("TYPICALRANGE judges a column row by row and leaves unfilled rows blank", () => {
  const answer = answerOf("TYPICALRANGE", "ash", column([0.012, 0, null, 0.3]), "wood") as string[][];
  expect(answer.map(([text]) => text?.split(":")[0])).toEqual(["inside", "", "", "outside"]);
});
