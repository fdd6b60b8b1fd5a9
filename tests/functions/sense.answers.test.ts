import { callCellFunction } from "../../src/cells/callCellFunction";
import { sense } from "../../src/functions/sense";
import { callLiteral, problemIn } from "./callLiteral";

/** Every slip is answered in words; nothing here is an error. */
const answers: readonly (readonly [cell: string, text: string])[] = [
  [
    '=RETORT.TYPICALRANGE("fibre", 0.3)',
    'quantity: "fibre" is not one of "volatile matter", "fixed carbon", "ash", "carbon", "hydrogen", "oxygen", "nitrogen", "heating value", "moisture", "char yield".',
  ],
  [
    "=RETORT.TYPICALRANGE(, 0.3)",
    'quantity: nothing here (blank or 0). Type one of "volatile matter", "fixed carbon", "ash", "carbon", "hydrogen", "oxygen", "nitrogen", "heating value", "moisture", "char yield".',
  ],
  [
    "=RETORT.TYPICALRANGE(0, 0.3)",
    'quantity: nothing here (blank or 0). Type one of "volatile matter", "fixed carbon", "ash", "carbon", "hydrogen", "oxygen", "nitrogen", "heating value", "moisture", "char yield".',
  ],
  [
    "=RETORT.TYPICALRANGE(12, 0.3)",
    'quantity: 12 is not one of "volatile matter", "fixed carbon", "ash", "carbon", "hydrogen", "oxygen", "nitrogen", "heating value", "moisture", "char yield".',
  ],
  ['=RETORT.TYPICALRANGE("ash", )', "value: nothing here (blank or 0). Give a fraction, such as 0.35 or 35%."],
  ['=RETORT.TYPICALRANGE("ash", 0)', "value: nothing here (blank or 0). Give a fraction, such as 0.35 or 35%."],
  [
    '=RETORT.TYPICALRANGE("moisture", 0)',
    "inside: moisture of 0, wet basis, lies in the 0 to 0.7 of untreated plant matter (common practice, no source).",
  ],
  ['=RETORT.TYPICALRANGE("heating value", 0)', "value: nothing here (blank or 0). Give MJ/kg, such as 19.8."],
  ['=RETORT.TYPICALRANGE("ash", "1,2 %")', 'value: "1,2 %" is not a number. Give a fraction, such as 0.35 or 35%.'],
  ['=RETORT.TYPICALRANGE("ash", TRUE)', "value: TRUE is not a number. Give a fraction, such as 0.35 or 35%."],
  ['=RETORT.TYPICALRANGE("ash", 12)', "value: 12 is above 1 and looks like a percentage. Type 12 % as 0.12 or 12%."],
  ['=RETORT.TYPICALRANGE("ash", -0.01)', "value: -0.01 is below zero. Check for swapped cells."],
  ['=RETORT.TYPICALRANGE("heating value", -3)', "value: -3 MJ/kg is below zero. Check for swapped cells."],
  ['=RETORT.TYPICALRANGE("heating value", 19800)', "value: 19800 MJ/kg is above 100 MJ/kg and looks like kJ/kg. Give MJ/kg, such as 19.8."],
  [
    '=RETORT.TYPICALRANGE("heating value", 19.8, "nut shells")',
    "inside: heating value of 19.8 MJ/kg, dry, lies in the 15 to 21.5 MJ/kg of untreated plant matter (span of the materials listed, widened; common practice, no source); for nut shells none is printed.",
  ],
  [
    '=RETORT.TYPICALRANGE("ash", 0.02, "bamboo")',
    'feedstock: "bamboo" is not one of "plant matter", "wood", "nut shells", "red oak sawdust", "fir mill waste", "hybrid poplar", "poplar coarse", "alder and fir sawdust", "furniture waste", "forest residuals", "Christmas trees", "pine", "bagasse", "coconut shell", "coir pith", "corn cob", "corn stalks", "groundnut shell", "millet husk", "rice husk", "rice straw", "subabul wood", "wheat straw".',
  ],
  [
    '=RETORT.TYPICALRANGE("ash", 0.02, 3)',
    'feedstock: 3 is not one of "plant matter", "wood", "nut shells", "red oak sawdust", "fir mill waste", "hybrid poplar", "poplar coarse", "alder and fir sawdust", "furniture waste", "forest residuals", "Christmas trees", "pine", "bagasse", "coconut shell", "coir pith", "corn cob", "corn stalks", "groundnut shell", "millet husk", "rice husk", "rice straw", "subabul wood", "wheat straw".',
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
  ['=RETORT.TYPICALRANGE("moisture", 1.7)', "value: 1.7 is above 1 and looks like a percentage. Type 1.7 % as 0.017 or 1.7%."],
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

test.each([
  ["=RETORT.TYPICALRANGE(#N/A, 0.3)", "#N/A quantity: the cell given here shows #N/A. Mend that cell first."],
  ['=RETORT.TYPICALRANGE("ash", #REF!)', "#VALUE! value: the cell given here shows #REF!. Mend that cell first."],
  ['=RETORT.TYPICALRANGE("ash", 0.3, #VALUE!)', "#VALUE! feedstock: the cell given here shows #VALUE!. Mend that cell first."],
])("%s passes the error of its cell on: %s", (cell, problem) => {
  expect(problemIn(cell)).toBe(problem);
});

test("TYPICALRANGE judges a column row by row and leaves unfilled rows blank", () => {
  const [typicalRange] = sense;
  if (typicalRange === undefined) throw new Error("TYPICALRANGE is missing");
  const answer = callCellFunction(typicalRange, ["ash", [[0.012], [0], [null], [0.3]], "wood"]) as string[][];
  expect(answer.map(([text]) => text?.split(":")[0])).toEqual(["inside", "", "", "outside"]);
});
