import type { Refusal } from "./Refusal";

export const balance: readonly Refusal[] = [
  ["=RETORT.ZERODRIFT(, 0.002, 0.006)", "#VALUE! reading: nothing here (blank or 0). Give grams."],
  ["=RETORT.ZERODRIFT(-31.5, 0.002, 0.006)", "#VALUE! reading: -31.5 g is below zero. Give grams."],
  ['=RETORT.ZERODRIFT(31.5, "ok", 0.006)', '#VALUE! zeroBefore: "ok" is not a mass. Give grams, with a minus sign if below zero.'],
  ['=RETORT.ZERODRIFT(31.5, 0.002, "0,006")', '#VALUE! zeroAfter: "0,006" is text, not a number. Retype it as a number.'],
  [
    "=RETORT.ZERODRIFT(31.5, 0.002, 31.4)",
    "#VALUE! zeroAfter: 31.4 g and zeroBefore, 0.002 g, differ by over a tenth of reading, 31.5 g. Check for swapped cells.",
    "swapped cells",
  ],
  [
    "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 1, 2)",
    "#VALUE! timeAfter: left out, blank or 0, but other times are given. Give all three times, or none.",
  ],
  ["=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 1, , 5)", "#VALUE! time: left out, blank or 0, but other times are given. Give all three times, or none."],
  [
    "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, , 2, 5)",
    "#VALUE! timeBefore: left out, blank or 0, but other times are given. Give all three times, or none.",
  ],
  ["=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 3)", "#VALUE! time: left out, blank or 0, but other times are given. Give all three times, or none."],
  [
    "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 0, 0.41, 0.42)",
    "#VALUE! timeBefore: 0 or blank, while the others look like clock times or dates. Give the time of the first zero reading.",
  ],
  [
    "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 0, 45985.41, 45985.42)",
    "#VALUE! timeBefore: 0 or blank, while the others look like clock times or dates. Give the time of the first zero reading.",
    "clock times or dates for minutes",
  ],
  [
    "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 3, 2, 5)",
    "#VALUE! time: 2 is not between timeBefore, 3, and timeAfter, 5. Past midnight, add 1 to clock times.",
    "rows out of order",
  ],
  [
    "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 1, 6, 5)",
    "#VALUE! time: 6 is not between timeBefore, 1, and timeAfter, 5. Past midnight, add 1 to clock times.",
  ],
  [
    "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 5, 5, 5)",
    "#VALUE! time: 5 is not between timeBefore, 5, and timeAfter, 5. Past midnight, add 1 to clock times.",
  ],
  ["=RETORT.ZERODRIFT(31.5, 0.002, 0.006, -1, 2, 5)", "#VALUE! timeBefore: -1 is below zero. Give minutes or clock times, the same for all three."],
  [
    '=RETORT.ZERODRIFT(31.5, 0.002, 0.006, "10:05", 2, 5)',
    '#VALUE! timeBefore: "10:05" is not a time. Give minutes or clock times, the same for all three.',
  ],
  ["=RETORT.BLANKCORRECTED(, 0.004)", "#VALUE! loss: nothing here (blank or 0). Give grams, before - after."],
  [
    "=RETORT.BLANKCORRECTED(-0.85, 0.004)",
    "#VALUE! loss: -0.85 g would make the sample gain 0.854 g. Give before - after; give u where that is scatter.",
  ],
  [
    "=RETORT.BLANKCORRECTED(-0.0009, 0.0004, 0.0003)",
    "#VALUE! loss: -0.0009 g would make the sample gain 0.0013 g. Give before - after; give u where that is scatter.",
  ],
  [
    "=RETORT.BLANKCORRECTED(-0.0015, -2)",
    "#VALUE! blankLoss: -2 g is a larger change than loss, -0.0015 g. Check for swapped cells; give the change in grams, and u where it is scatter.",
    "other unit of mass, density or pressure",
  ],
  [
    "=RETORT.BLANKCORRECTED(0.004, 0.85)",
    "#VALUE! blankLoss: 0.85 g is a larger change than loss, 0.004 g. Check for swapped cells; give the change in grams, and u where it is scatter.",
    "swapped cells",
  ],
  [
    "=RETORT.BLANKCORRECTED(0.85, -0.9)",
    "#VALUE! blankLoss: -0.9 g is a larger change than loss, 0.85 g. Check for swapped cells; give the change in grams, and u where it is scatter.",
  ],
  ['=RETORT.BLANKCORRECTED(0.85, "none")', '#VALUE! blankLoss: "none" is not a mass. Give grams, with a minus sign if below zero.'],
  ["=RETORT.ZERODRIFT(1e300, 0, 0)", "#VALUE! reading: 1e+300 g is above 1000000000 g, more than any balance weighs. Give grams."],
  [
    "=RETORT.ZERODRIFT(31.5, 2e9, 0)",
    "#VALUE! zeroBefore: 2000000000 g is above 1000000000 g, more than any balance weighs. Give grams, with a minus sign if below zero.",
  ],
  ["=RETORT.BLANKCORRECTED(0.85, -2e9)", "#VALUE! blankLoss: -2000000000 g is below -1000000000 g. Give grams, with a minus sign if below zero."],
  ["=RETORT.BUOYANCY(1.7e308, 31.5)", "#VALUE! reading: 1.7e+308 g is above 1000000000 g, more than any balance weighs. Give grams."],
  [
    "=RETORT.AIRDENSITY(293.15, 101325, 0.5)",
    "#VALUE! temperature: 293.15 °C is above 100 °C and looks like kelvin. Give degrees Celsius: 293.15 K is 20.",
    "kelvin for degrees Celsius",
  ],
  [
    "=RETORT.AIRDENSITY(0, 101325, 0.5)",
    '#VALUE! temperature: 0 °C is outside 15 to 27 °C, where the formula "CIPM-2007" holds. Check the unit; neither formula reaches this.',
  ],
  ["=RETORT.AIRDENSITY(, 101325, 0.5)", "#VALUE! temperature: nothing here (blank). Give degrees Celsius: 293.15 K is 20."],
  ["=RETORT.AIRDENSITY(-80, 101325, 0.5)", "#VALUE! temperature: -80 °C is below -70 °C. Give degrees Celsius: 293.15 K is 20."],
  ['=RETORT.AIRDENSITY("20 °C", 101325, 0.5)', '#VALUE! temperature: "20 °C" is not a temperature. Give degrees Celsius: 293.15 K is 20.'],
  [
    "=RETORT.AIRDENSITY(20, 1013.25, 0.5)",
    "#VALUE! pressure: 1013.25 Pa is too low for air and looks like hPa, kPa or bar. Give pascals: 1013.25 hPa is 101325.",
    "other unit of mass, density or pressure",
  ],
  [
    "=RETORT.AIRDENSITY(20, 101.325, 0.5)",
    "#VALUE! pressure: 101.325 Pa is too low for air and looks like hPa, kPa or bar. Give pascals: 1013.25 hPa is 101325.",
  ],
  ["=RETORT.AIRDENSITY(20, 0, 0.5)", "#VALUE! pressure: nothing here (blank or 0). Give pascals: 1013.25 hPa is 101325."],
  [
    "=RETORT.AIRDENSITY(20, 1013250, 0.5)",
    "#VALUE! pressure: 1013250 Pa is above 115000 Pa, which air does not reach. Give pascals: 1013.25 hPa is 101325.",
  ],
  ["=RETORT.AIRDENSITY(20, -5, 0.5)", "#VALUE! pressure: -5 Pa is below zero. Give pascals: 1013.25 hPa is 101325."],
  [
    "=RETORT.AIRDENSITY(20, 101325, 50)",
    "#VALUE! humidity: 50 is above 1 and looks like a percentage. Type a share from 0 to 1, such as 0.35 or 35%.",
    "percentage for a fraction",
  ],
  ["=RETORT.AIRDENSITY(20, 101325, -0.5)", "#VALUE! humidity: -0.5 is below zero. Type a share from 0 to 1, such as 0.35 or 35%."],
  ["=RETORT.AIRDENSITY(28, 101325, 0.5)", '#VALUE! temperature: 28 °C is outside 15 to 27 °C, where the formula "CIPM-2007" holds. Give "OIML".'],
  [
    "=RETORT.AIRDENSITY(14, 80000, 0.5)",
    '#VALUE! temperature: 14 °C is outside 15 to 27 °C, where the formula "CIPM-2007" holds. Check the unit; neither formula reaches this.',
  ],
  [
    "=RETORT.AIRDENSITY(20, 55000, 0.5)",
    '#VALUE! pressure: 55000 Pa is outside 60000 to 110000 Pa, where the formula "CIPM-2007" holds. Check the unit; neither formula reaches this.',
  ],
  ['=RETORT.AIRDENSITY(20, 101325, 0.9, "OIML")', '#VALUE! humidity: 0.9 is outside 0 to 0.8, where the formula "OIML" holds. Give "CIPM-2007".'],
  [
    '=RETORT.AIRDENSITY(20, 85000, 0.5, "OIML")',
    '#VALUE! pressure: 85000 Pa is outside 90000 to 110000 Pa, where the formula "OIML" holds. Give "CIPM-2007".',
  ],
  [
    '=RETORT.AIRDENSITY(35, 101325, 0.5, "OIML")',
    '#VALUE! temperature: 35 °C is outside 10 to 30 °C, where the formula "OIML" holds. Check the unit; neither formula reaches this.',
  ],
  ['=RETORT.AIRDENSITY(20, 101325, 0.5, "NPL")', '#VALUE! formula: "NPL" is not one of "CIPM-2007", "OIML".'],
  ["=RETORT.BUOYANCY(, 2700)", "#VALUE! reading: nothing here (blank or 0). Give grams."],
  ["=RETORT.BUOYANCY(2, )", "#VALUE! density: nothing here (blank or 0). Give kg/m³: 2.7 g/cm³ is 2700."],
  [
    "=RETORT.BUOYANCY(2, 2.7)",
    "#VALUE! density: 2.7 kg/m³ is too low for a solid and looks like g/cm³. Give kg/m³: 2.7 g/cm³ is 2700.",
    "other unit of mass, density or pressure",
  ],
  ["=RETORT.BUOYANCY(2, -2700)", "#VALUE! density: -2700 kg/m³ is below zero. Give kg/m³: 2.7 g/cm³ is 2700."],
  ["=RETORT.BUOYANCY(2, 27000)", "#VALUE! density: 27000 kg/m³ is above 22600 kg/m³, which no material reaches. Give kg/m³: 2.7 g/cm³ is 2700."],
  ['=RETORT.BUOYANCY(2, "aluminium")', '#VALUE! density: "aluminium" is not a density. Give kg/m³: 2.7 g/cm³ is 2700.'],
  [
    "=RETORT.BUOYANCY(2, 2700, 0.0012)",
    "#VALUE! airDensity: 0.0012 kg/m³ is too low for air and looks like g/cm³. Give kg/m³, as AIRDENSITY does: 0.0012 g/cm³ is 1.2.",
  ],
  [
    "=RETORT.BUOYANCY(2, 2700, 12)",
    "#VALUE! airDensity: 12 kg/m³ is above 1.7 kg/m³, which air does not reach. Give kg/m³, as AIRDENSITY does: 0.0012 g/cm³ is 1.2.",
  ],
  ["=RETORT.BUOYANCY(2, 2700, -1.2)", "#VALUE! airDensity: -1.2 kg/m³ is below zero. Give kg/m³, as AIRDENSITY does: 0.0012 g/cm³ is 1.2."],
  [
    "=RETORT.BUOYANCY(2, 2700, 1.2, 8)",
    "#VALUE! referenceDensity: 8 kg/m³ is too low for a solid and looks like g/cm³. Give kg/m³: 2.7 g/cm³ is 2700.",
  ],
  [
    "=RETORT.HOTWEIGHING(303)",
    "#VALUE! temperatureDifference: 303 °C is above 100 °C, too hot for a balance or not a difference. Give vessel minus room, from 0 to 100 °C.",
    "kelvin for degrees Celsius",
  ],
  [
    "=RETORT.HOTWEIGHING(-5)",
    "#VALUE! temperatureDifference: -5 °C is below zero: a vessel colder than the room gathers dew. Give vessel minus room, from 0 to 100 °C.",
  ],
  ["=RETORT.HOTWEIGHING()", "#VALUE! temperatureDifference: nothing here (blank). Give vessel minus room, from 0 to 100 °C."],
  ['=RETORT.HOTWEIGHING("warm")', '#VALUE! temperatureDifference: "warm" is not a temperature difference. Give vessel minus room, from 0 to 100 °C.'],
  [
    "=RETORT.HOTWEIGHING(30, 0.19)",
    "#VALUE! rate: 0.19 g/°C is above 0.01 g/°C and looks like milligrams. Give grams per °C: 0.19 mg is 0.00019.",
    "other unit of mass, density or pressure",
  ],
  ["=RETORT.HOTWEIGHING(30, -0.0001)", "#VALUE! rate: -0.0001 g/°C is below zero. Give grams per °C: 0.19 mg is 0.00019."],
  ["=RETORT.BUOYANCY(0, 2700)", "#VALUE! reading: nothing here (blank or 0). Give grams."],
  ["=RETORT.HOTWEIGHING(#DIV/0!)", "#DIV/0! temperatureDifference: the cell given here shows #DIV/0!. Mend that cell first."],
];
