import type { Refusal } from "./Refusal";

/** TYPICALRANGE answers every slip in words; only an error in a cell is passed on. */
export const sense: readonly Refusal[] = [
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
  ['=RETORT.TYPICALRANGE("heating value", 0)', "value: nothing here (blank or 0). Give MJ/kg, such as 19.8."],
  ['=RETORT.TYPICALRANGE("ash", "1,2 %")', 'value: "1,2 %" is not a number. Give a fraction, such as 0.35 or 35%.'],
  ['=RETORT.TYPICALRANGE("ash", TRUE)', "value: TRUE is not a number. Give a fraction, such as 0.35 or 35%."],
  ['=RETORT.TYPICALRANGE("ash", 12)', "value: 12 is above 1 and looks like a percentage. Type 12 % as 0.12 or 12%.", "percentage for a fraction"],
  ['=RETORT.TYPICALRANGE("ash", -0.01)', "value: -0.01 is below zero. Check for swapped cells."],
  ['=RETORT.TYPICALRANGE("heating value", -3)', "value: -3 MJ/kg is below zero. Check for swapped cells."],
  [
    '=RETORT.TYPICALRANGE("heating value", 19800)',
    "value: 19800 MJ/kg is above 100 MJ/kg and looks like kJ/kg. Give MJ/kg, such as 19.8.",
    "other unit of mass, density or pressure",
  ],
  [
    '=RETORT.TYPICALRANGE("ash", 0.02, "bamboo")',
    'feedstock: "bamboo" is not one of "plant matter", "wood", "nut shells", "red oak sawdust", "fir mill waste", "hybrid poplar", "poplar coarse", "alder and fir sawdust", "furniture waste", "forest residuals", "Christmas trees", "pine", "bagasse", "coconut shell", "coir pith", "corn cob", "corn stalks", "groundnut shell", "millet husk", "rice husk", "rice straw", "subabul wood", "wheat straw".',
  ],
  [
    '=RETORT.TYPICALRANGE("ash", 0.02, 3)',
    'feedstock: 3 is not one of "plant matter", "wood", "nut shells", "red oak sawdust", "fir mill waste", "hybrid poplar", "poplar coarse", "alder and fir sawdust", "furniture waste", "forest residuals", "Christmas trees", "pine", "bagasse", "coconut shell", "coir pith", "corn cob", "corn stalks", "groundnut shell", "millet husk", "rice husk", "rice straw", "subabul wood", "wheat straw".',
  ],
  ['=RETORT.TYPICALRANGE("moisture", 1.7)', "value: 1.7 is above 1 and looks like a percentage. Type 1.7 % as 0.017 or 1.7%."],
  ["=RETORT.TYPICALRANGE(#N/A, 0.3)", "#N/A quantity: the cell given here shows #N/A. Mend that cell first."],
  ['=RETORT.TYPICALRANGE("ash", #REF!)', "#VALUE! value: the cell given here shows #REF!. Mend that cell first."],
  ['=RETORT.TYPICALRANGE("ash", 0.3, #VALUE!)', "#VALUE! feedstock: the cell given here shows #VALUE!. Mend that cell first."],
];
